package domefold.screen.records;

import domefold.screen.Scrolled;
import java.util.List;

/**
 * The text of the record in focus.
 *
 * @param id whose it is
 * @param what summary or order list
 * @param text the text, empty until it has been read
 * @param scroll how far it is scrolled
 * @param whole true when it has the whole glass
 */
record Paper(String id, String what, String text, Scrolled scroll, boolean whole) {
    static final Paper NONE = new Paper("", domefold.screen.Effect.ReadRecord.SUMMARY, "", Scrolled.START, false);

    /** True for the page of keys, which belongs to no record. */
    boolean ofKeys() {
        return whole && id.isEmpty();
    }

    List<String> lines() {
        return text.isEmpty() ? List.of() : List.of(text.split("\n", -1));
    }

    Paper scrolled(Scrolled to) {
        return new Paper(id, what, text, to, whole);
    }
}
