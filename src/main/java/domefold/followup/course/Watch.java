package domefold.followup.course;

import domefold.evidence.Constants;

/**
 * How a woman is watched.
 *
 * <p>Assumptions, each open to change: exams are missed independently of each other; errors of a test are independent
 * between implants, between exams, and between ultrasound and MRI. With n implants looked at, sensitivity a and specificity
 * c per implant, an intact woman has an alarm with 1 - c^n, and a woman with one ruptured implant with
 * 1 - (1 - a) c^(n-1): an alarm on the sound side also leads to the operation that finds the rupture.
 *
 * @param adherence share of the exams that are attended, 0 to 1
 * @param implants implants an exam looks at: 2 where ruptures are counted per woman, 1 where they are counted per implant
 */
public record Watch(Strategy strategy, TestAccuracy ultrasound, TestAccuracy mri, double adherence, int implants) {
    public Watch {
        if (!(adherence >= 0 && adherence <= 1) || implants < 1) {
            throw new IllegalArgumentException("adherence lies between 0 and 1, and at least one implant is looked at");
        }
    }

    /** Accuracy and adherence as the constants in use say, for ruptures counted per woman. */
    public static Watch of(Constants constants, Strategy strategy) {
        return new Watch(strategy, TestAccuracy.ultrasound(constants), TestAccuracy.mri(constants),
                constants.value("FU-ADHERENCE"), (int) Math.round(constants.value("FU-IMPLANTS")));
    }

    public Watch withAdherence(double changed) {
        return new Watch(strategy, ultrasound, mri, changed, implants);
    }

    public Watch withStrategy(Strategy changed) {
        return new Watch(changed, ultrasound, mri, adherence, implants);
    }

    private TestAccuracy first() {
        return strategy == Strategy.MRI ? mri : ultrasound;
    }

    /** An attended exam of an intact woman raises an alarm. */
    double alarmIfIntact() {
        return alarmIfIntact(first());
    }

    /** An attended exam of a woman with a rupture raises an alarm. */
    double alarmIfRuptured() {
        return alarmIfRuptured(first());
    }

    /** An attended exam of an intact woman ends in an operation. */
    double operationIfIntact() {
        return alarmIfIntact() * (confirms() ? alarmIfIntact(mri) : 1);
    }

    /** An attended exam of a woman with a rupture ends in an operation, which finds it. */
    double operationIfRuptured() {
        return alarmIfRuptured() * (confirms() ? alarmIfRuptured(mri) : 1);
    }

    boolean confirms() {
        return strategy == Strategy.ULTRASOUND_THEN_MRI;
    }

    private double alarmIfIntact(TestAccuracy test) {
        return 1 - Math.pow(test.specificity(), implants);
    }

    private double alarmIfRuptured(TestAccuracy test) {
        return 1 - (1 - test.sensitivity()) * Math.pow(test.specificity(), implants - 1);
    }
}
