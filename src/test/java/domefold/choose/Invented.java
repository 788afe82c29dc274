package domefold.choose;

import domefold.advise.Advisor;
import domefold.device.Catalogue;
import domefold.device.Device;
import domefold.device.Fill;
import domefold.device.Profile;
import domefold.device.Surface;
import domefold.evidence.Constants;
import domefold.evidence.Evidence;
import domefold.outcome.Band;
import domefold.patient.Breast;
import domefold.patient.Case;
import domefold.patient.HealthQuestion;
import domefold.patient.Measure;
import domefold.patient.Pocket;
import domefold.patient.Ptosis;
import domefold.patient.Readings;
import domefold.patient.Route;
import domefold.patient.Setting;
import domefold.patient.Side;
import domefold.patient.Wishes;
import domefold.plan.Plan;
import domefold.plan.PlanOptions;
import domefold.store.CatalogueFile;
import domefold.store.EvidenceFiles;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Random;
import java.util.Set;

/** Invented readings and devices for the tests of choosing. */
final class Invented {
    static final Evidence SHIPPED = EvidenceFiles.shipped();
    static final Constants CONSTANTS = SHIPPED.constants();
    static final Catalogue LADDER = CatalogueFile.invented();

    static final Readings SIDE = Readings.NONE.with(Measure.STERNAL_NOTCH_TO_NIPPLE, 19.8)
            .with(Measure.NIPPLE_TO_FOLD, 6.4).with(Measure.NIPPLE_TO_FOLD_STRETCHED, 7.5)
            .with(Measure.BASE_WIDTH, 12.5).with(Measure.AREOLA, 3.8).with(Measure.SKIN_STRETCH, 2.5)
            .with(Measure.UPPER_PINCH, 2.6).with(Measure.FOLD_PINCH, 1.2).with(Measure.MEDIAL_PINCH, 1.0)
            .with(Measure.LATERAL_PINCH, 2.0).with(Measure.PARENCHYMAL_FILL, 50);

    private Invented() {}

    static Case of(Readings left, Readings right) {
        Map<HealthQuestion, Boolean> history = new EnumMap<>(HealthQuestion.class);
        for (HealthQuestion question : HealthQuestion.values()) {
            history.put(question, false);
        }
        return Case.empty("K-1", LocalDate.of(2026, 3, 4))
                .withPatient(Readings.NONE.with(Measure.AGE, 31).with(Measure.HEIGHT, 166).with(Measure.WEIGHT, 58))
                .withHistory(history)
                .withSide(Side.LEFT, new Breast(left, Optional.of(Ptosis.NONE)))
                .withSide(Side.RIGHT, new Breast(right, Optional.of(Ptosis.NONE)))
                .withSetting(new Setting(Optional.of("US-2020"), Optional.of(Route.INFRAMAMMARY), Optional.of(false),
                        Optional.of(Pocket.DUAL_PLANE), OptionalInt.of(20), Set.of()))
                .withWishes(new Wishes(Optional.of(Wishes.UpperPole.EVEN), OptionalDouble.of(300),
                        Map.of(Wishes.Matter.SHORT_SCAR, 4, Wishes.Matter.FEW_IMAGING_VISITS, 3)));
    }

    /** Volumes of the breasts as entered. */
    static Case withVolumes(double leftMl, double rightMl) {
        return of(SIDE.with(Measure.BREAST_VOLUME, leftMl), SIDE.with(Measure.BREAST_VOLUME, rightMl));
    }

    static Plan plan(Case of) {
        return plan(of, LADDER);
    }

    static Plan plan(Case of, Catalogue catalogue) {
        return new Advisor(catalogue, SHIPPED, PlanOptions.DEFAULT).apply(of);
    }

    static Catalogue list(List<Device> devices) {
        return new Catalogue("invented", "", "", "0", true, devices);
    }

    /** Devices of odd sizes, for tests that must not lean on a tidy ladder. */
    static List<Device> random(Random random, int count) {
        List<Device> devices = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            Fill fill = random.nextBoolean() ? Fill.GEL : Fill.SALINE;
            double ml = 220 + random.nextInt(220);
            double tau = 0.26 + 0.2 * random.nextDouble();
            double widthCm = Math.rint(10 * Math.cbrt(4 * ml / (Math.PI * tau * 0.66))) / 10;
            devices.add(new Device("d" + i, "invented", fill, random.nextInt(5) == 0 ? Surface.TEXTURED : Surface.SMOOTH,
                    Profile.values()[random.nextInt(5)], ml,
                    fill == Fill.SALINE ? Optional.of(new Band(ml, ml + random.nextInt(40))) : Optional.empty(),
                    widthCm, widthCm, Math.rint(10 * tau * widthCm) / 10));
        }
        return devices;
    }
}
