package domefold.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import domefold.device.Catalogue;
import domefold.device.Device;
import domefold.engine.ErrorDraws;
import domefold.engine.StartingVolume;
import domefold.engine.TypedReading;
import domefold.evidence.Constants;
import domefold.outcome.Note;
import domefold.patient.Breast;
import domefold.patient.Case;
import domefold.patient.HealthQuestion;
import domefold.patient.Measure;
import domefold.patient.Pocket;
import domefold.patient.ReadBy;
import domefold.patient.Reading;
import domefold.patient.Readings;
import domefold.patient.Route;
import domefold.patient.Setting;
import domefold.patient.Side;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** What must hold whatever the readings are. The seed and the round are printed where something does not. */
class PlanPropertyTest {
    private static final long SEED = 20261125L;
    private static final int ROUNDS = 60;
    private static final Constants CONSTANTS = Sample.SHIPPED.constants();
    private static final PlanOptions QUICK = new PlanOptions(WidthSchool.CEILING_AND_WIDENING, 64, 7);
    private static final Catalogue LIST = devices();

    private static Catalogue devices() {
        List<Device> devices = new ArrayList<>();
        for (double ml = 150; ml <= 600; ml += 50) {
            for (double tau : new double[] {0.29, 0.345, 0.43}) {
                double width = Math.cbrt(4 * ml / (Math.PI * tau * 0.66));
                devices.add(Sample.gel(ml, width, tau * width));
                devices.add(Sample.saline(ml, width, tau * width));
            }
        }
        return Sample.list(devices.toArray(Device[]::new));
    }

    /** Readings in steps of a millimetre, each present three times out of four except the base width. */
    private static Readings side(Random dice) {
        Readings side = Readings.NONE.with(Measure.BASE_WIDTH, tenths(dice, 90, 160));
        double rest = tenths(dice, 40, 90);
        side = maybe(dice, side, Measure.NIPPLE_TO_FOLD, rest);
        side = maybe(dice, side, Measure.NIPPLE_TO_FOLD_STRETCHED, Math.rint(10 * rest + dice.nextInt(25)) / 10);
        side = maybe(dice, side, Measure.SKIN_STRETCH, tenths(dice, 10, 50));
        side = maybe(dice, side, Measure.PARENCHYMAL_FILL, dice.nextInt(101));
        side = maybe(dice, side, Measure.UPPER_PINCH, tenths(dice, 8, 35));
        side = maybe(dice, side, Measure.FOLD_PINCH, tenths(dice, 2, 20));
        side = maybe(dice, side, Measure.MEDIAL_PINCH, tenths(dice, 4, 25));
        side = maybe(dice, side, Measure.LATERAL_PINCH, tenths(dice, 4, 30));
        return maybe(dice, side, Measure.AREOLA, tenths(dice, 25, 60));
    }

    private static Readings maybe(Random dice, Readings side, Measure measure, double value) {
        return dice.nextInt(4) == 0 ? side : side.with(measure, value);
    }

    private static double tenths(Random dice, int low, int high) {
        return (low + dice.nextInt(high - low)) / 10.0;
    }

    private static Case drawn(Random dice) {
        Case of = Sample.with(side(dice), side(dice));
        Optional<Route> route = dice.nextBoolean() ? Optional.empty()
                : Optional.of(Route.values()[dice.nextInt(Route.values().length)]);
        Optional<Pocket> pocket = dice.nextBoolean() ? Optional.empty()
                : Optional.of(Pocket.values()[dice.nextInt(Pocket.values().length)]);
        return of.withSetting(new Setting(Optional.empty(), route, Optional.of(dice.nextBoolean()), pocket,
                OptionalInt.empty(), Set.of()));
    }

    private static Plan plan(Case of) {
        return Planner.plan(of, LIST, Sample.SHIPPED, QUICK);
    }

    private static String at(int round) {
        return "seed " + SEED + ", round " + round;
    }

    @Test
    void exchangingTheSidesExchangesThePlanAndNothingElse() {
        Random dice = new Random(SEED);
        for (int round = 0; round < ROUNDS; round++) {
            Case of = drawn(dice);
            Plan plan = plan(of);
            Plan mirrored = plan(of.mirrored());
            assertEquals(relabelled(plan.left(), Side.RIGHT), mirrored.right(), at(round));
            assertEquals(relabelled(plan.right(), Side.LEFT), mirrored.left(), at(round));
            assertEquals(codes(plan.notes()), codes(mirrored.notes()), at(round));
            for (int i = 0; i < plan.candidates().size(); i++) {
                Candidate one = plan.candidates().get(i);
                Candidate other = mirrored.candidates().get(i);
                assertEquals(one.left(), other.right(), at(round));
                assertEquals(one.right(), other.left(), at(round));
                assertEquals(one.incision(), other.incision(), at(round));
            }
        }
    }

