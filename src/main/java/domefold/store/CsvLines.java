package domefold.store;

import de.siegmar.fastcsv.reader.AbstractBaseCsvCallbackHandler;
import de.siegmar.fastcsv.reader.CommentStrategy;
import de.siegmar.fastcsv.reader.CsvParseException;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.RecordWrapper;
import java.util.ArrayList;
import java.util.List;

/**
 * Comma-separated text (RFC 4180) line by line; a line that begins with {@code #} is a comment, an empty one is passed over. Text
 * behind a closing quote is no cell of such a text: taken as it stands, {@code "12"3} would be read as 123.
 */
final class CsvLines extends AbstractBaseCsvCallbackHandler<CsvLines.Line> {
    /** Far more than any table has; some millions would be kept one by one before anybody could say that they are too many. */
    private static final int MOST_CELLS = 1 << 14;

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
     * @throws CsvParseException on the way, where the text is not comma-separated
     */
    static Iterable<Line> of(String text) {
        return CsvReader.builder().commentStrategy(CommentStrategy.READ).acceptCharsAfterQuotes(false)
                .build(new CsvLines(), text);
    }

    @Override
    protected void handleBegin(long startingLineNumber) {
        cells = new ArrayList<>();
    }

    @Override
    protected void handleField(int field, char[] from, int offset, int length, boolean quoted) {
        if (field >= MOST_CELLS) {
            throw new CsvParseException("more than " + MOST_CELLS + " cells in one line");
        }
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
