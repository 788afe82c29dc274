package domefold.record;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Case codes that the program issues, for example {@code C-2026-0042-9}: year, number and a check digit over both. A
 * practice's own codes are taken as they are.
 */
public final class CaseCode {
    private static final Pattern ISSUED = Pattern.compile("C-([0-9]{4})-([0-9]{4,6})-([0-9])");

    private CaseCode() {}

    /** The code of that year's case of that number, 1 or more. */
    public static String issue(int year, int number) {
        String digits = String.format(Locale.ROOT, "%04d%04d", year, number);
        return String.format(Locale.ROOT, "C-%04d-%04d-%d", year, number, DammCode.digit(digits));
    }

    /** True for a code of our own form whose check digit does not agree: it was mistyped. */
    public static boolean isMistyped(String code) {
        Matcher issued = ISSUED.matcher(code);
        return issued.matches() && !DammCode.agrees(issued.group(1) + issued.group(2) + issued.group(3));
    }

    /** The number that follows the highest one issued in that year. */
    public static int nextNumber(int year, Collection<String> codes) {
        int highest = 0;
        for (String code : codes) {
            Matcher issued = ISSUED.matcher(code);
            if (issued.matches() && Integer.parseInt(issued.group(1)) == year) {
                highest = Math.max(highest, Integer.parseInt(issued.group(2)));
            }
        }
        return highest + 1;
    }

    /**
     * Codes that are easily taken for this one: equal once letter case, blanks and dashes are left out and look-alike
     * characters (0 O, 1 I L, 2 Z, 5 S, 8 B) count as one, or one character or one swap of neighbours away. Which
     * characters look alike is common practice, no source.
     */
    public static List<String> lookAlikes(String code, Collection<String> others) {
        List<String> found = new ArrayList<>();
        String plain = plain(code);
        for (String other : others) {
            if (!other.equals(code) && (plain.equals(plain(other)) || oneSlipApart(plain, plain(other)))) {
                found.add(other);
            }
        }
        found.sort(null);
        return found;
    }

    private static String plain(String code) {
        StringBuilder out = new StringBuilder();
        for (char c : code.toUpperCase(Locale.ROOT).toCharArray()) {
            if (Character.isLetterOrDigit(c)) {
                int alike = "OILZSB".indexOf(c);
                out.append(alike < 0 ? c : "011258".charAt(alike));
            }
        }
        return out.toString();
    }

    private static boolean oneSlipApart(String a, String b) {
        int lead = 0;
        while (lead < a.length() && lead < b.length() && a.charAt(lead) == b.charAt(lead)) {
            lead++;
        }
        String restA = a.substring(lead);
        String restB = b.substring(lead);
        if (restA.length() == restB.length() && restA.length() > 1 && restA.charAt(0) == restB.charAt(1)
                && restA.charAt(1) == restB.charAt(0) && restA.substring(2).equals(restB.substring(2))) {
            return true;
        }
        String afterA = restA.isEmpty() ? "" : restA.substring(1);
        String afterB = restB.isEmpty() ? "" : restB.substring(1);
        return afterA.equals(afterB) || afterA.equals(restB) || restA.equals(afterB);
    }
}
