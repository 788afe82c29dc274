package domefold.followup.shown;

import domefold.evidence.Evidence;
import domefold.evidence.Status;
import domefold.evidence.Table;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Questions on which published figures disagree, each with the figures that do. */
public final class Disagreements {
    private Disagreements() {}

    /**
     * One question.
     *
     * @param caution what the figures do not allow to be said
     * @param positions the published figures, at least two
     */
    public record Disagreement(String id, String question, String caution, String source, Status status,
            List<Position> positions) {
        public Disagreement {
            positions = List.copyOf(positions);
        }
    }

    /** One published figure or statement. */
    public record Position(String text, String source, Status status) {}

    public static List<Disagreement> of(Evidence evidence) {
        return evidence.table("disagreements").rows().stream().map(row -> new Disagreement(row.text("id"),
                row.text("question"), row.text("caution"), row.text("source"), Status.of(row.text("status")),
                positions(row.text("id"), evidence))).toList();
    }

    private static List<Position> positions(String id, Evidence evidence) {
        switch (id) {
            case "saline-gel-contracture":
                return Stream.concat(effects(evidence, "fill"), outcomes(evidence).filter(Disagreements::longRunContracture)
                        .map(Disagreements::position)).toList();
            case "texture-contracture":
                return effects(evidence, "texture").toList();
            case "ten-year-rupture":
                return outcomes(evidence).filter(Disagreements::lateRupture).map(Disagreements::position).toList();
            default:
                throw new IllegalArgumentException("no rows are known for the disagreement " + id);
        }
    }

    private static Stream<OutcomeRow> outcomes(Evidence evidence) {
        return OutcomeRow.all(evidence).stream().filter(row -> row.status() != Status.MEMORY_LOW
                && !row.note().toLowerCase(Locale.ROOT).contains("do not use")
                && !row.indication().contains("REVISION"));
    }

    private static boolean longRunContracture(OutcomeRow row) {
        return row.outcome().equals("contracture_III_IV") && row.unit().equals("patient")
                && row.year().orElse(0) == 10 && Comparability.whyOtherWomen(row).isEmpty();
    }

    private static boolean lateRupture(OutcomeRow row) {
        return row.outcome().equals("rupture") && row.year().orElse(0) >= 10;
    }

    private static Position position(OutcomeRow row) {
        String amount = row.percent().isPresent() ? number(row.percent().getAsDouble())
                : row.intervalPercent().map(band -> number(band.low()) + " to " + number(band.high())).orElse("no figure");
        String unit = row.unit().equals("patient") ? "women" : row.unit() + "s";
        String note = row.note().isEmpty() ? "" : "; " + row.note();
        return new Position(OutcomeWords.of(row.outcome()) + " in " + amount + " of 100 " + unit + " by year "
                + number(row.year().orElseThrow()) + ", " + row.study() + ", " + row.fillWords() + ", " + row.indication()
                + ", " + row.detection() + note, row.source(), row.status());
    }

    private static Stream<Position> effects(Evidence evidence, String area) {
        return evidence.table("effects").rows().stream().filter(row -> row.text("area").equals(area))
                .map(Disagreements::position);
    }

    private static Position position(Table.Row row) {
        String interval = row.text("lo").isEmpty() ? "" : " (" + row.text("lo") + " to " + row.text("hi") + ")";
        boolean inWords = List.of("direction", "conclusion").contains(row.text("measure"));
        String measure = inWords ? "" : (row.text("measure") + " " + row.text("estimate")).strip() + interval;
        String said = Stream.of(measure, row.text("note")).filter(part -> !part.isEmpty()).collect(Collectors.joining("; "));
        return new Position(row.text("comparison") + ", " + row.text("outcome") + ": " + said, row.text("source"),
                Status.of(row.text("status")));
    }

    private static String number(double value) {
        return value == Math.rint(value) ? String.format(Locale.ROOT, "%.0f", value) : String.format(Locale.ROOT, "%s", value);
    }
}
