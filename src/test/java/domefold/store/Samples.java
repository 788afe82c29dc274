package domefold.store;

import domefold.device.Device;
import domefold.device.Fill;
import domefold.device.Profile;
import domefold.device.Surface;
import domefold.evidence.Status;
import domefold.outcome.Band;
import domefold.outcome.Note;
import domefold.outcome.Working;
import domefold.patient.Case;
import domefold.patient.Measure;
import domefold.patient.Pocket;
import domefold.patient.ReadBy;
import domefold.patient.Reading;
import domefold.patient.Route;
import domefold.patient.Side;
import domefold.plan.Candidate;
import domefold.plan.DevicePair;
import domefold.plan.Plan;
import domefold.plan.SideFit;
import domefold.plan.SideLimits;
import domefold.plan.Verdict;
import domefold.record.Amendment;
import domefold.record.ConsultRecord;
import domefold.record.Considered;
import domefold.record.FollowUp;
import domefold.record.OutcomeShown;
import domefold.record.OverrideShown;
import domefold.record.Settlement;
import domefold.record.Topic;
import domefold.record.TypedAnswer;
import domefold.record.Versions;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.UUID;

/** Invented values with every field set, for tests of what is saved. */
public final class Samples {
    public static final Instant NOON = Instant.parse("2026-03-04T12:00:00Z");
    private static final String NO_DIGEST = "0".repeat(64);

    /** An ordinary case with every kind of field. */
    public static final String CASE = """
            { "format": "domefold-case/1", "case": "K-2041", "date": "2026-03-04", "readBy": "hand",
              "patient": { "ageYears": 31, "heightCm": 166, "weightKg": 58, "thoracicPerimeterCm": 74, "bustCm": 82,
                "nicotine": false, "pregnantOrNursing": false, "activeInfection": false, "untreatedBreastDisease": false,
                "chestIrradiation": false, "earlierBreastSurgery": false },
              "wishes": { "upperPole": "sloped", "sizeWishMl": 300,
                "weights": { "shortScar": 3, "softFeel": 2, "fewImagingVisits": 5, "easyExchange": 2, "fineAdjustment": 1,
                  "hiddenEdges": 4, "lowCost": 1 } },
              "setting": { "surveillance": "US-2020", "route": "inframammary", "funnel": true, "pocket": "dual-plane",
                "horizonYears": 20, "surfaces": ["smooth"] },
              "chest": { "interNippleCm": 20.5, "intermammaryCm": 2.4 },
              "left": { "sternalNotchToNippleCm": 19.8, "nippleToMidlineCm": 9.8, "nippleToFoldCm": 6.4,
                "nippleToFoldStretchedCm": 7.6, "baseWidthCm": 12.40, "breastHeightCm": 11.8, "areolaCm": 3.8,
                "skinStretchCm": 2.6, "upperPinchCm": 1.8, "foldPinchCm": 0.9, "medialPinchCm": 1.0, "lateralPinchCm": 1.8,
                "parenchymalFillPercent": 50, "ptosis": "none", "breastVolumeMl": null },
              "right": { "baseWidthCm": 12.6, "upperPinchCm": 1.9, "ptosis": "glandular",
                "takes": { "baseWidthCm": 2 }, "readBy": { "upperPinchCm": "surface-scan" } } }
            """;

    private Samples() {}

    public static Case ordinary() {
        return CaseFile.read(CASE.getBytes(java.nio.charset.StandardCharsets.UTF_8), "sample", CaseRules.FORM_ONLY);
    }

    public static Device gel(String id, double volumeMl, double widthCm) {
        return new Device(id, "Invented line", Fill.GEL, Surface.SMOOTH, Profile.MODERATE_PLUS, volumeMl, Optional.empty(),
                widthCm, widthCm, 4.1);
    }

    public static Device saline(String id, double volumeMl, double widthCm) {
        return new Device(id, "Invented line", Fill.SALINE, Surface.SMOOTH, Profile.FULL, volumeMl,
                Optional.of(new Band(volumeMl, volumeMl + 25)), widthCm, widthCm, 4.4);
    }

    /** A plan with one of everything; its figures are made up and not the engine's. */
    public static Plan plan(Case of) {
        SideFit fit = new SideFit(Verdict.TIGHT, List.of(new Note("base-widened", "the breast becomes 1.2 cm wider")),
                List.of(new Note("gap-small", "1.4 cm remain between the breasts")), OptionalDouble.of(0.1 + 0.2),
                OptionalDouble.of(-12.5), OptionalDouble.of(8.0), OptionalDouble.of(0.4), OptionalDouble.of(0.81),
                OptionalDouble.of(2.0 / 3), Optional.of(Measure.BASE_WIDTH), Optional.of(new Band(2.3, 3.3)),
                Optional.of(new Band(46, 52)), List.of(new Note("base-width-more", "base width 12.6 cm would remove it")));
        SideFit bare = new SideFit(Verdict.OUTSIDE, List.of(new Note("width-over-base", "11.9 cm is wider than 11.0 cm")),
                List.of(), OptionalDouble.empty(), OptionalDouble.empty(), OptionalDouble.empty(), OptionalDouble.empty(),
                OptionalDouble.empty(), OptionalDouble.empty(), Optional.empty(), Optional.empty(), Optional.empty(), List.of());
        Candidate full = new Candidate(gel("G-290", 290, 11.0), fit, bare, Optional.of(incision()),
                Optional.of(new Candidate.FollowUp("US-2020", 5, 8, List.of(6, 9, 12, 15, 18),
                        List.of(5, 7, 9, 11, 13, 15, 17, 19), 20, "first at 5 to 6 years, then every 2 to 3",
                        List.of(new Candidate.Outcome("capsular contracture", 10, 9, 19, "patient", List.of("cohort A"))))),
                Optional.of(new Candidate.Ripple(0.3, "for ranking only")));
        Candidate open = new Candidate(saline("S-300", 300, 11.4), bare, fit, Optional.empty(), Optional.empty(),
                Optional.empty());
        return new Plan(of, "Invented list", NO_DIGEST, List.of(), List.of(new Note("invented-catalogue", "it is invented")),
                limits(Side.LEFT), none(Side.RIGHT), List.of(full, open),
                List.of(new DevicePair("G-290", "S-300", 290, 310, OptionalDouble.of(5), 0.1, Verdict.FITS,
                        List.of(new Note("pair-not-seen", "5 mL remain")))));
    }

