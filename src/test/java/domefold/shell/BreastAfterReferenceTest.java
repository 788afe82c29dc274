package domefold.shell;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import domefold.outcome.Band;
import domefold.outcome.Note;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The composite against our own table of made-up patients, and the published lines beside it. */
class BreastAfterReferenceTest {
    @ParameterizedTest
    @CsvSource({"120,12,6,2,12.5,3.7,300,1.59,4.40,2.81,1.367,.70,.447,.529",
        "120,12,6,2,11.0,4.8,300,1.59,5.57,3.98,1.404,.92,.447,.535",
        "120,12,6,2,11.0,3.2,200,1.59,4.24,2.65,1.251,.01,.447,.524",
        "120,12,6,2,13.9,4.0,400,1.59,4.47,2.88,1.469,1.31,.447,.531",
        "250,13,7,3,11.8,4.1,300,2.83,5.94,3.11,1.300,.35,.451,.514",
        "250,13,7,3,13.0,4.5,400,2.83,5.90,3.08,1.361,.78,.451,.520",
        "250,13,7,3,12.1,5.2,400,2.83,6.71,3.89,1.394,1.01,.451,.522",
        "450,14,8.5,4,11.8,4.1,300,4.38,7.31,2.92,1.240,0,.455,.502",
        "150,11.5,5,2,11.5,5.0,350,2.17,6.11,3.95,1.485,1.17,.445,.529"})
    void theCompositeGivesItsTable(double breast, double base, double fold, double pinch, double width, double projection,
            double volume, double before, double after, double gain, double ratio, double lowering, double shareBefore,
            double shareAfter) {
        BreastAfter found = BreastAfter.of(breast, base, pinch, width, projection, volume, Rows.CONSTANTS);
        assertEquals(before, found.projectionBeforeCm(), 0.006);
        assertEquals(after, found.projectionAfterCm(), 0.006);
        assertEquals(gain, found.gainCm(), 0.006);
        assertEquals(ratio, found.poleArcRatio(), 0.0008);
        assertEquals(lowering, found.foldLoweringCm(fold), 0.006);
        assertEquals(shareBefore, found.upperShareBefore(), 0.0006);
        assertEquals(shareAfter, found.upperShareAfter(), 0.0012);
        assertTrue(found.upperPercentBand().includes(100 * found.upperShareAfter()));
        assertEquals(Math.min(ratio, 1.25) * fold, found.nippleToFoldCm(fold), 0.006);
    }

    /** Half-ellipse above its own middle is half; above its lower end is all. */
    @Test
    void halfEllipsesAreSharedAtTheirMiddle() {
        assertEquals(0.5, BreastAfter.halfEllipseAbove(0), 0);
        assertEquals(1, BreastAfter.halfEllipseAbove(1), 1e-15);
        assertEquals(0, BreastAfter.halfEllipseAbove(-1), 1e-15);
        // Segment of a circle beyond half a radius: 1/3 - sqrt(3) / (4 pi).
        assertEquals(2.0 / 3 + Math.sqrt(3) / (4 * Math.PI), BreastAfter.halfEllipseAbove(0.5), 1e-14);
    }

    @Test
    void theGainBandIsTheProposedShareOfTheProjection() {
        Band gain = BreastAfter.projectionGainCm(4.0, Rows.CONSTANTS);
        assertEquals(2.2, gain.low(), 1e-12);
        assertEquals(3.2, gain.high(), 1e-12);
    }

    @Test
    void theGapShrinksByTheMeanWidening() {
        assertEquals(1.9, BreastAfter.gapAfterCm(2.4, 0.7, 0.3), 1e-12);
        assertEquals(13.5, BreastAfter.widthAfterCm(12, 12.5, 2, Rows.CONSTANTS), 1e-12);
        assertEquals(12, BreastAfter.widthAfterCm(12, 10.5, 2, Rows.CONSTANTS), 1e-12);
    }

    @Test
    void whatIsSaidBesideItNamesBothViewsAndTheirStatus() {
        BreastAfter after = BreastAfter.of(250, 13, 3, 11.8, 4.1, 300, Rows.CONSTANTS);
        List<Note> notes = AfterNotes.of(after, 4.1, OptionalDouble.of(1.9), Rows.CONSTANTS);
        assertEquals(List.of("after-projection", "after-upper-share", "after-volume", "after-gap"),
                notes.stream().map(Note::code).toList());
        assertTrue(notes.get(0).text().contains("2.3 to 3.3 cm") && notes.get(0).text().contains("3.1 cm"), notes.toString());
        assertTrue(notes.get(1).text().contains("45 %") && notes.get(1).text().contains("62 %"), notes.toString());
        assertTrue(notes.get(3).text().contains("from memory, unconfirmed"), notes.toString());
        assertEquals(3, AfterNotes.of(after, 4.1, OptionalDouble.empty(), Rows.CONSTANTS).size());
    }
}
