package domefold.screen;

import domefold.interview.Guide;
import java.time.LocalDate;

/**
 * What every consult screen has at hand and none changes.
 *
 * @param guide evidence, device list, topics and engine
 * @param today the day of the consult
 * @param practice true for an invented patient; says so on every screen
 */
public record Desk(Guide guide, LocalDate today, boolean practice) {
    /** The sentence about the device list, on every screen. */
    public String listSentence() {
        return guide.catalogue().invented()
                ? "This device list is invented; replace it with your own before clinical use."
                : "Device list: " + guide.catalogue().name()
                        + (guide.catalogue().date().isEmpty() ? "" : ", " + guide.catalogue().date());
    }
}
