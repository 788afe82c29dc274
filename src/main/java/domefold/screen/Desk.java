package domefold.screen;

import domefold.followup.course.PriceList;
import domefold.interview.Guide;
import java.time.LocalDate;
import java.util.Optional;

/**
 * What every consult screen has at hand and none changes.
 *
 * @param guide evidence, device list, topics and engine
 * @param today the day of the consult
 * @param practice true for an invented patient; says so on every screen
 * @param prices the practice's own prices, where it has entered any
 */
public record Desk(Guide guide, LocalDate today, boolean practice, Optional<PriceList> prices) {
    public Desk(Guide guide, LocalDate today, boolean practice) {
        this(guide, today, practice, Optional.empty());
    }

    /** The sentence about the device list, on every screen. */
    public String listSentence() {
        return guide.catalogue().invented()
                ? "This device list is invented; replace it with your own before clinical use."
                : "Device list" + (guide.catalogue().date().isEmpty() ? "" : " of " + guide.catalogue().date()) + ": "
                        + guide.catalogue().name();
    }

    /** The same for that many cells; a long name is cut there, the warning never. */
    String listSentence(int width) {
        return guide.catalogue().invented() && listSentence().length() > width
                ? "This device list is invented: not for clinical use." : listSentence();
    }
}
