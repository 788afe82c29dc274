package domefold.record;

import domefold.patient.Case;
import domefold.patient.Side;
import java.time.Instant;
import java.util.List;
import java.util.Optional;

/**
 * One version of a saved consult, {@code domefold-record/1}: everything that was asked, computed, shown and settled.
 * What happens afterwards (ordered, booked, done, implanted) stands in event files of its own.
 *
 * @param id the case code it is filed under
 * @param version 1 for the first; every amendment counts one up
 * @param status draft, signed, amended or entered in error
 * @param practice true for an invented patient; such a record is never ordered, exported or put in a calendar
 * @param inputs the case
 * @param answers the answers as typed, in order
 * @param planJson the plan as {@code domefold-plan/1}, kept whole so that nothing has to be computed again to read it
 * @param left what was settled for her left side
 * @param right what was settled for her right side
 * @param considered devices that were compared and not chosen
 * @param topics what was discussed and what is open
 * @param followUp imaging, empty where no schedule was chosen
 * @param outcomes published figures shown to her
 * @param overrides constants that were the surgeon's own
 * @param versions what it was computed with
 * @param authorship who and when
 * @param amendment present from version 2 on
 */
public record ConsultRecord(
        String id,
        int version,
        RecordStatus status,
        boolean practice,
        Case inputs,
        List<TypedAnswer> answers,
        String planJson,
        Optional<Settlement> left,
        Optional<Settlement> right,
        List<Considered> considered,
        List<Topic> topics,
        Optional<FollowUp> followUp,
        List<OutcomeShown> outcomes,
        List<OverrideShown> overrides,
        Versions versions,
        Authorship authorship,
        Optional<Amendment> amendment) {

    public static final String FORMAT = "domefold-record/1";

    public ConsultRecord {
        if (id.isBlank() || version < 1) {
            throw new IllegalArgumentException("a record has an id and a version of at least 1");
        }
        if (status == RecordStatus.DRAFT == authorship.signedAt().isPresent()) {
            throw new IllegalArgumentException("a record is signed exactly when it is no draft");
        }
        if (left.isPresent() && left.get().side() != Side.LEFT || right.isPresent() && right.get().side() != Side.RIGHT) {
            throw new IllegalArgumentException("a settlement stands under its own side");
        }
        answers = List.copyOf(answers);
        considered = List.copyOf(considered);
        topics = List.copyOf(topics);
        outcomes = List.copyOf(outcomes);
        overrides = List.copyOf(overrides);
    }

    /** A first draft with nothing settled yet. */
    public static ConsultRecord draft(Case inputs, String planJson, Versions versions, String author, Instant now) {
        return new ConsultRecord(inputs.code(), 1, RecordStatus.DRAFT, false, inputs, List.of(), planJson,
                Optional.empty(), Optional.empty(), List.of(), List.of(), Optional.empty(), List.of(), List.of(),
                versions, new Authorship(author, now, now, Optional.empty()), Optional.empty());
    }

    public Optional<Settlement> side(Side side) {
        return side == Side.LEFT ? left : right;
    }

    /** The same consult, signed: from here on it never changes. */
    public ConsultRecord signed(String author, Instant now) {
        return standing(version, RecordStatus.SIGNED,
                new Authorship(author, authorship.createdAt(), now, Optional.of(now)), amendment);
    }

    /** The same draft, saved again. */
    public ConsultRecord savedAt(Instant now) {
        return standing(version, status,
                new Authorship(authorship.author(), authorship.createdAt(), now, authorship.signedAt()), amendment);
    }

    /**
     * These contents as the version that follows what {@code change} supersedes.
     *
     * @param as {@link RecordStatus#AMENDED} or {@link RecordStatus#ENTERED_IN_ERROR}
     */
    public ConsultRecord following(RecordStatus as, Amendment change) {
        return standing(change.supersedesVersion() + 1, as,
                new Authorship(change.author(), authorship.createdAt(), change.at(), Optional.of(change.at())),
                Optional.of(change));
    }

    /** These contents as the same consult: begun when that one began, reminders of the same day under the same ids. */
    public ConsultRecord asOf(ConsultRecord former) {
        Optional<FollowUp> plan = followUp.map(now -> former.followUp().map(now::keepingIdsOf).orElse(now));
        return new ConsultRecord(id, version, status, practice, inputs, answers, planJson, left, right, considered, topics,
                plan, outcomes, overrides, versions, new Authorship(authorship.author(), former.authorship().createdAt(),
                authorship.savedAt(), authorship.signedAt()), amendment);
    }

    private ConsultRecord standing(int number, RecordStatus as, Authorship by, Optional<Amendment> change) {
        return new ConsultRecord(id, number, as, practice, inputs, answers, planJson, left, right, considered, topics,
                followUp, outcomes, overrides, versions, by, change);
    }
}
