package domefold.followup.course;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import domefold.evidence.Evidence;
import domefold.evidence.Status;
import domefold.followup.survival.Weibull;
import domefold.store.EvidenceFiles;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.SplittableRandom;
import java.util.TreeSet;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** The model of silent rupture against a simulation of the same assumptions, and what must hold whatever the numbers. */
class LifeCoursePropertyTest {
    private static final long SEED = 20_261_125L;
    private static final int LIVES = 1_000_000;
    private static final int HORIZON = 20;
    private static final Weibull RUPTURE = new Weibull(16.0, 2.7);
    private static final List<Integer> DENSE = List.of(5, 7, 9, 11, 13, 15, 17, 19);

    private final Evidence evidence = EvidenceFiles.shipped();

    /** Sums and sums of squares per count, in the order of the expected row of the simulation test. */
    private static final class Tally {
        private final double[] sum = new double[9];
        private final double[] square = new double[9];

        void add(double... counts) {
            for (int i = 0; i < counts.length; i++) {
                sum[i] += counts[i];
                square[i] += counts[i] * counts[i];
            }
        }

        /** Four standard errors of the mean per 100. */
        double reach(int i) {
            double mean = sum[i] / LIVES;
            return 4 * 100 * Math.sqrt((square[i] / LIVES - mean * mean) / LIVES);
        }

        double per100(int i) {
            return 100 * sum[i] / LIVES;
        }
    }

    @ParameterizedTest
    @EnumSource(Strategy.class)
    void aMillionSimulatedLivesAgreeWithTheQuadrature(Strategy strategy) {
        Watch watch = Watch.of(evidence.constants(), strategy).withAdherence(0.7);
        LifeCourse course = LifeCourse.of(RUPTURE, DENSE, watch, HORIZON);
        Tally tally = new Tally();
        SplittableRandom random = new SplittableRandom(SEED);
        for (int i = 0; i < LIVES; i++) {
            live(watch, random, tally);
        }
        double[] expected = {course.ruptured(), course.exams(), course.falseAlarms(), course.confirmations(), course.found(),
            course.needlessOperations(), course.silentAtHorizon(), course.silentYears(),
            course.found() * course.yearsToDetection().orElseThrow()};
        for (int i = 0; i < expected.length; i++) {
            assertEquals(expected[i], tally.per100(i), tally.reach(i) + 1e-12, "seed " + SEED + ", count " + i);
        }
    }

    private static void live(Watch watch, SplittableRandom random, Tally tally) {
        double rupture = RUPTURE.quantile(random.nextDouble());
        int exams = 0;
        int alarms = 0;
        int confirmations = 0;
        for (int exam : DENSE) {
            if (random.nextDouble() >= watch.adherence()) {
                continue;
            }
            exams++;
            boolean broken = rupture < exam;
            boolean alarm = alarm(watch.strategy() == Strategy.MRI ? watch.mri() : watch.ultrasound(), broken, watch, random);
            if (alarm && !broken) {
                alarms++;
            }
            if (alarm && watch.strategy() == Strategy.ULTRASOUND_THEN_MRI) {
                confirmations++;
                alarm = alarm(watch.mri(), broken, watch, random);
            }
            if (alarm) {
                tally.add(broken ? 1 : 0, exams, alarms, confirmations, broken ? 1 : 0, broken ? 0 : 1, 0,
                        broken ? exam - rupture : 0, broken ? exam - rupture : 0);
                return;
            }
        }
        boolean silent = rupture < HORIZON;
        tally.add(silent ? 1 : 0, exams, alarms, confirmations, 0, 0, silent ? 1 : 0, silent ? HORIZON - rupture : 0, 0);
    }

    /** Each implant is tested by itself; at most one of them is broken. */
    private static boolean alarm(TestAccuracy test, boolean broken, Watch watch, SplittableRandom random) {
        boolean any = false;
        for (int implant = 0; implant < watch.implants(); implant++) {
            double chance = broken && implant == 0 ? test.sensitivity() : 1 - test.specificity();
            any |= random.nextDouble() < chance;
        }
        return any;
    }

    @Test
    void anAddedExamNeverLengthensTheSilentYears() {
        Random random = new Random(SEED);
        for (int round = 0; round < 2000; round++) {
            Weibull rupture = new Weibull(5 + 40 * random.nextDouble(), 0.5 + 4 * random.nextDouble());
            Watch watch = new Watch(Strategy.values()[random.nextInt(3)], accuracy(random), accuracy(random),
                    random.nextDouble(), 1 + random.nextInt(2));
            TreeSet<Integer> years = new TreeSet<>();
            double before = Double.POSITIVE_INFINITY;
            double silentBefore = Double.POSITIVE_INFINITY;
            for (int added = 0; added < 6; added++) {
                LifeCourse course = LifeCourse.of(rupture, new ArrayList<>(years), watch, HORIZON);
                assertTrue(course.silentYears() <= before + 1e-9, "seed " + SEED + " round " + round + " years " + years);
                assertTrue(course.silentAtHorizon() <= silentBefore + 1e-9, "seed " + SEED + " round " + round);
                assertEquals(course.ruptured(), course.found() + course.silentAtHorizon(), 1e-9);
                before = course.silentYears();
                silentBefore = course.silentAtHorizon();
                years.add(1 + random.nextInt(HORIZON));
            }
        }
    }

    private static TestAccuracy accuracy(Random random) {
        return new TestAccuracy(random.nextDouble(), random.nextDouble(), "drawn", Status.PROPOSAL);
    }

    @Test
    void aPerfectTestEveryYearLeavesAtMostAYearOfSilence() {
        TestAccuracy perfect = new TestAccuracy(1, 1, "by definition", Status.PROPOSAL);
        List<Integer> yearly = IntStream.rangeClosed(1, HORIZON).boxed().toList();
        for (Strategy strategy : Strategy.values()) {
            LifeCourse course = LifeCourse.of(RUPTURE, yearly, new Watch(strategy, perfect, perfect, 1, 2), HORIZON);
            assertTrue(course.yearsToDetection().orElseThrow() <= 1);
            assertEquals(0, course.silentAtHorizon(), 1e-9);
            assertEquals(0, course.falseAlarms(), 1e-9);
            assertEquals(0, course.needlessOperations(), 1e-9);
            assertEquals(100 * RUPTURE.cumulative(HORIZON), course.found(), 1e-9);
        }
    }

    @Test
    void withoutAttendanceThereAreNoExamsAndEveryRuptureStaysSilent() {
        for (Strategy strategy : Strategy.values()) {
            LifeCourse course = LifeCourse.of(RUPTURE, DENSE, Watch.of(evidence.constants(), strategy).withAdherence(0), HORIZON);
            assertEquals(0, course.exams());
            assertEquals(0, course.operations());
            assertEquals(100 * RUPTURE.cumulative(HORIZON), course.silentAtHorizon(), 1e-9);
            assertTrue(course.yearsToDetection().isEmpty());
        }
    }

    /** With one exam at e and a perfect test the mean delay is the integral of F to e over F(e), known in closed form at k = 1. */
    @Test
    void oneExamOfAnExponentialAgreesWithItsClosedForm() {
        TestAccuracy perfect = new TestAccuracy(1, 1, "by definition", Status.PROPOSAL);
        LifeCourse course = LifeCourse.of(new Weibull(10, 1), List.of(8), new Watch(Strategy.MRI, perfect, perfect, 1, 1), 8);
        double integral = 8 - 10 * (1 - Math.exp(-0.8));
        assertEquals(integral / (1 - Math.exp(-0.8)), course.yearsToDetection().orElseThrow(), 1e-12);
    }
}
