package domefold.plan;

import domefold.basics.Lists;
import domefold.engine.Exact;
import domefold.engine.StartingVolume;
import domefold.engine.VolumeScaling;
import domefold.evidence.Constants;
import domefold.outcome.Band;
import domefold.outcome.Figures;
import domefold.outcome.Note;
import domefold.outcome.Numbers;
import domefold.outcome.Working;
import domefold.patient.Measure;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Starting volume, adjustments and band of one side.
 *
 * <p>Outside the table there is no starting volume; the band then rests on the cube-law estimate and the note says so, so
 * that devices can still be held against something. An adjusting reading that was not taken widens the band by the least
 * and the greatest effect it could have had.
 *
 * @param startingMl table value plus adjustments; empty outside the table
 * @param bandMl percentiles over the reading error
 */
record VolumeLimits(
        OptionalDouble startingMl,
        Optional<Band> bandMl,
        List<Note> notes,
        List<String> incomplete,
        List<Working> working) {
    static final VolumeLimits NONE =
            new VolumeLimits(OptionalDouble.empty(), Optional.empty(), List.of(), List.of(), List.of());

    static VolumeLimits of(SideNumbers side, DrawnSide drawn, Constants constants) {
        List<Note> notes = new ArrayList<>();
        List<Working> working = new ArrayList<>();
        double base = side.value[SideNumbers.BASE];
        double ml = side.volumeMl();
        Band band = band(side, drawn, constants);
        table(side.start, base, ml, band, notes, working, constants);
        List<Measure> missing = side.missingAdjustments();
        for (Measure measure : side.takenAdjustments()) {
            working.add(side.adjustments.working(measure, side.value[SideNumbers.VARYING.indexOf(measure)]));
        }
        working.add(Working.by(constants.get("ADJ-02"), side.start.inTable(base)
                ? missing.isEmpty() ? "starting volume" : "starting volume, incomplete"
                : "volume estimate outside the table", sum(side), ml, "mL"));
        if (!missing.isEmpty()) {
            notes.add(incomplete(side, missing, ml));
        }
        bandWorking(side, missing, band, working, constants);
        return new VolumeLimits(side.start.inTable(base) ? OptionalDouble.of(Exact.clean(ml)) : OptionalDouble.empty(),
                Optional.of(band), notes, Lists.map(missing, Measure::field), working);
    }

    private static Band band(SideNumbers side, DrawnSide drawn, Constants constants) {
        Band percentiles = drawn.volumePercentiles(constants.value("VOL-BAND-LOW"), constants.value("VOL-BAND-HIGH"));
        double low = percentiles.low();
        double high = percentiles.high();
        for (Measure measure : side.missingAdjustments()) {
            low += side.adjustments.reach(measure).low();
            high += side.adjustments.reach(measure).high();
        }
        return new Band(low, high);
    }

    private static void table(StartingVolume start, double base, double ml, Band band, List<Note> notes,
            List<Working> working, Constants constants) {
        working.add(start.working(base));
        if (!start.inTable(base)) {
            notes.add(new Note("volume-outside-table", "base width " + Figures.cm(base) + " cm is outside the volume table, "
                    + Figures.cm(start.rows().lowest()) + " to " + Figures.cm(start.rows().highest())
                    + " cm: there is no starting volume; an estimate by the cube of the width with the adjustments is "
                    + Figures.ml(ml) + " mL, and the band " + Figures.of(band.low(), 0, 0) + " to "
                    + Figures.of(band.high(), 0, 0) + " mL rests on it"));
            return;
        }
        if (!start.rows().isRow(base)) {
            int row = start.rows().rowBelow(base);
            notes.add(new Note("volume-between-rows", "base width " + Figures.cm(base) + " cm lies between the table rows "
                    + Figures.cm(start.rows().argument(row)) + " and " + Figures.cm(start.rows().argument(row + 1))
                    + " cm; the straight line between them is used, which the published method does not define"));
        }
        working.add(VolumeScaling.cubeWorking(base, constants));
    }

    private static Note incomplete(SideNumbers side, List<Measure> missing, double ml) {
        String words = Lists.joined(missing, ", ", measure -> {
            Band reach = side.adjustments.reach(measure);
            return measure.words() + " (could change it by " + signed(reach.low()) + " to " + signed(reach.high()) + " mL)";
        });
        return new Note("volume-incomplete", "incomplete: " + Figures.ml(ml) + " mL is without the effect of "
                + words + ", not taken; the volume band is widened by it");
    }

    private static String sum(SideNumbers side) {
        StringBuilder text = new StringBuilder(Figures.ml(side.start.ml(side.value[SideNumbers.BASE])));
        for (Measure measure : side.takenAdjustments()) {
            double ml = side.adjustments.ml(measure, side.value[SideNumbers.VARYING.indexOf(measure)]);
            text.append(ml < 0 ? " - " : " + ").append(Figures.ml(Math.abs(ml)));
        }
        for (Measure measure : side.missingAdjustments()) {
            text.append(" + ? (").append(measure.words()).append(" not taken)");
        }
        return text.toString();
    }

    private static void bandWorking(SideNumbers side, List<Measure> missing, Band band, List<Working> working,
            Constants constants) {
        String percentiles = Figures.of(constants.value("VOL-BAND-LOW"), 0, 1) + "th to "
                + Figures.of(constants.value("VOL-BAND-HIGH"), 0, 1) + "th percentile over the reading error"
                + (missing.isEmpty() ? "" : ", widened by what the missing readings could do");
        working.add(Working.by(constants.get("VOL-BAND-LOW"), "volume band, low end", percentiles, band.low(), "mL"));
        working.add(Working.by(constants.get("VOL-BAND-HIGH"), "volume band, high end", percentiles, band.high(), "mL"));
        double base = side.value[SideNumbers.BASE];
        double error = constants.value("VOL-BAND");
        Band width = side.start.overWidthErrorMl(base);
        working.add(Working.by(constants.get("VOL-BAND"), "table over the width error, for comparison", "base width "
                + Figures.cm(base - error) + " to " + Figures.cm(base + error) + ": " + Figures.ml(width.low()) + " to "
                + Figures.ml(width.high()) + " mL", width.high() - width.low(), "mL"));
    }

    private static String signed(double ml) {
        return Numbers.signed(ml, 0);
    }
}
