package domefold.shell;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import domefold.evidence.Table;
import domefold.outcome.Band;
import domefold.outcome.Note;
import domefold.patient.Route;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Openings: the exact plug, the cadaver and funnel rows, the areola's arc, what routes permit. */
class InsertionReferenceTest {
    private static final Insertion.Fits FITS = Insertion.Fits.of(Rows.EVIDENCE);

    /** V = A = 300: 4.2721798305; a sphere is its own plug; the plug gives its volume back. */
    @Test
    void thePlugIsTheIsoperimetricRoot() {
        assertEquals(4.2721798305, GelPlug.diameterCm(300, 300), 1e-9);
        assertEquals(6, GelPlug.diameterCm(36 * Math.PI, 36 * Math.PI), 1e-6);
        double d = GelPlug.diameterCm(296.9, 300);
        assertEquals(300, 296.9 * d / 4 - Math.PI * d * d * d / 12, 1e-9);
        assertThrows(IllegalArgumentException.class, () -> GelPlug.diameterCm(100, 300));
    }

    /** Area, ratio and plug of ladder shapes (our own table). */
    @ParameterizedTest
    @CsvSource({"0.29,200,226.5,.624,3.78", "0.29,300,296.9,.624,4.33", "0.29,600,471.2,.624,5.45",
        "0.43,200,198.6,.760,4.51", "0.43,400,315.2,.760,5.69", "0.43,600,413.0,.760,6.51"})
    void ladderShapesHaveTheirTabulatedPlugs(double tau, double volume, double area, double ratio, double plug) {
        SizeLadder size = SizeLadder.of(tau, 0.66, volume);
        double found = GelPlug.deviceAreaCm2(size.widthCm(), size.projectionCm(), 0.965);
        assertEquals(area, found, 0.1);
        assertEquals(ratio, GelPlug.isoperimetricRatio(found, volume), 6e-4);
        assertEquals(plug, GelPlug.diameterCm(found, volume), 0.006);
        assertEquals(tau < 0.3, GelPlug.canDumbBell(found, volume));
    }

    /** Rolled shells of the moderate ladder (our own table; assumed thickness, packing and stretch). */
    @ParameterizedTest
    @CsvSource({"200,1.43,1.95", "300,1.53,2.09", "400,1.60,2.19", "500,1.66,2.27", "600,1.71,2.34"})
    void rolledShellsHaveTheirTabulatedOpenings(double volume, double diameter, double slit) {
        SizeLadder size = SizeLadder.of(0.29, 0.66, volume);
        RolledShell roll = RolledShell.of(RolledShell.meridianCm(size.widthCm(), size.projectionCm()), Rows.CONSTANTS);
        assertEquals(diameter, roll.diameterCm(), 0.006);
        assertEquals(slit, roll.singleSlitCm(), 0.012);
        assertEquals(1.16, roll.scrollSlitCm() / roll.singleSlitCm(), 0.004);
        assertEquals(1.155, roll.thickScrollSlitCm() / roll.scrollSlitCm(), 0.001);
    }

    /** Cadaver study, Eplasty 2018: the cube root through all seven rows stays within 0.3 cm of each. */
    @ParameterizedTest
    @CsvSource({"100,2.5,.15", "200,3.0,.15", "300,3.5,.15", "400,4.0,.15", "500,4.5,.3", "600,4.5,.3", "700,4.5,.3"})
    void theFitRunsThroughTheCadaverRows(double volume, double length, double tolerance) {
        assertEquals(length, FITS.byHand().typicalCm(volume, Rows.CONSTANTS), tolerance);
    }

    @Test
    void theFitRestsOnTheSevenRowsAndTheirSpread() {
        assertEquals(7, FITS.byHand().rows());
        double[] volumes = {100, 200, 300, 400, 500, 600, 700};
        double[] lengths = {2.5, 3, 3.5, 4, 4.5, 4.5, 4.5};
        double mean = 0;
        for (int i = 0; i < 7; i++) {
            mean += Math.log(lengths[i] / Math.cbrt(volumes[i])) / 7;
        }
        double squares = 0;
        for (int i = 0; i < 7; i++) {
            squares += Math.pow(Math.log(lengths[i] / Math.cbrt(volumes[i])) - mean, 2);
        }
        assertEquals(Math.exp(mean) * Math.cbrt(300), FITS.byHand().typicalCm(300, Rows.CONSTANTS), 1e-9);
        assertEquals(Math.sqrt(squares / 6), FITS.byHand().relativeSd(), 1e-9);
    }

