package domefold.line;

import domefold.interview.Guide;
import domefold.interview.Interview;
import domefold.outcome.Figures;
import domefold.outcome.Working;
import domefold.patient.Side;
import domefold.report.Page;
import java.util.List;
import java.util.Locale;

/** The working behind the limits, with sources. */
final class WhyInWords {
    private WhyInWords() {}

    /** All of it, or only the quantities that the words name. */
    static String of(Interview interview, String words) {
        Page page = new Page();
        if (interview.plan().isEmpty()) {
            return page.paragraph(0, "Nothing is computed yet: the age and both base widths come first.").text();
        }
        String wanted = words.strip().toLowerCase(Locale.ROOT);
        int said = 0;
        for (Side side : Side.values()) {
            List<Working> all = interview.plan().get().side(side).working().stream()
                    .filter(w -> w.quantity().toLowerCase(Locale.ROOT).contains(wanted)).toList();
            if (!all.isEmpty()) {
                page.line(side + ": the working");
            }
            for (Working working : all) {
                String result = Double.isFinite(working.value())
                        ? " = " + Figures.of(working.value(), 0, 2) + (working.unit().isBlank() ? "" : " " + working.unit()) : "";
                page.hanging("  ", working.quantity() + ": " + working.expression() + result + ".");
                page.hanging("    ", Guide.sourced(working.source(), working.status()));
                said++;
            }
        }
        if (said == 0) {
            page.paragraph(0, "No line of the working names '" + words.strip() + "'; `why` alone prints all of it.");
        }
        return page.text();
    }
}
