package domefold.app;

import domefold.export.Lists;
import java.util.function.Supplier;
import picocli.CommandLine.Option;
import picocli.CommandLine.TypeConversionException;

/** The option of a command whose result is a list. */
final class AsList {
    @Option(names = "--as", paramLabel = "text|json|csv", defaultValue = "text", converter = Converter.class,
            description = "How the list is printed: text (the default), json, or csv for a spreadsheet.")
    private Form form;

    /** How a list may be printed. */
    enum Form {
        TEXT, JSON, CSV;

        /** As it is typed, and as the completion script offers it. */
        @Override
        public String toString() {
            return name().toLowerCase(java.util.Locale.ROOT);
        }
    }

    void answer(Console console, Supplier<String> text, Supplier<Lists> list) {
        switch (form) {
            case JSON -> console.json(list.get().asJson());
            case CSV -> console.json(list.get().asCsv());
            default -> console.text(text.get());
        }
    }

    static final class Converter implements picocli.CommandLine.ITypeConverter<Form> {
        @Override
        public Form convert(String typed) {
            for (Form form : Form.values()) {
                if (form.toString().equals(typed)) {
                    return form;
                }
            }
            throw new TypeConversionException("'" + typed + "' is not known; write text, json or csv");
        }
    }
}
