package domefold.followup;

import domefold.device.Device;
import domefold.evidence.Evidence;
import domefold.followup.schedule.ExamPlan;
import domefold.followup.schedule.Schedules;
import domefold.patient.Setting;
import domefold.plan.Candidate;
import java.util.List;
import java.util.Optional;

/** What one device will ask for, as the planner attaches it to a candidate. */
public final class FollowUps {
    private FollowUps() {}

    /**
     * Exams under the chosen schedule and published outcomes for this device; empty while no schedule is chosen.
     *
     * @throws domefold.outcome.Refusal if the chosen schedule is unknown
     */
    public static Optional<Candidate.FollowUp> forDevice(Device device, Setting setting, Evidence evidence) {
        return setting.surveillance().map(id -> {
            ExamPlan plan = ExamPlan.of(Schedules.of(evidence).get(id, "setting.surveillance"), device.fill(),
                    horizonYears(setting, evidence));
            return new Candidate.FollowUp(id, plan.examsLow(), plan.examsHigh(), plan.sparsestYears(),
                    plan.densestYears(), plan.horizonYears(), plan.text(), List.of());
        });
    }

    /** The horizon in use: the surgeon's, or the stated default. */
    public static int horizonYears(Setting setting, Evidence evidence) {
        return setting.horizonYears().orElseGet(() -> (int) Math.round(evidence.constants().value("FU-HORIZON")));
    }
}
