package domefold.plan;

import domefold.basics.Order;
import domefold.device.Device;
import domefold.evidence.Constants;
import domefold.outcome.Band;
import domefold.outcome.Figures;
import domefold.outcome.Note;
import domefold.patient.Measure;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;

/**
 * For each reason, the smallest change of a single reading that removes it. Changes of different readings are compared in
 * multiples of their own error SD. The band moves with the starting volume, as in the error draws.
 */
final class WouldChange {
    private final SideContext side;
    private final SideNumbers numbers;
    private final VerdictRule rule;
    private final Constants constants;

    WouldChange(SideContext side, VerdictRule rule, Constants constants) {
        this.side = side;
        this.numbers = side.numbers();
        this.rule = rule;
        this.constants = constants;
    }

    /** One way out, and how far it is in error SDs. */
    private record Way(String text, double sds) {}

    List<Note> of(int bits, Device device, double loweringCm) {
        List<Note> notes = new ArrayList<>();
        double base = numbers.value[SideNumbers.BASE];
        double ceiling = numbers.ceilingCm();
        if ((bits & VerdictRule.WIDTH_OVER_BASE) != 0) {
            notes.add(base("width-over-base", device.widthCm() - rule.overBaseCm - base));
        }
        if ((bits & VerdictRule.BASE_WIDENED) != 0) {
            notes.add(base("base-widened", device.widthCm() - rule.widthLimitCm(base, ceiling)));
        }
        if ((bits & VerdictRule.WIDTH_NARROW) != 0) {
            notes.add(base("width-narrow", device.widthCm() + rule.narrowCm - ceiling));
        }
        if ((bits & (VerdictRule.VOLUME_FAR_ABOVE | VerdictRule.VOLUME_ABOVE)) != 0) {
            volume("volume-above-band", device.nominalMl() - side.band().map(Band::high).orElseThrow())
                    .ifPresent(notes::add);
        }
        if ((bits & (VerdictRule.VOLUME_FAR_BELOW | VerdictRule.VOLUME_BELOW)) != 0) {
            volume("volume-below-band", device.nominalMl() - side.band().map(Band::low).orElseThrow())
                    .ifPresent(notes::add);
        }
        if ((bits & VerdictRule.LOWERING_LARGE) != 0) {
            notes.add(stretched("fold-lowering-large", loweringCm - rule.loweringOutsideCm));
        }
        if ((bits & VerdictRule.LOWERING) != 0) {
            notes.add(stretched("fold-lowering", loweringCm - rule.loweringTightCm));
        }
        return notes;
    }

    /** The base width moves limit and ceiling one for one, a pinch only by half. */
    private Note base(String code, double changeCm) {
        return new Note(code, cm(SideNumbers.BASE, changeCm));
    }

    private Note stretched(String code, double changeCm) {
        return new Note(code, cm(SideNumbers.STRETCHED, changeCm));
    }

    private String cm(int k, double change) {
        double wanted = numbers.value[k] + change;
        double shown = change > 0 ? Math.ceil(wanted * 100 - 1e-6) / 100 : Math.floor(wanted * 100 + 1e-6) / 100;
        return "a " + SideNumbers.VARYING.get(k).words() + " of " + Figures.cm(shown) + " cm or "
                + (change > 0 ? "more" : "less") + " instead of " + Figures.cm(numbers.value[k]) + " cm";
    }

    /** The starting volume must change by at least that much, with its sign. */
    private Optional<Note> volume(String code, double neededMl) {
        List<Way> ways = new ArrayList<>();
        double base = numbers.value[SideNumbers.BASE];
        double change = numbers.start.changeToReachCm(base, numbers.start.ml(base) + neededMl);
        if (!Double.isNaN(change) && numbers.sd[SideNumbers.BASE] > 0) {
            ways.add(new Way(cm(SideNumbers.BASE, change), Math.abs(change) / numbers.sd[SideNumbers.BASE]));
        }
        for (Measure measure : numbers.takenAdjustments()) {
            steps(measure, neededMl, ways);
        }
        return ways.isEmpty() ? Optional.empty() : Optional.of(new Note(code, Collections.min(ways, Order.byNumber(Way::sds)).text()));
    }

    /** Crossing a threshold of a reading, where that step is large enough. */
    private void steps(Measure measure, double neededMl, List<Way> ways) {
        int k = SideNumbers.VARYING.indexOf(measure);
        double now = numbers.value[k];
        double effect = numbers.adjustments.ml(measure, now);
        for (double threshold : numbers.adjustments.thresholds(measure)) {
            boolean up = threshold >= now;
            double across = up ? Math.nextUp(threshold + 1e-6) : Math.nextDown(threshold - 1e-6);
            for (double there : new double[] {threshold, across}) {
                double step = numbers.adjustments.ml(measure, there) - effect;
                boolean enough = neededMl > 0 ? step >= neededMl : step <= neededMl;
                if (enough && numbers.sd[k] > 0) {
                    String bound = there == threshold ? "" : up ? "more than " : "less than ";
                    ways.add(new Way("a " + measure.words() + " of " + bound + Figures.of(threshold, 0, 2) + " "
                            + measure.unit() + " instead of " + Figures.of(now, 0, 2) + " " + measure.unit(),
                            Math.abs(there - now) / numbers.sd[k]));
                }
            }
        }
    }
}
