package domefold.plan;

import domefold.device.Device;
import domefold.engine.Exact;
import domefold.outcome.Band;
import domefold.outcome.Figures;
import domefold.outcome.Note;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The bits of a verdict in words, each with its numbers. */
final class Reasons {
    private final SideContext side;
    private final Device device;
    private final VerdictRule rule;
    private final double targetCm;
    private final double loweringCm;

    Reasons(SideContext side, Device device, VerdictRule rule, double targetCm, double loweringCm) {
        this.side = side;
        this.device = device;
        this.rule = rule;
        this.targetCm = targetCm;
        this.loweringCm = loweringCm;
    }

    List<Note> of(int bits) {
        List<Note> reasons = new ArrayList<>();
        width(bits, reasons);
        volume(bits, reasons);
        if ((bits & (VerdictRule.LOWERING_LARGE | VerdictRule.LOWERING)) != 0) {
            boolean large = (bits & VerdictRule.LOWERING_LARGE) != 0;
            reasons.add(new Note(large ? "fold-lowering-large" : "fold-lowering", "the fold would go down "
                    + Figures.cm(loweringCm) + " cm (target " + Figures.cm(targetCm) + " cm, stretched "
                    + Figures.cm(side.numbers().value[SideNumbers.STRETCHED]) + " cm), more than "
                    + Figures.cm(large ? rule.loweringOutsideCm : rule.loweringTightCm) + " cm"
                    + (large ? ": warn of a double contour" : "")));
        }
        return reasons;
    }

    private void width(int bits, List<Note> reasons) {
        double base = side.numbers().value[SideNumbers.BASE];
        double ceiling = side.numbers().ceilingCm();
        if ((bits & VerdictRule.WIDTH_OVER_BASE) != 0) {
            reasons.add(new Note("width-over-base", "width " + Figures.cm(device.widthCm())
                    + " cm is wider than the base width " + Figures.cm(base) + " cm"));
        }
        if ((bits & VerdictRule.BASE_WIDENED) != 0) {
            reasons.add(new Note("base-widened", "width " + Figures.cm(device.widthCm()) + " cm is above the limit "
                    + Figures.cm(rule.widthLimitCm(base, ceiling)) + " cm of the width school; " + sum()));
        }
        if ((bits & VerdictRule.WIDTH_NARROW) != 0) {
            reasons.add(new Note("width-narrow", "width " + Figures.cm(device.widthCm()) + " cm is more than "
                    + Figures.cm(rule.narrowCm) + " cm below the width ceiling " + Figures.cm(ceiling) + " cm"));
        }
    }

    private void volume(int bits, List<Note> reasons) {
        if ((bits & (VerdictRule.VOLUME_FAR_ABOVE | VerdictRule.VOLUME_ABOVE)) != 0) {
            double end = side.band().map(Band::high).orElseThrow();
            reasons.add(new Note("volume-above-band", Figures.ml(device.nominalMl()) + " mL is "
                    + Figures.of(device.nominalMl() - end, 0, 0) + " mL above the volume band" + band()));
        }
        if ((bits & (VerdictRule.VOLUME_FAR_BELOW | VerdictRule.VOLUME_BELOW)) != 0) {
            double end = side.band().map(Band::low).orElseThrow();
            reasons.add(new Note("volume-below-band", Figures.ml(device.nominalMl()) + " mL is "
                    + Figures.of(end - device.nominalMl(), 0, 0) + " mL below the volume band" + band()));
        }
    }

    private String band() {
        return " of " + Figures.of(side.band().map(Band::low).orElseThrow(), 0, 0) + " to "
                + Figures.of(side.band().map(Band::high).orElseThrow(), 0, 0) + " mL";
    }

    /** A width above the ceiling that still fits is never offered silently. */
    Optional<Note> widthOverCeiling(int bits) {
        boolean said = (bits & (VerdictRule.WIDTH_OVER_BASE | VerdictRule.BASE_WIDENED)) != 0;
        if (said || side.band().isEmpty() || !Exact.above(device.widthCm(), side.numbers().ceilingCm())) {
            return Optional.empty();
        }
        return Optional.of(new Note("width-over-ceiling", "width " + Figures.cm(device.widthCm())
                + " cm is above the width ceiling " + Figures.cm(side.numbers().ceilingCm()) + " cm; " + sum()));
    }

    /** How wide the breast becomes, and what covers the edges. */
    private String sum() {
        SideNumbers numbers = side.numbers();
        double base = numbers.value[SideNumbers.BASE];
        if (!numbers.hasPinches()) {
            return "the edge pinches were not taken, so what covers the edges is not known";
        }
        double medial = numbers.value[SideNumbers.MEDIAL];
        double lateral = numbers.value[SideNumbers.LATERAL];
        double after = device.widthCm() + numbers.pinchShare * (medial + lateral);
        return "with half of the medial pinch " + Figures.cm(medial) + " cm and of the lateral pinch "
                + Figures.cm(lateral) + " cm over its edges the breast becomes " + Figures.cm(after) + " cm wide, "
                + Figures.cm(after - base) + " cm more than its base width " + Figures.cm(base) + " cm";
    }
}
