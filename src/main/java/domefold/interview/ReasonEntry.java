package domefold.interview;

import domefold.patient.Side;
import domefold.plan.Plan;
import domefold.plan.Verdict;
import java.util.List;
import java.util.Optional;

/** The surgeon's own reason, asked only where a settled device lies outside the limits of its side. */
final class ReasonEntry implements Question {
    @Override
    public String id() {
        return "reason";
    }

    @Override
    public Room room() {
        return Room.SETTLE;
    }

    @Override
    public String prompt() {
        return "Why this device, though it lies outside";
    }

    @Override
    public String expects() {
        return "your reason, in words; no name of the patient";
    }

    @Override
    public boolean required() {
        return true;
    }

    @Override
    public boolean answered(Dossier dossier) {
        return dossier.choices().reasonTyped().isPresent();
    }

    @Override
    public boolean pointless(Dossier dossier, Guide guide) {
        if (dossier.choices().settled().isEmpty() || !Ready.forPlan(dossier.patientCase())) {
            return true;
        }
        Plan plan = guide.planner().apply(dossier.patientCase());
        for (Side side : Side.values()) {
            Optional<Verdict> verdict = dossier.choices().on(side).deviceId()
                    .flatMap(id -> SettleQuestions.candidate(plan, id)).map(c -> c.side(side).verdict());
            if (verdict.isPresent() && verdict.get() == Verdict.OUTSIDE) {
                return false;
            }
        }
        return true;
    }

    @Override
    public Taken answer(String typed, Dossier dossier, Guide guide) {
        return Taken.quietly(dossier.withChoices(dossier.choices().withReason(typed.strip())));
    }

    @Override
    public Optional<String> shown(Dossier dossier) {
        return dossier.choices().reasonTyped();
    }

    @Override
    public List<String> help(Guide guide) {
        return List.of("A device outside the limits can be settled, with your reason; the reason goes into the record.");
    }
}
