package domefold.sheet;

import domefold.device.Device;
import domefold.device.Fill;
import domefold.device.Profile;
import domefold.device.Surface;
import domefold.outcome.Band;
import domefold.patient.Breast;
import domefold.patient.Case;
import domefold.patient.HealthQuestion;
import domefold.patient.Measure;
import domefold.patient.Pocket;
import domefold.patient.Ptosis;
import domefold.patient.ReadBy;
import domefold.patient.Reading;
import domefold.patient.Readings;
import domefold.patient.Route;
import domefold.patient.Setting;
import domefold.patient.Side;
import domefold.patient.Wishes;
import domefold.plan.Candidate;
import domefold.plan.Verdict;
import domefold.record.Authorship;
import domefold.record.ConsultRecord;
import domefold.record.Considered;
import domefold.record.FollowUp;
import domefold.record.OutcomeShown;
import domefold.record.RecordStatus;
import domefold.record.Settlement;
import domefold.record.Topic;
import domefold.record.Versions;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.UUID;

/** An invented consult, whole: what differs between the sides differs in every number. */
public final class SampleRecords {
    public static final String SHA = "0123456789abcdef".repeat(4);
    public static final Device LEFT_GEL = gel("GEL-M-290", 290, 11.0, 4.1);
    public static final Device RIGHT_GEL = gel("GEL-M-330", 330, 11.5, 4.3);
    public static final String PLAN_JSON = """
            {"format":"domefold-plan/1","case":"K-2041",
             "left":{"widthCeilingCm":11.2,"startingVolumeMl":300,"volumeBandMl":{"low":265,"high":330}},
             "right":{"widthCeilingCm":11.75,"startingVolumeMl":325.4,"volumeBandMl":null},
             "candidates":[],"pairs":[]}
            """;

    private SampleRecords() {}

    public static ConsultRecord signed() {
        return withStatus(RecordStatus.SIGNED, false);
    }

    public static ConsultRecord withStatus(RecordStatus status, boolean practice) {
        Instant saved = Instant.parse("2026-03-04T09:41:07Z");
        return new ConsultRecord("K-2041", 1, status, practice, inputs(), List.of(), PLAN_JSON,
                Optional.of(settlement(Side.LEFT, LEFT_GEL)), Optional.of(settlement(Side.RIGHT, RIGHT_GEL)),
                List.of(new Considered(saline(), List.of("LEFT: 0.3 cm wider than the ceiling; \"too wide\""))),
                List.of(new Topic("not-lifetime", "implants are not lifetime devices", true),
                        new Topic("scar", "where the scar lies", false)),
                Optional.of(followUp()),
                List.of(new OutcomeShown("capsular contracture", 10, 9, 19, "patient", List.of("cohort A", "cohort B"), "read"),
                        new OutcomeShown("rupture", 10, 7.2, 7.2, "implant", List.of("cohort C"), "memory-high")),
                List.of(), new Versions("0.1.0", "Invented ladder", "2026-01-05", "ab".repeat(32), true, "cd".repeat(32)),
                new Authorship("Dr A. Ngũgĩ", Instant.parse("2026-03-04T09:12:00Z"), saved,
                        status == RecordStatus.DRAFT ? Optional.empty() : Optional.of(saved)),
                Optional.empty());
    }

    /** The same consult with left and right exchanged in everything. */
    public static ConsultRecord mirrored(ConsultRecord record) {
        return new ConsultRecord(record.id(), record.version(), record.status(), record.practice(),
                record.inputs().mirrored(), record.answers(), record.planJson(),
                record.right().map(settled -> onSide(settled, Side.LEFT)),
                record.left().map(settled -> onSide(settled, Side.RIGHT)), record.considered(), record.topics(),
                record.followUp(), record.outcomes(), record.overrides(), record.versions(), record.authorship(),
                record.amendment());
    }

