package domefold.screen;

import domefold.canvas.Role;
import domefold.evidence.Status;
import domefold.followup.course.GelCourse;
import domefold.followup.course.LifeCourse;
import domefold.followup.course.Ownership;
import domefold.followup.course.Strategy;
import domefold.followup.schedule.ExamPlan;
import domefold.outcome.Numbers;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/** What is said about an exam before it is advised: what it looks for, what follows either result, what harm it can do. */
final class TestStrips {
    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("d MMM yyyy", Locale.ENGLISH);

    private TestStrips() {}

    static void write(StripBuilder page, Owning owning) {
        if (!owning.anyGel()) {
            return;
        }
        page.part("About the exam itself");
        said(page, "What it looks for", "A broken shell. Neither ultrasound nor MRI of this kind is a test for contracture, lymphoma"
                + " or symptoms of the whole body.");
        said(page, "If it raises an alarm", alarm(owning.now().strategy()));
        said(page, "If it finds nothing", nothing(owning));
        said(page, "What harm it may do without need", harm(owning));
        page.say("What is said here follows criteria for decision aids about screening (Joseph-Williams et al., Med Decis Making"
                + " 2014;34:699-710; their wording " + Status.MEMORY_HIGH.words() + "). The course is our own model ("
                + Status.PROPOSAL.words() + ").", Role.FAINT);
    }

    private static void said(StripBuilder page, String question, String answer) {
        page.say(question, Role.LABEL);
        page.item("  ", answer, Role.BODY);
    }

    private static String alarm(Strategy strategy) {
        return strategy == Strategy.ULTRASOUND
                ? "Under this assumption an operation follows at once; commonly MRI confirms a positive ultrasound first (common practice, no source)."
                : strategy == Strategy.MRI ? "An operation is talked over; MRI too takes intact implants for ruptured ones."
                : "A positive ultrasound is confirmed by MRI before any operation (common practice, no source).";
    }

    private static String nothing(Owning owning) {
        String meanwhile = " Until then a change of shape, size or firmness, a lump, a swelling or pain is looked into at once.";
        return owning.years().stream().map(Ownership::plan).filter(plan -> !plan.densestYears().isEmpty()).findFirst()
                .map(plan -> "The next exam of the schedule follows. Earliest dates " + days(plan.densestFrom(owning.from()))
                        + "; latest dates " + days(plan.sparsestFrom(owning.from())) + ", for an operation on "
                        + DAY.format(owning.from()) + ". " + ExamPlan.DATE_RULE + meanwhile)
                .orElse("No next exam is stated here." + meanwhile);
    }

    private static String days(List<LocalDate> dates) {
        return dates.isEmpty() ? "none" : dates.stream().map(DAY::format).collect(Collectors.joining(", "));
    }

    private static String harm(Owning owning) {
        String unknown = " Some ruptures that are found would never have caused trouble; how many is not known.";
        return owning.years().stream().flatMap(own -> own.byYearShown().stream()).findFirst().map(TestStrips::counts)
                .orElse("False alarms, and operations that find the implant intact; not computed here.") + unknown;
    }

    private static String counts(GelCourse course) {
        return "Of 100 women by year " + course.horizonYears() + ", " + Numbers.range(course.over(LifeCourse::falseAlarms), 0)
                + " false alarms and " + Numbers.range(course.over(LifeCourse::needlessOperations), 0)
                + " operations that find the implant intact, for " + Numbers.range(course.over(LifeCourse::found), 0)
                + " ruptures found, with ruptures as often as in " + course.runs().stream().map(run -> run.cohort().study()).distinct()
                .collect(Collectors.joining(" and ")) + ".";
    }
}
