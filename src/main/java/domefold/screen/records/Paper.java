package domefold.screen.records;

import java.util.List;

/**
 * The text of the record in focus.
 *
 * @param id whose it is
 * @param what summary or order list
 * @param text the text, empty until it has been read
 * @param scroll lines above the window
 * @param whole true when it has the whole glass
 */
record Paper(String id, String what, String text, int scroll, boolean whole) {
    static final Paper NONE = new Paper("", domefold.screen.Effect.ReadRecord.SUMMARY, "", 0, false);

    List<String> lines() {
        return text.isEmpty() ? List.of() : List.of(text.split("\n", -1));
    }

    Paper scrolled(int by) {
        return new Paper(id, what, text, Math.max(0, Math.min(Math.max(0, lines().size() - 1), scroll + by)), whole);
    }
}
