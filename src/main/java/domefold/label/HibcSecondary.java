package domefold.label;

import domefold.outcome.Refusal;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * The parts behind the first {@code /} of a HIBC string, taken one by one.
 * <pre>
 *   $lot   $+serial   $$[8qq|9qqqqq][date]lot   $$+[…][date]serial   Sserial   16DYYYYMMDD made   14DYYYYMMDD expires
 *   date:  2MMDDYY  3YYMMDD  4YYMMDDHH  5YYJJJ  6YYJJJHH  7 none  MMYY (from one public reader; starts with 0 or 1)
 * </pre>
 */
final class HibcSecondary {
    private final int nowYear;
    private String lot;
    private String serial;
    private LabelDate made;
    private LabelDate expires;
    private OptionalInt quantity = OptionalInt.empty();
    private String rest;

    HibcSecondary(int nowYear) {
        this.nowYear = nowYear;
    }

    void take(String part) {
        if (part.startsWith("$$")) {
            boolean ofSerial = part.startsWith("$$+");
            rest = part.substring(ofSerial ? 3 : 2);
            takeQuantity(part);
            expires = takeDate(part);
            takeLotOrSerial(ofSerial, rest);
        } else if (part.startsWith("$")) {
            boolean ofSerial = part.startsWith("$+");
            takeLotOrSerial(ofSerial, part.substring(ofSerial ? 2 : 1));
        } else if (part.matches("S[0-9A-Z. -]{1,18}")) {
            takeLotOrSerial(true, part.substring(1));
        } else if (part.matches("16D[0-9]{8}")) {
            made = longDate(part);
        } else if (part.matches("14D[0-9]{8}")) {
            expires = longDate(part);
        } else {
            throw new Refusal("label-hibc-secondary", part, "'" + part + "' behind a / is not lot, serial, date or quantity");
        }
    }

    private void takeLotOrSerial(boolean ofSerial, String value) {
        if (value.length() > 18) {
            throw new Refusal("label-hibc-secondary", value, "lot and serial are at most 18 characters, got '" + value + "'");
        }
        if (value.isEmpty()) {
            return;
        }
        String before = ofSerial ? serial : lot;
        if (before != null && !before.equals(value)) {
            throw new Refusal("label-twice", value, "the label gives two " + (ofSerial ? "serials" : "lots") + ", '" + before
                    + "' and '" + value + "'");
        }
        if (ofSerial) {
            serial = value;
        } else {
            lot = value;
        }
    }

    private void takeQuantity(String part) {
        if (rest.startsWith("8")) {
            quantity = OptionalInt.of(Integer.parseInt(digits(1, 2, part)));
            rest = rest.substring(3);
        } else if (rest.startsWith("9")) {
            quantity = OptionalInt.of(Integer.parseInt(digits(1, 5, part)));
            rest = rest.substring(6);
        }
    }

    private LabelDate takeDate(String part) {
        if (rest.isEmpty()) {
            return null;
        }
        char flag = rest.charAt(0);
        switch (flag) {
            case '2':
                return date(part, digits(1, 6, part), 7, "MMDDYY");
            case '3':
                return date(part, digits(1, 6, part), 7, "YYMMDD");
            case '4':
                return date(part, digits(1, 8, part), 9, "YYMMDD");
            case '5':
                return date(part, digits(1, 5, part), 6, "YYJJJ");
            case '6':
                return date(part, digits(1, 7, part), 8, "YYJJJ");
            case '7':
                rest = rest.substring(1);
                return null;
            case '0':
            case '1':
                return date(part, digits(0, 4, part), 4, "MMYY");
            default:
                throw new Refusal("label-hibc-secondary", part, "after $$ comes a date (0 to 6), 7 for none or a quantity (8, 9);"
                        + " '" + part + "' has '" + flag + "'");
        }
    }

    private LabelDate date(String part, String digits, int used, String shape) {
        rest = rest.substring(used);
        int year = LabelDate.fullYear(number(digits, shape, "YY"), nowYear);
        if (shape.contains("J")) {
            return LabelDate.ofYearDay(year, number(digits, shape, "JJJ"), "the date", part);
        }
        int day = shape.contains("D") ? number(digits, shape, "DD") : 0;
        return LabelDate.of(year, number(digits, shape, "MM"), day, "the date", part);
    }

    private static int number(String digits, String shape, String field) {
        int at = shape.indexOf(field);
        return Integer.parseInt(digits.substring(at, at + field.length()));
    }

    private LabelDate longDate(String part) {
        return LabelDate.of(Integer.parseInt(part.substring(3, 7)), Integer.parseInt(part.substring(7, 9)),
                Integer.parseInt(part.substring(9, 11)), "the date", part);
    }

    private String digits(int from, int count, String part) {
        if (rest.length() < from + count || !rest.substring(from, from + count).matches("[0-9]+")) {
            throw new Refusal("label-hibc-secondary", part, "'" + part + "' ends before its date or quantity does");
        }
        return rest.substring(from, from + count);
    }

    Optional<String> lot() {
        return Optional.ofNullable(lot);
    }

    Optional<String> serial() {
        return Optional.ofNullable(serial);
    }

    Optional<LabelDate> made() {
        return Optional.ofNullable(made);
    }

    Optional<LabelDate> expires() {
        return Optional.ofNullable(expires);
    }

    OptionalInt quantity() {
        return quantity;
    }
}
