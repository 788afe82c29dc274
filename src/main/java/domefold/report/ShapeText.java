package domefold.report;

import domefold.outcome.Numbers;
import domefold.shell.ShapeAnswer;
import java.util.List;
import java.util.OptionalDouble;

/** The answer of the shell solver, to read. */
public final class ShapeText {
    private static final int[] WIDTHS = {34, -12, 3};

    private ShapeText() {}

    public static String of(ShapeAnswer answer) {
        Page page = new Page();
        page.line("Shell lying on a flat table: " + words(answer.state()));
        page.blank();
        row(page, "volume", OptionalDouble.of(answer.volumeMl()), 3, "mL");
        row(page, "just full at", OptionalDouble.of(answer.fullVolumeMl()), 3, "mL");
        row(page, "most it can hold without stretch", OptionalDouble.of(answer.capacityMl()), 3, "mL");
        row(page, "volume over just full", OptionalDouble.of(answer.fillRatio()), 5, "");
        row(page, "width", answer.widthCm(), 4, "cm");
        row(page, "height of the liquid", answer.heightCm(), 4, "cm");
        row(page, "width resting on the table", answer.contactWidthCm(), 4, "cm");
        row(page, "head at the apex", answer.apexHeadCm(), 4, "cm");
        row(page, "head at the table", answer.baseHeadCm(), 4, "cm");
        row(page, "share of the area slack on top", answer.slackFraction(), 5, "");
        row(page, "share of the area in the rim band", answer.bandFraction(), 5, "");
        row(page, "excess area in folds", answer.crimp(), 5, "");
        page.blank().paragraph(0, "A thin shell filled with liquid, no bending, no friction: a model of the device, not of the"
                + " breast (assumed, not measured).");
        return page.paragraph(0, Statements.SUPPORTS).text();
    }

    private static void row(Page page, String name, OptionalDouble value, int decimals, String unit) {
        page.row(WIDTHS, List.of(name, value.isPresent() ? Numbers.plain(value.getAsDouble(), decimals) : Numbers.NONE,
                value.isPresent() ? unit : ""));
    }

    private static String words(String state) {
        return switch (state) {
            case "slack" -> "slack on top";
            case "full" -> "just full";
            case "pressurised" -> "under pressure";
            default -> "beyond what it can hold without stretch";
        };
    }
}
