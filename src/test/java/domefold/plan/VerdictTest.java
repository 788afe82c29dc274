package domefold.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import domefold.outcome.Note;
import domefold.patient.Case;
import domefold.patient.Measure;
import domefold.patient.Pocket;
import domefold.patient.Readings;
import domefold.patient.Route;
import domefold.patient.Setting;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A device against a side: base width 12.5 cm, ceiling 11.0 cm, 300 mL, stretched nipple to fold 7.5 cm. */
class VerdictTest {
    private static SideFit fit(double ml, double widthCm, double projectionCm) {
        return Sample.plan(Sample.with(Sample.SIDE), Sample.gel(ml, widthCm, projectionCm)).candidates().get(0).left();
    }

    @ParameterizedTest
    @CsvSource({
        "300, 12.0, 4.0, FITS,    ''",
        "300, 12.1, 3.9, TIGHT,   base-widened",
        "300, 12.5, 3.7, TIGHT,   base-widened",
        "300, 12.6, 3.6, OUTSIDE, width-over-base",
        "300, 10.0, 5.5, FITS,    ''",
        "300, 9.9,  5.7, TIGHT,   width-narrow",
    })
    void theWidthIsJudgedAgainstCeilingAndBase(double ml, double width, double projection, String verdict, String code) {
        SideFit fit = fit(ml, width, projection);
        assertEquals(Verdict.valueOf(verdict), fit.verdict());
        assertEquals(code, String.join(" ", fit.reasons().stream().map(Note::code).toList()));
    }

    @Test
    void theVolumeIsTightUpToSixtyOutsideTheBandAndThenOutside() {
        Case of = Sample.with(Sample.SIDE.with(Measure.NIPPLE_TO_FOLD_STRETCHED, 8.5));
        double high = Sample.left(of).volumeBandMl().orElseThrow().high();
        double low = Sample.left(of).volumeBandMl().orElseThrow().low();
        SideFit above = left(of, high + 60, 11.8);
        assertEquals(List.of("volume-above-band"), codes(above));
        assertEquals(Verdict.TIGHT, above.verdict());
        assertEquals(Verdict.OUTSIDE, left(of, high + 60.01, 11.8).verdict());
        assertEquals(Verdict.FITS, left(of, high, 11.5).verdict());
        assertEquals(Verdict.FITS, left(of, low, 11.5).verdict());
        assertEquals(List.of("volume-below-band"), codes(left(of, low - 1, 11.5)));
        assertEquals(Verdict.OUTSIDE, left(of, low - 60.01, 11.0).verdict());
    }

    private static SideFit left(Case of, double ml, double widthCm) {
        double projectionCm = ml / (Math.PI / 4 * widthCm * widthCm * 0.66);
        return Sample.plan(of, Sample.gel(ml, widthCm, projectionCm)).candidates().get(0).left();
    }

    private static List<String> codes(SideFit fit) {
        return fit.reasons().stream().map(Note::code).toList();
    }

    @ParameterizedTest
    @CsvSource({"6.5, FITS, ''", "6.4, TIGHT, fold-lowering", "6.0, TIGHT, fold-lowering", "5.9, OUTSIDE, fold-lowering-large"})
    void theFoldLoweringIsJudgedAtOneAndAHalfAndTwo(double stretched, String verdict, String code) {
        Readings side = Sample.SIDE.with(Measure.NIPPLE_TO_FOLD, 5.0).with(Measure.NIPPLE_TO_FOLD_STRETCHED, stretched);
        SideFit fit = Sample.plan(Sample.with(side), Sample.gel(300, 11.9, 4.1)).candidates().get(0).left();
        assertEquals(Verdict.valueOf(verdict), fit.verdict());
        assertEquals(code, String.join(" ", codes(fit)));
    }

    @Test
    void aStricterWidthSchoolMakesAWideDeviceTight() {
        Case of = Sample.with(Sample.SIDE);
        for (WidthSchool school : WidthSchool.values()) {
            Plan plan = Planner.plan(of, Sample.list(Sample.gel(300, 11.5, 4.3)), Sample.SHIPPED,
                    PlanOptions.DEFAULT.with(school));
            assertEquals(school == WidthSchool.CEILING ? Verdict.TIGHT : Verdict.FITS,
                    plan.candidates().get(0).left().verdict(), school.key());
        }
        Plan less = Planner.plan(Sample.with(Sample.SIDE.with(Measure.MEDIAL_PINCH, 0.4).with(Measure.LATERAL_PINCH, 0.4)),
                Sample.list(Sample.gel(300, 12.2, 3.9)), Sample.SHIPPED, PlanOptions.DEFAULT.with(WidthSchool.BASE_LESS));
        assertEquals(Verdict.TIGHT, less.candidates().get(0).left().verdict());
    }

