package domefold.engine;

import domefold.basics.Lists;
import domefold.evidence.Evidence;
import domefold.evidence.Status;
import domefold.evidence.Table;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Incision lengths from the published rows.
 *
 * <pre>
 *   gel by hand   cadaver rows, on the line between them; above, the usual lengths of practice
 *   gel, funnel   the mean of a review, INC-BAND-SDS standard deviations either way
 *   saline        the usual lengths of practice for a device rolled empty
 * </pre>
 *
 * The cadaver rows were read at the fold; for another route they are used as the opening the device needs, and the basis
 * says so.
 */
public final class IncisionRows {
    private final List<Table.Row> rows;
    private final double bandSds;

    private IncisionRows(List<Table.Row> rows, double bandSds) {
        this.rows = rows;
        this.bandSds = bandSds;
    }

    /**
     * A length.
     *
     * @param typicalCm empty where only a range is known
     * @param basis the rows it rests on, with their status
     */
    public record Length(double lowCm, OptionalDouble typicalCm, double highCm, String basis) {
        /** What an opening must at least hold: the typical length, or the low end where there is none. */
        public double neededCm() {
            return typicalCm.orElse(lowCm);
        }
    }

    public static IncisionRows of(Evidence evidence) {
        List<Table.Row> lengths = new ArrayList<>();
        for (Table.Row row : evidence.table("incision").rows()) {
            if (row.text("row_type").equals("length")) {
                lengths.add(row);
            }
        }
        return new IncisionRows(lengths, evidence.constants().value("INC-BAND-SDS"));
    }

    /** Round gel without a funnel: the cadaver line; empty outside the cadaver rows. cm. */
    public OptionalDouble gelByHandCm(double volumeMl) {
        List<Table.Row> cadaver = cadaver();
        for (int i = 0; i < cadaver.size(); i++) {
            double high = cadaver.get(i).number("volume_cc").orElseThrow();
            if (i == 0 ? volumeMl == high : volumeMl <= high && volumeMl > volume(cadaver.get(i - 1))) {
                double highCm = cadaver.get(i).number("incision_cm").orElseThrow();
                if (volumeMl == high) {
                    return OptionalDouble.of(highCm);
                }
                double lowCm = cadaver.get(i - 1).number("incision_cm").orElseThrow();
                double low = volume(cadaver.get(i - 1));
                return OptionalDouble.of(lowCm + (volumeMl - low) / (high - low) * (highCm - lowCm));
            }
        }
        return OptionalDouble.empty();
    }

    /** Round gel by hand as a band: the cadaver line up to the usual length of practice. */
    public Optional<Length> gelByHand(double volumeMl) {
        OptionalDouble cadaver = gelByHandCm(volumeMl);
        Table.Row practice = practice("gel", "none", volumeMl >= largeMl() ? ">=" + Gate.figure(largeMl()) : "");
        double practiceLow = practice.number("incision_cm").orElseThrow();
        double practiceHigh = practice.number("incision_cm_high").orElseThrow();
        if (cadaver.isPresent()) {
            double line = cadaver.getAsDouble();
            return Optional.of(new Length(Math.min(line, practiceLow), cadaver, Math.max(line, practiceHigh),
                    "shortest that let it pass in 3 cadaver breasts (" + cadaver().get(0).text("source")
                            + "; " + status(cadaver().get(0)) + "); the long end is " + basis(practice)));
        }
        return volumeMl < volume(cadaver().get(0)) ? Optional.empty()
                : Optional.of(new Length(practiceLow, OptionalDouble.empty(), practiceHigh, "above the cadaver rows: "
                        + basis(practice) + ", or more"));
    }

    /** Gel through a funnel. */
    public Length gelWithFunnel() {
        for (Table.Row row : rows) {
            if (row.text("device_help").equals("funnel") && row.number("sd").isPresent()) {
                double mean = row.number("incision_cm").orElseThrow();
                double sd = row.number("sd").orElseThrow();
                return new Length(mean - bandSds * sd, OptionalDouble.of(mean), mean + bandSds * sd, "mean "
                        + Gate.figure(mean) + " cm, SD " + Gate.figure(sd) + " (" + row.text("source") + "; "
                        + status(row) + "), volume not stated");
            }
        }
        throw new IllegalArgumentException("the incision table has no funnel row with an SD");
    }

    /** Saline, rolled empty. */
    public Length saline() {
        return usual(practice("saline, rolled empty", "none", ""));
    }

    /** Shaped gel. */
    public Length shapedGel() {
        return usual(practice("gel shaped, form-stable", "none", ""));
    }

    /** Through the armpit, saline or gel with a funnel. */
    public Length throughArmpit() {
        for (Table.Row row : rows) {
            if (row.text("route").equals("transaxillary")) {
                return usual(row);
            }
        }
        throw new IllegalArgumentException("the incision table has no transaxillary row");
    }

    private Length usual(Table.Row row) {
        return new Length(row.number("incision_cm").orElseThrow(), OptionalDouble.empty(),
                row.number("incision_cm_high").orElseThrow(), basis(row));
    }

    private String basis(Table.Row row) {
        return "orientation only (" + row.text("source") + (Status.of(row.text("status")) == Status.PRACTICE ? ""
                : "; " + status(row)) + ")";
    }

    private static String status(Table.Row row) {
        return Status.of(row.text("status")).words();
    }

    private List<Table.Row> cadaver() {
        return Lists.where(rows, row -> row.text("fill").equals("gel round smooth"));
    }

    /** Volume of the practice row that starts at a stated size. */
    private double largeMl() {
        for (Table.Row row : rows) {
            if (row.text("fill").equals("gel") && row.text("volume_cc").startsWith(">=")) {
                return Double.parseDouble(row.text("volume_cc").substring(2));
            }
        }
        return Double.POSITIVE_INFINITY;
    }

    private static double volume(Table.Row row) {
        return row.number("volume_cc").orElseThrow();
    }

    private Table.Row practice(String fill, String help, String volume) {
        for (Table.Row row : rows) {
            if (row.text("fill").equals(fill) && row.text("device_help").equals(help)
                    && row.text("volume_cc").equals(volume)) {
                return row;
            }
        }
        throw new IllegalArgumentException("the incision table has no row for " + fill);
    }
}
