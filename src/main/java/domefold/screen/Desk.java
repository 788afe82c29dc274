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

    /** The device list in use. */
    public ListLine list() {
        return ListLine.of(guide.catalogue());
    }
}