    private static SideLimits relabelled(SideLimits limits, Side side) {
        return new SideLimits(side, limits.widthCeilingCm(), limits.widthCeilingSdCm(), limits.startingVolumeMl(),
                limits.volumeBandMl(), limits.foldTargetCm(), limits.foldLoweringCm(), limits.foldByMethod(),
                limits.pocket(), limits.notes(), limits.incomplete(), limits.working());
    }

    private static List<String> codes(List<Note> notes) {
        return notes.stream().map(Note::code).toList();
    }

    @Test
    void morePinchNeverRaisesTheCeiling() {
        Random dice = new Random(SEED);
        for (int round = 0; round < ROUNDS; round++) {
            double pinch = tenths(dice, 4, 40);
            Readings thin = Sample.SIDE.with(Measure.BASE_WIDTH, tenths(dice, 90, 160)).with(Measure.MEDIAL_PINCH, pinch);
            Readings thick = thin.with(Measure.MEDIAL_PINCH, pinch + tenths(dice, 1, 20));
            assertTrue(plan(Sample.with(thick)).left().widthCeilingCm().orElseThrow()
                    <= plan(Sample.with(thin)).left().widthCeilingCm().orElseThrow(), at(round));
        }
    }

    @Test
    void aWiderBaseNeverLowersTheStartingVolume() {
        StartingVolume start = StartingVolume.of(CONSTANTS);
        Random dice = new Random(SEED);
        for (int round = 0; round < 5000; round++) {
            double base = 8 + 9 * dice.nextDouble();
            double wider = base + dice.nextDouble();
            assertTrue(start.ml(wider) >= start.ml(base), at(round) + ": " + base + " and " + wider);
        }
    }

    @Test
    void millimetresAndCentimetresGiveTheSamePlan() {
        Random dice = new Random(SEED);
        for (int round = 0; round < ROUNDS; round++) {
            Readings cm = Readings.NONE;
            Readings mm = Readings.NONE;
            for (Map.Entry<Measure, Reading> entry : side(dice).byMeasure().entrySet()) {
                Measure measure = entry.getKey();
                double value = entry.getValue().value();
                boolean length = measure.unit().equals("cm");
                String inMm = length ? String.format(Locale.ROOT, "%d mm", Math.round(10 * value)) : Double.toString(value);
                String inCm = Double.toString(value).replace('.', ',') + (length ? " cm" : "");
                cm = cm.with(measure, TypedReading.value(measure, inCm));
                mm = mm.with(measure, TypedReading.value(measure, inMm));
            }
            assertEquals(plan(Sample.with(cm)).left(), plan(Sample.with(mm)).left(), at(round));
            assertEquals(plan(Sample.with(cm)).candidates(), plan(Sample.with(mm)).candidates(), at(round));
        }
    }

    @Test
    void withoutAReadingThereIsNoResultThatNeededIt() {
        Random dice = new Random(SEED);
        for (int round = 0; round < ROUNDS; round++) {
            Case of = drawn(dice);
            Plan plan = plan(of);
            for (Side side : Side.values()) {
                Readings readings = of.side(side).readings();
                SideLimits limits = plan.side(side);
                for (Measure measure : List.of(Measure.SKIN_STRETCH, Measure.PARENCHYMAL_FILL,
                        Measure.NIPPLE_TO_FOLD_STRETCHED)) {
                    assertEquals(!readings.has(measure), limits.incomplete().contains(measure.field()), at(round));
                    if (!readings.has(measure)) {
                        assertTrue(Sample.says(limits.notes(), "volume-incomplete"), at(round));
                    }
                }
                if (!readings.has(Measure.NIPPLE_TO_FOLD_STRETCHED)) {
                    assertTrue(limits.foldLoweringCm().isEmpty(), at(round));
                    assertTrue(plan.candidates().stream().noneMatch(
                            candidate -> candidate.side(side).verdict() == Verdict.FITS), at(round));
                }
                if (!readings.has(Measure.UPPER_PINCH) && of.setting().pocket().isEmpty()) {
                    assertTrue(limits.pocket().isEmpty(), at(round));
                }
            }
        }
    }

