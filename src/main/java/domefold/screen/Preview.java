package domefold.screen;

import domefold.interview.Interview;
import domefold.interview.Question;
import domefold.outcome.Refusal;
import domefold.patient.Measure;
import java.util.Arrays;
import java.util.Optional;

/** The consult as it would be if the reading being typed were taken, so that the rulers move while she types. */
final class Preview {
    private Preview() {}

    /** The same screen where nothing is being typed, or what is typed is no acceptable reading yet. */
    static ConsultScreen of(ConsultScreen screen) {
        Optional<Question> current = screen.interview().current();
        if (screen.entry().isEmpty() || current.isEmpty() || !isReading(current.get())) {
            return screen;
        }
        try {
            Interview typed = screen.interview().answer(current.get().id(), screen.entry().text());
            return typed.plan().isPresent() ? screen.with(typed, screen.shown()) : screen;
        } catch (Refusal notYet) {
            return screen;
        }
    }

    private static boolean isReading(Question question) {
        return Arrays.stream(Measure.values()).anyMatch(measure -> measure.field().equals(question.id()));
    }
}
