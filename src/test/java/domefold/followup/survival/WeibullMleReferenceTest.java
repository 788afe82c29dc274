package domefold.followup.survival;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import domefold.outcome.Refusal;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * The fitter against R: {@code survreg(Surv(...) ~ 1, dist = "weibull")}, R 4.2.2 with survival 3.5-3, whose intercept is
 * ln scale and whose log(scale) is -ln shape. Numbers were read off R's own output.
 */
class WeibullMleReferenceTest {
    private static final double RELATIVE = 1e-5;

    /** Columns: set, n, logLik, intercept, log(scale), standard error of each. */
    @ParameterizedTest
    @CsvSource({
        "bcdeter, 95, -155.817522733, 3.6027014433, -0.4422449235, 0.086254357, 0.117688960",
        "bcdeter 1, 46, -64.592139285, 4.0522115227, -0.1136948118, 0.226221814, 0.213654579",
        "bcdeter 2, 49, -81.609202945, 3.3295287542, -0.7631333819, 0.078923872, 0.136156185",
        "btrial, 45, -148.945171623, 5.1585357322, -0.1346194418, 0.191839832, 0.180839217",
        "larynx, 90, -151.110063321, 2.0168911084, -0.0147921535, 0.146496042, 0.124330716",
        "tongue, 80, -300.704110842, 4.7378318083, 0.2269405088, 0.173612288, 0.116528218",
        "kidney, 119, -122.923696202, 3.8871831010, 0.1174802866, 0.315960777, 0.164792974",
    })
    void plainTextSetsOfKmsurvAreFittedAsRDoes(String set, int n, double logLik, double intercept, double logScale,
            double seIntercept, double seLogScale) {
        assertFit(kmsurv(set), n, logLik, intercept, logScale, seIntercept, seLogScale);
    }

    private static List<Lifetime> kmsurv(String set) {
        return switch (set) {
            case "btrial" -> SurvivalData.kmsurv("btrial", "time", "death");
            case "larynx", "tongue", "kidney" -> SurvivalData.kmsurv(set, "time", "delta");
            case "bcdeter" -> SurvivalData.kmsurv("bcdeter").stream().map(SurvivalData::interval).toList();
            default -> SurvivalData.kmsurv("bcdeter").stream().filter(row -> row.get("treat").equals(set.substring(8)))
                    .map(SurvivalData::interval).toList();
        };
    }

    @ParameterizedTest
    @CsvSource({
        "lung, 228, -1153.851188089, 6.0349039102, -0.2752350574, 0.059135911, 0.062430306",
        "veteran, 137, -748.091213992, 4.7931456368, 0.1600692498, 0.107801109, 0.066929324",
        "ovarian, 26, -97.953901047, 7.1110380718, -0.1026105035, 0.292727956, 0.253604701",
        "gbsg, 686, -2637.276363585, 7.7230548347, -0.2402125919, 0.050838029, 0.049757592",
        "rotterdam, 2982, -14145.713553490, 8.3653584189, 0.0879636709, 0.030254920, 0.022463250",
    })
    void setsOfTheSurvivalPackageAreFittedAsRDoes(String set, int n, double logLik, double intercept, double logScale,
            double seIntercept, double seLogScale) {
        assertFit(SurvivalData.exported(set), n, logLik, intercept, logScale, seIntercept, seLogScale);
    }

    /** Typed: 23 ball bearings, millions of turns, Lieblein & Zelen, J Res Natl Bur Stand 1956;57:273-316. */
    @Test
    void theBallBearingsOf1956AreFittedAsRDoes() {
        List<Lifetime> bearings = DoubleStream.of(17.88, 28.92, 33.00, 41.52, 42.12, 45.60, 48.48, 51.84, 51.96, 54.12, 55.56,
                67.80, 68.64, 68.64, 68.88, 84.12, 93.12, 98.64, 105.12, 105.84, 127.92, 128.04, 173.40)
                .mapToObj(Lifetime::exact).toList();
        assertFit(bearings, 23, -113.691290932, 4.4052344144, -0.7429172812, 0.105039335, 0.156364323);
    }

