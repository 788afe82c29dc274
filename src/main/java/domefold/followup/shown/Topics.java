package domefold.followup.shown;

import domefold.evidence.Evidence;
import domefold.evidence.Status;
import java.util.List;

/** What is to be talked through before a decision, in the order of the checklist it comes from. */
public final class Topics {
    private Topics() {}

    /**
     * One topic.
     *
     * @param id stable, saved with the record when it was discussed
     * @param programFillsIn what the program can put beside it; starts with "nothing" where it can't
     */
    public record Topic(String id, String text, String programFillsIn, String source, Status status) {}

    public static List<Topic> of(Evidence evidence) {
        return evidence.table("topics").rows().stream().map(row -> new Topic(row.text("id"), row.text("topic"),
                row.text("what_the_program_can_fill_in"), row.text("source"), Status.of(row.text("status")))).toList();
    }
}
