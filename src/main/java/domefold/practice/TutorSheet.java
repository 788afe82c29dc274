package domefold.practice;

import domefold.device.Catalogue;
import domefold.evidence.Evidence;
import domefold.patient.Case;
import domefold.plan.Plan;
import domefold.plan.PlanOptions;
import domefold.plan.Planner;
import java.util.Collections;
import java.util.Map;
import java.util.TreeMap;

/**
 * A case with its reference marking, so that a tutor can set the same case to many.
 *
 * @param practice the case
 * @param plan the engine's plan over the whole list, with the reference's route and schedule
 * @param reference a plan inside the limits; one of many
 * @param marking the reference, marked: the limits with their working
 * @param flags what must be warned of, by code, with the sentence that raises it
 */
public record TutorSheet(
        PracticeCase practice, Plan plan, FellowPlan reference, Marking marking, Map<String, String> flags) {
    public TutorSheet {
        flags = Collections.unmodifiableMap(new TreeMap<>(flags));
    }

    /** The sheet of a drawn case. */
    public static TutorSheet of(int number, int level, Catalogue catalogue, Evidence evidence, PlanOptions options) {
        return of(PatientDraw.of(number, level, evidence), catalogue, evidence, options);
    }

    /** The sheet of any case, a tutor's own included. */
    public static TutorSheet of(PracticeCase practice, Catalogue catalogue, Evidence evidence, PlanOptions options) {
        Case set = ReferencePlan.settingOn(practice, evidence);
        Plan plan = Planner.plan(set, catalogue, evidence, options);
        FellowPlan reference = ReferencePlan.of(practice, plan, catalogue, evidence);
        return new TutorSheet(practice, plan, reference, Marking.mark(practice, reference, plan, catalogue, evidence),
                Flags.of(plan, evidence.constants()));
    }

    /** Stands at the head of every print of it. */
    public String banner() {
        return PracticeCase.BANNER;
    }
}