    /** Typed: weeks in remission under 6-mercaptopurine, Freireich et al., Blood 1963;21:699-716. */
    @Test
    void theRemissionsOf1963AreFittedAsRDoes() {
        List<Lifetime> remissions = Stream.concat(
                DoubleStream.of(6, 6, 6, 7, 10, 13, 16, 22, 23).mapToObj(Lifetime::exact),
                DoubleStream.of(6, 9, 10, 11, 17, 19, 20, 25, 32, 32, 34, 35).mapToObj(Lifetime::intactAt)).toList();
        assertFit(remissions, 21, -41.658678477, 3.5194292341, -0.3028670872, 0.273368922, 0.278397884);
    }

    /** The same R fit, read at 100 and 365 days with the delta method on its own covariance matrix. */
    @ParameterizedTest
    @CsvSource({"100, 0.1411612, 0.1087046, 0.1822721", "365, 0.5670465, 0.5118575, 0.6236266"})
    void theBandOfTheLungCurveIsRs(double time, double cumulative, double low, double high) {
        CurveValue value = WeibullMle.fit(SurvivalData.exported("lung")).at(time);
        assertEquals(cumulative, value.cumulative(), 1e-6);
        assertEquals(low, value.interval().orElseThrow().low(), 1e-6);
        assertEquals(high, value.interval().orElseThrow().high(), 1e-6);
    }

    @Test
    void timesThatFixNoCurveAreRefused() {
        List<Lifetime> allAtOnce = List.of(Lifetime.exact(5), Lifetime.exact(5), Lifetime.exact(5));
        List<Lifetime> oneFailure = List.of(Lifetime.exact(5), Lifetime.intactAt(9));
        List<Lifetime> nestedOnly = List.of(new Lifetime(0, 5), new Lifetime(0, 5), Lifetime.intactAt(10));
        for (List<Lifetime> times : List.of(allAtOnce, oneFailure, nestedOnly)) {
            assertEquals("no-fit", assertThrows(Refusal.class, () -> WeibullMle.fit(times)).code());
        }
    }

    @Test
    void theUnitOfTimeMovesTheScaleAndNothingElse() {
        List<Lifetime> years = new ArrayList<>();
        List<Lifetime> days = new ArrayList<>();
        for (int i = 1; i <= 20; i++) {
            years.add(new Lifetime(i * 0.5, i % 3 == 0 ? Double.POSITIVE_INFINITY : i * 0.5 + 1.5));
            days.add(new Lifetime(i * 0.5 * 365.25, i % 3 == 0 ? Double.POSITIVE_INFINITY : (i * 0.5 + 1.5) * 365.25));
        }
        WeibullMle inYears = WeibullMle.fit(years);
        WeibullMle inDays = WeibullMle.fit(days);
        assertEquals(inYears.curve().shape(), inDays.curve().shape(), 1e-9);
        assertEquals(inYears.curve().scale() * 365.25, inDays.curve().scale(), 1e-6);
        assertEquals(inYears.logLik(), inDays.logLik(), 1e-9);
        assertEquals(inYears.seLogShape(), inDays.seLogShape(), 1e-9);
    }

    private static void assertFit(List<Lifetime> times, int n, double logLik, double intercept, double logScale,
            double seIntercept, double seLogScale) {
        WeibullMle fit = WeibullMle.fit(times);
        assertEquals(n, fit.n());
        assertTrue(Math.abs(fit.logLik() - logLik) < 1e-6, "logLik " + fit.logLik());
        assertRelative(intercept, Math.log(fit.curve().scale()));
        assertRelative(-logScale, Math.log(fit.curve().shape()));
        assertRelative(seIntercept, fit.seLogScale());
        assertRelative(seLogScale, fit.seLogShape());
    }

    private static void assertRelative(double expected, double actual) {
        assertEquals(expected, actual, RELATIVE * Math.abs(expected));
    }
}
