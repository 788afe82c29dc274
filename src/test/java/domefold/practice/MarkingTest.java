package domefold.practice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import domefold.device.Device;
import domefold.device.Fill;
import domefold.device.Profile;
import domefold.device.Surface;
import domefold.outcome.Band;
import domefold.patient.Measure;
import domefold.patient.Pocket;
import domefold.patient.Readings;
import domefold.patient.Route;
import domefold.patient.Side;
import domefold.patient.Wishes;
import domefold.plan.SideLimits;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Every decision at its edges: the last value inside, the last defensible one, the first outside. */
class MarkingTest {
    private static final SideMarks SIDES = new SideMarks(Drawn.EVIDENCE);
    private static final WholeMarks WHOLE = new WholeMarks(Drawn.EVIDENCE);
    private static final Readings READINGS = Readings.NONE.with(Measure.BASE_WIDTH, 12.5)
            .with(Measure.NIPPLE_TO_FOLD_STRETCHED, 7.0).with(Measure.UPPER_PINCH, 1.2).with(Measure.FOLD_PINCH, 0.8);
    private static final SideLimits LIMITS = new SideLimits(Side.LEFT, OptionalDouble.of(11.0), OptionalDouble.of(0.57),
            OptionalDouble.of(300), Optional.of(new Band(265, 330)), OptionalDouble.of(8.0), OptionalDouble.of(1.0),
            List.of(new SideLimits.FoldMethod("volume rows", 8.0, true, ""),
                    new SideLimits.FoldMethod("dome arc", 8.8, false, ""),
                    new SideLimits.FoldMethod("dimension minus capacity", 11.0, false, "")),
            Optional.of(Pocket.DUAL_PLANE), List.of(), List.of(), List.of());

    @ParameterizedTest(name = "a ceiling of {0} cm against 11.0 +- 0.57 under a base of 12.5 is {1}")
    @CsvSource({"11.0, INSIDE", "11.25, INSIDE", "10.75, INSIDE", "11.3, DEFENSIBLE", "11.57, DEFENSIBLE",
        "10.43, DEFENSIBLE", "10.4, OUTSIDE", "11.5, DEFENSIBLE", "12.0, DEFENSIBLE", "12.1, OUTSIDE", "12.6, OUTSIDE"})
    void theCeilingIsMarkedByReadingErrorAndByTheOtherSchools(double statedCm, Standing standing) {
        assertEquals(standing, SIDES.ceiling(ceiling(statedCm), LIMITS, READINGS).standing());
    }

    @ParameterizedTest(name = "{0} mL against a band of 265 to 330 is {1}")
    @CsvSource({"265, INSIDE", "330, INSIDE", "331, DEFENSIBLE", "390, DEFENSIBLE", "391, OUTSIDE", "205, DEFENSIBLE",
        "204, OUTSIDE"})
    void theVolumeIsMarkedByTheBandAndSixtyMillilitresAround(double statedMl, Standing standing) {
        assertEquals(standing, SIDES.volume(volume(statedMl), LIMITS).standing());
    }

    @ParameterizedTest(name = "{0} with upper pinch {1} and fold pinch {2} is {3}")
    @CsvSource({"SUBGLANDULAR, 1.2, 0.8, OUTSIDE", "SUBGLANDULAR, 1.9, 0.8, DEFENSIBLE", "SUBGLANDULAR, 2.0, 0.8, INSIDE",
        "DUAL_PLANE, 1.2, 0.8, INSIDE", "DUAL_PLANE, 1.2, 0.4, DEFENSIBLE", "DUAL_PLANE, 1.2, 0.5, INSIDE",
        "SUBMUSCULAR, 1.2, 0.4, INSIDE", "DUAL_PLANE, 3.0, 0.8, INSIDE", "SUBFASCIAL, 1.0, 0.8, OUTSIDE"})
    void thePocketIsMarkedByCover(Pocket pocket, double upperCm, double foldCm, Standing standing) {
        Readings readings = READINGS.with(Measure.UPPER_PINCH, upperCm).with(Measure.FOLD_PINCH, foldCm);
        assertEquals(standing, SIDES.pocket(pocket(pocket), LIMITS, readings).standing());
    }

    @ParameterizedTest(name = "lowering by {0} cm where 1.0 is due and the arc says 1.8 is {1}")
    @CsvSource({"1.0, INSIDE", "1.7, INSIDE", "0.3, INSIDE", "1.8, DEFENSIBLE", "2.5, DEFENSIBLE", "2.6, OUTSIDE",
        "0.2, OUTSIDE", "0, DEFENSIBLE", "4.0, OUTSIDE"})
    void theFoldIsMarkedByReadingErrorAndByTheOtherMethods(double loweringCm, Standing standing) {
        assertEquals(standing, SIDES.fold(lowering(loweringCm), LIMITS, Optional.empty(), READINGS).standing());
    }

