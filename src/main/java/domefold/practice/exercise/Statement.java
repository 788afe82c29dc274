package domefold.practice.exercise;

import domefold.interview.Guide;
import domefold.practice.FellowPlan;
import java.util.List;
import java.util.function.BiFunction;
import java.util.function.Function;
import java.util.function.Predicate;

/**
 * One thing the fellow states.
 *
 * @param id stable name
 * @param prompt what is asked
 * @param expects what an answer looks like
 * @param required true where it cannot be skipped
 * @param pointless true where it need not be asked of that plan
 * @param reader takes what was typed into the plan; throws {@link domefold.outcome.Refusal} where it can't
 * @param open the plan with this left open
 * @param shown what stands, in words
 * @param help sentences for {@code ?}
 */
public record Statement(
        String id,
        String prompt,
        String expects,
        boolean required,
        Predicate<FellowPlan> pointless,
        Reader reader,
        Function<FellowPlan, FellowPlan> open,
        BiFunction<FellowPlan, Guide, String> shown,
        Function<Guide, List<String>> help) {

    /** Its name in a list of answers. */
    public String label() {
        return prompt.split("[:,]")[0];
    }

    /** Reads an answer. */
    interface Reader {
        FellowPlan read(String typed, FellowPlan soFar, Guide guide);
    }
}
