package domefold.app;

import java.util.List;
import org.jline.reader.ParsedLine;
import org.jline.reader.Parser;

/**
 * A line as it is being completed: what comes before, and one word of any blanks that is to be completed. It is no line of
 * a shell: nothing in it is quoted or escaped, because the consult reads it as it stands.
 *
 * @param line the line
 * @param cursor where in it the cursor is
 * @param from where the word begins
 */
record LineSoFar(String line, int cursor, int from) implements ParsedLine {
    /** Where the word to be completed begins. */
    interface Begins {
        int in(String typed);
    }

    static Parser parser(Begins begins) {
        return (line, cursor, context) -> new LineSoFar(line, cursor, begins.in(line.substring(0, cursor)));
    }

    @Override
    public String word() {
        return line.substring(from, cursor);
    }

    @Override
    public int wordCursor() {
        return cursor - from;
    }

    @Override
    public int wordIndex() {
        return words().size() - 1;
    }

    @Override
    public List<String> words() {
        return from == 0 ? List.of(word()) : List.of(line.substring(0, from), word());
    }
}
