package domefold.label;

import domefold.outcome.Refusal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * A GS1 element string, as printed with parentheses or as scanned with separators, cut into its parts and checked.
 *
 * <p>Known parts: 01, 11, 17, 10, 21, 30, 240, 241. Lengths, dates and the rule that the others go with 01 are the GS1
 * syntax dictionary's (read).
 */
public final class Gs1Elements {
    /** Ends a part of variable length in scanned data. */
    static final char SEPARATOR = '\u001d';

    private static final String EVERY_CHARACTER = "!\"%&'()*+,-./0123456789:;<=>?ABCDEFGHIJKLMNOPQRSTUVWXYZ_"
            + "abcdefghijklmnopqrstuvwxyz";

    /** A kind of part: fixed ones need no separator behind them. */
    private enum Part {
        GTIN("01", 14, 14, true),
        MADE("11", 6, 6, true),
        EXPIRES("17", 6, 6, true),
        LOT("10", 1, 20, false),
        SERIAL("21", 1, 20, false),
        COUNT("30", 1, 8, true),
        ADDITIONAL("240", 1, 30, false),
        CUSTOMER("241", 1, 30, false);

        private final String id;
        private final int shortest;
        private final int longest;
        private final boolean digitsOnly;

        Part(String id, int shortest, int longest, boolean digitsOnly) {
            this.id = id;
            this.shortest = shortest;
            this.longest = longest;
            this.digitsOnly = digitsOnly;
        }

        boolean fixed() {
            return shortest == longest;
        }

        boolean takes(String value) {
            return value.length() >= shortest && value.length() <= longest && value.chars().allMatch(
                    c -> digitsOnly ? c >= '0' && c <= '9' : EVERY_CHARACTER.indexOf(c) >= 0);
        }

        static Optional<Part> at(String text, int from) {
            for (Part part : values()) {
                if (text.startsWith(part.id, from)) {
                    return Optional.of(part);
                }
            }
            return Optional.empty();
        }
    }

    private Gs1Elements() {}

    /**
     * The label in that string.
     *
     * @param nowYear the present year, for the century of two-digit years
     * @throws Refusal if it is no such string, if a check fails, or if it can be read in two ways
     */
    public static DeviceLabel read(String text, int nowYear) {
        String bare = withoutScannerPrefix(text);
        Map<Part, String> parts = bare.startsWith("(") ? printed(bare) : scanned(bare);
        String gtin = parts.get(Part.GTIN);
        if (gtin == null) {
            throw new Refusal("label-no-gtin", "(01)", "the label has no (01); every other part belongs to one");
        }
        if (!Gs1CheckDigit.holds(gtin)) {
            throw new Refusal("label-check-digit", "(01)", "(01) ends in " + gtin.charAt(13) + " where its check digit is "
                    + Gs1CheckDigit.of(gtin.substring(0, 13)) + "; a digit was misread or two were swapped");
        }
        String count = parts.get(Part.COUNT);
        return new DeviceLabel(DeviceLabel.Scheme.GS1, gtin,
                Optional.ofNullable(parts.getOrDefault(Part.ADDITIONAL, parts.get(Part.CUSTOMER))),
                Optional.ofNullable(parts.get(Part.LOT)), Optional.ofNullable(parts.get(Part.SERIAL)),
                date(parts, Part.MADE, nowYear), date(parts, Part.EXPIRES, nowYear),
                count == null ? OptionalInt.empty() : OptionalInt.of(Integer.parseInt(count)), text);
    }

    private static String withoutScannerPrefix(String text) {
        String bare = text.strip();
        if (bare.matches("(?s)\\][A-Za-z][0-9].*")) {
            bare = bare.substring(3);
        }
        return !bare.isEmpty() && bare.charAt(0) == SEPARATOR ? bare.substring(1) : bare;
    }

