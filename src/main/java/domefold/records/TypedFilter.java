package domefold.records;

import java.util.List;

/**
 * A list narrowed while the question is typed. A value; when the text only grows by letters of a word, the next answer is
 * looked for among the last one.
 */
public final class TypedFilter {
    private final RecordList list;
    private final String text;
    private final List<RecordHeader> shown;

    private TypedFilter(RecordList list, String text, List<RecordHeader> shown) {
        this.list = list;
        this.text = text;
        this.shown = shown;
    }

    public static TypedFilter over(RecordList list) {
        return new TypedFilter(list, "", list.all());
    }

    /** The same list under another text. */
    public TypedFilter typed(String now) {
        RecordQuery query = RecordQuery.typed(now);
        boolean narrower = now.startsWith(text) && plainWords(now);
        List<RecordHeader> found = narrower ? shown.stream().filter(query::matches).toList() : list.find(query);
        return new TypedFilter(list, now, found);
    }

    /** Words only narrow as they grow; a date or a key may mean something else with one letter more. */
    private static boolean plainWords(String text) {
        return text.chars().noneMatch(c -> c == ':' || c == '.' || c == '/') && !text.matches(".*\\b[0-9]{4}.*");
    }

    public String text() {
        return text;
    }

    public List<RecordHeader> shown() {
        return shown;
    }
}
