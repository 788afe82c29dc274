package domefold.choose;

import domefold.device.Fill;
import domefold.evidence.Constants;
import domefold.outcome.Note;
import domefold.patient.Measure;
import domefold.patient.Pocket;
import domefold.patient.Side;
import domefold.plan.Candidate;
import domefold.plan.Plan;
import domefold.plan.SideLimits;
import domefold.plan.Verdict;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * One plan beside another, line by line: what the tissues allow, how many devices are left, and what becomes of the
 * devices she keeps an eye on. Both columns always stand there, so that "no change" can be read as such.
 *
 * @param rows in the order they are read
 */
public record Difference(List<Row> rows) {
    private static final String NONE = "–";

    public Difference {
        rows = List.copyOf(rows);
    }

    /**
     * One line.
     *
     * @param group {@code case}, {@code LEFT}, {@code RIGHT}, {@code devices}, or the id of a pinned device
     * @param label what stands on the line
     * @param before in the settled state, {@code –} where there is nothing
     * @param after in the tried state
     * @param changed true where the two say different things
     */
    public record Row(String group, String label, String before, String after, boolean changed) {}

    /**
     * The lines for two plans.
     *
     * @param pinnedIds devices to follow, in the order shown
     * @param constants for the place in her order
     */
    public static Difference between(Plan before, Plan after, List<String> pinnedIds, Constants constants) {
        List<Row> rows = new ArrayList<>();
        rows.add(words("case", "blocked", texts(before.blocked()), texts(after.blocked())));
        notes("case", before.notes(), after.notes(), rows);
        for (Side side : Side.values()) {
            limits(before.side(side), after.side(side), rows);
        }
        counts(before, after, rows);
        Placed placedBefore = Placed.of(before, constants);
        Placed placedAfter = Placed.of(after, constants);
        for (String id : pinnedIds) {
            rows.addAll(PinnedRows.of(id, placedBefore, placedAfter));
        }
        return new Difference(rows);
    }

    /** The lines that changed. */
    public List<Row> changed() {
        return rows.stream().filter(Row::changed).toList();
    }

    private static void limits(SideLimits before, SideLimits after, List<Row> rows) {
        String group = before.side().name();
        rows.add(TwoFigures.of(before.widthCeilingCm(), after.widthCeilingCm(), 1, "cm").row(group, "width ceiling"));
        rows.add(TwoFigures.of(before.startingVolumeMl(), after.startingVolumeMl(), 0, "mL").row(group, "starting volume"));
        rows.add(TwoFigures.of(before.volumeBandMl(), after.volumeBandMl(), 0, "mL").row(group, "volume band"));
        rows.add(TwoFigures.of(before.foldTargetCm(), after.foldTargetCm(), 1, "cm").row(group, "fold target"));
        rows.add(TwoFigures.of(before.foldLoweringCm(), after.foldLoweringCm(), 1, "cm").row(group, "fold lowering"));
        rows.add(words(group, "pocket", before.pocket().map(Pocket::key).orElse(NONE),
                after.pocket().map(Pocket::key).orElse(NONE)));
        rows.add(words(group, "not taken", list(before.incomplete().stream().map(Measure::wordsOf).toList()),
                list(after.incomplete().stream().map(Measure::wordsOf).toList())));
        notes(group, before.notes(), after.notes(), rows);
    }

    /** A note that stands in one of the two only; one that merely reads differently is told by the figures. */
    private static void notes(String group, List<Note> before, List<Note> after, List<Row> rows) {
        Map<String, String> was = byCode(before);
        Map<String, String> is = byCode(after);
        was.forEach((code, text) -> {
            if (!is.containsKey(code)) {
                rows.add(new Row(group, words(code), text, NONE, true));
            }
        });
        is.forEach((code, text) -> {
            if (!was.containsKey(code)) {
                rows.add(new Row(group, words(code), NONE, text, true));
            }
        });
    }

    /** A code as a person reads it. */
    private static String words(String code) {
        return code.replace('-', ' ');
    }

    private static Map<String, String> byCode(List<Note> notes) {
        Map<String, String> texts = new LinkedHashMap<>();
        notes.forEach(note -> texts.merge(note.code(), note.text(), (one, other) -> one + "; " + other));
        return texts;
    }

    private static void counts(Plan before, Plan after, List<Row> rows) {
        for (Fill fill : Fill.values()) {
            for (Verdict verdict : List.of(Verdict.FITS, Verdict.TIGHT)) {
                rows.add(words("devices", fill.key() + ", " + (verdict == Verdict.FITS ? "fit both sides" : "tight"),
                        Long.toString(count(before, fill, verdict)), Long.toString(count(after, fill, verdict))));
            }
        }
    }

    private static long count(Plan plan, Fill fill, Verdict verdict) {
        return plan.candidates().stream().filter(candidate -> candidate.device().fill() == fill)
                .filter(candidate -> Placed.both(candidate) == verdict).count();
    }

    static Row words(String group, String label, String before, String after) {
        return new Row(group, label, before, after, !before.equals(after));
    }

    private static String texts(List<Note> notes) {
        return notes.isEmpty() ? NONE : notes.stream().map(Note::text).collect(Collectors.joining("; "));
    }

    private static String list(List<String> fields) {
        return fields.isEmpty() ? NONE : String.join(", ", fields);
    }

    /** The candidate of that id. */
    static Optional<Candidate> find(Plan plan, String id) {
        return plan.candidates().stream().filter(candidate -> candidate.device().id().equals(id)).findFirst();
    }
}
