package domefold.practice;

import domefold.evidence.Constants;
import domefold.evidence.Evidence;
import domefold.patient.HealthQuestion;
import domefold.patient.Measure;
import domefold.patient.Reading;
import domefold.patient.Readings;
import java.util.EnumMap;
import java.util.Map;

/**
 * What belongs to the whole woman: age, height, weight, perimeters, health.
 *
 * <p>Means and SDs of height and body mass index are those of the young cohort (Al-Qattan et al. 2019, n = 54), the
 * nearest published to women who ask for augmentation; their correlation is the one at which the cohort's SD of weight
 * comes out too. Ages, perimeters and health shares are assumed.
 */
final class Woman {
    private final Constants constants;
    private final Spread heightCm;
    private final Spread bmi;

    Woman(Evidence evidence) {
        constants = evidence.constants();
        heightCm = new Spread(Published.population(evidence, "height", Published.YOUNG, "mean"),
                Published.population(evidence, "height", Published.YOUNG, "sd"));
        bmi = new Spread(Published.population(evidence, "bmi", Published.YOUNG, "mean"),
                Published.population(evidence, "bmi", Published.YOUNG, "sd"));
    }

    /** The two leanings that other readings go with, standard normal. */
    record Build(double zHeight, double zBmi) {}

    Build build(Dice dice) {
        double zHeight = dice.normal();
        return new Build(zHeight, Mix.of(constants.value("PRA-CORR-HEIGHT-BMI"), zHeight, dice.normal()));
    }

    Readings readings(Build build, double meanVolumeMl, Dice dice) {
        double height = heightCm.normal(build.zHeight());
        double metres = height / 100;
        double weight = bmi.logNormal(build.zBmi()) * metres * metres;
        double youngest = constants.value("PRA-AGE-YOUNGEST");
        double age = Math.min(constants.value("PRA-AGE-OLDEST"),
                youngest + spread("PRA-AGE-OVER").logNormal(dice.normal()));
        double perimeter = spread("PRA-PERIMETER")
                .normal(Mix.of(constants.value("PRA-CORR-BMI-PERIMETER"), build.zBmi(), dice.normal()));
        double bust = perimeter + constants.value("PRA-BUST-OVER-PERIMETER")
                + constants.value("BUS-01-SLOPE") * meanVolumeMl + dice.normal();
        Map<Measure, Reading> taken = new EnumMap<>(Measure.class);
        taken.put(Measure.AGE, Ticks.hand(Math.floor(age)));
        taken.put(Measure.HEIGHT, Ticks.whole(height, 1));
        taken.put(Measure.WEIGHT, Ticks.whole(weight, 1));
        taken.put(Measure.THORACIC_PERIMETER, Ticks.whole(perimeter, 1));
        taken.put(Measure.BUST, Ticks.whole(bust, 1));
        return new Readings(taken);
    }

    Map<HealthQuestion, Boolean> health(Dice dice) {
        Map<HealthQuestion, Boolean> answers = new EnumMap<>(HealthQuestion.class);
        for (HealthQuestion question : HealthQuestion.values()) {
            answers.put(question, false);
        }
        answers.put(HealthQuestion.NICOTINE, dice.chance(constants.value("PRA-NICOTINE") / 100));
        answers.put(HealthQuestion.EARLIER_BREAST_SURGERY, dice.chance(constants.value("PRA-EARLIER-SURGERY") / 100));
        answers.put(HealthQuestion.CHEST_IRRADIATION, dice.chance(constants.value("PRA-IRRADIATION") / 100));
        return answers;
    }

    private Spread spread(String id) {
        return new Spread(constants.value(id + "-MEAN"), constants.value(id + "-SD"));
    }
}
