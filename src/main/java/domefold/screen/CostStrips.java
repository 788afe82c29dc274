package domefold.screen;

import domefold.canvas.Role;
import domefold.device.Fill;
import domefold.followup.course.Cost;
import domefold.followup.course.GelCourse;
import domefold.followup.course.LifeCourse;
import domefold.followup.course.Ownership;
import domefold.followup.course.PublishedCost;
import domefold.followup.shown.RiskFigure;
import domefold.outcome.Band;
import domefold.outcome.Numbers;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What it costs at the practice's own prices, or counts alone; published costs of strategies as a labelled comparison. */
final class CostStrips {
    private CostStrips() {}

    static void write(StripBuilder page, Owning owning) {
        page.part("What it costs");
        if (!owning.years().isEmpty()) {
            String heading = owning.prices().map(prices -> "For one woman, at the practice's own prices, in " + prices.currency())
                    .orElse("The practice has entered no prices: counts only");
            page.across(heading, owning.years(), own -> own.cost().map(cost -> priced(page, cost)).orElseGet(() -> counted(page, own)));
        } else {
            page.say("No schedule is chosen, so no exam is counted and none is priced.", Role.FAINT);
        }
        if (owning.anyGel()) {
            page.say("For comparison only, no price of this practice:", Role.FAINT);
            PublishedCost.of(owning.evidence()).forEach(cost -> page.item("- ", cost.words() + ", " + cost.status().words(), Role.FAINT));
        }
    }

    private static Cell priced(StripBuilder page, Cost cost) {
        List<Cell> cells = new ArrayList<>();
        cells.add(page.text("exams to year " + cost.horizonYears() + ", all attended: " + money(cost.imaging(), cost.currency()), Role.BODY));
        if (cost.courseYears() > 0) {
            cells.add(page.text("confirming MRI by year " + cost.courseYears() + ": " + money(cost.confirmation(), cost.currency())
                    + (cost.beyondData() ? ", past the data" : ""), Role.BODY));
        }
        cells.add(page.text("first reoperation by the year of the outcomes: " + money(cost.revision(), cost.currency()), Role.BODY));
        return StripBuilder.stack(cells);
    }

    private static String money(Optional<Band> amount, String currency) {
        return amount.map(band -> Numbers.range(band, 0) + " " + currency).orElse("not known, no price entered");
    }

    private static Cell counted(StripBuilder page, Ownership own) {
        List<Cell> cells = new ArrayList<>();
        boolean stated = own.plan().stated() || own.plan().fill() == Fill.SALINE;
        cells.add(page.text("exams to year " + own.plan().horizonYears() + ", for one woman: " + (stated
                ? Numbers.range(new Band(own.plan().examsLow(), own.plan().examsHigh()), 0) : "not stated"), Role.BODY));
        own.byYearShown().map(CostStrips::confirmations).ifPresent(text -> cells.add(page.text(text, Role.BODY)));
        own.outcomes().stream().filter(figure -> figure.outcome().equals("reoperation") && figure.unit().equals("patient")).findFirst()
                .ifPresentOrElse(figure -> cells.add(page.text(reoperations(figure), Role.BODY)),
                        () -> cells.add(page.text("first reoperation: not known", Role.FAINT)));
        return StripBuilder.stack(cells);
    }

    private static String confirmations(GelCourse course) {
        return "confirming MRI by year " + course.horizonYears() + ": " + Numbers.range(course.over(LifeCourse::confirmations), 0)
                + " of 100 women";
    }

    private static String reoperations(RiskFigure figure) {
        return "first reoperation by year " + figure.year() + ": " + Numbers.range(figure.per100(), 0) + " of 100 women";
    }
}
