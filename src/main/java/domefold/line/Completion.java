package domefold.line;

import java.util.List;
import java.util.Locale;

/**
 * What may stand at the end of a line. Names of several words are completed as a whole, so that what is offered is what
 * is understood.
 *
 * @param from where in the line the words would stand
 * @param words what may stand there, each beginning with what does, in capitals or not
 */
public record Completion(int from, List<String> words) {
    public Completion {
        words = List.copyOf(words);
    }

    /** Those of the words that what is typed from there may become. */
    static Completion at(int from, String typed, List<String> words) {
        String begun = typed.substring(from).toLowerCase(Locale.ROOT);
        return new Completion(from, words.stream().filter(word -> word.toLowerCase(Locale.ROOT).startsWith(begun)).distinct().toList());
    }

    /** The same for an answer, which may be several words or one after another. */
    static Completion answer(int from, String typed, List<String> words) {
        Completion whole = at(from, typed, words);
        return whole.words().isEmpty() ? at(Math.max(from, typed.lastIndexOf(' ') + 1), typed, words) : whole;
    }

    /** Where the first word begins. */
    static int start(String typed) {
        return typed.length() - typed.stripLeading().length();
    }

    /** Where what follows the first word begins; the end where nothing does. */
    static int rest(String typed) {
        int blank = typed.indexOf(' ', start(typed));
        return blank < 0 ? typed.length() : blank + start(typed.substring(blank));
    }
}
