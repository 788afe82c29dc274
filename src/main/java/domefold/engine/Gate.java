package domefold.engine;

import domefold.evidence.Constants;
import domefold.evidence.Evidence;
import domefold.evidence.Status;
import domefold.evidence.Table;
import domefold.outcome.Band;
import domefold.outcome.Figures;
import domefold.outcome.Note;
import domefold.patient.Measure;
import java.util.Optional;

/**
 * The gate of one reading: outside {@code usual} it is asked again, outside {@code possible} it is not accepted. Both
 * ends belong to the band. Bounds come from the measurements table; where it has none, from the constants
 * {@code GATE-...}.
 *
 * @param measure whose gate
 * @param usual outside this: query
 * @param possible outside this: refuse
 * @param source who proposed it
 * @param status how it came to us
 */
public record Gate(Measure measure, Band usual, Band possible, String source, Status status) {

    /** The gate of that reading. Every {@link Measure} has one. */
    public static Gate of(Measure measure, Evidence evidence) {
        for (Table.Row row : evidence.table("measurements").rows()) {
            if (row.text("id").equals(measure.evidenceId()) && row.number("refuse_low").isPresent()) {
                return new Gate(measure,
                        new Band(row.number("query_low").orElseThrow(), row.number("query_high").orElseThrow()),
                        new Band(row.number("refuse_low").orElseThrow(), row.number("refuse_high").orElseThrow()),
                        row.text("gate_source"), Status.of(row.text("gate_status")));
            }
        }
        return fromConstants(measure, evidence.constants());
    }

    private static Gate fromConstants(Measure measure, Constants constants) {
        String stem = "GATE-" + measure.name().replace('_', '-');
        return new Gate(measure,
                new Band(constants.value(stem + "-QUERY-LOW"), constants.value(stem + "-QUERY-HIGH")),
                new Band(constants.value(stem + "-REFUSE-LOW"), constants.value(stem + "-REFUSE-HIGH")),
                constants.get(stem + "-REFUSE-LOW").source(), constants.get(stem + "-REFUSE-LOW").status());
    }

    /** One reading against its gate, in the measure's own unit. */
    public static ReadingCheck check(Measure measure, double value, Evidence evidence) {
        return of(measure, evidence).check(value);
    }

    /** One reading, in the measure's own unit. */
    public ReadingCheck check(double value) {
        if (!Double.isFinite(value)) {
            return new ReadingCheck(ReadingCheck.Answer.REFUSED, Optional.of(new Note("not-a-number",
                    measure.words() + " must be a number in " + measure.unit())));
        }
        if (Exact.below(value, possible.low()) || Exact.above(value, possible.high())) {
            return new ReadingCheck(ReadingCheck.Answer.REFUSED, Optional.of(new Note("out-of-range", sentence(value)
                    + " is outside " + range(possible) + ask(value, " and was not accepted"))));
        }
        if (Exact.below(value, usual.low()) || Exact.above(value, usual.high())) {
            return new ReadingCheck(ReadingCheck.Answer.QUERY, Optional.of(new Note("query-range", sentence(value)
                    + " is outside the usual " + range(usual) + ask(value, "; please look again"))));
        }
        return ReadingCheck.FINE;
    }

    private String sentence(double value) {
        return measure.words() + " " + figure(value) + " " + measure.unit();
    }

    private String range(Band band) {
        return figure(band.low()) + " to " + figure(band.high()) + " " + measure.unit();
    }

    private String ask(double value, String otherwise) {
        return Slip.likely(this, value).map(slip -> "; " + slip).orElse(otherwise);
    }

    static String figure(double value) {
        return Figures.of(value, 0, 3);
    }
}
