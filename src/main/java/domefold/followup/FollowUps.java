package domefold.followup;

import domefold.basics.Lists;
import domefold.device.Device;
import domefold.evidence.Evidence;
import domefold.followup.schedule.ExamPlan;
import domefold.followup.schedule.Schedules;
import domefold.followup.shown.OutcomeRow;
import domefold.followup.shown.RiskFigure;
import domefold.followup.shown.RiskTable;
import domefold.patient.Setting;
import domefold.plan.Candidate;
import java.util.ArrayList;
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
                    plan.densestYears(), plan.horizonYears(), plan.text(), outcomes(device, evidence));
        });
    }

    /** Published outcomes by the year that devices are compared at, most asked about first. */
    public static List<Candidate.Outcome> outcomes(Device device, Evidence evidence) {
        return Lists.map(figures(device, evidence), figure -> new Candidate.Outcome(
                figure.words(), figure.year(), figure.per100().low(), figure.per100().high(), figure.unit(),
                Lists.map(figure.rows(), OutcomeRow::provenance)));
    }

    /** The same with every published point behind each figure. */
    public static List<RiskFigure> figures(Device device, Evidence evidence) {
        RiskTable table = RiskTable.of(List.of(device), yearShown(evidence), evidence);
        List<RiskFigure> figures = new ArrayList<>();
        for (RiskTable.Row row : table.rows()) {
            row.cells().get(0).ifPresent(figures::add);
        }
        return List.copyOf(figures);
    }

    /** The year by which outcomes are compared. */
    public static int yearShown(Evidence evidence) {
        return (int) Math.round(evidence.constants().value("FU-YEAR-SHOWN"));
    }

    /** The horizon in use: the surgeon's, or the stated default. */
    public static int horizonYears(Setting setting, Evidence evidence) {
        return setting.horizonYears().orElseGet(() -> (int) Math.round(evidence.constants().value("FU-HORIZON")));
    }
}
