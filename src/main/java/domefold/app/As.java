package domefold.app;

import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.TypeConversionException;

/** The option of every command that prints a result. */
final class As {
    private static final String NAME = "--as";
    private static final String WORDS = "text|json";
    private static final String OTHERWISE = "text";
    private static final String ABOUT = "How the result is printed: text (the default) or json.";

    @Option(names = NAME, paramLabel = WORDS, defaultValue = OTHERWISE, converter = Converter.class, description = ABOUT)
    private Answer answer;

    /** The same for a command that is not described by annotations. */
    static OptionSpec option() {
        return OptionSpec.builder(NAME).paramLabel(WORDS).type(Answer.class).defaultValue(OTHERWISE)
                .converters(new Converter()).description(ABOUT).build();
    }

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
