package domefold.practice;

import domefold.engine.Exact;
import domefold.engine.SecondReading;
import domefold.engine.WidthCeiling;
import domefold.evidence.Constants;
import domefold.evidence.Evidence;
import domefold.outcome.Band;
import domefold.outcome.Figures;
import domefold.outcome.Working;
import domefold.patient.Measure;
import domefold.patient.Pocket;
import domefold.patient.Reading;
import domefold.patient.Readings;
import domefold.plan.SideFit;
import domefold.plan.SideLimits;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;

/** One side's ceiling, volume, pocket and fold against what the side allows. */
final class SideMarks {
    private static final String COMPARISON_ONLY = "dimension";
    private final Evidence evidence;
    private final Constants constants;
    private final String widthViews;
    private final String volumeViews;
    private final String pocketViews;
    private final String foldViews;

    SideMarks(Evidence evidence) {
        this.evidence = evidence;
        constants = evidence.constants();
        widthViews = Held.by(this.evidence, "WID-01", "WID-03", "WID-04");
        volumeViews = Held.by(this.evidence, "CTX-01", "CTX-04", "CTX-06", "LIM-11");
        pocketViews = Held.by(this.evidence, "POC-05", "POC-06");
        foldViews = Held.by(this.evidence, "LOW-01", "LOW-05");
    }

    /** Inside: the ceiling within PRA-CEILING-NEAR. Defensible: within its error SD, or another school's width. */
    Judged ceiling(SidePlan said, SideLimits limits, Readings readings) {
        if (limits.widthCeilingCm().isEmpty()) {
            return Judged.of(Standing.UNMARKED, cm(said.ceilingCm()), "no width ceiling without a base width");
        }
        double ceiling = limits.widthCeilingCm().getAsDouble();
        if (said.ceilingCm().isEmpty()) {
            return Judged.notStated("the width ceiling is " + Figures.cm(ceiling) + " cm");
        }
        double stated = said.ceilingCm().getAsDouble();
        double apart = Math.abs(stated - ceiling);
        double sd = limits.widthCeilingSdCm().orElse(0);
        double base = readings.value(Measure.BASE_WIDTH).orElse(Double.NaN);
        Band thumb = WidthCeiling.ruleOfThumbCm(base, constants);
        Standing standing = Exact.above(stated, base) ? Standing.OUTSIDE
                : !Exact.above(apart, constants.value("PRA-CEILING-NEAR")) ? Standing.INSIDE
                : !Exact.above(apart, sd) || holds(thumb, stated) ? Standing.DEFENSIBLE : Standing.OUTSIDE;
        String decided = Exact.above(stated, base)
                ? "wider than the base width " + Figures.cm(base) + " cm"
                : "the width ceiling is " + Figures.cm(ceiling) + " cm, " + Figures.cm(apart) + " cm from hers; the rule"
                        + " of thumb gives " + Figures.cm(thumb.low()) + " to " + Figures.cm(thumb.high()) + " cm";
        return Judged.of(standing, Figures.cm(stated) + " cm", decided)
                .reading("one error SD of the readings moves the ceiling by " + Figures.cm(sd) + " cm either way")
                .held(widthViews).by(working(limits, "width ceiling"));
    }

    /** Inside: in the band. Defensible: outside it by up to VERDICT-VOLUME. */
    Judged volume(SidePlan said, SideLimits limits) {
        if (limits.volumeBandMl().isEmpty()) {
            return Judged.of(Standing.UNMARKED, ml(said.volumeMl()), "the engine gives no volume band here");
        }
        Band band = limits.volumeBandMl().get();
        String words = "the band is " + Figures.ml(band.low()) + " to " + Figures.ml(band.high())
                + " mL";
        if (said.volumeMl().isEmpty()) {
            return Judged.notStated(words);
        }
        double stated = said.volumeMl().getAsDouble();
        double allowed = constants.value("VERDICT-VOLUME");
        double beyond = Math.max(band.low() - stated, stated - band.high());
        Standing standing = !Exact.above(beyond, 0) ? Standing.INSIDE
                : !Exact.above(beyond, allowed) ? Standing.DEFENSIBLE : Standing.OUTSIDE;
        String decided = words + (standing == Standing.INSIDE ? ""
                : "; hers lies " + Figures.ml(beyond) + " mL beyond it, where up to "
                        + Figures.ml(allowed) + " mL is tight");
        return Judged.of(standing, Figures.ml(stated) + " mL", decided)
                .reading("the error of the readings alone spreads the starting volume over this band (5th to 95th"
                        + " percentile)")
                .held(volumeViews).by(working(limits, "volume"));
    }

