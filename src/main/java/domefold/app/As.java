package domefold.app;

import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.Option;
import picocli.CommandLine.TypeConversionException;

/** The option of every command that prints a result. */
final class As {
    @Option(names = "--as", paramLabel = "text|json", defaultValue = "text", converter = Converter.class,
            description = "How the result is printed: text (the default) or json.")
    private Answer answer;

    boolean json() {
        return answer == Answer.JSON;
    }

    static final class Converter implements ITypeConverter<Answer> {
        @Override
        public Answer convert(String typed) {
            for (Answer answer : Answer.values()) {
                if (answer.toString().equals(typed)) {
                    return answer;
                }
            }
            throw new TypeConversionException("'" + typed + "' is not known; write text or json");
        }
    }
}
