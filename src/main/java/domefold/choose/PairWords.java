package domefold.choose;

import domefold.device.Device;
import domefold.device.Fill;
import domefold.engine.AsymmetryClass;
import domefold.engine.Exact;
import domefold.evidence.Constants;
import domefold.outcome.Figures;
import domefold.outcome.Note;
import domefold.plan.DevicePair;
import domefold.plan.Verdict;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/** A pair in words: what remains, whether it could be seen, what differs, and how a pair of different volumes ages. */
final class PairWords {
    private final NaturalDifference difference;
    private final Constants constants;

    PairWords(NaturalDifference difference, Constants constants) {
        this.difference = difference;
        this.constants = constants;
    }

    DevicePair of(PairRule.Scored pair) {
        Device left = pair.left().device();
        Device right = pair.right().device();
        List<Note> notes = new ArrayList<>();
        OptionalDouble gap = gapMl(pair);
        notes.add(gap.isPresent() ? remains(pair, gap.getAsDouble()) : difference.notes().get(0));
        difference.sdMl().ifPresent(sd -> notes.add(new Note("pair-error", "the natural difference is only known to about "
                + Figures.of(sd, 0, 0) + " mL (one error SD)")));
        if (!difference.chased() && gap.isPresent()) {
            notes.add(difference.notes().get(difference.notes().size() - 1));
        }
        if (pair.verdict() == Verdict.TIGHT) {
            notes.add(new Note("pair-tight", "tight on at least one side"));
        }
        if (pair.leftMl() != left.nominalMl() || pair.rightMl() != right.nominalMl()) {
            notes.add(new Note("pair-filled", "nominal " + Figures.ml(left.nominalMl()) + " mL left, "
                    + Figures.ml(right.nominalMl()) + " mL right"));
        }
        differs(left, right, notes);
        if (pair.leftMl() != pair.rightMl()) {
            notes.add(new Note("pair-ages", "devices of different volume age differently, and the sides may part again"
                    + " with the years (opinion, noted at ASY-12)"));
        }
        return new DevicePair(left.id(), right.id(), pair.leftMl(), pair.rightMl(), gap,
                Exact.clean(left.projectionCm() - right.projectionCm()), pair.verdict(), notes);
    }

    /** What remains; by the real difference even where it is not chased. */
    private OptionalDouble gapMl(PairRule.Scored pair) {
        OptionalDouble natural = difference.differenceMl();
        return natural.isEmpty() ? natural
                : OptionalDouble.of(Exact.clean(natural.getAsDouble() + pair.leftMl() - pair.rightMl()));
    }

    private Note remains(PairRule.Scored pair, double gapMl) {
        String totals = side(difference.leftMl(), pair.leftMl()) + " mL left, "
                + side(difference.rightMl(), pair.rightMl()) + " mL right";
        if (gapMl == 0) {
            return new Note("pair-even", totals + ": nothing remains between the sides");
        }
        boolean seen = !Exact.below(Math.abs(gapMl), constants.value("ASY-10"));
        return new Note(seen ? "pair-seen" : "pair-not-seen", totals + ": " + gap(Math.abs(gapMl)) + " mL remain, more "
                + (gapMl > 0 ? "left" : "right") + "; " + (seen ? "not below " : "below ")
                + Figures.ml(constants.value("ASY-10")) + " mL, so it " + (seen ? "may" : "is not expected to") + " be seen ("
                + constants.get("ASY-10").status().words() + ")");
    }

    /** To the decimal that tells it from the threshold. */
    private String gap(double gapMl) {
        double threshold = constants.value("ASY-10");
        int decimals = 0;
        while (decimals < 3 && gapMl != threshold
                && Figures.of(gapMl, 0, decimals).equals(Figures.of(threshold, 0, decimals))) {
            decimals++;
        }
        return Figures.of(gapMl, 0, decimals);
    }

    private static String side(OptionalDouble natural, double deviceMl) {
        double naturalMl = natural.orElseThrow();
        return Figures.of(naturalMl, 0, 0) + " + " + Figures.ml(deviceMl) + " = "
                + Figures.of(AsymmetryClass.totalMl(naturalMl, deviceMl), 0, 0);
    }

    private void differs(Device left, Device right, List<Note> notes) {
        double widths = Exact.clean(left.widthCm() - right.widthCm());
        double projections = Exact.clean(left.projectionCm() - right.projectionCm());
        if (widths != 0) {
            boolean same = !Exact.above(Math.abs(widths), constants.value("PAIR-WIDTH-CLASS"));
            notes.add(new Note(same ? "pair-width" : "pair-width-class", Figures.cm(Math.abs(widths)) + " cm wider "
                    + (widths > 0 ? "left" : "right") + (same ? ", the same width class" : ", another width class: the bases"
                    + " will differ")));
        }
        if (projections != 0) {
            notes.add(new Note("pair-projection", Figures.cm(Math.abs(projections)) + " cm more projection "
                    + (projections > 0 ? "left" : "right") + (left.fill() == Fill.SALINE ? ", as listed at nominal fill" : "")));
        }
        if (left.profile() != right.profile()) {
            boolean leftTaller = left.projectionCm() / left.widthCm() > right.projectionCm() / right.widthCm();
            notes.add(new Note("pair-profile", left.profile().key() + " left and " + right.profile().key()
                    + " right: for its width the " + (leftTaller ? "left" : "right")
                    + " device stands further forward, so the upper poles may slope differently"));
        }
    }
}
