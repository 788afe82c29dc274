package domefold.shell;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.apache.commons.math3.analysis.integration.gauss.GaussIntegratorFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Solid geometry: closed forms, and numbers from them worked out to 10 digits beforehand. */
class GeometryReferenceTest {
    @ParameterizedTest
    @CsvSource({"6.25,3.8,0.90,313.5367268,298.6031910,14.01271914,9.055625,0.7154921609",
        "5.85,4.25,0.95,303.3608983,273.3313896,13.50433652,7.233510638,0.8943763803",
        "5.45,4.9,0.90,302.0058562,255.5626844,13.22557345,5.789112903,1.196155659"})
    void theDomeWithAnEdgeRadiusHasItsClosedFormValues(
            double a, double p, double rho, double volume, double area, double meridian, double radius, double join) {
        TwoArcDome dome = new TwoArcDome(a, p, rho);
        assertEquals(volume, dome.volumeMl(), 1e-7);
        assertEquals(area, dome.areaCm2(), 1e-7);
        assertEquals(meridian, dome.meridianCm(), 1e-8);
        assertEquals(radius, dome.capRadiusCm(), 1e-8);
        assertEquals(join, dome.joinAngle(), 1e-9);
        assertEquals(rho, TwoArcDome.of(2 * a, p, dome.volumeMl()).orElseThrow().edgeRadiusCm(), 1e-8);
    }

    @Test
    void noEdgeRadiusReachesBelowTheCap() {
        double cap = 0.5 + 0.8 * 0.8 / 6;
        double volume = Math.PI * 36 * 4.8;
        assertTrue(TwoArcDome.of(12, 4.8, volume * (cap - 1e-3)).isEmpty());
        assertTrue(TwoArcDome.of(12, 4.8, volume * (cap + 1e-3)).isPresent());
    }

    /** Ladder rule at form factor 0.66; our own table, rounded to 0.01 cm. */
    @ParameterizedTest
    @CsvSource({"0.24,120,9.88,2.37", "0.29,300,12.59,3.65", "0.345,300,11.88,4.10", "0.43,300,11.04,4.75",
        "0.52,300,10.36,5.39", "0.24,800,18.60,4.46", "0.43,800,15.31,6.58", "0.345,500,14.09,4.86",
        "0.52,120,7.64,3.97"})
    void theLadderRuleGivesItsTable(double tau, double volume, double width, double projection) {
        SizeLadder size = SizeLadder.of(tau, 0.66, volume);
        assertEquals(width, size.widthCm(), 0.0051);
        assertEquals(projection, size.projectionCm(), 0.0051);
    }

    /** A hemisphere: pi a / 2 of arc, 2 pi a^2 of area; a half-spheroid's area in closed form. */
    @Test
    void arcAndAreaOfTheDomeAreThoseOfKnownBodies() {
        DomeCurve half = new DomeCurve(3, 3, 2);
        assertEquals(3 * Math.PI / 2, half.domeArc, 1e-11);
        assertEquals(18 * Math.PI, half.domeArea, 1e-10);
        assertEquals(3 * 0.7, half.arcTo(0.7), 1e-11);
        assertEquals(18 * Math.PI * (1 - Math.cos(0.7)), half.areaTo(0.7), 1e-10);
        DomeCurve flat = new DomeCurve(6, 4, 2);
        assertEquals(GelPlug.deviceAreaCm2(12, 4, 1), flat.area(), 1e-9);
        assertEquals(EllipseArc.quarterCm(6, 4), flat.domeArc, 1e-11);
        DomeCurve tall = new DomeCurve(4, 6, 2);
        assertEquals(GelPlug.deviceAreaCm2(8, 6, 1), tall.area(), 1e-9);
    }

    /** Gauss quadrature of Commons Math in the other variable, z, for exponents with a singular rim. */
    @ParameterizedTest
    @CsvSource({"1.2,0.35", "1.5,0.374", "1.9,0.6", "2.3,1.15"})
    void arcOfASuperellipseAgreesWithAnotherIntegrator(double n, double p) {
        DomeCurve dome = new DomeCurve(1, p, n);
        double t = 1.2;
        double sum = new GaussIntegratorFactory().legendre(50, 0, t).integrate(x -> {
            double across = Math.cos(x);
            double down = 2 * p / n * Math.pow(Math.cos(x), 2 / n - 1) * Math.sin(x);
            return Math.hypot(across, down);
        });
        assertEquals(sum, dome.arcTo(t), 1e-11);
        double volume = new GaussIntegratorFactory().legendre(50, 0, p).integrate(z ->
                Math.PI * (1 - Math.pow(z / p, n)));
        assertEquals(volume, dome.volume(), 1e-6);
    }

    /** Cap below: paraboloid a^2 h (1 - h / 2P) pi; n = 1. */
    @Test
    void capVolumesAreThoseOfAParaboloid() {
        DomeCurve dome = new DomeCurve(5, 2, 1);
        double t = dome.parameterAtDepth(0.8);
        assertEquals(0.8, dome.depth(t), 1e-12);
        assertEquals(Math.PI * 25 * 0.8 * 0.8 / (2 * 2), dome.capVolume(t), 1e-10);
    }

    /** Complete elliptic integral E(1/2) = 1.3506438810 (table value), and the two ends of the ellipse. */
    @Test
    void aQuarterEllipseIsTheEllipticIntegral() {
        assertEquals(1.3506438810, EllipseArc.quarterCm(1, Math.sqrt(0.5)), 1e-10);
        assertEquals(Math.PI, EllipseArc.quarterCm(2, 2), 1e-14);
        assertEquals(3, EllipseArc.quarterCm(3, 0), 0);
        assertEquals(EllipseArc.quarterCm(2, 5), EllipseArc.quarterCm(5, 2), 0);
    }

    /** Rigid bag upright, n = 1.9: gap and slack share, our own table. */
    @ParameterizedTest
    @CsvSource({"12.5,3.6,.80,3.61,.271", "12.5,3.6,.90,2.47,.177", "12.5,3.6,.98,1.07,.071", "11.7,4.1,.85,2.88,.233",
        "11.7,4.1,.95,1.60,.124", "11.0,4.8,.80,3.17,.283", "11.0,4.8,.95,1.51,.131", "11.0,4.8,.98,.94,.080"})
    void theUprightBagIsCutWhereItsTableSays(double width, double projection, double fill, double gap, double share) {
        RigidBag bag = RigidBag.of(width / 2, projection, 1.9, fill);
        assertEquals(gap, bag.upperGapCm(width / 2), 0.006);
        assertEquals(share, bag.slackShare(), 0.0012);
    }

    /** An upright hemisphere cut at eta: cap volume (2 - 3 eta + eta^3) / 4, cap area share 1 - eta. */
    @Test
    void anUprightHemisphereIsCutLikeASphere() {
        for (double eta : new double[] {-0.4, 0.1, 0.5, 0.9}) {
            assertEquals((2 - 3 * eta + eta * eta * eta) / 4, RigidBag.shareAbove(2, eta), 1e-12);
        }
        double fill = 1 - (2 - 1.5 + 0.125) / 4;
        RigidBag bag = RigidBag.of(4, 4, 2, fill);
        assertEquals(0.5, bag.waterline(), 1e-9);
        assertEquals((1 - 0.5) / 2, bag.slackShare(), 1e-6);
    }
}
