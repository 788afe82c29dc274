package domefold.followup.survival;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import domefold.outcome.Band;
import domefold.outcome.Refusal;
import domefold.store.CsvText;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What a file of follow-up gives back, and which files are refused. */
class SurvivalAnswerPropertyTest {
    private static final long SEED = 20_261_125L;

    @Test
    void pointsDrawnFromACurveGiveTheCurveBack() {
        Random random = new Random(SEED);
        for (int round = 0; round < 200; round++) {
            Weibull truth = new Weibull(5 + 60 * random.nextDouble(), 0.3 + 3 * random.nextDouble());
            List<PointFit.Point> points = new ArrayList<>();
            for (int year = 2; year <= 10; year += 2) {
                double share = truth.cumulative(year);
                points.add(new PointFit.Point(year, share,
                        Optional.of(LogLog.interval(share, 0.05 + 0.2 * random.nextDouble()))));
            }
            for (PointFit fit : List.of(PointFit.of(points), PointFit.unweighted(points))) {
                assertEquals(truth.shape(), fit.curve().shape(), 1e-7 * truth.shape(), "seed " + SEED + " round " + round);
                assertEquals(truth.scale(), fit.curve().scale(), 1e-6 * truth.scale(), "seed " + SEED + " round " + round);
            }
            assertTrue(PointFit.of(points).at(5).interval().orElseThrow().includes(truth.cumulative(5)));
        }
    }

    @Test
    void aPreciseYearPullsTheWeightedCurve() {
        List<PointFit.Point> points = List.of(point(3, 0.05, 0.02), point(6, 0.14, 0.40), point(10, 0.16, 0.02));
        PointFit weighted = PointFit.of(points);
        PointFit plain = PointFit.unweighted(points);
        assertTrue(weighted.weighted());
        assertTrue(Math.abs(weighted.curve().cumulative(10) - 0.16) < Math.abs(plain.curve().cumulative(10) - 0.16));
        Band two = PointFit.of(points.subList(0, 2)).at(3).interval().orElseThrow();
        assertEquals(LogLog.interval(0.05, 0.02).low(), two.low(), 1e-12);
        assertEquals(LogLog.interval(0.05, 0.02).high(), two.high(), 1e-12);
    }

    private static PointFit.Point point(double year, double share, double se) {
        return new PointFit.Point(year, share, Optional.of(LogLog.interval(share, se)));
    }

    @Test
    void aFileOfIntervalsAnswersWithStandardErrorsAndMarksWhatLiesBeyond() {
        SurvivalAnswer answer = answer("lower,upper\n0,3\n2,4\n5,5\n6,\n7,9\n10,\n");
        assertEquals("intervals", answer.kind());
        assertEquals(6, answer.n());
        assertTrue(answer.logLik().isPresent() && answer.seLogScale().isPresent() && answer.seLogShape().isPresent());
        assertEquals(11, answer.at().size());
        for (CurveValue value : answer.at()) {
            assertEquals(value.time() > 10, value.beyondData());
            assertTrue(value.interval().orElseThrow().includes(value.cumulative()));
        }
        assertEquals(15, answer.at().get(10).time());
    }

    @Test
    void aFileOfPointsAnswersWithoutALikelihood() {
        SurvivalAnswer answer = answer("year,percent\n5,7.6\n10,10.8\n");
        assertEquals("points", answer.kind());
        assertEquals(0.5320, answer.shape(), 0.0001);
        assertTrue(answer.logLik().isEmpty());
        assertTrue(answer.at().get(4).interval().isEmpty());
        assertEquals(0.076, answer.at().get(4).cumulative(), 1e-12);
        assertTrue(answer("year,percent,lo,hi\n5,7.6,5,10\n10,10.8,8,14\n").at().get(4).interval().isPresent());
    }

    /** Infection in GEL-B (outcomes.csv): 1.5 % by year 3, 1.6 % by years 6 and 10. Nothing more failing is an answer too. */
    @Test
    void aShareThatStandsStillBetweenTwoYearsIsFitted() {
        SurvivalAnswer answer = answer("year,percent\n3,1.5\n6,1.6\n10,1.6\n");
        assertEquals(0.0563, answer.shape(), 0.0001);
        assertEquals(0.0162, answer.at().get(9).cumulative(), 0.0001);
    }

    @ParameterizedTest
    @CsvSource(delimiter = ';', value = {
        "lower,upper,treat/1,2,1; survival-columns; line 1",
        "year,percent,lo/1,2,1; survival-columns; line 1",
        "lower,upper/3,2; survival-row; line 2",
        "lower,upper/1,2/-1,2; survival-row; line 3",
        "lower,upper/0,; survival-row; line 2",
        "lower,upper/0,0; survival-row; line 2",
        "lower,upper/,4; survival-row; line 2",
        "lower,upper/1,NA; survival-row; line 2",
        "lower,upper/1,2x; survival-row; line 2",
        "lower,upper/1,NaN; survival-row; line 2",
        "lower,upper/1,; no-fit; times",
        "year,percent/5,7.6; survival-rows; file",
        "year,percent/5,7.6/4,9; survival-row; line 3",
        "year,percent/5,7.6/8,7.5; survival-row; line 3",
        "year,percent/5,7.6/8,7.6; no-fit; points",
        "year,percent/5,0; survival-row; line 2",
        "year,percent/5,100; survival-row; line 2",
        "year,percent,lo,hi/5,7.6,8,9; survival-row; line 2",
        "year,percent,lo,hi/5,7.6,5,; survival-row; line 2",
        "year,percent,lo,hi/5,7.6,0,9; survival-row; line 2",
    })
    void aFileThatFixesNothingIsRefusedWithItsLine(String text, String code, String where) {
        Refusal refusal = assertThrows(Refusal.class, () -> answer(text.replace("/", "\n")));
        assertEquals(code, refusal.code(), refusal.getMessage());
        assertEquals(where, refusal.where(), refusal.getMessage());
    }

    private static SurvivalAnswer answer(String text) {
        return SurvivalTable.answer(CsvText.read("file", text));
    }
}
