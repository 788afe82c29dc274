package domefold.store;

import de.siegmar.fastcsv.reader.AbstractBaseCsvCallbackHandler;
import de.siegmar.fastcsv.reader.CommentStrategy;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.RecordWrapper;
import java.util.ArrayList;
import java.util.List;

/** Comma-separated text (RFC 4180) line by line; a line that begins with {@code #} is a comment, an empty one is passed over. */
final class CsvLines extends AbstractBaseCsvCallbackHandler<CsvLines.Line> {
    private List<String> cells = new ArrayList<>();

    private CsvLines() {}

    /**
     * A line of the text.
     *
     * @param number of the line it begins on, from 1
     * @param comment true where its one cell is a comment, without the {@code #}
     * @param cells as they stand; their number may differ from line to line
     */
    record Line(int number, boolean comment, List<String> cells) {}

    /**
     * The lines of a text, read as they are asked for.
     *
     * @throws de.siegmar.fastcsv.reader.CsvParseException on the way, where the text is not comma-separated
     */
    static Iterable<Line> of(String text) {
        return CsvReader.builder().commentStrategy(CommentStrategy.READ).build(new CsvLines(), text);
    }

    @Override
    protected void handleBegin(long startingLineNumber) {
        cells = new ArrayList<>();
    }

    @Override
    protected void handleField(int field, char[] from, int offset, int length, boolean quoted) {
        cells.add(new String(from, offset, length));
    }

    @Override
    protected void handleComment(char[] from, int offset, int length) {
        cells.add(new String(from, offset, length));
    }

    @Override
    protected RecordWrapper<Line> buildRecord() {
        return wrapRecord(new Line((int) getStartingLineNumber(), isComment(), cells));
    }
}
