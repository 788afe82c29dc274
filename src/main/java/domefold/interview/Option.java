package domefold.interview;

import domefold.outcome.Refusal;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;

/**
 * One answer to choose from.
 *
 * @param word the word typed and stored, for example {@code dual-plane}
 * @param meaning what it means, a few words
 */
record Option(String word, String meaning) {

    /**
     * The option whose word begins with what was typed.
     *
     * @throws Refusal where none or more than one does
     */
    static <T> T pick(String questionId, String typed, List<T> all, Function<T, String> word) {
        String wanted = typed.strip().toLowerCase(Locale.ROOT);
        List<T> exact = all.stream().filter(t -> word.apply(t).toLowerCase(Locale.ROOT).equals(wanted)).toList();
        List<T> found = exact.isEmpty() && !wanted.isEmpty()
                ? all.stream().filter(t -> word.apply(t).toLowerCase(Locale.ROOT).startsWith(wanted)).toList()
                : exact;
        if (found.size() == 1) {
            return found.get(0);
        }
        String choices = String.join(", ", (found.isEmpty() ? all : found).stream().map(word).toList());
        throw new Refusal(found.isEmpty() ? "unknown-word" : "ambiguous-word", questionId,
                "'" + typed.strip() + "' " + (found.isEmpty() ? "is none of: " : "could be more than one of: ") + choices);
    }
}
