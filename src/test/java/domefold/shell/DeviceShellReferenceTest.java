package domefold.shell;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import domefold.Check;
import domefold.device.Device;
import domefold.device.Fill;
import domefold.outcome.Band;
import domefold.outcome.Note;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** From a list row to a shell (our own table of the convention, another code) and what is published about fill. */
class DeviceShellReferenceTest {
    /** tau; empty shell a, P; capacity over full; then at 270 mL width, height, slack; at 300 mL; at 325 mL width, height, head. */
    @ParameterizedTest
    @CsvSource({".24,7.1971,1.3601,1.545,13.63,2.21,.101,13.47,2.62,.025,13.30,2.94,.09",
        ".29,6.7025,2.2784,1.363,12.85,2.58,.123,12.66,3.13,.034,12.44,3.55,.24",
        ".345,6.2297,3.1625,1.242,12.13,2.96,.144,11.96,3.66,.044,11.70,4.21,.53",
        ".43,5.6925,4.2165,1.149,11.21,3.49,.157,11.11,4.38,.054,10.84,5.15,1.32",
        ".52,5.2928,5.1181,1.105,10.48,4.01,.161,10.41,5.04,.057,10.16,6.04,2.68"})
    void theConventionGivesItsTable(double tau, double a, double p, double most, double d270, double h270, double s270,
            double d300, double h300, double s300, double d325, double h325, double head325) {
        DeviceShell shell = DeviceShell.of(Rows.saline(tau, 300), Rows.CONSTANTS).orElseThrow();
        ShellMetric metric = shell.metric();
        assertEquals(a, metric.halfWidthCm(), 2e-4);
        assertEquals(p, metric.domeCm(), 2e-4);
        assertEquals(309, metric.fullVolumeMl(), 1e-5);
        assertEquals(most, metric.capacityMl() / metric.fullVolumeMl(), 6e-4);
        near(ShellSolver.atVolume(metric, 270), d270, h270, s270);
        near(ShellSolver.atVolume(metric, 300), d300, h300, s300);
        ShellState fuller = ShellSolver.atVolume(metric, 325);
        near(fuller, d325, h325, 0);
        assertEquals(head325, fuller.apexHeadCm(), 0.006);
        assertEquals(shell.device().widthCm(), metric.fullWidthCm(), 1e-7);
    }

    private static void near(ShellState state, double width, double height, double slack) {
        assertEquals(width, state.widthCm(), 0.0055);
        assertEquals(height, state.heightCm(), 0.0055);
        assertEquals(slack, state.slackFraction(), 0.0006);
    }

    @Test
    void stiffnessIsThatOfHalfAMillimetreOfRubber() {
        assertEquals(765, DeviceShell.stiffnessCm2(Fill.SALINE, Rows.CONSTANTS), 0.5);
        assertTrue(DeviceShell.stiffnessCm2(Fill.GEL, Rows.CONSTANTS) > DeviceShell.stiffnessCm2(Fill.SALINE, Rows.CONSTANTS));
    }

    @Test
    void aRowNoShellCanHaveGivesNone() {
        assertTrue(DeviceShell.of(Rows.device(Fill.SALINE, 900, 9, 4), Rows.CONSTANTS).isEmpty());
        assertTrue(DeviceShell.of(Rows.device(Fill.SALINE, 50, 16, 4), Rows.CONSTANTS).isEmpty());
    }

    /** With stretch, from just full: about -2 and +4 mm for 25 mL, -4 and +8.5 mm for 50 mL (our own model, K = 765). */
    @Test
    void fillingUpNarrowsByMillimetres() {
        for (double tau : new double[] {0.29, 0.345, 0.43}) {
            DeviceShell shell = DeviceShell.of(Rows.saline(tau, 300), Rows.CONSTANTS).orElseThrow();
            ShellState full = shell.at(315);
            ShellState more = shell.at(340);
            assertEquals(-0.2, more.widthCm() - full.widthCm(), 0.07);
            assertEquals(0.4, more.heightCm() - full.heightCm(), 0.12);
        }
    }