    /** {@code (01)…(11)…}: the parentheses say where each part starts, so nothing is guessed. */
    private static Map<Part, String> printed(String text) {
        Map<Part, String> parts = new LinkedHashMap<>();
        int at = 0;
        while (at < text.length()) {
            int close = text.indexOf(')', at);
            if (text.charAt(at) != '(' || close < 0) {
                throw new Refusal("label-parentheses", text.substring(at),
                        "each part of a printed label starts with its number in parentheses, such as (10)");
            }
            String id = text.substring(at + 1, close);
            Part part = Part.at(id, 0).filter(known -> known.id.equals(id)).orElseThrow(() -> unknown(id));
            int next = nextPart(text, close + 1);
            put(parts, part, text.substring(close + 1, next).strip());
            at = next;
        }
        return parts;
    }

    private static int nextPart(String text, int from) {
        int open = text.indexOf('(', from);
        return open < 0 ? text.length() : open;
    }

    private static Map<Part, String> scanned(String text) {
        Map<Part, String> parts = new LinkedHashMap<>();
        int at = 0;
        while (at < text.length()) {
            int from = at;
            Part part = Part.at(text, from).orElseThrow(() -> unknown(text.substring(from, Math.min(text.length(), from + 4))));
            int start = at + part.id.length();
            int separator = text.indexOf(SEPARATOR, start);
            int end = separator < 0 ? text.length() : separator;
            if (part.fixed()) {
                end = Math.min(end, start + part.longest);
            } else if (separator < 0 && text.indexOf(SEPARATOR) < 0) {
                refuseIfItHidesAPart(part, text.substring(start));
            }
            put(parts, part, text.substring(start, end));
            at = end < text.length() && text.charAt(end) == SEPARATOR ? end + 1 : end;
        }
        return parts;
    }

    /** A scanner that types may drop the separator; then what follows the lot reads as part of the lot. */
    private static void refuseIfItHidesAPart(Part part, String rest) {
        for (int cut = part.shortest; cut < rest.length(); cut++) {
            if (part.takes(rest.substring(0, cut)) && readsAsParts(rest.substring(cut))) {
                throw new Refusal("label-ambiguous", "(" + part.id + ")", "the scan can be read in two ways: (" + part.id + ")"
                        + rest + ", or (" + part.id + ")" + rest.substring(0, cut) + " with more parts behind it. The scanner"
                        + " may have dropped a separator; type the label as printed, with its parentheses");
            }
        }
    }

    private static boolean readsAsParts(String text) {
        Optional<Part> part = Part.at(text, 0);
        if (part.isEmpty()) {
            return false;
        }
        String rest = text.substring(part.get().id.length());
        if (part.get().takes(rest)) {
            return true;
        }
        for (int cut = part.get().shortest; cut <= Math.min(part.get().longest, rest.length() - 1); cut++) {
            if (part.get().takes(rest.substring(0, cut)) && readsAsParts(rest.substring(cut))) {
                return true;
            }
        }
        return false;
    }

    private static void put(Map<Part, String> parts, Part part, String value) {
        String where = "(" + part.id + ")";
        if (!part.takes(value)) {
            String length = part.fixed() ? "" + part.longest : part.shortest + " to " + part.longest;
            throw new Refusal("label-part", where, where + " takes " + length + (part.digitsOnly ? " digits" : " characters")
                    + " and reads '" + value.replace(SEPARATOR, '|') + "'");
        }
        if (parts.put(part, value) != null) {
            throw new Refusal("label-twice", where, where + " occurs twice on the label");
        }
    }

    private static Optional<LabelDate> date(Map<Part, String> parts, Part part, int nowYear) {
        String digits = parts.get(part);
        return digits == null ? Optional.empty() : Optional.of(LabelDate.of(
                LabelDate.fullYear(Integer.parseInt(digits.substring(0, 2)), nowYear), Integer.parseInt(digits.substring(2, 4)),
                Integer.parseInt(digits.substring(4, 6)), "(" + part.id + ")", digits));
    }

    private static Refusal unknown(String id) {
        List<String> known = new ArrayList<>();
        for (Part part : Part.values()) {
            known.add(part.id);
        }
        return new Refusal("label-unknown-part", id, "'" + id + "' does not start a part that is read here ("
                + String.join(", ", known) + ")");
    }
}
