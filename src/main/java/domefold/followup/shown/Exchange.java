package domefold.followup.shown;

import domefold.device.Fill;
import domefold.evidence.Evidence;
import domefold.evidence.Status;
import java.util.List;

/** One thing to know about failure and exchange of a fill. */
public record Exchange(String id, Fill fill, String aspect, String text, String source, Status status) {

    /** How it shows, how soon, through which opening, what is done. */
    public static List<Exchange> of(Fill fill, Evidence evidence) {
        return evidence.table("exchange").rows().stream().filter(row -> row.text("fill").equals(fill.key()))
                .map(row -> new Exchange(row.text("id"), fill, row.text("aspect"), row.text("text"), row.text("source"),
                        Status.of(row.text("status")))).toList();
    }
}
