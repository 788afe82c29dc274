package domefold.practice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import domefold.patient.Measure;
import domefold.patient.Side;
import java.util.function.ToDoubleFunction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * 20,000 drawn women against the published tables. A mean may be off by two standard errors of the published sample,
 * an SD likewise; a share that the draw takes over as it stands, by four standard errors of the drawn sample.
 */
class PopulationReferenceTest {
    private static final double SAMPLE_ERRORS = 2;
    private static final double OWN_ERRORS = 4;

    @ParameterizedTest(name = "{0} has mean {1} in {3} women: {4}")
    @CsvSource({
        "HEIGHT, 162.1, 5, 54, 'Al-Qattan et al. 2019, PMC6756646'",
        "WEIGHT, 57.4, 8.6, 54, 'Al-Qattan et al. 2019, PMC6756646'",
        "NIPPLE_TO_FOLD, 7.7, 1.6, 54, 'Al-Qattan et al. 2019, PMC6756646; SD Huang et al. 2017, PMID 28192525'",
        "STERNAL_NOTCH_TO_NIPPLE, 19.8, 1.4, 54, 'Al-Qattan et al. 2019, PMC6756646; SD assumed'",
        "INTER_NIPPLE, 20.3, 1.2, 54, 'Al-Qattan et al. 2019, PMC6756646; SD assumed'",
        "AREOLA, 4.5, 1.5, 54, 'Al-Qattan et al. 2019, PMC6756646; SD Mar et al. 2020'",
        "AREOLA, 4.3, 1.5, 118, 'Mar et al. 2020'",
        "BREAST_VOLUME, 340.0, 109.1, 605, 'Huang et al. 2017, PMID 28192525'",
    })
    void meansArePublished(Measure measure, double mean, double sd, int women, String source) {
        double allowed = SAMPLE_ERRORS * sd * Math.sqrt(1.0 / women + 1.0 / Drawn.WOMEN);
        assertEquals(mean, Drawn.mean(value(measure)), allowed, source);
    }

    @ParameterizedTest(name = "{0} has SD {1} in {2} women: {3}")
    @CsvSource({
        "HEIGHT, 5, 54, 'Al-Qattan et al. 2019, PMC6756646'",
        "WEIGHT, 8.6, 54, 'Al-Qattan et al. 2019, PMC6756646'",
        "NIPPLE_TO_FOLD, 1.6, 605, 'Huang et al. 2017, PMID 28192525'",
        "AREOLA, 1.5, 118, 'Mar et al. 2020'",
        "BREAST_VOLUME, 109.1, 605, 'Huang et al. 2017, PMID 28192525'",
    })
    void spreadsArePublished(Measure measure, double sd, int women, String source) {
        double allowed = SAMPLE_ERRORS * sd * Math.sqrt(0.5 / women + 0.5 / Drawn.WOMEN);
        assertEquals(sd, Drawn.sd(value(measure)), allowed, source);
    }

    @Test
    void bodyMassIndexIsThatOfTheCohort() {
        ToDoubleFunction<Person> bmi = Body::bmi;
        // Al-Qattan et al. 2019, PMC6756646, n = 54: 21.8, SD 3.1
        assertEquals(21.8, Drawn.mean(bmi), SAMPLE_ERRORS * 3.1 / Math.sqrt(54));
        assertEquals(3.1, Drawn.sd(bmi), SAMPLE_ERRORS * 3.1 / Math.sqrt(2 * 54));
    }

    @Test
    void areolaEdgeToFoldComesOutThoughItIsNotDrawn() {
        ToDoubleFunction<Person> edge = person -> person.value(Side.LEFT, Measure.NIPPLE_TO_FOLD)
                - person.value(Side.LEFT, Measure.AREOLA) / 2;
        // Al-Qattan et al. 2019, PMC6756646, n = 54: 5.4 at rest
        assertEquals(5.4, Drawn.mean(edge), SAMPLE_ERRORS * Drawn.sd(edge) / Math.sqrt(54));
    }

    @Test
    void baseWidthKeepsToTheTeachingRangeAndNotToTheHospitalSeries() {
        // common practice, no source: 11 to 14 in most women of augmentation teaching, read as two SDs either way
        assertEquals(12.5, Drawn.mean(value(Measure.BASE_WIDTH)), 0.05);
        assertEquals(95.4, Drawn.percent(person -> between(person, Measure.BASE_WIDTH, 11, 14)), 1.5);
        // Huang et al. 2017, PMID 28192525: 14.3 in women seen for breast disease, marked as no default
        assertTrue(Drawn.mean(value(Measure.BASE_WIDTH)) < 14.3 - 1.4);
    }