    /** Checks C-INC-01 and C-INC-03 ask for these to 0.1 cm of the plain rows; the cube root meets them as well. */
    @Test
    void theFitMeetsThePlainRowsWhereTheyAreALine() {
        assertEquals(3.5, FITS.byHand().typicalCm(300, Rows.CONSTANTS), 0.1);
        assertEquals(2.5, FITS.byHand().typicalCm(100, Rows.CONSTANTS), 0.1);
    }

    /** Morkuzu 2022: 3.55 cm, SD 0.21, volume not stated. */
    @Test
    void theFunnelFitGivesTheReviewsMeanAndSpread() {
        double at = Rows.CONSTANTS.value("INC-FUNNEL-VOLUME");
        assertEquals(3.55, FITS.withFunnel().typicalCm(at, Rows.CONSTANTS), 0.005);
        assertEquals(0.21, FITS.withFunnel().relativeSd() * 3.55, 0.005);
    }

    /** The half-circle rule: an areola of 3.0 cm gives 4.71 cm, an opening of 5.0 cm needs 3.18 cm, 4.0 cm gives 6.28 cm. */
    @Test
    void theAreolaLimitsTheOpening() {
        List<Note> notes = new ArrayList<>();
        assertFalse(RouteRule.check(Route.PERIAREOLAR, Rows.gel(0.345, 300), 5.0, OptionalDouble.of(3.0), Rows.EVIDENCE, notes));
        assertTrue(notes.stream().anyMatch(note -> note.code().equals("areola-too-small")
                && note.text().contains("4.71") && note.text().contains("3.18")), notes.toString());
        assertTrue(RouteRule.check(Route.PERIAREOLAR, Rows.gel(0.345, 300), 6.28, OptionalDouble.of(4.0), Rows.EVIDENCE,
                new ArrayList<>()));
        List<Note> untaken = new ArrayList<>();
        assertTrue(RouteRule.check(Route.PERIAREOLAR, Rows.gel(0.345, 300), 4.0, OptionalDouble.empty(), Rows.EVIDENCE, untaken));
        assertTrue(untaken.stream().anyMatch(note -> note.text().contains("2.55")), untaken.toString());
    }

    /** Rows of incision.csv with status practice: orientation only. */
    @Test
    void thePracticeRowsAreReadBySize() {
        Table table = Rows.EVIDENCE.table("incision");
        assertEquals(new Band(4, 5), PublishedOpenings.of(table).practice(Rows.gel(0.345, 300), false).orElseThrow());
        assertEquals(new Band(4.5, 5.25), PublishedOpenings.of(table).practice(Rows.gel(0.345, 400), false).orElseThrow());
        assertEquals(new Band(4.5, 5.25), PublishedOpenings.of(table).practice(Rows.gel(0.345, 500), false).orElseThrow());
        assertEquals(new Band(3.5, 3.75), PublishedOpenings.of(table).practice(Rows.gel(0.345, 400), true).orElseThrow());
        assertTrue(PublishedOpenings.of(table).practice(Rows.gel(0.345, 401), true).isEmpty());
        assertEquals(new Band(2.5, 3.5), PublishedOpenings.of(table).practice(Rows.saline(0.345, 300), false).orElseThrow());
    }

    @Test
    void theBandSaysWhatItRestsOn() {
        InsertionBand hand = Insertion.of(Rows.gel(0.345, 300), Route.INFRAMAMMARY, false, OptionalDouble.empty(), FITS,
                Rows.EVIDENCE);
        assertTrue(hand.lowCm() < hand.typicalCm() && hand.typicalCm() < hand.highCm());
        assertTrue(hand.basis().contains("cadaver") && hand.allowed());
        assertTrue(hand.notes().stream().anyMatch(note -> note.code().equals("opening-against-practice")));
        InsertionBand areola = Insertion.of(Rows.gel(0.345, 500), Route.PERIAREOLAR, false, OptionalDouble.of(2.4), FITS,
                Rows.EVIDENCE);
        assertFalse(areola.allowed());
    }
}
