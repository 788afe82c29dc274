package domefold.report;

import domefold.basics.Lists;
import domefold.outcome.Figures;
import domefold.outcome.Numbers;
import domefold.outcome.Working;
import domefold.patient.Measure;
import domefold.patient.Pocket;
import domefold.patient.Side;
import domefold.plan.Plan;
import domefold.plan.SideLimits;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;

/** What each side allows: LEFT and RIGHT in columns, then the remarks and the working of each. */
final class LimitsText {
    private static final int[] WIDTHS = {30, 24, 24};

    private LimitsText() {}

    static void write(Page page, Plan plan) {
        page.heading("What the tissues allow");
        page.row(WIDTHS, List.of("", "LEFT", "RIGHT"));
        row(page, plan, "width ceiling, with error SD", LimitsText::ceiling);
        row(page, plan, "starting volume", side -> volume(side.startingVolumeMl()));
        row(page, plan, "volume band, 5th to 95th", side -> side.volumeBandMl().map(Numbers::ml).orElse(Numbers.NONE));
        row(page, plan, "nipple to new fold, stretched", side -> length(side.foldTargetCm()));
        row(page, plan, "fold lowering", side -> length(side.foldLoweringCm()));
        row(page, plan, "pocket", side -> side.pocket().map(Pocket::key).orElse(Numbers.NONE));
        for (Side side : Side.values()) {
            remarks(page, plan.side(side));
        }
    }

    private static void row(Page page, Plan plan, String name, Function<SideLimits, String> cell) {
        page.row(WIDTHS, List.of(name, cell.apply(plan.left()), cell.apply(plan.right())));
    }

    private static String ceiling(SideLimits side) {
        if (side.widthCeilingCm().isEmpty()) {
            return Numbers.NONE;
        }
        return side.widthCeilingSdCm().isPresent()
                ? Numbers.cmWithin(side.widthCeilingCm().getAsDouble(), side.widthCeilingSdCm().getAsDouble())
                : Numbers.cm(side.widthCeilingCm().getAsDouble());
    }

    private static String volume(OptionalDouble volumeMl) {
        return volumeMl.isPresent() ? Numbers.ml(volumeMl.getAsDouble()) : Numbers.NONE;
    }

    private static String length(OptionalDouble lengthCm) {
        return lengthCm.isPresent() ? Numbers.cm(lengthCm.getAsDouble()) : Numbers.NONE;
    }

    private static void remarks(Page page, SideLimits side) {
        if (side.notes().isEmpty() && side.incomplete().isEmpty() && side.foldByMethod().isEmpty()) {
            return;
        }
        page.heading(side.side().name() + ": remarks");
        side.notes().forEach(note -> PlanText.note(page, note));
        if (!side.incomplete().isEmpty()) {
            page.hanging("  - ", "Not taken, though a result needed it: " + String.join(", ", Lists.map(side.incomplete(), Measure::wordsOf)) + ".");
        }
        for (SideLimits.FoldMethod method : side.foldByMethod()) {
            page.hanging("  - ", PlanText.sentence("Fold by " + method.name() + ": " + Numbers.cm(method.targetCm())
                    + (method.drives() ? " (the one used)" : " (for comparison)")
                    + (method.remark().isBlank() ? "" : ", " + method.remark())));
        }
    }

    /** How the results came about, line by line. */
    static void working(Page page, SideLimits side) {
        if (side.working().isEmpty()) {
            return;
        }
        page.heading(side.side().name() + ": how it was worked out");
        for (Working line : side.working()) {
            page.hanging("  ", line.quantity() + ": " + line.expression() + result(line).map(text -> " = " + text).orElse(""));
            page.paragraph(6, line.source() + " (" + line.status().words() + ")");
        }
    }

    private static Optional<String> result(Working line) {
        if (Double.isNaN(line.value())) {
            return Optional.empty();
        }
        String number = switch (line.unit()) {
            case "mL" -> Figures.of(line.value(), 0, 1);
            case "cm" -> Figures.of(line.value(), 1, 3);
            default -> Figures.of(line.value(), 0, 4);
        };
        return Optional.of(line.unit().isEmpty() || line.unit().equals("-") || line.unit().equals("ratio")
                ? number : number + " " + line.unit());
    }
}
