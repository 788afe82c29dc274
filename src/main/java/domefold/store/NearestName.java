package domefold.store;

import java.util.Collection;
import java.util.Comparator;
import java.util.Locale;
import java.util.Optional;

/** The known name that a mistyped one most likely stands for. */
final class NearestName {
    private NearestName() {}

    /** The known name with the fewest edits, if at least half of it is right. */
    static Optional<String> of(String typed, Collection<String> known) {
        return known.stream()
                .min(Comparator.<String>comparingInt(name -> edits(typed, name)).thenComparing(Comparator.naturalOrder()))
                .filter(name -> 2 * edits(typed, name) <= Math.max(typed.length(), name.length()));
    }

    /** Fewest insertions, deletions and exchanges of a letter that turn one into the other, case aside (Levenshtein). */
    static int edits(String one, String other) {
        String a = cut(one);
        String b = cut(other);
        int[] previous = new int[b.length() + 1];
        for (int j = 0; j <= b.length(); j++) {
            previous[j] = j;
        }
        for (int i = 1; i <= a.length(); i++) {
            int[] row = new int[b.length() + 1];
            row[0] = i;
            for (int j = 1; j <= b.length(); j++) {
                int exchanged = previous[j - 1] + (a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1);
                row[j] = Math.min(exchanged, Math.min(previous[j], row[j - 1]) + 1);
            }
            previous = row;
        }
        return previous[b.length()];
    }

    private static String cut(String name) {
        return (name.length() > 64 ? name.substring(0, 64) : name).toLowerCase(Locale.ROOT);
    }
}