    @Test
    void whatIsNotStatedIsOutside() {
        assertEquals("not stated", SIDES.ceiling(SidePlan.OPEN, LIMITS, READINGS).said());
        assertEquals(Standing.OUTSIDE, SIDES.ceiling(SidePlan.OPEN, LIMITS, READINGS).standing());
        assertEquals(Standing.OUTSIDE, SIDES.volume(SidePlan.OPEN, LIMITS).standing());
        assertEquals(Standing.OUTSIDE, SIDES.pocket(SidePlan.OPEN, LIMITS, READINGS).standing());
        assertEquals(Standing.OUTSIDE, SIDES.fold(SidePlan.OPEN, LIMITS, Optional.empty(), READINGS).standing());
    }

    @Test
    void whatTheEngineCannotAnswerIsNotMarked() {
        SideLimits open = new SideLimits(Side.LEFT, OptionalDouble.empty(), OptionalDouble.empty(),
                OptionalDouble.empty(), Optional.empty(), OptionalDouble.empty(), OptionalDouble.empty(), List.of(),
                Optional.empty(), List.of(), List.of(), List.of());
        assertEquals(Standing.UNMARKED, SIDES.ceiling(ceiling(11), open, Readings.NONE).standing());
        assertEquals(Standing.UNMARKED, SIDES.volume(SidePlan.OPEN, open).standing());
        assertEquals(Standing.UNMARKED, SIDES.pocket(SidePlan.OPEN, open, Readings.NONE).standing());
        assertEquals(Standing.UNMARKED, SIDES.fold(lowering(1), open, Optional.empty(), READINGS).standing());
    }

    @ParameterizedTest(name = "schedule {0} for {1} is {2}")
    @CsvSource({"US-2020, GEL, INSIDE", "US-2006, GEL, OUTSIDE", "US-SALINE, GEL, OUTSIDE", "US-2020, SALINE, OUTSIDE",
        "US-SALINE, SALINE, INSIDE", "UK-2011, GEL, DEFENSIBLE", "UK-RECALLED, GEL, OUTSIDE", "FR-2018, GEL, INSIDE",
        "FR-2018, SALINE, INSIDE", "NOWHERE, GEL, OUTSIDE"})
    void theScheduleIsMarkedByItsFillAndByWhetherItIsInForce(String id, Fill fill, Standing standing) {
        FellowPlan fellow = whole(Optional.empty(), Optional.of(id));
        assertEquals(standing, WHOLE.followUp(fellow, List.of(device(fill))).standing());
    }

    @ParameterizedTest(name = "{0} by the {1} route is {2}")
    @CsvSource({"GEL, INFRAMAMMARY, INSIDE", "GEL, PERIAREOLAR, DEFENSIBLE", "GEL, TRANSAXILLARY, DEFENSIBLE",
        "SALINE, TRANSAXILLARY, INSIDE", "SALINE, PERIAREOLAR, INSIDE"})
    void theRouteIsMarkedByThePermissionTable(Fill fill, Route route, Standing standing) {
        FellowPlan fellow = whole(Optional.of(route), Optional.empty());
        assertEquals(standing, WHOLE.route(fellow, List.of(device(fill)), List.of()).standing());
    }

    @ParameterizedTest(name = "{0} in a {1} device of 300 mL, label 300 to 330, is {3}")
    @CsvSource({"SALINE, SALINE, 300, INSIDE", "SALINE, SALINE, 330, INSIDE", "SALINE, SALINE, 331, OUTSIDE",
        "SALINE, SALINE, 299, OUTSIDE", "SALINE, SALINE, , OUTSIDE", "GEL, SALINE, 300, OUTSIDE", "GEL, GEL, , INSIDE",
        "GEL, GEL, 300, INSIDE", "GEL, GEL, 310, OUTSIDE"})
    void theFillIsMarkedByTheLabel(Fill said, Fill of, Double fillMl, Standing standing) {
        SidePlan plan = new SidePlan(OptionalDouble.empty(), OptionalDouble.empty(), Optional.empty(),
                OptionalDouble.empty(), Optional.of("D"), Optional.of(said),
                fillMl == null ? OptionalDouble.empty() : OptionalDouble.of(fillMl), Optional.empty());
        assertEquals(standing, DeviceMarks.fill(plan, Optional.of(device(of)), Optional.empty()).standing());
    }