    private static SideLimits limits(Side side) {
        return new SideLimits(side, OptionalDouble.of(11.0), OptionalDouble.of(0.55), OptionalDouble.of(300),
                Optional.of(new Band(265, 330)), OptionalDouble.of(8.0), OptionalDouble.of(0.4),
                List.of(new SideLimits.FoldMethod("volume rows", 8.0, true, "the plan uses it")), Optional.of(Pocket.DUAL_PLANE),
                List.of(new Note("second-reading", "read the base width once more")), List.of("foldPinchCm"),
                List.of(new Working("width ceiling", "12.4 - (1.0 + 1.8) / 2", 11.0, "cm", "common practice, no source",
                                Status.PRACTICE),
                        new Working("pocket", "upper pinch 1.8 below 2.0: dual-plane", Double.NaN, "",
                                "common practice, no source", Status.PRACTICE)));
    }

    private static SideLimits none(Side side) {
        return new SideLimits(side, OptionalDouble.empty(), OptionalDouble.empty(), OptionalDouble.empty(), Optional.empty(),
                OptionalDouble.empty(), OptionalDouble.empty(), List.of(), Optional.empty(),
                List.of(new Note("volume-incomplete", "the base width is not taken")), List.of("baseWidthCm"), List.of());
    }

    private static Candidate.Incision incision() {
        return new Candidate.Incision(3.3, OptionalDouble.of(3.6), 4.0, Route.INFRAMAMMARY, "funnel", "published rows, read");
    }

    /** A draft as {@code plan --save} leaves it. */
    public static ConsultRecord draft() {
        Case of = ordinary();
        return ConsultRecord.draft(of, planJson(of), versions(), "QT", NOON);
    }

    private static String planJson(Case of) {
        return PlanJson.write(plan(of), "0.1.0").strip();
    }

    private static Versions versions() {
        return new Versions("0.1.0", "Invented list", "2026-01-01", NO_DIGEST, true, NO_DIGEST);
    }

    /** A settled draft with every field set. */
    public static ConsultRecord settled() {
        ConsultRecord draft = draft();
        Case withTakes = draft.inputs().withChest(draft.inputs().chest()
                .with(Measure.INTERMAMMARY, new Reading(2.5, "2,5", ReadBy.HAND, 3)));
        return new ConsultRecord(draft.id(), 1, draft.status(), false, withTakes,
                List.of(new TypedAnswer("baseWidthCm", Optional.empty(), "12.4 12,6"),
                        new TypedAnswer("ptosis", Optional.of(Side.RIGHT), "glandular")),
                draft.planJson(), Optional.of(settlement(Side.LEFT, gel("G-290", 290, 11.0), 290)),
                Optional.of(settlement(Side.RIGHT, saline("S-300", 300, 11.4), 310)),
                List.of(new Considered(gel("G-320", 320, 11.5), List.of("LEFT: 0.5 cm wider than the ceiling"))),
                List.of(new Topic("not-lifetime", "not lifetime devices", true), new Topic("imaging", "imaging", false)),
                Optional.of(new FollowUp("US-2020", "the issuer", "the source", "read", "first at 5 to 6 years",
                        List.of(Side.LEFT), List.of(reminder("2031-03-04", 1)), List.of(reminder("2032-03-04", 2)))),
                List.of(new OutcomeShown("capsular contracture", 10, 9, 19.5, "patient", List.of("cohort A"), "read")),
                List.of(new OverrideShown("VOL-12", "starting volume at 12.0 cm", 300, 290, "mL", LocalDate.of(2026, 2, 1),
                        "my own series")),
                draft.versions(), draft.authorship(), Optional.empty());
    }

    private static FollowUp.Reminder reminder(String date, long id) {
        return new FollowUp.Reminder(LocalDate.parse(date), new UUID(0x4000L, 0x8000000000000000L + id));
    }

    private static Settlement settlement(Side side, Device device, double fillMl) {
        return new Settlement(side, device, fillMl, Optional.of(Pocket.DUAL_PLANE),
                new Settlement.Fold(OptionalDouble.of(8.0), OptionalDouble.of(0.4), "lower the fold by 0.4 cm"),
                Optional.of(Route.INFRAMAMMARY), Optional.of(incision()),
                List.of(gel("G-270", 270, 10.7), gel("G-310", 310, 11.3)), Optional.of(Verdict.TIGHT),
                List.of("0.2 cm below the width ceiling"), List.of("the breast becomes 1.2 cm wider"),
                Optional.of("she accepts a wider base"));
    }

    public static Amendment amendment(int version, String sha256) {
        return new Amendment(version, sha256, "wrong side typed", "QT", NOON.plusSeconds(3600),
                List.of(new Amendment.FieldChange("settled.right.fillMl", "310", "320")));
    }
}
