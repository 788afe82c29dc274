package domefold.line;

import domefold.device.Device;
import domefold.device.Fill;
import domefold.interview.Interview;
import domefold.outcome.Figures;
import domefold.outcome.Numbers;
import domefold.plan.DevicePair;
import domefold.plan.Plan;
import domefold.report.Page;
import java.util.List;

/** Pairs of devices for two sides that differ: a table, what each leaves, and how one is settled. */
final class PairsInWords {
    private static final int SAID = 3;
    private static final int[] WIDTHS = {-3, 28, 21, -7, -8, 7};

    private PairsInWords() {}

    static String of(Interview interview) {
        Page page = new Page();
        List<DevicePair> pairs = interview.plan().map(Plan::pairs).orElse(List.of());
        if (pairs.isEmpty()) {
            return page.paragraph(0, interview.plan().isEmpty() ? "Nothing is computed yet: the age and both base widths come first."
                    : "No pair: no device of one fill and surface is inside the limits of both sides, or a volume band is missing.").text();
        }
        page.line("Pairs of devices for two sides");
        page.row(WIDTHS, List.of("no.", "LEFT", "RIGHT", "remains", "forward", "verdict"));
        for (DevicePair pair : pairs) {
            page.row(WIDTHS, List.of(pairs.indexOf(pair) + 1 + ".", words(interview, pair.leftId(), pair.leftFillMl(), true),
                    words(interview, pair.rightId(), pair.rightFillMl(), false), pair.volumeGapMl().isPresent()
                            ? Numbers.ml(Math.abs(pair.volumeGapMl().getAsDouble())) : "unknown",
                    Numbers.marginCm(pair.projectionGapCm()), pair.verdict().key()));
        }
        page.paragraph(0, "Remains: what the sides still differ by. Forward: the projection LEFT less RIGHT.");
        for (DevicePair pair : pairs.subList(0, Math.min(SAID, pairs.size()))) {
            page.blank().hanging(pairs.indexOf(pair) + 1 + ". ", "LEFT " + pair.leftId() + ", RIGHT " + pair.rightId() + ": " + pair.text() + ".");
        }
        page.blank().paragraph(0, settling(interview, pairs.get(0)));
        return page.text();
    }

    private static String words(Interview interview, String id, double fillMl, boolean withFill) {
        return interview.guide().catalogue().find(id).map(device -> (withFill ? device.fill().key() + " " : "") + device.profile().key()
                + " " + Figures.ml(fillMl) + " mL").orElse(id);
    }

    private static String settling(Interview interview, DevicePair first) {
        boolean saline = interview.guide().catalogue().find(first.leftId()).map(Device::fill).filter(Fill.SALINE::equals).isPresent();
        return "To settle one: `go " + interview.question("device").label().toLowerCase(java.util.Locale.ROOT) + "`, then both codes, for the first `"
                + first.leftId() + " " + first.rightId() + "`" + (saline ? "; then the fills, `" + Figures.ml(first.leftFillMl()) + " "
                + Figures.ml(first.rightFillMl()) + "`." : ".");
    }
}