    @Test
    void theGapAfterSurgeryIsTheGapNowLessTheWidening() {
        SideFit fit = fit(300, 12.2, 3.9);
        assertEquals("the gap between the breasts would be 1.8 cm (3.0 cm now, less 1.2 cm of widening), below 2.0 cm;"
                + " teaching asks for 3.0 cm", Sample.text(fit.notes(), "gap-small"));
        assertFalse(Sample.says(fit(300, 12.0, 4.0).notes(), "gap-small"));
    }

    private static Plan by(Route route, Readings side, boolean funnel) {
        Setting setting = new Setting(Optional.empty(), Optional.of(route), Optional.of(funnel), Optional.empty(),
                OptionalInt.empty(), Set.of());
        return Sample.plan(Sample.with(side).withSetting(setting), Sample.gel(300, 11.5, 4.3));
    }

    @Test
    void aSmallAreolaDoesNotHoldTheIncision() {
        SideFit small = by(Route.PERIAREOLAR, Sample.SIDE.with(Measure.AREOLA, 2.2), false).candidates().get(0).left();
        assertTrue(Sample.text(small.reasons(), "route-not-permitted").contains("areola of 2.23 cm would hold it"));
        assertEquals(Verdict.OUTSIDE, small.verdict());
        assertEquals(Verdict.FITS, by(Route.PERIAREOLAR, Sample.SIDE, false).candidates().get(0).left().verdict());
        SideFit unknown = by(Route.PERIAREOLAR, Sample.SIDE.without(Measure.AREOLA), false).candidates().get(0).left();
        assertTrue(Sample.says(unknown.reasons(), "reading-missing"));
    }

    @Test
    void gelThroughTheArmpitIsLimitedAndHasNoPublishedLengthByHand() {
        Plan plan = by(Route.TRANSAXILLARY, Sample.SIDE, false);
        assertTrue(plan.candidates().get(0).incision().isEmpty());
        assertTrue(Sample.says(plan.candidates().get(0).left().notes(), "route-limited"));
        assertTrue(by(Route.TRANSAXILLARY, Sample.SIDE, true).candidates().get(0).incision().isPresent());
    }

    @Test
    void theSurgeonsPocketStandsAndTheConflictIsSaid() {
        Setting setting = new Setting(Optional.empty(), Optional.empty(), Optional.empty(),
                Optional.of(Pocket.SUBGLANDULAR), OptionalInt.empty(), Set.of());
        SideLimits left = Sample.left(Sample.with(Sample.SIDE.with(Measure.UPPER_PINCH, 1.2)).withSetting(setting));
        assertEquals(Optional.of(Pocket.SUBGLANDULAR), left.pocket());
        assertTrue(Sample.says(left.notes(), "pocket-against-cover"));
        assertTrue(Sample.says(left.notes(), "muscle-cover"));
    }

    @Test
    void outsideTheFoldRowsTheDomeSaysHowLongTheFoldMustBe() {
        SideFit fit = fit(450, 12.0, 6.0);
        assertTrue(Sample.says(fit.notes(), "fold-outside-rows"));
        assertTrue(fit.foldTargetCm().orElseThrow() > 8.5);
        assertEquals(8.0, fit(300, 12.0, 4.0).foldTargetCm().orElseThrow(), 0);
    }

    @Test
    void aVolumeThatGoesIntoNoDomeIsNotJudgedForItsFold() {
        SideFit fit = fit(450, 11.5, 4.0);
        assertTrue(Sample.says(fit.reasons(), "fold-not-judged"));
        assertTrue(fit.foldTargetCm().isEmpty());
    }

    @Test
    void aMissingStretchWidensTheBandByWhatItCouldDo() {
        SideLimits with = Sample.left(Sample.with(Sample.SIDE.with(Measure.PARENCHYMAL_FILL, 50)));
        SideLimits without = Sample.left(Sample.with(Sample.SIDE.without(Measure.SKIN_STRETCH)));
        assertTrue(without.volumeBandMl().orElseThrow().high() > with.volumeBandMl().orElseThrow().high());
        assertTrue(Sample.text(without.notes(), "volume-incomplete")
                .contains("skin stretch (could change it by −30 to +60 mL)"));
        assertEquals(List.of("skinStretchCm"), without.incomplete());
    }
}
