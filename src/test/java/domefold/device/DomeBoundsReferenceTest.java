package domefold.device;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Worked values of plane and solid geometry: checks C-GEO-01, C-GEO-03, C-GEO-04, rows GEO-T11 to GEO-T13 (derived). */
class DomeBoundsReferenceTest {
    @ParameterizedTest(name = "{4}: {0} cm wide, {1} cm high")
    @CsvSource({"12, 4.0, 259.7, 301.6, C-GEO-01, 0.05", "12.5, 4.5, 324, 368, C-GEO-03, 0.6", "11, 3.5, 189, 222, C-GEO-04, 0.6",
        "11.5, 4, 241, 277, GEO-T11.5, 0.5", "13, 4.5, 346, 398, GEO-T13, 0.5"})
    void capAndHalfEllipsoidAgreeWithTheWorkedValues(double diameterCm, double projectionCm, double capMl, double ellipsoidMl,
            String row, double toleranceMl) {
        DomeBounds bounds = DomeBounds.of(diameterCm, diameterCm, projectionCm);
        assertEquals(capMl, bounds.capMl().orElseThrow(), toleranceMl, row);
        assertEquals(ellipsoidMl, bounds.ellipsoidMl(), toleranceMl, row);
    }

    @Test
    void theCylinderOfCheckGeo02Holds452() {
        assertEquals(452.4, DomeBounds.of(12, 12, 4).cylinderMl(), 0.05);
    }

    @Test
    void theCapEndsWhereTheDomeIsTallerThanItsRadius() {
        assertTrue(DomeBounds.of(10, 10, 5).capMl().isPresent());
        assertTrue(DomeBounds.of(10, 10, 5.01).capMl().isEmpty());
    }
}
