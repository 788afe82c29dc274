package domefold.store;

import domefold.outcome.Refusal;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The {@code format} field that every file of ours carries: a name and a whole number. */
final class FormatLine {
    private FormatLine() {}

    /** Made when a format is not the one that was asked for. */
    private static final class Shape {
        static final Pattern OF_A_FORMAT = Pattern.compile("([a-z-]+)/([0-9]{1,6})");
    }

    /**
     * Refuses another format, and a later number of the same one by name.
     *
     * @param what what the format holds, for example "a case"
     */
    static void require(Fields fields, String format, String what) {
        String found = fields.text("format").orElseThrow(() -> fields.refusal("missing-field", "format",
                "is missing; " + what + " starts with \"format\": \"" + format + "\""));
        if (found.equals(format)) {
            return;
        }
        Matcher ours = matcher(format);
        Matcher theirs = Shape.OF_A_FORMAT.matcher(found);
        if (theirs.matches() && theirs.group(1).equals(ours.group(1))
                && Integer.parseInt(theirs.group(2)) > Integer.parseInt(ours.group(2))) {
            throw fields.refusal("newer-format", "format", "is \"" + found + "\", written by a newer version of this program;"
                    + " this one knows " + format + " and leaves the file as it is");
        }
        throw fields.refusal("wrong-format", "format", "is " + Shown.quoted(found) + "; " + what + " starts with \"format\": \""
                + format + "\"");
    }

    private static Matcher matcher(String format) {
        Matcher matcher = Shape.OF_A_FORMAT.matcher(format);
        if (!matcher.matches()) {
            throw new IllegalArgumentException("no format of ours: " + format);
        }
        return matcher;
    }
}
