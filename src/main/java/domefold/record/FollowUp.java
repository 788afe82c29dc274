package domefold.record;

import domefold.patient.Side;
import java.time.LocalDate;
import java.util.List;
import java.util.UUID;

/**
 * Imaging as it was agreed on. The reminders carry random ids, kept here so that a second calendar export updates the
 * first one instead of doubling it.
 *
 * @param scheduleId schedule id, for example {@code US-2020}
 * @param issuer who advises it
 * @param source where that was published
 * @param status how the rule came to us, as a status code
 * @param text the rule in a sentence
 * @param sides whose devices it holds for; LEFT, RIGHT or both
 * @param densest earliest first exam and shortest interval
 * @param sparsest latest first exam and longest interval
 */
public record FollowUp(
        String scheduleId,
        String issuer,
        String source,
        String status,
        String text,
        List<Side> sides,
        List<Reminder> densest,
        List<Reminder> sparsest) {

    public FollowUp {
        sides = List.copyOf(sides);
        densest = List.copyOf(densest);
        sparsest = List.copyOf(sparsest);
    }

    /** The same plan with the former ids wherever the day of a reminder is the same. */
    public FollowUp keepingIdsOf(FollowUp former) {
        return new FollowUp(scheduleId, issuer, source, status, text, sides, kept(densest, former.densest),
                kept(sparsest, former.sparsest));
    }

    private static List<Reminder> kept(List<Reminder> now, List<Reminder> former) {
        return now.stream().map(one -> former.stream().filter(before -> before.date().equals(one.date())).findFirst()
                .orElse(one)).toList();
    }

    /** One exam date and the random id of its calendar entry. */
    public record Reminder(LocalDate date, UUID uid) {}
}
