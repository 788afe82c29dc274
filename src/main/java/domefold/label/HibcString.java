package domefold.label;

import domefold.outcome.Refusal;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * A HIBC string: {@code +} labeller, product, unit of measure, then after {@code /} lot or serial with dates, then one
 * check character over the whole. The same two parts may also stand in two symbols, tied by a link character.
 *
 * <p>Source: the public standard as restated by open implementations (read-secondary), vectors in the reference test.
 */
public final class HibcString {
    private static final int LABELLER = 4;
    private static final int LONGEST_PRODUCT = 18;

    private HibcString() {}

    /**
     * The label in that string, or in two lines that hold the primary and the secondary symbol.
     *
     * @throws Refusal if it is no such string or its check character does not hold
     */
    public static DeviceLabel read(String text, int nowYear) {
        String[] lines = text.stripLeading().split("\\R+");
        if (lines.length > 2) {
            throw new Refusal("label-hibc", "line 3", "a HIBC label is one string, or two lines: primary, then secondary");
        }
        String body = checked(bare(lines[0]));
        if (lines.length == 2) {
            body = body + "/" + linked(bare(lines[1]), Hibc43.of(body));
        }
        int slash = body.indexOf('/');
        Primary primary = Primary.of(slash < 0 ? body : body.substring(0, slash));
        HibcSecondary secondary = new HibcSecondary(nowYear);
        if (slash >= 0) {
            for (String part : body.substring(slash + 1).split("/", -1)) {
                secondary.take(part);
            }
        }
        return new DeviceLabel(DeviceLabel.Scheme.HIBC, primary.labeller + " " + primary.product, Optional.of(primary.product),
                secondary.lot(), secondary.serial(), secondary.made(), secondary.expires(), secondary.quantity(), text);
    }

    /** Without the asterisks that Code 39 prints around it, and without blanks behind it: the check may be a blank, though. */
    private static String bare(String line) {
        String cut = line.strip();
        if (cut.length() > 2 && cut.startsWith("*") && cut.endsWith("*")) {
            return cut.substring(1, cut.length() - 1);
        }
        boolean blankIsTheCheck = line.endsWith(" ") && cut.chars().allMatch(c -> Hibc43.ALPHABET.indexOf(c) >= 0)
                && Hibc43.of(cut) == ' ';
        return blankIsTheCheck ? cut + " " : cut;
    }

    /** The string without its check character, once that holds. */
    private static String checked(String line) {
        for (int i = 0; i < line.length(); i++) {
            if (Hibc43.ALPHABET.indexOf(line.charAt(i)) < 0) {
                throw new Refusal("label-hibc-character", "character " + (i + 1),
                        "'" + line.charAt(i) + "' does not occur in HIBC, which is written in capitals");
            }
        }
        int last = line.length() - 1;
        if (last < 1 || line.charAt(0) != '+') {
            throw new Refusal("label-hibc", "character 1", "a HIBC string starts with +");
        }
        char right = Hibc43.of(line.substring(0, last));
        if (line.charAt(last) != right) {
            throw new Refusal("label-check-character", "character " + (last + 1), "the string ends in '" + line.charAt(last)
                    + "' where its check character is '" + right + "'; a character was misread, or the string is cut short");
        }
        return line.substring(0, last);
    }

    /** What the secondary symbol says, once its link character is the check character of the primary. */
    private static String linked(String line, char primaryCheck) {
        String body = checked(line);
        int last = body.length() - 1;
        if (last < 1 || body.charAt(last) != primaryCheck) {
            throw new Refusal("label-link", "line 2", "the second line is tied to another label: its link character is '"
                    + (last < 1 ? ' ' : body.charAt(last)) + "' and the first line asks for '" + primaryCheck + "'");
        }
        return body.substring(1, last);
    }

    private record Primary(String labeller, String product) {
        static Primary of(String text) {
            int product = text.length() - 1 - LABELLER - 1;
            if (product < 1 || product > LONGEST_PRODUCT || !text.matches("\\+[A-Z][0-9A-Z]{3}[0-9A-Z]+[0-9]")) {
                throw new Refusal("label-hibc-primary", text, "after + come 4 characters for the labeller (a letter first),"
                        + " 1 to 18 for the product and one digit; '" + text + "' is not that");
            }
            return new Primary(text.substring(1, 1 + LABELLER), text.substring(1 + LABELLER, text.length() - 1));
        }
    }
}
