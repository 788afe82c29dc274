package domefold.report;

import domefold.evidence.Constant;
import domefold.evidence.Constants;
import domefold.evidence.Status;
import domefold.outcome.Numbers;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Locale;

/** Constants in use, each with who stands behind it. */
public final class EvidenceText {
    private EvidenceText() {}

    /** The constants of which every word is found somewhere; all of them without a word. */
    public static List<Constant> matching(Constants constants, List<String> words) {
        return constants.all().stream().filter(constant -> words.stream().allMatch(word -> holds(constant, word))).toList();
    }

    private static boolean holds(Constant constant, String word) {
        String text = String.join(" ", constant.id(), constant.quantity(), constant.unit(), constant.source(),
                constant.status().code(), constant.status().words(), constant.note());
        return text.toLowerCase(Locale.ROOT).contains(word.toLowerCase(Locale.ROOT));
    }

    /** The listing. */
    public static String of(List<Constant> found, List<String> words) {
        Page page = new Page();
        String of = words.isEmpty() ? "" : " with " + String.join(" and ", words);
        page.line(found.isEmpty() ? "No constant" + of + "." : Numbers.count(found.size(), "constant", "constants") + of + ".");
        for (Constant constant : found) {
            page.blank();
            page.hanging("", constant.id() + "  " + constant.quantity() + " = " + value(constant.value(), constant.unit()));
            page.paragraph(4, "source: " + constant.source());
            page.paragraph(4, "status: " + status(constant) + ", " + constant.date());
            constant.original().ifPresent(shipped -> page.paragraph(4, "shipped: " + value(shipped.value(), shipped.unit())
                    + ", " + shipped.source() + " (" + shipped.status().words() + ")"));
            if (!constant.note().isEmpty()) {
                page.paragraph(4, "note: " + constant.note());
            }
        }
        return page.text();
    }

    private static String status(Constant constant) {
        String words = constant.status().words();
        boolean barred = !Constants.usable(constant) && constant.status() != Status.MEMORY_LOW;
        return barred ? words + ", not used" : words;
    }

    /** A constant with its unit; a ratio has none. */
    static String value(double value, String unit) {
        BigDecimal digits = BigDecimal.valueOf(value).round(new java.math.MathContext(10, RoundingMode.HALF_EVEN))
                .stripTrailingZeros();
        String number = digits.scale() < 0 ? digits.setScale(0).toPlainString() : digits.toPlainString();
        return (unit.isEmpty() || unit.equals("-") || unit.equals("ratio") ? number : number + " " + unit);
    }
}
