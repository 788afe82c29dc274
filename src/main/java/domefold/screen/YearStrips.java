package domefold.screen;

import domefold.canvas.Plot;
import domefold.canvas.Role;
import domefold.canvas.TextWidth;
import domefold.canvas.YearLine;
import domefold.device.Fill;
import domefold.followup.course.Ownership;
import domefold.followup.schedule.ExamPlan;
import domefold.followup.survival.CurveValue;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.DoubleBinaryOperator;
import java.util.stream.Collectors;

/** The years: exams on a line, failure over them, and what the exams come to. */
final class YearStrips {
    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("d MMMM yyyy", Locale.ENGLISH);
    private static final int PLOT_ROWS = 9;
    private static final int WIDEST_PLOT = 44;

    private YearStrips() {}

    static void write(StripBuilder page, Owning owning) {
        page.part("Exams to year " + owning.now().horizonYears());
        if (owning.years().isEmpty()) {
            page.say("No imaging schedule is chosen, so no exam is counted and no course computed.", Role.CAUTION);
            return;
        }
        page.across("Years from the operation, for " + owning.now().schedule().orElseThrow(), owning.years(),
                own -> exams(page, own, owning.from()));
        page.say("Upper signs: earliest first exam, shortest interval; lower: latest, longest. Shaded: past the data of the"
                + " cohorts on failure used here.", Role.FAINT);
        page.say(ExamPlan.RESTART_RULE, Role.FAINT);
        page.part("How the shell fails, by year, of 100 women");
        double most = owning.years().stream().flatMap(own -> within(own).stream()).mapToDouble(value -> 100 * value.cumulative())
                .max().orElse(0);
        page.across("Of 100 women, those whose device has failed", owning.years(), own -> failure(page, own, most));
        page.part("What watching comes to by year " + shownTo(owning) + ", of 100 women");
        page.across("Expected under " + owning.now().schedule().orElseThrow() + ", " + AssumptionWords.exam(owning.now().strategy())
                + ", " + AssumptionWords.share(owning.now().adherence()) + " attended", owning.years(), own -> CourseCell.of(page, own, owning));
        if (owning.anyGel()) {
            AssumptionWords.tests(owning.now().strategy(), owning.evidence()).forEach(test ->
                    page.sourced(TextWidth.padRight(test.name(), 12), test.value(), Role.BODY, test.source()));
        }
        page.say("Lowest and highest over the cohorts' curves and both readings of the schedule. Our own model ("
                + domefold.evidence.Status.PROPOSAL.words() + "): exams are missed and tests err independently, and an"
                + " operation ends the count.", Role.FAINT);
    }

    private static int shownTo(Owning owning) {
        return Math.min(owning.risks().year(), owning.now().horizonYears());
    }

    private static Cell exams(StripBuilder page, Ownership own, LocalDate from) {
        ExamPlan plan = own.plan();
        String count = plan.examsLow() == plan.examsHigh() ? String.valueOf(plan.examsLow())
                : plan.examsLow() + "–" + plan.examsHigh();
        List<Cell> cells = new ArrayList<>();
        cells.add(page.text(plan.stated() ? count + " exams to year " + plan.horizonYears()
                : asksNothing(plan) ? "no exam while nothing has changed" : "no exam years stated", Role.BODY));
        cells.add(page.drawing(YearLine.ROWS, canvas -> YearLine.fitting(canvas.columns(), plan.horizonYears(), dataYears(own))
                .draw(canvas, 0, 0, years(plan.densestYears()), years(plan.sparsestYears()))));
        cells.add(page.text(plan.text(), Role.FAINT));
        if (!plan.densestYears().isEmpty() && !plan.sparsestYears().isEmpty()) {
            cells.add(page.text(first(DAY.format(plan.densestFrom(from).get(0)), DAY.format(plan.sparsestFrom(from).get(0)))
                    + ", if operated on " + DAY.format(from), Role.FAINT));
        }
        return StripBuilder.stack(cells);
    }

    /** A saline device under a schedule that is not about it, or that says so itself. */
    private static boolean asksNothing(ExamPlan plan) {
        return plan.fill() == Fill.SALINE && (!plan.schedule().covers(Fill.SALINE) || plan.schedule().rule().equals("none"));
    }

    private static String first(String earliest, String latest) {
        return earliest.equals(latest) ? "First one on " + earliest : "First one between " + earliest + " and " + latest;
    }

    private static double[] years(List<Integer> years) {
        return years.stream().mapToDouble(Integer::doubleValue).toArray();
    }

    /** The year up to which every cohort used has data; 0 without one. */
    static double dataYears(Ownership own) {
        return own.curves().stream().mapToDouble(curve -> curve.years().get(0).lastTime()).min().orElse(0);
    }

    private static List<CurveValue> within(Ownership own) {
        return own.curves().stream().flatMap(curve -> curve.years().stream()).filter(value -> !value.beyondData()).toList();
    }

    private static Cell failure(StripBuilder page, Ownership own, double most) {
        boolean gel = own.plan().fill() == Fill.GEL;
        Cell what = page.text(gel ? "rupture: silent, seen by imaging only" : "deflation: seen at once", Role.BODY);
        if (own.curves().isEmpty()) {
            return StripBuilder.stack(List.of(what, page.text("not known: no comparable cohort fixes a curve", Role.FAINT)));
        }
        Plot plot = new Plot(own.plan().horizonYears(), Math.max(10, Math.ceil(most / 5) * 5), dataYears(own));
        Cell drawn = page.drawing(PLOT_ROWS, canvas -> plot.draw(canvas, 0, 0, Math.min(WIDEST_PLOT, canvas.columns()), PLOT_ROWS,
                envelope(own, Math::max), own.curves().size() > 1 ? envelope(own, Math::min) : List.of()));
        List<Cell> cells = new ArrayList<>(List.of(what, drawn));
        own.curves().forEach(curve -> cells.add(page.text(curve.study() + ": "
                + lastKnown(curve).map(value -> value.words() + " by its curve; ").orElse("") + "no data after year "
                + Math.round(curve.years().get(0).lastTime()) + (curve.unverified() ? ", from memory" : ""),
                curve.unverified() ? Role.CAUTION : Role.FAINT)));
        return StripBuilder.stack(cells);
    }

    private static Optional<CurveValue> lastKnown(Ownership.FailureCurve curve) {
        return curve.years().stream().filter(value -> !value.beyondData()).reduce((first, second) -> second);
    }

    /** Highest or lowest of the cohorts, year by year, only where every one of them has data. */
    private static List<Plot.Point> envelope(Ownership own, DoubleBinaryOperator pick) {
        List<Plot.Point> points = new ArrayList<>(List.of(new Plot.Point(0, 0)));
        for (int i = 0; i < own.plan().horizonYears(); i++) {
            int year = i;
            List<CurveValue> values = own.curves().stream().map(curve -> curve.years().get(year)).collect(Collectors.toList());
            if (values.stream().noneMatch(CurveValue::beyondData)) {
                points.add(new Plot.Point(year + 1, 100 * values.stream().mapToDouble(CurveValue::cumulative).reduce(pick).orElseThrow()));
            }
        }
        return points;
    }
}