    private static Settlement onSide(Settlement settled, Side side) {
        return new Settlement(side, settled.device(), settled.fillMl(), settled.pocket(), settled.fold(), settled.route(),
                settled.incision(), settled.openingCm(), settled.neighbours(), settled.verdict(), settled.margins(), settled.reasons(),
                settled.whyOutside());
    }

    public static Settlement settlement(Side side, Device device) {
        boolean left = side == Side.LEFT;
        return new Settlement(side, device, device.nominalMl(), Optional.of(Pocket.DUAL_PLANE),
                new Settlement.Fold(OptionalDouble.of(left ? 8.0 : 8.6), OptionalDouble.of(left ? 0.4 : 0.7),
                        left ? "lower the fold by 0.4 cm" : "lower the fold by 0.7 cm"),
                Optional.of(Route.INFRAMAMMARY),
                Optional.of(new Candidate.Incision(3.3, OptionalDouble.of(3.6), 4.0, Route.INFRAMAMMARY, "funnel", "rows")),
                left ? List.of(gel("GEL-M-270", 270, 10.8, 4.0), RIGHT_GEL)
                        : List.of(LEFT_GEL, gel("GEL-M-360", 360, 11.8, 4.4)),
                Optional.of(Verdict.FITS), List.of(left ? "width +0.2 cm" : "width +0.25 cm"), List.of(), Optional.empty());
    }

    private static FollowUp followUp() {
        return new FollowUp("US-2020", "US FDA labelling guidance", "a published guideline, 2023", "read",
                "imaging 5 to 6 years after surgery, then every 2 to 3 years", List.of(Side.LEFT, Side.RIGHT),
                List.of(reminder("2031-03-04", 1), reminder("2033-03-04", 2)),
                List.of(reminder("2032-03-04", 3), reminder("2035-03-04", 4)));
    }

    private static FollowUp.Reminder reminder(String date, int number) {
        return new FollowUp.Reminder(LocalDate.parse(date),
                UUID.nameUUIDFromBytes(("sample " + number).getBytes(java.nio.charset.StandardCharsets.UTF_8)));
    }

    private static Case inputs() {
        Readings left = Readings.NONE.with(Measure.BASE_WIDTH, new Reading(12.0, "12.0", ReadBy.HAND, 1))
                .with(Measure.NIPPLE_TO_FOLD, new Reading(6.4, "6,4", ReadBy.HAND, 2))
                .with(Measure.BREAST_VOLUME, new Reading(241, "241", ReadBy.SURFACE_SCAN, 1));
        Readings right = Readings.NONE.with(Measure.BASE_WIDTH, new Reading(12.8, "12.8", ReadBy.HAND, 1))
                .with(Measure.NIPPLE_TO_FOLD, new Reading(6.6, "6.6", ReadBy.HAND, 1));
        return Case.empty("K-2041", LocalDate.of(2026, 3, 4))
                .withPatient(Readings.NONE.with(Measure.AGE, new Reading(31, "31", ReadBy.HAND, 1))
                        .with(Measure.HEIGHT, new Reading(166, "166", ReadBy.HAND, 1)))
                .withChest(Readings.NONE.with(Measure.INTER_NIPPLE, new Reading(20.5, "20.5", ReadBy.HAND, 1)))
                .withSide(Side.LEFT, new Breast(left, Optional.of(Ptosis.NONE)))
                .withSide(Side.RIGHT, new Breast(right, Optional.of(Ptosis.GLANDULAR)))
                .withHistory(Map.of(HealthQuestion.NICOTINE, false))
                .withWishes(Wishes.NONE).withSetting(Setting.OPEN);
    }

    private static Device gel(String id, double nominalMl, double widthCm, double projectionCm) {
        return new Device(id, "Round M", Fill.GEL, Surface.SMOOTH, Profile.MODERATE_PLUS, nominalMl, Optional.empty(),
                widthCm, widthCm, projectionCm);
    }

    private static Device saline() {
        return new Device("SAL-L-300", "Round L", Fill.SALINE, Surface.SMOOTH, Profile.LOW, 300,
                Optional.of(new Band(290, 330)), 12.3, 12.3, 3.4);
    }
}
