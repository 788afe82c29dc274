package domefold.sheet;

import domefold.outcome.Numbers;
import domefold.patient.Case;
import domefold.patient.HealthQuestion;
import domefold.patient.Measure;
import domefold.patient.Ptosis;
import domefold.patient.ReadBy;
import domefold.patient.Reading;
import domefold.patient.Side;
import domefold.patient.Wishes;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** The readings as taken: with their unit, at the precision they were typed in. */
public final class ReadingsGrid {
    private ReadingsGrid() {}

    /** Readings of a side, LEFT beside RIGHT; what was taken on neither side is left out. */
    public static Block.Grid ofSides(Case inputs) {
        List<List<String>> rows = new ArrayList<>();
        for (Measure measure : Measure.values()) {
            Optional<Reading> left = inputs.left().readings().get(measure);
            Optional<Reading> right = inputs.right().readings().get(measure);
            if (left.isPresent() || right.isPresent()) {
                rows.add(List.of(measure.words(), words(measure, left, inputs), words(measure, right, inputs)));
            }
        }
        if (inputs.left().ptosis().isPresent() || inputs.right().ptosis().isPresent()) {
            rows.add(List.of("ptosis", ptosis(inputs, Side.LEFT), ptosis(inputs, Side.RIGHT)));
        }
        return new Block.Grid(List.of("", Side.LEFT.name(), Side.RIGHT.name()), List.of(40, 35, 35), rows);
    }

    /** Readings of the whole patient and the chest, and the health questions. */
    public static Block.Facts ofPatient(Case inputs) {
        List<Block.Fact> facts = new ArrayList<>();
        for (Measure measure : Measure.values()) {
            if (measure.of() != Measure.Of.SIDE) {
                inputs.readings(measure, Side.LEFT).get(measure).ifPresent(
                        reading -> facts.add(new Block.Fact(measure.words(), words(measure, Optional.of(reading), inputs))));
            }
        }
        for (HealthQuestion question : HealthQuestion.values()) {
            facts.add(new Block.Fact(question.words(), answer(inputs.history(), question)));
        }
        return new Block.Facts(facts);
    }

    /** What she wishes, as far as it was asked. */
    public static Block.Facts wishes(Case inputs) {
        List<Block.Fact> facts = new ArrayList<>();
        inputs.wishes().upperPole().ifPresent(pole -> facts.add(new Block.Fact("upper pole", pole.key())));
        inputs.wishes().sizeWishMl().ifPresent(sizeMl -> facts.add(new Block.Fact("size", DeviceWords.exactMl(sizeMl))));
        inputs.wishes().weights().forEach((matter, weight) -> facts.add(
                new Block.Fact(matter.words(), weight + " of " + Wishes.HIGHEST_WEIGHT)));
        return new Block.Facts(facts.isEmpty() ? List.of(new Block.Fact("wishes", "not asked")) : facts);
    }

    private static String words(Measure measure, Optional<Reading> found, Case inputs) {
        if (found.isEmpty()) {
            return "not taken";
        }
        Reading reading = found.get();
        String takes = reading.takes() > 1 ? ", mean of " + reading.takes() : "";
        String by = reading.readBy() != inputs.readBy() || reading.readBy() == ReadBy.SURFACE_SCAN
                ? ", by " + reading.readBy().key().replace('-', ' ') : "";
        return number(reading) + " " + measure.unit() + takes + by;
    }

    /**
     * The number as typed where it was typed as a plain number equal to the value, so that 12.0 keeps its precision;
     * otherwise the value itself.
     */
    static String number(Reading reading) {
        String typed = reading.typed().strip().replace(',', '.');
        if (typed.matches("[0-9]{1,6}(\\.[0-9]{1,6})?") && Double.parseDouble(typed) == reading.value()) {
            return new BigDecimal(typed).toPlainString();
        }
        BigDecimal value = new BigDecimal(String.format(Locale.ROOT, "%.3f", reading.value())).stripTrailingZeros();
        return (value.scale() < 0 ? value.setScale(0) : value).toPlainString();
    }

    private static String ptosis(Case inputs, Side side) {
        return inputs.side(side).ptosis().map(Ptosis::key).orElse("not looked at");
    }

    private static String answer(Map<HealthQuestion, Boolean> history, HealthQuestion question) {
        Boolean yes = history.get(question);
        return yes == null ? "not asked" : yes ? "yes" : "no";
    }
}
