package domefold.screen;

import domefold.canvas.Role;
import domefold.canvas.TextWidth;
import domefold.followup.course.AccuracySpread;
import domefold.followup.course.DeflationCourse;
import domefold.followup.course.GelCourse;
import domefold.followup.course.LifeCourse;
import domefold.followup.course.Ownership;
import domefold.followup.shown.Framing;
import domefold.outcome.Band;
import domefold.outcome.Numbers;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** What watching one device comes to, the spread over every published accuracy of the test beside it. */
final class CourseCell {
    private static final int NAME = 19;
    private static final int NUMBER = 9;

    private CourseCell() {}

    static Cell of(StripBuilder page, Ownership own, Owning owning) {
        if (own.deflation().isPresent()) {
            return deflation(page, own, own.deflation().get());
        }
        return own.byYearShown().map(course -> gel(page, own, course, owning))
                .orElseGet(() -> page.text("not known: no comparable cohort fixes a curve", Role.FAINT));
    }

    private static Cell deflation(StripBuilder page, Ownership own, DeflationCourse course) {
        String amount = course.beyondData() ? "no data that far" : Framing.both(course.deflatedPer100());
        return StripBuilder.stack(List.of(
                page.text(own.plan().examsHigh() == 0 ? "Deflation is seen at once: no exam, no false alarm, no silent year."
                        : "Deflation is seen at once; the schedule asks for its exams all the same. What they come to is not"
                        + " computed for saline.", Role.BODY),
                page.text("deflated by year " + course.horizonYears() + ": " + amount, Role.BODY),
                page.text("by the curves fitted to " + course.cohorts().stream().map(cohort -> cohort.study()
                        + (cohort.unverified() ? " (from memory)" : "")).collect(Collectors.joining(", ")),
                        course.cohorts().stream().anyMatch(cohort -> cohort.unverified()) ? Role.CAUTION : Role.FAINT)));
    }

    private static Cell gel(StripBuilder page, Ownership own, GelCourse course, Owning owning) {
        if (!own.plan().stated()) {
            return unwatched(page, course, own);
        }
        List<Cell> cells = new ArrayList<>();
        Optional<AccuracySpread> spread = own.accuracySpread();
        cells.add(page.text(TextWidth.padRight("", NAME) + TextWidth.padLeft("in use", NUMBER)
                + TextWidth.padLeft("published", NUMBER + 1), Role.LABEL));
        line(page, cells, "exams attended", course.over(LifeCourse::exams), spread.map(AccuracySpread::exams), 0);
        line(page, cells, "false alarms", course.over(LifeCourse::falseAlarms), spread.map(AccuracySpread::falseAlarms), 0);
        line(page, cells, "confirming MRI", course.over(LifeCourse::confirmations), spread.map(AccuracySpread::confirmations), 0);
        line(page, cells, "operations caused", course.over(LifeCourse::operations), spread.map(AccuracySpread::operations), 0);
        line(page, cells, "  rupture found", course.over(LifeCourse::found), spread.map(AccuracySpread::found), 0);
        line(page, cells, "  implant intact", course.over(LifeCourse::needlessOperations),
                spread.map(AccuracySpread::needlessOperations), 0);
        line(page, cells, "still silent", course.over(LifeCourse::silentAtHorizon), spread.map(AccuracySpread::silentAtHorizon), 0);
        course.yearsToDetection().ifPresentOrElse(years -> line(page, cells, "years to detection", years,
                spread.flatMap(AccuracySpread::yearsToDetection), 1),
                () -> cells.add(page.text(TextWidth.padRight("years to detection", NAME) + TextWidth.padLeft("none", NUMBER), Role.BODY)));
        cells.add(page.text("Still silent at year " + course.horizonYears() + ": "
                + Framing.both(course.over(LifeCourse::silentAtHorizon)), Role.BODY));
        owning.before(own).flatMap(Ownership::byYearShown).ifPresent(before -> cells.add(page.text("as the consult has it: "
                + counted(before), Role.QUESTION)));
        spread.ifPresent(all -> cells.add(page.text("published: " + Numbers.count(all.pairs(), "accuracy", "accuracies")
                + " of the test in turn, those from memory included", Role.FAINT)));
        own.asAttended().ifPresent(seen -> cells.add(page.text("at the attendance seen in large studies (under 5 %): "
                + Numbers.range(seen.over(LifeCourse::silentAtHorizon), 0) + " still silent", Role.FAINT)));
        cells.add(page.text("by the curves fitted to " + cohorts(course), Role.FAINT));
        own.byHorizon().filter(GelCourse::beyondData).ifPresent(far -> cells.add(page.text("to year " + far.horizonYears()
                + ": no data after year " + Math.round(YearStrips.dataYears(own)), Role.FAINT)));
        return StripBuilder.stack(cells);
    }

    /** Where a schedule states no exam there is nothing to count but the ruptures. */
    private static Cell unwatched(StripBuilder page, GelCourse course, Ownership own) {
        return StripBuilder.stack(List.of(
                page.text("No exam years are stated for it: no exam, alarm or operation is counted.", Role.BODY),
                page.text("Without any exam, silent at year " + course.horizonYears() + ": "
                        + Framing.both(course.over(LifeCourse::silentAtHorizon)), Role.BODY),
                page.text("by the curves fitted to " + cohorts(course), Role.FAINT),
                page.text("past year " + Math.round(YearStrips.dataYears(own)) + ": no data", Role.FAINT)));
    }

    private static String cohorts(GelCourse course) {
        return course.runs().stream().map(run -> run.cohort().study() + (run.cohort().unverified() ? " (from memory)" : ""))
                .distinct().collect(Collectors.joining(", "));
    }

    private static String counted(GelCourse course) {
        return Numbers.range(course.over(LifeCourse::exams), 0) + " exams, " + Numbers.range(course.over(LifeCourse::falseAlarms), 0)
                + " false alarms, " + Numbers.range(course.over(LifeCourse::operations), 0) + " operations, "
                + Numbers.range(course.over(LifeCourse::silentAtHorizon), 0) + " still silent by year " + course.horizonYears();
    }

    private static void line(StripBuilder page, List<Cell> cells, String name, Band inUse, Optional<Band> published, int decimals) {
        cells.add(page.text(TextWidth.padRight(name, NAME) + TextWidth.padLeft(Numbers.range(inUse, decimals), NUMBER)
                + published.map(band -> TextWidth.padLeft(Numbers.range(band, decimals), NUMBER + 1)).orElse(""), Role.BODY));
    }
}