    /** Inside: enough cover. Defensible: the pinch could lie across its threshold, or the muscle at a thin fold is cut. */
    Judged pocket(SidePlan said, SideLimits limits, Readings readings) {
        Optional<Reading> upper = readings.get(Measure.UPPER_PINCH);
        if (upper.isEmpty()) {
            return Judged.of(Standing.UNMARKED, key(said.pocket()), "no advice without an upper pole pinch");
        }
        double pinch = upper.get().value();
        double limit = constants.value("POC-01");
        boolean thin = Exact.below(pinch, limit);
        String words = "the upper pole pinch is " + Figures.cm(pinch) + " cm, " + (thin ? "" : "not ") + "below "
                + Figures.cm(limit) + " cm";
        if (said.pocket().isEmpty()) {
            return Judged.notStated(words);
        }
        double across = SecondReading.chanceAcross(Measure.UPPER_PINCH, upper.get(), constants);
        OptionalDouble fold = readings.value(Measure.FOLD_PINCH);
        boolean cutAtThinFold = said.pocket().get() == Pocket.DUAL_PLANE && fold.isPresent()
                && Exact.below(fold.getAsDouble(), constants.value("POC-03"));
        boolean bare = thin && !said.pocket().get().underMuscle();
        boolean couldFlip = Exact.above(100 * across, constants.value("REREAD-CHANCE"));
        Standing standing = bare ? couldFlip ? Standing.DEFENSIBLE : Standing.OUTSIDE
                : cutAtThinFold ? Standing.DEFENSIBLE : Standing.INSIDE;
        String decided = words + (cutAtThinFold ? "; the fold pinch is " + Figures.cm(fold.getAsDouble())
                + " cm, below " + Figures.cm(constants.value("POC-03")) + " cm, and a dual plane divides the muscle there"
                : "");
        return Judged.of(standing, key(said.pocket()), decided)
                .reading("the chance that the true pinch lies across " + Figures.cm(limit) + " cm is "
                        + Figures.of(100 * across, 0, 0) + " in 100")
                .held(pocketViews).by(working(limits, "cover"));
    }

    /**
     * Inside: within LOW-02 of the lowering for her device. Defensible: within LOW-02 of another method's, or the fold
     * left alone where the lowering is not above LOW-03 (the other school).
     */
    Judged fold(SidePlan said, SideLimits limits, Optional<SideFit> fit, Readings readings) {
        OptionalDouble lowering = fit.map(SideFit::foldLoweringCm).filter(OptionalDouble::isPresent)
                .orElse(limits.foldLoweringCm());
        OptionalDouble stretched = readings.value(Measure.NIPPLE_TO_FOLD_STRETCHED);
        if (lowering.isEmpty() || stretched.isEmpty()) {
            return Judged.of(Standing.UNMARKED, cm(said.foldLoweringCm()), "the engine gives no fold target here");
        }
        double due = lowering.getAsDouble();
        String words = "the fold is to come down by " + Figures.cm(due) + " cm, from "
                + Figures.cm(stretched.getAsDouble()) + " cm on stretch";
        if (said.foldLoweringCm().isEmpty()) {
            return Judged.notStated(words);
        }
        double stated = said.foldLoweringCm().getAsDouble();
        double near = constants.value("LOW-02");
        boolean otherMethod = limits.foldByMethod().stream()
                .filter(method -> !method.name().toLowerCase(Locale.ROOT).contains(COMPARISON_ONLY))
                .anyMatch(method -> !Exact.above(
                        Math.abs(stated - Math.max(0, method.targetCm() - stretched.getAsDouble())), near));
        boolean leftAlone = stated == 0 && !Exact.above(due, constants.value("LOW-03"));
        Standing standing = !Exact.above(Math.abs(stated - due), near) ? Standing.INSIDE
                : otherMethod || leftAlone ? Standing.DEFENSIBLE : Standing.OUTSIDE;
        return Judged.of(standing, stated == 0 ? "fold kept" : "lowered by " + Figures.cm(stated) + " cm", words)
                .reading("a lowering within " + Figures.cm(near) + " cm is within the error of reading nipple to fold")
                .held(foldViews).by(working(limits, "fold"));
    }

    private static boolean holds(Band band, double value) {
        return !Exact.below(value, band.low()) && !Exact.above(value, band.high());
    }

    private static List<Working> working(SideLimits limits, String about) {
        return limits.working().stream().filter(line -> line.quantity().contains(about)).toList();
    }

    private static String cm(OptionalDouble value) {
        return value.isPresent() ? Figures.cm(value.getAsDouble()) + " cm" : "not stated";
    }

    private static String ml(OptionalDouble value) {
        return value.isPresent() ? Figures.ml(value.getAsDouble()) + " mL" : "not stated";
    }

    private static String key(Optional<Pocket> pocket) {
        return pocket.map(Pocket::key).orElse("not stated");
    }
}
