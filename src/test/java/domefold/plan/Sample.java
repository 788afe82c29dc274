package domefold.plan;

import domefold.device.Catalogue;
import domefold.device.Device;
import domefold.device.Fill;
import domefold.device.Profile;
import domefold.device.Surface;
import domefold.evidence.Evidence;
import domefold.outcome.Band;
import domefold.outcome.Note;
import domefold.patient.Breast;
import domefold.patient.Case;
import domefold.patient.HealthQuestion;
import domefold.patient.Measure;
import domefold.patient.Ptosis;
import domefold.patient.Readings;
import domefold.patient.Side;
import domefold.store.EvidenceFiles;
import java.time.LocalDate;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Invented readings and devices for the tests of the plan. */
final class Sample {
    static final Evidence SHIPPED = EvidenceFiles.shipped();

    /** An ordinary side. */
    static final Readings SIDE = Readings.NONE.with(Measure.STERNAL_NOTCH_TO_NIPPLE, 19.8)
            .with(Measure.NIPPLE_TO_FOLD, 6.4).with(Measure.NIPPLE_TO_FOLD_STRETCHED, 7.5)
            .with(Measure.BASE_WIDTH, 12.5).with(Measure.AREOLA, 3.8).with(Measure.SKIN_STRETCH, 2.5)
            .with(Measure.UPPER_PINCH, 2.6).with(Measure.FOLD_PINCH, 1.2).with(Measure.MEDIAL_PINCH, 1.0)
            .with(Measure.LATERAL_PINCH, 2.0).with(Measure.PARENCHYMAL_FILL, 50);

    static final Readings PATIENT = Readings.NONE.with(Measure.AGE, 31).with(Measure.HEIGHT, 166)
            .with(Measure.WEIGHT, 58).with(Measure.THORACIC_PERIMETER, 74);

    private Sample() {}

    /** An ordinary case with these readings on both sides. */
    static Case with(Readings side) {
        return with(side, side);
    }

    static Case with(Readings left, Readings right) {
        Map<HealthQuestion, Boolean> history = new EnumMap<>(HealthQuestion.class);
        for (HealthQuestion question : HealthQuestion.values()) {
            history.put(question, false);
        }
        return Case.empty("K-1", LocalDate.of(2026, 3, 4)).withPatient(PATIENT).withHistory(history)
                .withChest(Readings.NONE.with(Measure.INTERMAMMARY, 3.0))
                .withSide(Side.LEFT, new Breast(left, Optional.of(Ptosis.NONE)))
                .withSide(Side.RIGHT, new Breast(right, Optional.of(Ptosis.NONE)));
    }

    /** The ordinary case with the four readings of the starting volume rows. */
    static Case volume(double base, double skin, double stretched, double fill) {
        return with(SIDE.with(Measure.BASE_WIDTH, base).with(Measure.SKIN_STRETCH, skin)
                .with(Measure.NIPPLE_TO_FOLD_STRETCHED, stretched).with(Measure.PARENCHYMAL_FILL, fill));
    }

    static Device gel(double ml, double widthCm, double projectionCm) {
        return new Device("gel-" + ml + "-" + widthCm, "sample", Fill.GEL, Surface.SMOOTH, Profile.MODERATE_PLUS, ml,
                Optional.empty(), widthCm, widthCm, projectionCm);
    }

    static Device saline(double ml, double widthCm, double projectionCm) {
        return new Device("saline-" + ml + "-" + widthCm, "sample", Fill.SALINE, Surface.SMOOTH, Profile.MODERATE_PLUS,
                ml, Optional.of(new Band(ml, ml + 30)), widthCm, widthCm, projectionCm);
    }

    static Catalogue list(Device... devices) {
        return new Catalogue("sample", "", "", "0", true, List.of(devices));
    }

    static Plan plan(Case of, Device... devices) {
        return Planner.plan(of, list(devices), SHIPPED, PlanOptions.DEFAULT);
    }

    static SideLimits left(Case of) {
        return plan(of).left();
    }

    static boolean says(List<Note> notes, String code) {
        return notes.stream().anyMatch(note -> note.code().equals(code));
    }

    static String text(List<Note> notes, String code) {
        return notes.stream().filter(note -> note.code().equals(code)).map(Note::text).findFirst().orElseThrow();
    }
}
