package domefold.practice;

import domefold.evidence.Constants;
import domefold.evidence.Evidence;
import domefold.patient.Measure;
import domefold.patient.Reading;
import domefold.patient.Side;
import java.util.EnumMap;
import java.util.Map;

/**
 * The readings of both sides: a mean of the two, and a difference that is seen where the woman has that kind of
 * asymmetry and not seen where she has not.
 *
 * <p>The nipple's level and the fold's level differ on their own: with d_n and d_f (left less right, cm downwards),
 * notch to nipple differs by d_n and nipple to fold by d_f - d_n. Which side is the larger is even: the published series
 * disagree (right in Turkey, left in Lagos).
 */
final class Sides {
    private static final int MOST_TICKS_APART = 15;
    private static final int VOLUME_STEP_ML = 5;
    private final Constants constants;
    private final Spread volumeMl;
    private final Spread baseCm;
    private final Spread notchCm;
    private final Spread interNippleCm;
    private final Spread foldCm;
    private final Spread areolaCm;

    Sides(Evidence evidence) {
        constants = evidence.constants();
        volumeMl = new Spread(Published.population(evidence, "breast_volume", Published.HOSPITAL, "mean"),
                Published.population(evidence, "breast_volume", Published.HOSPITAL, "sd"));
        double low = Published.population(evidence, "bw", Published.TEACHING, "lo");
        double high = Published.population(evidence, "bw", Published.TEACHING, "hi");
        baseCm = new Spread((low + high) / 2, (high - low) / constants.value("PRA-RANGE-SDS"));
        notchCm = new Spread(Published.population(evidence, "sn_n", Published.YOUNG, "mean"),
                constants.value("PRA-NOTCH-SD"));
        interNippleCm = new Spread(Published.population(evidence, "n_n", Published.YOUNG, "mean"),
                constants.value("PRA-INTERNIPPLE-SD"));
        foldCm = new Spread(Published.population(evidence, "n_imf_rest", Published.YOUNG, "mean"),
                Published.population(evidence, "n_imf_rest", Published.HOSPITAL, "sd"));
        areolaCm = new Spread(Published.population(evidence, "areola_d", Published.YOUNG, "mean"),
                Published.population(evidence, "areola_d", Published.SENEGAL, "sd"));
    }

    /** Both sides under construction. */
    static final class Pair {
        private final Map<Measure, Reading> left = new EnumMap<>(Measure.class);
        private final Map<Measure, Reading> right = new EnumMap<>(Measure.class);

        /** Puts two readings on the grid of tenths that differ by exactly {@code ticksApart} tenths, left less right. */
        void put(Measure measure, double mean, long ticksApart) {
            long leftTicks = Math.round(mean * 10 + ticksApart / 2.0);
            left.put(measure, Ticks.ofTenths(leftTicks));
            right.put(measure, Ticks.ofTenths(leftTicks - ticksApart));
        }

        void putWhole(Measure measure, double mean, long stepsApart, int step) {
            long leftSteps = Math.round(mean / step + stepsApart / 2.0);
            left.put(measure, Ticks.hand((double) (leftSteps * step)));
            right.put(measure, Ticks.hand((double) ((leftSteps - stepsApart) * step)));
        }

        double value(Side side, Measure measure) {
            return of(side).get(measure).value();
        }

        Map<Measure, Reading> of(Side side) {
            return side == Side.LEFT ? left : right;
        }
    }

    Pair draw(Woman.Build build, Asymmetry.Kinds kinds, Dice dice) {
        Pair pair = new Pair();
        double zVolume = Mix.of(constants.value("PRA-CORR-BMI-VOLUME"), build.zBmi(), dice.normal());
        double volume = volumeMl.logNormal(zVolume);
        long volumeSteps = stepsApart(kinds.has(Kind.VOLUME), dice);
        pair.putWhole(Measure.BREAST_VOLUME, volume, volumeSteps, VOLUME_STEP_ML);
        base(pair, zVolume, volumeSteps, dice);
        long fold = ticksApart(kinds.has(Kind.FOLD_POSITION), dice);
        long nipple = nipple(pair, build, kinds, dice);
        fold(pair, zVolume, kinds, fold - nipple, dice);
        pair.put(Measure.AREOLA, areolaCm.logNormal(dice.normal()), ticksApart(kinds.has(Kind.AREOLA), dice));
        cover(pair, build, dice);
        double fill = constants.value("PRA-FILL-MEAN") + constants.value("PRA-FILL-SD")
                * Mix.of(constants.value("PRA-CORR-VOLUME-FILL"), zVolume, dice.normal());
        pair.putWhole(Measure.PARENCHYMAL_FILL, Math.max(10, Math.min(90, fill)), Integer.signum((int) volumeSteps), 5);
        return pair;
    }

