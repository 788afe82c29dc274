package domefold.followup.survival;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import domefold.outcome.Refusal;
import domefold.store.CsvText;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** What any set of times must get: the curve it was drawn from, or a refusal, and never anything else. */
class WeibullMlePropertyTest {
    private static final long SEED = 20_261_125L;

    /** Standard errors are honest: the truth lies within 1.96 of them in about 95 of 100 fits. */
    @Test
    void theTruthLiesWithinTheStandardErrorsAsOftenAsItShould() {
        Random random = new Random(SEED);
        int rounds = 1000;
        int scaleHit = 0;
        int shapeHit = 0;
        for (int round = 0; round < rounds; round++) {
            Weibull truth = new Weibull(5 + 20 * random.nextDouble(), 0.6 + 3 * random.nextDouble());
            WeibullMle fit = WeibullMle.fit(drawn(truth, 150, random));
            scaleHit += Math.abs(Math.log(fit.curve().scale() / truth.scale())) < 1.96 * fit.seLogScale() ? 1 : 0;
            shapeHit += Math.abs(Math.log(fit.curve().shape() / truth.shape())) < 1.96 * fit.seLogShape() ? 1 : 0;
        }
        assertEquals(0.95, (double) scaleHit / rounds, 0.025, "seed " + SEED);
        assertEquals(0.95, (double) shapeHit / rounds, 0.025, "seed " + SEED);
    }

    /** Looked at every year or two until a day drawn for each; some seen failing, some never. */
    private static List<Lifetime> drawn(Weibull truth, int n, Random random) {
        List<Lifetime> times = new ArrayList<>();
        for (int i = 0; i < n; i++) {
            double failure = truth.quantile(random.nextDouble());
            double end = truth.scale() * (0.5 + 2 * random.nextDouble());
            double gap = truth.scale() / (4 + random.nextInt(8));
            if (failure > end) {
                times.add(Lifetime.intactAt(end));
            } else if (random.nextInt(4) == 0) {
                times.add(Lifetime.exact(failure));
            } else {
                double lower = gap * Math.floor(failure / gap);
                times.add(new Lifetime(lower, lower + gap));
            }
        }
        return times;
    }

    @Test
    void atTheFitTheLikelihoodIsHighestAmongItsNeighbours() {
        Random random = new Random(SEED);
        for (int round = 0; round < 200; round++) {
            List<Lifetime> times = drawn(new Weibull(10, 0.5 + 3 * random.nextDouble()), 40, random);
            WeibullMle fit = WeibullMle.fit(times);
            WeibullLikelihood likelihood = new WeibullLikelihood(times, 1);
            double m = Math.log(fit.curve().scale());
            double q = Math.log(fit.curve().shape());
            assertEquals(likelihood.value(m, q), fit.logLik(), 1e-8, "seed " + SEED + " round " + round);
            for (double step : new double[] {-1e-3, 1e-3}) {
                assertTrue(likelihood.value(m + step, q) < fit.logLik(), "seed " + SEED + " round " + round);
                assertTrue(likelihood.value(m, q + step) < fit.logLik(), "seed " + SEED + " round " + round);
            }
        }
    }

    /** Files of any numbers: an answer with finite numbers or a refusal. */
    @Test
    void anyFileIsAnsweredOrRefused() {
        Random random = new Random(SEED);
        int answered = 0;
        for (int round = 0; round < 3000; round++) {
            String text = round % 2 == 0 ? times(random) : points(random);
            try {
                SurvivalAnswer answer = SurvivalTable.answer(CsvText.read("file", text));
                answered++;
                assertTrue(answer.scale() > 0 && answer.shape() > 0 && Double.isFinite(answer.scale()), text);
                for (CurveValue value : answer.at()) {
                    assertTrue(value.cumulative() >= 0 && value.cumulative() <= 1, text);
                    value.interval().ifPresent(band -> assertTrue(band.low() >= 0 && band.high() <= 1, text));
                }
                answer.logLik().ifPresent(value -> assertTrue(Double.isFinite(value), text));
                answer.seLogShape().ifPresent(value -> assertTrue(value > 0 && Double.isFinite(value), text));
            } catch (Refusal refused) {
                assertTrue(refused.getMessage().length() > 10, text);
            } catch (RuntimeException defect) {
                throw new AssertionError("seed " + SEED + " round " + round + ":\n" + text, defect);
            }
        }
        assertTrue(answered > 500, "answered " + answered);
    }

    private static String times(Random random) {
        StringBuilder text = new StringBuilder("lower,upper\n");
        double unit = Math.pow(10, random.nextInt(40) - 20);
        for (int i = random.nextInt(9); i >= 0; i--) {
            double lower = random.nextInt(4) == 0 ? 0 : unit * random.nextInt(20);
            double width = random.nextInt(3) == 0 ? 0 : unit * random.nextInt(10) * Math.pow(10, random.nextInt(4) - 2);
            text.append(lower).append(',').append(random.nextInt(4) == 0 ? "" : String.valueOf(lower + width)).append('\n');
        }
        return text.toString();
    }

    private static String points(Random random) {
        StringBuilder text = new StringBuilder(random.nextBoolean() ? "year,percent\n" : "year,percent,lo,hi\n");
        boolean intervals = text.length() > 14;
        double year = 0;
        double percent = 0;
        for (int i = random.nextInt(5); i >= 0; i--) {
            year += random.nextDouble() * Math.pow(10, random.nextInt(8) - 4);
            percent += (100 - percent) * random.nextDouble() * Math.pow(10, -random.nextInt(6));
            text.append(year).append(',').append(percent);
            if (intervals) {
                text.append(',').append(percent * random.nextDouble()).append(',')
                        .append(percent + (100 - percent) * random.nextDouble());
            }
            text.append('\n');
        }
        return text.toString();
    }
}