    @Test
    void withoutABaseWidthNothingFits() {
        Plan plan = plan(Sample.with(Sample.SIDE.without(Measure.BASE_WIDTH)));
        assertTrue(plan.left().widthCeilingCm().isEmpty() && plan.left().startingVolumeMl().isEmpty()
                && plan.left().volumeBandMl().isEmpty());
        assertTrue(plan.left().incomplete().contains("baseWidthCm"));
        for (Candidate candidate : plan.candidates()) {
            assertFalse(candidate.left().verdict() == Verdict.FITS);
            assertTrue(candidate.left().stability().isEmpty());
        }
        assertEquals(0, Planner.plan(Case.empty("K-2", Sample.with(Sample.SIDE).date()), LIST, Sample.SHIPPED, QUICK)
                .candidates().stream().filter(candidate -> candidate.left().verdict() == Verdict.FITS).count());
    }

    @Test
    void aBlockedCaseFitsNothing() {
        Random dice = new Random(SEED);
        for (int round = 0; round < ROUNDS / 4; round++) {
            Plan plan = plan(drawn(dice).withHistory(Map.of(HealthQuestion.ACTIVE_INFECTION, true)));
            assertTrue(plan.candidates().stream().allMatch(candidate -> candidate.left().verdict() == Verdict.OUTSIDE
                    && candidate.right().verdict() == Verdict.OUTSIDE), at(round));
        }
    }

    @Test
    void theAnswerIsTheSameEveryTime() {
        Case of = drawn(new Random(SEED));
        assertEquals(plan(of), plan(of));
        ErrorDraws one = ErrorDraws.of(7, 1024, 5);
        ErrorDraws other = ErrorDraws.of(7, 1024, 5);
        Set<Double> seen = new HashSet<>();
        double sum = 0;
        double squares = 0;
        for (int i = 0; i < one.size(); i++) {
            assertEquals(one.z(3, i), other.z(3, i), 0);
            seen.add(one.z(3, i));
            sum += one.z(3, i);
            squares += one.z(3, i) * one.z(3, i);
        }
        assertEquals(1024, seen.size());
        assertEquals(0, sum / one.size(), 0.01);
        assertEquals(1, squares / one.size(), 0.01);
    }

    @Test
    void anUnfitDeviceSaysWhyAndAFittingOneNeedsNoReason() {
        Random dice = new Random(SEED);
        for (int round = 0; round < ROUNDS; round++) {
            for (Candidate candidate : plan(drawn(dice)).candidates()) {
                for (Side side : Side.values()) {
                    SideFit fit = candidate.side(side);
                    assertEquals(fit.verdict() == Verdict.FITS, fit.reasons().isEmpty(), at(round));
                    assertTrue(fit.stability().orElse(0) >= fit.fitShare().orElse(0), at(round));
                }
            }
        }
    }

    /** Taking what the plan says would change a verdict removes that reason. */
    @Test
    void whatWouldChangeAWidthOrFoldReasonDoesRemoveIt() {
        Random dice = new Random(SEED);
        int tried = 0;
        for (int round = 0; round < ROUNDS; round++) {
            Readings side = Sample.SIDE.with(Measure.BASE_WIDTH, tenths(dice, 105, 150))
                    .with(Measure.NIPPLE_TO_FOLD_STRETCHED, tenths(dice, 50, 90));
            Case of = Sample.with(side);
            for (Candidate candidate : plan(of).candidates()) {
                for (Note way : candidate.left().wouldChange()) {
                    Optional<Measure> measure = List.of(Measure.BASE_WIDTH, Measure.NIPPLE_TO_FOLD_STRETCHED).stream()
                            .filter(any -> way.text().startsWith("a " + any.words() + " of ") && way.text().contains(" cm or "))
                            .findFirst();
                    if (measure.isEmpty() || way.code().startsWith("volume")) {
                        continue;
                    }
                    double value = Double.parseDouble(way.text().split(" of ")[1].split(" cm")[0]);
                    Reading reading = new Reading(value, "", ReadBy.HAND, 1);
                    Case changed = of.withSide(Side.LEFT, new Breast(side.with(measure.get(), reading), Optional.empty()));
                    SideFit after = Planner.plan(changed, Sample.list(candidate.device()), Sample.SHIPPED, QUICK)
                            .candidates().get(0).left();
                    assertFalse(Sample.says(after.reasons(), way.code()), at(round) + ": " + way.text());
                    tried++;
                }
                if (tried > 300) {
                    return;
                }
            }
        }
        assertTrue(tried > 100, "only " + tried + " tried");
    }
}
