package domefold.interview;

import domefold.outcome.Note;
import java.util.List;

/**
 * One question asked and answered.
 *
 * @param questionId the question's id
 * @param typed exactly what was typed
 * @param shown the answer in words with units; "skipped" where it was left open
 * @param remarks what was said about it at once
 */
public record Exchange(String questionId, String typed, String shown, List<Note> remarks) {
    public Exchange {
        remarks = List.copyOf(remarks);
    }
}
