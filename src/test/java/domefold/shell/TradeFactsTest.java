package domefold.shell;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import domefold.device.Device;
import domefold.patient.Route;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** Orderings every surgeon knows. Status of each: common practice, no source. */
class TradeFactsTest {
    private static final double[] CLASSES = {0.24, 0.29, 0.345, 0.43, 0.52};
    private static final Insertion.Fits FITS = Insertion.Fits.of(Rows.EVIDENCE);

    @Test
    void atEqualVolumeAHigherProfileIsNarrowerAndProjectsMore() {
        for (int i = 1; i < CLASSES.length; i++) {
            ShellState lower = DeviceShell.of(Rows.saline(CLASSES[i - 1], 300), Rows.CONSTANTS).orElseThrow().at(300);
            ShellState higher = DeviceShell.of(Rows.saline(CLASSES[i], 300), Rows.CONSTANTS).orElseThrow().at(300);
            assertTrue(higher.widthCm() < lower.widthCm() && higher.heightCm() > lower.heightCm());
        }
    }

    @Test
    void addingSalineNarrowsTheBaseAndAddsProjectionAndFirmness() {
        for (double tau : CLASSES) {
            DeviceShell shell = DeviceShell.of(Rows.saline(tau, 300), Rows.CONSTANTS).orElseThrow();
            for (double volume = 270; volume < 340; volume += 5) {
                ShellState less = shell.at(volume);
                ShellState more = shell.at(volume + 5);
                assertTrue(more.widthCm() < less.widthCm() && more.heightCm() > less.heightCm());
                assertTrue(more.apexHeadCm() > less.apexHeadCm());
                assertTrue(more.apexPressureHeadCm() >= less.apexPressureHeadCm());
            }
        }
    }

    @Test
    void aFullerFillRipplesLess() {
        Device device = Rows.saline(0.345, 300);
        double before = 1;
        for (double volume = 240; volume <= 309; volume += 3) {
            double index = RippleRank.of(device, volume, 2, true, Rows.CONSTANTS).index();
            assertTrue(index < before, "at " + volume);
            before = index;
        }
        assertTrue(RippleRank.of(device, 340, 2, true, Rows.CONSTANTS).index() > 0);
    }

    @Test
    void thinCoverRipplesMoreAndMuscleHelps() {
        Device device = Rows.saline(0.345, 300);
        double thin = RippleRank.of(device, 300, 1, false, Rows.CONSTANTS).index();
        double thick = RippleRank.of(device, 300, 3, false, Rows.CONSTANTS).index();
        double muscle = RippleRank.of(device, 300, 1, true, Rows.CONSTANTS).index();
        assertTrue(thick < thin && muscle < thin);
        assertEquals(Math.exp(-1), thick / thin, 1e-12);
        assertEquals(Math.exp(-0.8), muscle / thin, 1e-12);
    }

    @Test
    void gelDoesNotRankAboveSalineAtTheSameFill() {
        double saline = RippleRank.of(Rows.saline(0.345, 300), 300, 2, false, Rows.CONSTANTS).index();
        double gel = RippleRank.of(Rows.gel(0.345, 300), 300, 2, false, Rows.CONSTANTS).index();
        assertTrue(gel > 0 && gel <= saline);
    }

    @Test
    void whereCoverIsThinTheRemedyNamedIsFatAndNotAnotherFilling() {
        RippleRank thin = RippleRank.of(Rows.saline(0.345, 300), 300, 1.9, false, Rows.CONSTANTS);
        assertTrue(thin.notes().get(0).text().contains("fat") && thin.notes().get(0).text().contains("RIP-01"));
        assertTrue(RippleRank.of(Rows.saline(0.345, 300), 300, 2.0, false, Rows.CONSTANTS).notes().isEmpty());
        assertTrue(thin.text().contains("for comparing devices only"));
    }

    @Test
    void anEmptyRolledShellPassesAShorterOpeningThanGelAndAFunnelShortensGels() {
        for (double volume = 150; volume <= 600; volume += 50) {
            double saline = opening(Rows.saline(0.345, volume), false);
            double hand = opening(Rows.gel(0.345, volume), false);
            double funnel = opening(Rows.gel(0.345, volume), true);
            assertTrue(saline < funnel && funnel < hand, "at " + volume + " mL");
        }
    }

    @Test
    void tauterShellsAreCalledFirmer() {
        DeviceShell shell = DeviceShell.of(Rows.saline(0.43, 300), Rows.CONSTANTS).orElseThrow();
        assertEquals("soft", Firmness.of(shell.at(300), Rows.CONSTANTS).word());
        assertEquals("firm", Firmness.of(shell.at(340), Rows.CONSTANTS).word());
        assertEquals("tense", Firmness.of(shell.at(400), Rows.CONSTANTS).word());
        assertTrue(Firmness.of(shell.at(340), Rows.CONSTANTS).text().contains("order of magnitude"));
    }

    private static double opening(Device device, boolean funnel) {
        return Insertion.of(device, Route.INFRAMAMMARY, funnel, OptionalDouble.empty(), FITS, Rows.EVIDENCE).typicalCm();
    }
}