    @Test
    void everyMillilitreOfTheLabelRangeIsAnsweredWithoutAStep() {
        DeviceShell shell = DeviceShell.of(Rows.saline(0.345, 300), Rows.CONSTANTS).orElseThrow();
        List<FillResponse.Row> rows = FillResponse.over(shell, new Band(300, 330.5)).rows();
        assertEquals(32, rows.size());
        assertEquals(330.5, rows.get(31).volumeMl(), 0);
        for (int i = 1; i < rows.size(); i++) {
            double narrowing = rows.get(i - 1).widthCm() - rows.get(i).widthCm();
            double rising = rows.get(i).heightCm() - rows.get(i - 1).heightCm();
            assertTrue(narrowing > 0 && narrowing < 0.02, "width at " + rows.get(i).volumeMl());
            assertTrue(rising > 0 && rising < 0.06, "height at " + rows.get(i).volumeMl());
        }
    }

    @Check("C-FIL-01")
    @Test
    void fillingToTheDeflatedDevicesShareIsWarnedOf() {
        Device device = Rows.saline(0.345, 300);
        List<Note> notes = FillNotes.of(device, 0.892 * 300, Rows.CONSTANTS);
        assertEquals("fill-below-label", notes.get(0).code());
        assertTrue(notes.get(0).text().contains("89.2 %") && notes.get(0).text().contains("folds"), notes.get(0).text());
        assertTrue(FillNotes.of(device, 300, Rows.CONSTANTS).isEmpty());
        assertTrue(FillNotes.of(device, 330, Rows.CONSTANTS).isEmpty());
        assertEquals("fill-above-label", FillNotes.of(device, 331, Rows.CONSTANTS).get(0).code());
        assertTrue(FillNotes.of(Rows.gel(0.345, 300), 250, Rows.CONSTANTS).isEmpty());
    }

    @Check("C-FIL-02")
    @Test
    void deflationWithinRangeAndOverfilledAreThePublishedShares() {
        double within = FillNotes.withinDeflationPercent(Rows.CONSTANTS);
        double over = FillNotes.overDeflationPercent(Rows.CONSTANTS);
        assertEquals(4.02, within, 0.01);
        assertEquals(1.83, over, 0.01);
        assertEquals(0.456, over / within, 0.001);
    }

    @Check("C-FIL-03")
    @Test
    void intactDevicesHadBeenFilledFuller() {
        assertEquals(13.9, FillNotes.intactLessDeflatedPoints(Rows.CONSTANTS), 0.05);
    }

    @Test
    void theAnswerOfShapeKnowsItsStates() {
        java.util.OptionalDouble none = java.util.OptionalDouble.empty();
        assertEquals("slack", ShapeAnswer.atFill(6.55, 2.45, 1.5, 0.9, none).state());
        assertEquals("full", ShapeAnswer.atFill(6.55, 2.45, 1.5, 1, none).state());
        ShapeAnswer more = ShapeAnswer.atVolume(6.55, 2.45, 1.5, 332.1084353, none);
        assertEquals("pressurised", more.state());
        assertEquals(0.6323625689, more.apexHeadCm().orElseThrow(), 1e-6);
        ShapeAnswer beyond = ShapeAnswer.atFill(6.55, 2.45, 1.5, 1.5, none);
        assertEquals("beyond-capacity", beyond.state());
        assertFalse(beyond.widthCm().isPresent());
        assertEquals(402.638849, beyond.capacityMl(), 4e-4);
        domefold.outcome.Refusal refusal = org.junit.jupiter.api.Assertions.assertThrows(domefold.outcome.Refusal.class,
                () -> ShapeAnswer.atFill(6.55, 20, 1.5, 1, none));
        assertTrue(refusal.getMessage().toLowerCase(Locale.ROOT).contains("half width"));
        org.junit.jupiter.api.Assertions.assertThrows(domefold.outcome.Refusal.class,
                () -> ShapeAnswer.atFill(6.55, 2.45, 1.5, 0.1, none));
    }
}
