package domefold.followup.course;

import domefold.device.Fill;
import domefold.followup.schedule.ExamPlan;
import domefold.outcome.Band;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What follow-up costs at the practice's own prices; a part whose price is not entered is empty.
 *
 * <p>Imaging = exams the schedule asks for x price of its first test; confirmations and operations come from the course, per
 * woman; revision = share with a first reoperation by the year x price of an exchange, first reoperation only (definitions).
 *
 * @param horizonYears years the imaging is counted over
 * @param courseYears years the confirmations are counted over; 0 without a course
 * @param imaging the scheduled exams, all attended
 * @param confirmation expected confirming MRI per woman
 * @param revision expected first reoperation per woman
 * @param beyondData true when the confirmations rest on a curve past its cohort's data
 */
public record Cost(String currency, int horizonYears, int courseYears, Optional<Band> imaging, Optional<Band> confirmation, Optional<Band> revision,
        boolean beyondData) {

    public static Cost of(PriceList prices, ExamPlan plan, Strategy strategy, Optional<GelCourse> course,
            Optional<Band> reoperationPer100) {
        PriceList.Item first = strategy == Strategy.MRI ? PriceList.Item.MRI : PriceList.Item.ULTRASOUND;
        PriceList.Item exchange = plan.fill() == Fill.SALINE ? PriceList.Item.EXCHANGE_SALINE : PriceList.Item.EXCHANGE_GEL;
        Band asked = new Band(plan.examsLow(), plan.examsHigh());
        boolean known = plan.stated() || plan.fill() == Fill.SALINE;
        return new Cost(prices.currency(), plan.horizonYears(), course.map(GelCourse::horizonYears).orElse(0),
                known ? times(asked, exams(prices, first, asked)) : Optional.empty(),
                strategy == Strategy.ULTRASOUND_THEN_MRI
                        ? course.flatMap(one -> times(perWoman(one.over(LifeCourse::confirmations)), prices.of(PriceList.Item.MRI)))
                        : Optional.empty(),
                reoperationPer100.flatMap(share -> times(perWoman(share), prices.of(exchange))),
                course.map(GelCourse::beyondData).orElse(false));
    }

    /** No exam costs nothing, whatever an exam's price. */
    private static OptionalDouble exams(PriceList prices, PriceList.Item first, Band asked) {
        return asked.high() == 0 ? OptionalDouble.of(0) : prices.of(first);
    }

    private static Band perWoman(Band per100) {
        return new Band(per100.low() / 100, per100.high() / 100);
    }

    private static Optional<Band> times(Band counts, OptionalDouble price) {
        return price.isEmpty() ? Optional.empty()
                : Optional.of(new Band(counts.low() * price.getAsDouble(), counts.high() * price.getAsDouble()));
    }
}
