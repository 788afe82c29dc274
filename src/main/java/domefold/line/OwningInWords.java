package domefold.line;

import domefold.interview.Interview;
import domefold.outcome.Numbers;
import domefold.plan.Candidate;
import domefold.report.Page;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** What owning the pinned devices asks, as far as it can be said in a few sentences; devices of one course together. */
final class OwningInWords {
    private OwningInWords() {}

    static String of(Interview interview) {
        Page page = new Page();
        List<Candidate> pinned = SideBySide.pinned(interview);
        if (pinned.isEmpty()) {
            return page.paragraph(0, SideBySide.NONE).text();
        }
        Map<Candidate.FollowUp, List<String>> courses = new LinkedHashMap<>();
        pinned.forEach(one -> one.followUp().ifPresent(course ->
                courses.computeIfAbsent(course, unused -> new ArrayList<>()).add(one.device().id())));
        if (courses.isEmpty()) {
            return page.paragraph(0, "No imaging schedule is chosen, so no exam is counted; `go surveillance` chooses one.").text();
        }
        page.line("What owning it asks");
        courses.forEach((course, devices) -> {
            page.heading(String.join(", ", devices));
            sentences(course).forEach(sentence -> page.hanging("  ", sentence));
        });
        page.blank().paragraph(0, "The years drawn out, with cost, rare harms and where figures disagree, are on the full screen: F9 there.");
        return page.text();
    }

    private static List<String> sentences(Candidate.FollowUp course) {
        List<String> lines = new ArrayList<>();
        lines.add("Exams under " + course.schedule() + " to year " + course.horizonYears() + ": "
                + Numbers.range(new domefold.outcome.Band(course.examsLow(), course.examsHigh()), 0)
                + (course.examsHigh() == 0 ? ". " + course.text() : "; densest in years " + SideBySide.years(course.densestYears())
                + ", sparsest in years " + SideBySide.years(course.sparsestYears()) + "."));
        course.outcomes().forEach(outcome -> lines.add(SideBySide.published(outcome) + "."));
        return lines;
    }
}
