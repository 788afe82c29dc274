package domefold.records;

import domefold.outcome.Numbers;
import domefold.record.CaseCode;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;

/** Every record of a folder by its header, newest consult first, and the questions put to it. */
public final class RecordList {
    /** What every list says where nothing has been saved. */
    public static final String NONE_YET = "There are no records yet.";

    private static final int NEAREST = 3;

    private final List<RecordHeader> headers;

    private RecordList(List<RecordHeader> headers) {
        this.headers = headers;
    }

    public static RecordList of(List<RecordHeader> headers) {
        return new RecordList(headers.stream().sorted(RecordHeader.NEWEST_FIRST).toList());
    }

    /** All of them, newest consult first. */
    public List<RecordHeader> all() {
        return headers;
    }

    public boolean isEmpty() {
        return headers.isEmpty();
    }

    public List<RecordHeader> find(RecordQuery query) {
        return headers.stream().filter(query::matches).toList();
    }

    /**
     * The case of that code, whatever the case of its letters; a code of ours whose check digit does not hold is found only
     * if there is a record of exactly that name.
     */
    public Optional<RecordHeader> byCode(String code) {
        String wanted = code.strip().toLowerCase(Locale.ROOT);
        return headers.stream().filter(header -> header.id().toLowerCase(Locale.ROOT).equals(wanted)).findFirst();
    }

    /**
     * Why there is no answer: what was searched, whether a code was mistyped, and the codes nearest to it.
     *
     * @param text the question as typed
     */
    public String nothingFound(String text) {
        if (isEmpty()) {
            return NONE_YET;
        }
        String code = text.strip().replaceFirst("^(?i)case:", "").toUpperCase(Locale.ROOT);
        StringBuilder words = new StringBuilder("No record answers to " + RecordQuery.typed(text).inWords() + " among "
                + Numbers.count(headers.size(), "record", "records") + ".");
        if (CaseCode.isMistyped(code)) {
            words.append(" The check digit of ").append(code).append(" does not hold; it was mistyped.");
        }
        List<String> near = nearest(code);
        if (!near.isEmpty()) {
            words.append(" Nearest codes: ").append(String.join(", ", near)).append('.');
        }
        return words.toString();
    }

    /** At most three codes that differ from that one by a slip. */
    public List<String> nearest(String code) {
        List<String> near = CaseCode.lookAlikes(code, headers.stream().map(RecordHeader::id).toList());
        return near.subList(0, Math.min(NEAREST, near.size()));
    }

    /**
     * Cases easily taken for that one: a code one slip away, or the same author's consult of the same day with the same
     * devices.
     */
    public List<RecordHeader> lookAlikes(RecordHeader of) {
        Set<String> alike = new HashSet<>(CaseCode.lookAlikes(of.id(), headers.stream().map(RecordHeader::id).toList()));
        List<RecordHeader> found = new ArrayList<>();
        for (RecordHeader header : headers) {
            boolean sameConsult = header.day().equals(of.day()) && header.author().equals(of.author())
                    && header.left().equals(of.left()) && header.right().equals(of.right())
                    && (of.left().isPresent() || of.right().isPresent());
            if (!header.id().equals(of.id()) && (alike.contains(header.id()) || sameConsult)) {
                found.add(header);
            }
        }
        return found;
    }

    /** A warning for a list whose answers are easily confused, or empty. */
    public static Optional<String> warning(List<RecordHeader> shown) {
        List<String> ids = shown.stream().map(RecordHeader::id).toList();
        for (RecordHeader header : shown) {
            List<String> alike = CaseCode.lookAlikes(header.id(), ids);
            if (!alike.isEmpty()) {
                return Optional.of("Cases " + header.id() + " and " + String.join(", ", alike)
                        + " are easily taken for one another; compare the day of the consult and the devices.");
            }
        }
        return Optional.empty();
    }
}