    @Test
    void aProfileAgainstTheWishIsDefensibleAndOneAgainstTheDeviceIsOutside() {
        Wishes sloped = new Wishes(Optional.of(Wishes.UpperPole.SLOPED), OptionalDouble.empty(), Map.of());
        assertEquals(Standing.INSIDE, profile(Profile.MODERATE, sloped, Optional.of(device(Fill.GEL))));
        assertEquals(Standing.DEFENSIBLE, profile(Profile.EXTRA_FULL, sloped, Optional.empty()));
        assertEquals(Standing.OUTSIDE, profile(Profile.LOW, sloped, Optional.of(device(Fill.GEL))));
    }

    @Test
    void otherViewsAreHeldBesideTheRuleWithTheirSources() {
        String width = SIDES.ceiling(ceiling(11), LIMITS, READINGS).bothHeld().orElseThrow();
        assertTrue(width.contains("WID-04") && width.contains("common practice, no source"), width);
        String fold = SIDES.fold(lowering(1), LIMITS, Optional.empty(), READINGS).bothHeld().orElseThrow();
        assertTrue(fold.contains("LOW-05: PMID 28831352"), fold);
        String follow = WHOLE.followUp(whole(Optional.empty(), Optional.of("US-2020")), List.of(device(Fill.GEL)))
                .bothHeld().orElseThrow();
        assertTrue(follow.contains("UK-2011") && follow.contains("FR-2018") && !follow.contains("US-2006"), follow);
    }

    @Test
    void otherViewsAreInPlainWords() {
        for (String view : List.of(SIDES.ceiling(ceiling(11), LIMITS, READINGS).bothHeld().orElseThrow(),
                SIDES.volume(volume(300), LIMITS).bothHeld().orElseThrow(),
                SIDES.pocket(pocket(Pocket.DUAL_PLANE), LIMITS, READINGS).bothHeld().orElseThrow(),
                SIDES.fold(lowering(1), LIMITS, Optional.empty(), READINGS).bothHeld().orElseThrow())) {
            assertTrue(view.matches("(?s)((?!\\b(bw|cc|apss)\\b|_|% %|always:).)*"), view);
        }
    }

    @Test
    void creditAndWeightAreData() {
        var constants = Drawn.EVIDENCE.constants();
        for (Decision decision : Decision.values()) {
            assertEquals(decision != Decision.WARNING, constants.has(decision.weightId()), decision.words());
        }
        assertTrue(constants.value("PRA-CREDIT-DEFENSIBLE") > constants.value("PRA-CREDIT-OUTSIDE"));
        assertTrue(constants.value("PRA-CREDIT-DEFENSIBLE") < constants.value("PRA-CREDIT-INSIDE"));
    }

    private static Standing profile(Profile profile, Wishes wishes, Optional<Device> device) {
        SidePlan said = new SidePlan(OptionalDouble.empty(), OptionalDouble.empty(), Optional.empty(),
                OptionalDouble.empty(), Optional.empty(), Optional.empty(), OptionalDouble.empty(), Optional.of(profile));
        return DeviceMarks.profile(said, device, wishes).standing();
    }

    private static SidePlan ceiling(double cm) {
        return new SidePlan(OptionalDouble.of(cm), OptionalDouble.empty(), Optional.empty(), OptionalDouble.empty(),
                Optional.empty(), Optional.empty(), OptionalDouble.empty(), Optional.empty());
    }

    private static SidePlan volume(double ml) {
        return new SidePlan(OptionalDouble.empty(), OptionalDouble.of(ml), Optional.empty(), OptionalDouble.empty(),
                Optional.empty(), Optional.empty(), OptionalDouble.empty(), Optional.empty());
    }

    private static SidePlan pocket(Pocket pocket) {
        return new SidePlan(OptionalDouble.empty(), OptionalDouble.empty(), Optional.of(pocket), OptionalDouble.empty(),
                Optional.empty(), Optional.empty(), OptionalDouble.empty(), Optional.empty());
    }

    private static SidePlan lowering(double cm) {
        return new SidePlan(OptionalDouble.empty(), OptionalDouble.empty(), Optional.empty(), OptionalDouble.of(cm),
                Optional.empty(), Optional.empty(), OptionalDouble.empty(), Optional.empty());
    }

    private static FellowPlan whole(Optional<Route> route, Optional<String> schedule) {
        return new FellowPlan(false, SidePlan.OPEN, SidePlan.OPEN, route, false, OptionalDouble.empty(), schedule,
                Set.of(), "");
    }

    private static Device device(Fill fill) {
        return new Device("D", "invented", fill, Surface.SMOOTH, Profile.MODERATE, 300,
                fill == Fill.SALINE ? Optional.of(new Band(300, 330)) : Optional.empty(), 11.5, 11.5, 4.0);
    }
}
