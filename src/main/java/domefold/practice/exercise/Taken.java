package domefold.practice.exercise;

import domefold.outcome.Figures;
import domefold.patient.Case;
import domefold.patient.Measure;
import domefold.patient.Ptosis;
import domefold.patient.ReadBy;
import domefold.patient.Reading;
import domefold.patient.Side;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * A reading as it is shown: one value of the whole patient, or one on each side.
 *
 * @param name what was read, for example {@code base width}
 * @param unit its unit, possibly none
 * @param left the left's, or the patient's own
 * @param right the right's; empty where there is one for the whole patient
 */
public record Taken(String name, String unit, Value left, Optional<Value> right) {
    /** Ptosis is seen, not measured; this is what it is asked for by. */
    public static final String PTOSIS = "ptosis";

    /**
     * One value.
     *
     * @param figure as it is printed, without its unit
     * @param scanned true where a surface scan read it
     */
    public record Value(String figure, boolean scanned) {
        /** With a star where a scan read it. */
        public String starred() {
            return scanned ? figure + "*" : figure;
        }
    }

    /** Every reading of that case, in the order of the pages. */
    public static List<Taken> all(Case of) {
        return of(of, null);
    }

    /** The readings of that case among those ids, in the order of the pages; {@code null} for all. */
    static List<Taken> of(Case of, Set<String> ids) {
        List<Taken> taken = new ArrayList<>();
        for (Page page : Page.values()) {
            for (Measure measure : page.measures()) {
                if ((ids == null || ids.contains(measure.field())) && there(of, measure)) {
                    taken.add(one(of, measure));
                }
            }
            if (page == Page.FOLD && (ids == null || ids.contains(PTOSIS))) {
                taken.add(new Taken(PTOSIS, "", ptosis(of, Side.LEFT), Optional.of(ptosis(of, Side.RIGHT))));
            }
        }
        return taken;
    }

    /** True where the case holds that reading. */
    static boolean there(Case of, Measure measure) {
        return of.readings(measure, Side.LEFT).has(measure) || of.readings(measure, Side.RIGHT).has(measure);
    }

    private static Taken one(Case of, Measure measure) {
        return new Taken(measure.words(), measure.unit(), value(measure, of.readings(measure, Side.LEFT).get(measure)),
                measure.of() == Measure.Of.SIDE ? Optional.of(value(measure, of.right().readings().get(measure)))
                        : Optional.empty());
    }

    /** One reading in a sentence. */
    public String sentence() {
        String of = unit.isEmpty() ? "" : " " + unit;
        return name + ": " + (right.isPresent() ? "LEFT " + words(left, of) + ", RIGHT " + words(right.get(), of)
                : words(left, of));
    }

    private static String words(Value value, String unit) {
        return value.figure() + unit + (value.scanned() ? " by surface scan" : "");
    }

    private static Value value(Measure measure, Optional<Reading> reading) {
        if (reading.isEmpty()) {
            return new Value("–", false);
        }
        int decimals = measure.unit().equals("cm") && measure.of() != Measure.Of.PATIENT ? 1 : 0;
        return new Value(Figures.of(reading.get().value(), decimals, 2), reading.get().readBy() == ReadBy.SURFACE_SCAN);
    }

    private static Value ptosis(Case of, Side side) {
        return new Value(of.side(side).ptosis().map(Ptosis::key).orElse("–"), false);
    }
}