    @Test
    void nippleToMidlineMostlyLiesInTheTeachingRange() {
        // common practice, no source: 9 to 11 in young women
        assertTrue(Drawn.percent(person -> between(person, Measure.NIPPLE_TO_MIDLINE, 9, 11)) > 80);
    }

    @Test
    void volumesRarelyLeaveTheRangeOfTheHospitalSeries() {
        // Huang et al. 2017, PMID 28192525: 91.8 to 919.2 in 1,210 breasts
        assertTrue(Drawn.percent(person -> !between(person, Measure.BREAST_VOLUME, 91.8, 919.2)) < 0.5);
    }

    @Test
    void neitherSideIsTheLargerBecauseTheSeriesDisagree() {
        // right larger by 16.1 mL in Turkish students (n = 385), left larger by 41.87 mL in Lagos students (n = 370)
        double mean = Drawn.mean(person -> person.difference(Measure.BREAST_VOLUME));
        double sd = Drawn.sd(person -> person.difference(Measure.BREAST_VOLUME));
        assertEquals(0, mean, OWN_ERRORS * sd / Math.sqrt(Drawn.WOMEN));
    }

    @ParameterizedTest(name = "{0} is seen in {1} % of women")
    @CsvSource({"NIPPLE_POSITION, 53", "VOLUME, 44", "FOLD_POSITION, 30", "BASE_CONSTRICTION, 29", "PTOSIS, 29",
        "AREOLA, 24", "CHEST_WALL, 9"})
    void kindsOfAsymmetryHaveTheirPublishedShares(Kind kind, double percent) {
        // Plast Reconstr Surg 2006;118(7S):7S-13S, PMID 17366695, 100 women, 4 examiners
        double drawn = Drawn.percent(person -> person.sightings().stream().anyMatch(seen -> seen.kind() == kind));
        assertEquals(percent, drawn, ownError(percent));
    }

    @Test
    void mostWomenHaveSomeAsymmetryAndTwoInThreeMoreThanOne() {
        // PMID 17366695: 88 and 65 of 100
        assertEquals(88, Drawn.percent(person -> !person.sightings().isEmpty()), publishedError(88, 100));
        assertEquals(65, Drawn.percent(person -> person.sightings().size() > 1), publishedError(65, 100));
    }

    @Test
    void theShareOfPtoticBreastsIsThatOfTheHospitalSeries() {
        // Huang et al. 2017, PMID 28192525: 274 of 1,204 breasts
        double left = Drawn.percent(person -> Seen.ptotic(person, Side.LEFT));
        double right = Drawn.percent(person -> Seen.ptotic(person, Side.RIGHT));
        assertEquals(100.0 * 274 / 1204, (left + right) / 2, ownError(22.8));
    }

    @Test
    void thePublishedLineOfPtosisSortsTheGradesThatAreDrawn() {
        // Fujiwara, J Plast Reconstr Aesthet Surg 2017;70:229-235: ptotic where vsd > 1.13 vbd + 1.86
        for (Person person : Drawn.POPULATION) {
            for (Side side : Side.values()) {
                var readings = person.side(side).readings();
                if (readings.has(Measure.VERTICAL_BASE)) {
                    double line = 1.13 * readings.value(Measure.VERTICAL_BASE).orElseThrow() + 1.86;
                    boolean above = readings.value(Measure.VERTICAL_SURFACE).orElseThrow() > line;
                    assertEquals(person.side(side).ptosis().orElseThrow() != domefold.patient.Ptosis.GRADE_I, above);
                }
            }
        }
    }

    private static boolean between(Person person, Measure measure, double low, double high) {
        double value = person.value(Side.LEFT, measure);
        return low <= value && value <= high;
    }

    private static ToDoubleFunction<Person> value(Measure measure) {
        return measure.of() == Measure.Of.SIDE ? person -> person.value(Side.LEFT, measure)
                : person -> person.value(measure);
    }

    private static double ownError(double percent) {
        return OWN_ERRORS * Math.sqrt(percent * (100 - percent) / Drawn.WOMEN);
    }

    private static double publishedError(double percent, int women) {
        return SAMPLE_ERRORS * Math.sqrt(percent * (100 - percent) / women);
    }
}
