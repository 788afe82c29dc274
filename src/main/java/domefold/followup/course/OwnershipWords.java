package domefold.followup.course;

import domefold.evidence.Status;
import domefold.followup.shown.Framing;
import domefold.followup.shown.OutcomeRow;
import domefold.followup.shown.RiskFigure;
import domefold.followup.survival.Cohort;
import domefold.outcome.Band;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** The years of owning a device in sentences, for a face that has no room to draw and for print. */
public final class OwnershipWords {
    private OwnershipWords() {}

    /** One sentence a line, the schedule first. */
    public static List<String> lines(Ownership own) {
        List<String> lines = new ArrayList<>();
        lines.add(own.plan().text());
        if (own.plan().stated()) {
            lines.add("Exams by year " + own.plan().horizonYears() + ": " + span(new Band(own.plan().examsLow(),
                    own.plan().examsHigh()), 0) + ".");
        }
        lines.add(own.symptom());
        own.byYearShown().ifPresent(course -> lines.addAll(gel(own, course)));
        own.byHorizon().filter(GelCourse::beyondData).ifPresent(course -> lines.add("Silent rupture by year "
                + course.horizonYears() + ": no data after year " + lastYear(course) + "."));
        own.deflation().ifPresent(deflation -> lines.add(deflation(deflation)));
        own.outcomes().forEach(figure -> lines.add(outcome(figure)));
        own.cost().ifPresent(cost -> lines.addAll(cost(cost)));
        return lines;
    }

    private static List<String> gel(Ownership own, GelCourse course) {
        List<String> lines = new ArrayList<>();
        lines.add("Silent rupture by year " + course.horizonYears() + ", per 100 women, by the curves fitted to " + cohorts(course.runs().stream()
                .map(GelCourse.Run::cohort).distinct().toList()) + " and both readings of the schedule, "
                + own.watch().strategy().words() + ", " + percent(own.watch().adherence()) + " of exams attended:");
        lines.add("  ruptures found " + span(course.over(LifeCourse::found), 0) + ", still silent "
                + span(course.over(LifeCourse::silentAtHorizon), 0) + course.yearsToDetection()
                        .map(years -> ", found after " + span(years, 1) + " years on average").orElse(""));
        lines.add("  exams attended " + span(course.over(LifeCourse::exams), 0) + ", false alarms "
                + span(course.over(LifeCourse::falseAlarms), 0) + ", confirming MRI "
                + span(course.over(LifeCourse::confirmations), 0) + ", operations that find the implant intact "
                + span(course.over(LifeCourse::needlessOperations), 0));
        own.accuracySpread().ifPresent(spread -> lines.add("  with every published accuracy in turn (" + spread.pairs()
                + "): ruptures found " + span(spread.found(), 0) + ", false alarms " + span(spread.falseAlarms(), 0)
                + ", operations that find the implant intact " + span(spread.needlessOperations(), 0)));
        own.asAttended().ifPresent(seen -> lines.add("  at the attendance seen in large studies (under 5 %): still silent "
                + span(seen.over(LifeCourse::silentAtHorizon), 0)));
        lines.add("  ultrasound: " + accuracy(own.watch().ultrasound()) + "; MRI: " + accuracy(own.watch().mri())
                + "; our own model, " + Status.PROPOSAL.words());
        return lines;
    }

    private static String accuracy(TestAccuracy test) {
        return String.format(Locale.ROOT, "finds %.1f %%, passes %.1f %% per implant, %s (%s)", 100 * test.sensitivity(),
                100 * test.specificity(), test.source(), test.status().words());
    }

    private static String cohorts(List<Cohort> cohorts) {
        return cohorts.stream().map(cohort -> cohort.study() + (cohort.unverified() ? " (from memory)" : ""))
                .collect(Collectors.joining(", "));
    }

    private static int lastYear(GelCourse course) {
        return (int) course.runs().stream().mapToDouble(run -> run.fit().lastTime()).min().orElseThrow();
    }

    private static String deflation(DeflationCourse deflation) {
        String amount = deflation.beyondData() ? "no data so far" : Framing.both(deflation.deflatedPer100());
        return "Deflation by year " + deflation.horizonYears() + ", per 100 women, by the curves fitted to " + cohorts(deflation.cohorts()) + ": "
                + amount + ". It is seen at once: no exams, no silent years.";
    }

    private static String outcome(RiskFigure figure) {
        String who = figure.unit().equals("patient") ? "women" : "implants";
        String mixed = figure.mixesSurfaces() ? "; cohorts hold smooth and textured devices" : "";
        return figure.words() + " by year " + figure.year() + ", per 100 " + who + ": " + Framing.both(figure.per100()) + " ("
                + figure.rows().stream().map(OwnershipWords::cohort).collect(Collectors.joining(", ")) + mixed + ")";
    }

    private static String cohort(OutcomeRow row) {
        return row.study() + " " + row.status().words();
    }

    private static List<String> cost(Cost cost) {
        return Stream.of("Scheduled exams by year " + cost.horizonYears() + ": " + money(cost.imaging(), cost.currency()),
                "Confirming MRI, expected by year " + cost.courseYears() + ": " + money(cost.confirmation(), cost.currency())
                        + (cost.beyondData() ? " (beyond the data)" : ""),
                "First reoperation, expected by the year of the outcomes above: " + money(cost.revision(), cost.currency()))
                .filter(line -> cost.courseYears() > 0 || !line.startsWith("Confirming")).toList();
    }

    private static String money(Optional<Band> amount, String currency) {
        return amount.map(band -> span(band, 0) + " " + currency).orElse("not known, no price entered");
    }

    private static String percent(double share) {
        return String.format(Locale.ROOT, "%.0f %%", 100 * share);
    }

    private static String span(Band band, int decimals) {
        String low = String.format(Locale.ROOT, "%." + decimals + "f", band.low());
        String high = String.format(Locale.ROOT, "%." + decimals + "f", band.high());
        return low.equals(high) ? low : low + " to " + high;
    }
}
