package domefold.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import domefold.Approved;
import domefold.device.Catalogue;
import domefold.device.Device;
import domefold.evidence.Status;
import domefold.outcome.Band;
import domefold.outcome.Note;
import domefold.outcome.Working;
import domefold.patient.Case;
import domefold.patient.Measure;
import domefold.patient.Pocket;
import domefold.patient.Route;
import domefold.patient.Side;
import domefold.plan.Candidate;
import domefold.plan.DevicePair;
import domefold.plan.Plan;
import domefold.plan.SideFit;
import domefold.plan.SideLimits;
import domefold.plan.Verdict;
import domefold.store.CatalogueFile;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** The text of a plan whose numbers are written here by hand; what the engine makes of a case is tested elsewhere. */
class PlanTextTest {
    private static final Catalogue LIST = CatalogueFile.invented();

    static Plan plan() {
        return new Plan(Case.empty("DEMO-PAGE", LocalDate.of(2026, 3, 4)), LIST.name(), LIST.sha256(), List.of(),
                List.of(new Note("invented-catalogue", "The device list is invented.")),
                limits(Side.LEFT, 11.0, 300), limits(Side.RIGHT, 11.2, 312.4),
                List.of(candidate("gel-smooth-moderate-plus-300", Verdict.FITS, Verdict.TIGHT),
                        candidate("saline-smooth-full-280", Verdict.FITS, Verdict.FITS),
                        candidate("gel-smooth-low-440", Verdict.OUTSIDE, Verdict.TIGHT)),
                List.of(new DevicePair("gel-smooth-moderate-plus-300", "saline-smooth-full-280", 300, 305, OptionalDouble.of(5),
                        0.1, Verdict.FITS, List.of(new Note("pair-filled", "The sides differ in fill.")))));
    }

    private static SideLimits limits(Side side, double ceilingCm, double volumeMl) {
        return new SideLimits(side, OptionalDouble.of(ceilingCm), OptionalDouble.of(0.6), OptionalDouble.of(volumeMl),
                Optional.of(new Band(volumeMl - 35, volumeMl + 30)), OptionalDouble.of(8), OptionalDouble.of(0.4),
                List.of(new SideLimits.FoldMethod("volume rows", 8.0, true, "The line between two rows."),
                        new SideLimits.FoldMethod("dimension minus capacity", 9.75, false, "Its definition is from memory.")),
                Optional.of(Pocket.DUAL_PLANE),
                List.of(new Note("second-reading", "Take the upper pinch again: 1.9 cm lies within the reading error of 2.0 cm.")),
                List.of("areolaCm"),
                List.of(new Working("width ceiling", "12.4 - (1.0 + 1.8) / 2", ceilingCm, "cm",
                                "WID-02: tissue-matched planning, wide teaching use", Status.MEMORY_HIGH),
                        new Working("pocket", "1.8 < 2.0, so muscle covers the upper device", Double.NaN, "", "POC-01: a paper",
                                Status.READ)));
    }

    private static Candidate candidate(String id, Verdict left, Verdict right) {
        Device device = LIST.find(id).orElseThrow();
        return new Candidate(device, fit(left), fit(right),
                Optional.of(new Candidate.Incision(3.3, OptionalDouble.of(3.6), 4.0, Route.INFRAMAMMARY, "funnel",
                        "published rows for 300 mL (read)")),
                Optional.of(new Candidate.FollowUp("US-2020", 5, 8, List.of(6, 9, 12, 15, 18), List.of(5, 7, 9, 11, 13, 15, 17, 19),
                        20, "US-2020 asks for ultrasound or MRI.", List.of(new Candidate.Outcome("capsular contracture", 10, 9, 19,
                                "patient", List.of("GEL-A", "GEL-D"))))),
                Optional.of(new Candidate.Ripple(0.3, "Every device ripples.")));
    }

    private static SideFit fit(Verdict verdict) {
        List<Note> reasons = verdict == Verdict.FITS ? List.of() : List.of(new Note("width-narrow",
                "The device is 1.4 cm narrower than the ceiling of 11.0 cm, which leaves the edges of the breast without support."));
        return new SideFit(verdict, reasons, List.of(), OptionalDouble.of(-0.24), OptionalDouble.of(20), OptionalDouble.of(8.0),
                OptionalDouble.of(0.4), OptionalDouble.of(0.81), OptionalDouble.of(0.5), Optional.of(Measure.BASE_WIDTH),
                Optional.of(new Band(2.3, 3.3)), Optional.empty(),
                verdict == Verdict.FITS ? List.of() : List.of(new Note("would-change", "A base width of 11.9 cm would remove it.")));
    }

    @Test
    void looksAsApproved() {
        Approved.check("plan-text", PlanText.of(plan(), LIST, "0.0.0"));
    }

    @Test
    void neverIsWiderThanEightyColumns() {
        assertEquals(List.of(), PlanText.of(plan(), LIST, "0.0.0").lines().filter(line -> line.codePointCount(0, line.length()) > 80)
                .toList());
    }

    @Test
    void saysThatAListIsInventedOnlyWhenItIs() {
        assertTrue(PlanText.of(plan(), LIST, "0.0.0").replaceAll("\\s+", " ").contains(Statements.INVENTED_LIST));
        Catalogue own = new Catalogue("our list", "", "", LIST.sha256(), false, LIST.devices());
        assertFalse(PlanText.of(plan(), own, "0.0.0").replaceAll("\\s+", " ").contains(Statements.INVENTED_LIST));
        assertTrue(PlanText.of(plan(), own, "0.0.0").replaceAll("\\s+", " ").contains(Statements.SUPPORTS));
    }

    @Test
    void aBlockStandsBeforeAnyDevice() {
        Plan blocked = new Plan(plan().of(), LIST.name(), LIST.sha256(), List.of(new Note("contraindication", "She is nursing.")),
                List.of(), plan().left(), plan().right(), plan().candidates(), List.of());
        String text = PlanText.of(blocked, LIST, "0.0.0");
        assertTrue(text.indexOf("BLOCKED") > 0 && text.indexOf("BLOCKED") < text.indexOf("What the tissues allow"), text);
        assertTrue(text.contains("She is nursing. [contraindication]"), text);
    }

    @Test
    void exchangingTheSidesExchangesTheColumns() {
        String line = PlanText.of(plan(), LIST, "0.0.0").lines().filter(one -> one.startsWith("starting volume")).findFirst()
                .orElseThrow();
        Plan mirrored = new Plan(plan().of(), LIST.name(), LIST.sha256(), List.of(), List.of(), limits(Side.LEFT, 11.2, 312.4),
                limits(Side.RIGHT, 11.0, 300), List.of(), List.of());
        String other = PlanText.of(mirrored, LIST, "0.0.0").lines().filter(one -> one.startsWith("starting volume")).findFirst()
                .orElseThrow();
        assertTrue(line.indexOf("300 mL") < line.indexOf("312 mL"), line);
        assertTrue(other.indexOf("312 mL") < other.indexOf("300 mL"), other);
    }
}
