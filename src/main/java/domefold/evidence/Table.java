package domefold.evidence;

import java.util.List;
import java.util.OptionalDouble;

/**
 * A table as read from a file, all cells as text; an empty cell means "no value".
 *
 * @param name the file's name without its ending, for example {@code surveillance}
 * @param columns the header, in order
 * @param rows the rows below it
 */
public record Table(String name, List<String> columns, List<Row> rows) {
    public Table {
        columns = List.copyOf(columns);
        rows = List.copyOf(rows);
    }

    /**
     * One row.
     *
     * @param line its line in the file, the header being line 1
     * @param columns the header
     * @param cells one cell to a column
     */
    public record Row(int line, List<String> columns, List<String> cells) {
        public Row {
            if (columns.size() != cells.size()) {
                throw new IllegalArgumentException("line " + line + " has " + cells.size() + " cells under " + columns.size()
                        + " columns");
            }
            columns = List.copyOf(columns);
            cells = List.copyOf(cells);
        }

        /**
         * The cell under that column, trimmed; empty when the cell is.
         *
         * @throws IllegalArgumentException if the table has no such column
         */
        public String text(String column) {
            int place = columns.indexOf(column);
            if (place < 0) {
                throw new IllegalArgumentException("line " + line + " has no column " + column);
            }
            return cells.get(place).strip();
        }

        /**
         * The cell as a number, empty for an empty cell.
         *
         * @throws NumberFormatException if the cell holds text
         */
        public OptionalDouble number(String column) {
            String cell = text(column);
            return cell.isEmpty() ? OptionalDouble.empty() : OptionalDouble.of(Double.parseDouble(cell));
        }
    }
}
