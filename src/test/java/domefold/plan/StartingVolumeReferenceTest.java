package domefold.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import domefold.Check;
import domefold.engine.VolumeScaling;
import domefold.patient.Case;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Starting volumes from checks.csv, through a whole plan. Rows 10.5 and 15.0: Swanson 2017, PMID 29062651, on Tebbetts and
 * Adams 2005 (read-secondary); inner rows and fill share: Tebbetts and Adams, Plast Reconstr Surg 2005;116:2005-2016
 * (from memory); adjustments for skin stretch and lower pole: the same article (read). Tolerance 0.
 */
class StartingVolumeReferenceTest {
    @Check({"C-VOL-01", "C-VOL-02", "C-VOL-03", "C-VOL-04", "C-VOL-05", "C-VOL-06", "C-VOL-07", "C-VOL-08", "C-VOL-11",
        "C-VOL-12", "C-VOL-13"})
    @ParameterizedTest(name = "{0}")
    @CsvSource({
        "C-VOL-01, 10.5, 2.5, 7.0, 50, 200",
        "C-VOL-02, 10.5, 1.5, 7.0, 50, 170",
        "C-VOL-03, 10.5, 3.5, 7.0, 50, 230",
        "C-VOL-04, 15.0, 4.2, 9.0, 50, 460",
        "C-VOL-05, 10.5, 2.0, 7.0, 50, 200",
        "C-VOL-06, 10.5, 3.1, 7.0, 50, 230",
        "C-VOL-07, 10.5, 2.5, 9.5, 50, 200",
        "C-VOL-08, 12.0, 2.5, 7.5, 50, 300",
        "C-VOL-11, 10.5, 2.5, 7.0, 20, 200",
        "C-VOL-12, 10.5, 2.5, 7.0, 19, 230",
        "C-VOL-13, 10.5, 2.5, 7.0, 81, 170",
    })
    void theVolumeIsThatOfTheCheckList(String id, double base, double skin, double stretched, double fill, double ml) {
        SideLimits left = Sample.left(Sample.volume(base, skin, stretched, fill));
        assertEquals(ml, left.startingVolumeMl().orElseThrow(), 0, id);
        assertFalse(Sample.says(left.notes(), "volume-between-rows"), id);
    }

    /** 325 + 30 + 30 + 30, outside the fold rows, no lowering. */
    @Test
    @Check("C-VOL-09")
    void aLooseLongAndEmptyEnvelopeAddsThreeTimes() {
        SideLimits left = Sample.left(Sample.volume(13.0, 3.5, 10.0, 15));
        assertEquals(415, left.startingVolumeMl().orElseThrow(), 0);
        assertTrue(Sample.says(left.notes(), "fold-outside-rows"));
        assertTrue(left.foldTargetCm().isEmpty());
        assertEquals(0, left.foldLoweringCm().orElseThrow(), 0);
    }

    @Test
    @Check("C-VOL-10")
    void neitherBoundaryRuleFiresAtItsBoundary() {
        SideLimits left = Sample.left(Sample.volume(11.0, 3.0, 9.5, 50));
        assertEquals(250, left.startingVolumeMl().orElseThrow(), 0);
        assertEquals(7.0, left.foldTargetCm().orElseThrow(), 0);
        assertEquals(0, left.foldLoweringCm().orElseThrow(), 0);
    }

    @Test
    @Check("C-VOL-14")
    void betweenRowsTheRuleUsedIsNamed() {
        SideLimits left = Sample.left(Sample.volume(12.2, 2.5, 7.0, 50));
        assertTrue(Sample.text(left.notes(), "volume-between-rows").contains("the straight line between them is used"));
        assertTrue(left.working().stream().anyMatch(line -> line.expression().startsWith("line between rows: 300 +")));
    }

    @Test
    @Check("C-VOL-15")
    void outsideTheTableThereIsNoUnflaggedVolume() {
        SideLimits left = Sample.left(Sample.volume(10.0, 2.5, 7.0, 50));
        assertTrue(left.startingVolumeMl().isEmpty());
        // 200 x (10.0 / 10.5)^3 = 172.8 and 400 x (16 / 15)^3 = 485.5, by hand
        assertTrue(Sample.text(left.notes(), "volume-outside-table").contains("with the adjustments is 172.8 mL"));
        assertTrue(Sample.text(Sample.left(Sample.volume(16.0, 2.5, 7.0, 50)).notes(), "volume-outside-table")
                .contains("with the adjustments is 485.5 mL"));
        assertTrue(left.volumeBandMl().isPresent());
    }

    /** Swanson 2017: 583, which the critic rounds to 600; tolerance 20. */
    @Test
    @Check("C-VOL-16")
    void theSameProportionsGrowWithTheCube() {
        assertEquals(583, VolumeScaling.cubeMl(15.0, Sample.SHIPPED.constants()), 20);
        assertEquals(583.09, VolumeScaling.cubeMl(15.0, Sample.SHIPPED.constants()), 0.01);
    }

    /** Arithmetic on the end rows; tolerance 1. */
    @Test
    @Check("C-VOL-17")
    void theStraightLineBetweenTheEndRowsIsLowerThanTheTable() {
        assertEquals(267, VolumeScaling.straightLineMl(12.0, Sample.SHIPPED.constants()), 1);
        Case of = Sample.volume(12.0, 2.5, 7.5, 50);
        assertTrue(Sample.left(of).startingVolumeMl().orElseThrow() > 267);
    }
}
