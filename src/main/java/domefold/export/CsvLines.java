package domefold.export;

import java.util.List;

/**
 * Comma-separated lines (RFC 4180): CR LF, quotes where needed, a quote doubled. A cell that a spreadsheet would take for a
 * formula is given an apostrophe in front; a plain number is left alone, its minus too.
 */
public final class CsvLines {
    private static final String FORMULA_STARTS = "=+-@\t\r";
    private static final String PLAIN_NUMBER = "[+-]?[0-9]+(\\.[0-9]+)?";

    private CsvLines() {}

    /**
     * A header and its rows.
     *
     * @throws IllegalArgumentException if a row has more or fewer cells than the header
     */
    public static String of(List<String> header, List<List<String>> rows) {
        StringBuilder out = new StringBuilder();
        line(header, out);
        for (List<String> row : rows) {
            if (row.size() != header.size()) {
                throw new IllegalArgumentException("a row has " + row.size() + " cells under " + header.size() + " headings");
            }
            line(row, out);
        }
        return out.toString();
    }

    private static void line(List<String> cells, StringBuilder out) {
        for (int i = 0; i < cells.size(); i++) {
            out.append(i == 0 ? "" : ",").append(cell(cells.get(i)));
        }
        out.append("\r\n");
    }

    private static String cell(String text) {
        String safe = text.isEmpty() || FORMULA_STARTS.indexOf(text.charAt(0)) < 0 || text.matches(PLAIN_NUMBER)
                ? text : "'" + text;
        boolean quoted = safe.chars().anyMatch(c -> c == ',' || c == '"' || c == '\r' || c == '\n')
                || !safe.equals(safe.strip());
        return quoted ? "\"" + safe.replace("\"", "\"\"") + "\"" : safe;
    }
}