    private void base(Pair pair, double zVolume, long volumeSteps, Dice dice) {
        double width = baseCm.normal(Mix.of(constants.value("PRA-CORR-VOLUME-WIDTH"), zVolume, dice.normal()));
        pair.put(Measure.BASE_WIDTH, width, Math.round(volumeSteps / 4.0 + 1.2 * dice.normal()));
        double height = width + constants.value("PRA-HEIGHT-LESS-WIDTH")
                + constants.value("PRA-BREAST-HEIGHT-SD") * dice.normal();
        pair.put(Measure.BREAST_HEIGHT, height, Math.round(2 * dice.normal()));
    }

    /** Places the nipples and gives the difference of their levels in tenths. */
    private long nipple(Pair pair, Woman.Build build, Asymmetry.Kinds kinds, Dice dice) {
        boolean differs = kinds.has(Kind.NIPPLE_POSITION);
        int how = dice.below(3);
        long level = ticksApart(differs && how != 0, dice);
        double z = Mix.of(constants.value("PRA-CORR-HEIGHT-NOTCH"), build.zHeight(),
                constants.value("PRA-CORR-PTOSIS-NOTCH"), kinds.ptosisLeaning(), dice.normal());
        pair.put(Measure.STERNAL_NOTCH_TO_NIPPLE, notchCm.normal(z), level);
        pair.put(Measure.NIPPLE_TO_MIDLINE, interNippleCm.normal(dice.normal()) / 2,
                ticksApart(differs && how != 1, dice));
        return level;
    }

    private void fold(Pair pair, double zVolume, Asymmetry.Kinds kinds, long ticksApart, Dice dice) {
        double z = Mix.of(constants.value("PRA-CORR-VOLUME-FOLD"), zVolume,
                constants.value("PRA-CORR-PTOSIS-FOLD"), kinds.ptosisLeaning(), dice.normal());
        pair.put(Measure.NIPPLE_TO_FOLD, foldCm.logNormal(z), ticksApart);
        double zStretch = dice.normal();
        pair.put(Measure.SKIN_STRETCH, spread("PRA-STRETCH").logNormal(zStretch), Math.round(2 * dice.normal()));
        double zGain = Mix.of(constants.value("PRA-CORR-STRETCH-GAIN"), zStretch, dice.normal());
        double gain = spread("PRA-STRETCH-GAIN").logNormal(zGain);
        for (Side side : Side.values()) {
            double own = Math.max(0, gain + 0.1 * dice.normal());
            pair.of(side).put(Measure.NIPPLE_TO_FOLD_STRETCHED,
                    Ticks.tenths(pair.value(side, Measure.NIPPLE_TO_FOLD) + own));
        }
    }

    private void cover(Pair pair, Woman.Build build, Dice dice) {
        double r = constants.value("PRA-CORR-BMI-PINCH");
        pinch(pair, Measure.UPPER_PINCH, spread("PRA-UPPER-PINCH"), Mix.of(r, build.zBmi(), dice.normal()), dice);
        pinch(pair, Measure.FOLD_PINCH, spread("PRA-FOLD-PINCH"), Mix.of(r, build.zBmi(), dice.normal()), dice);
        pinch(pair, Measure.MEDIAL_PINCH, spread("PRA-MEDIAL-PINCH"), Mix.of(r, build.zBmi(), dice.normal()), dice);
        pinch(pair, Measure.LATERAL_PINCH, spread("PRA-LATERAL-PINCH"), Mix.of(r, build.zBmi(), dice.normal()), dice);
    }

    private static void pinch(Pair pair, Measure measure, Spread spread, double z, Dice dice) {
        double mean = Math.max(0.4, spread.logNormal(z));
        long apart = Math.max(-2, Math.min(2, Math.round(dice.normal())));
        pair.put(measure, mean, apart);
    }

    /** Tenths of a centimetre between the sides: seen or not seen by an examiner. */
    private long ticksApart(boolean seen, Dice dice) {
        long limit = Math.round(constants.value("PRA-SEEN-CM") * 10);
        if (!seen) {
            return Math.max(1 - limit, Math.min(limit - 1, Math.round(1.5 * dice.normal())));
        }
        long beyond = (long) dice.exponential(constants.value("PRA-SEEN-EXCESS-CM") * 10);
        return dice.sign() * Math.min(MOST_TICKS_APART, limit + beyond);
    }

    /** Steps of 5 mL between the sides. */
    private long stepsApart(boolean seen, Dice dice) {
        long limit = Math.round(constants.value("ASY-10") / VOLUME_STEP_ML);
        if (!seen) {
            return Math.max(1 - limit, Math.min(limit - 1, Math.round(2 * dice.normal())));
        }
        return dice.sign() * (limit + (long) dice.exponential(constants.value("PRA-SEEN-EXCESS-ML") / VOLUME_STEP_ML));
    }

    private Spread spread(String id) {
        return new Spread(constants.value(id + "-MEAN"), constants.value(id + "-SD"));
    }
}
