package domefold.screen;

import domefold.evidence.Constants;
import domefold.evidence.Evidence;
import domefold.followup.FollowUps;
import domefold.followup.course.Strategy;
import domefold.followup.course.Watch;
import domefold.followup.schedule.Schedule;
import domefold.followup.schedule.Schedules;
import domefold.patient.Setting;
import java.util.List;
import java.util.Optional;

/**
 * What the years of owning a device are computed under, each open to change.
 *
 * @param schedule id of the imaging schedule, empty while none is chosen
 * @param strategy how an exam is done
 * @param adherence share of the exams attended, 0 to 1
 * @param horizonYears how far exams are counted
 */
record Assumptions(Optional<String> schedule, Strategy strategy, double adherence, int horizonYears) {
    static final int LONGEST_HORIZON_YEARS = 60;

    /** What the consult has chosen, and the stated defaults for the rest. */
    static Assumptions of(Setting setting, Evidence evidence) {
        Optional<Schedule> chosen = setting.surveillance().flatMap(Schedules.of(evidence)::find);
        return new Assumptions(chosen.map(Schedule::id), usual(chosen), evidence.constants().value("FU-ADHERENCE"),
                FollowUps.horizonYears(setting, evidence));
    }

    /** MRI where the schedule names nothing else, and otherwise ultrasound that MRI confirms. */
    static Strategy usual(Optional<Schedule> schedule) {
        return schedule.filter(s -> s.modality().startsWith("MRI")).map(s -> Strategy.MRI).orElse(Strategy.ULTRASOUND_THEN_MRI);
    }

    Optional<Schedule> scheduleIn(Evidence evidence) {
        return schedule.flatMap(Schedules.of(evidence)::find);
    }

    Watch watch(Constants constants) {
        return Watch.of(constants, strategy).withAdherence(adherence);
    }

    Assumptions withSchedule(String id) {
        return new Assumptions(Optional.of(id), strategy, adherence, horizonYears);
    }

    Assumptions withStrategy(Strategy changed) {
        return new Assumptions(schedule, changed, adherence, horizonYears);
    }

    Assumptions withAdherence(double changed) {
        return new Assumptions(schedule, strategy, changed, horizonYears);
    }

    Assumptions withHorizon(int years) {
        return new Assumptions(schedule, strategy, adherence, years);
    }

    Assumptions nextStrategy() {
        return withStrategy(Strategy.values()[(strategy.ordinal() + 1) % Strategy.values().length]);
    }

    /** The next lower of the steps, past the last one the first again. */
    Assumptions nextAdherence(Constants constants) {
        List<Double> steps = List.of(1.0, 0.75, 0.5, 0.25, constants.value("FU-ADHERENCE-SEEN"), 0.0);
        return withAdherence(steps.stream().filter(step -> step < adherence).findFirst().orElse(steps.get(0)));
    }

    /** The next schedule of the table. */
    Assumptions nextSchedule(Evidence evidence) {
        List<String> ids = Schedules.of(evidence).ids();
        return withSchedule(ids.get((schedule.map(ids::indexOf).orElse(-1) + 1) % ids.size()));
    }

    /** The next horizon that ends in 0 or 5, past 40 years 5 again. */
    Assumptions nextHorizon() {
        int next = (horizonYears / 5 + 1) * 5;
        return withHorizon(next > 40 ? 5 : next);
    }
}
