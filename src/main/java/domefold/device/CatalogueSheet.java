package domefold.device;

import java.util.List;

/**
 * A device list as it stands in its file, nothing understood yet.
 *
 * @param name from {@code # name:}, empty without one
 * @param date from {@code # date:}, empty without one
 * @param note from {@code # note:}, empty without one
 * @param header the header's line, its cells being the column names; without cells where the file has no header
 * @param rows the lines below it
 */
public record CatalogueSheet(String name, String date, String note, Line header, List<Line> rows) {
    /** The columns of {@code domefold-catalogue/1}, in the order they are written. */
    public static final List<String> COLUMNS = List.of("line", "fill", "surface", "profile", "nominal_ml", "fill_min_ml",
            "fill_max_ml", "width_cm", "height_cm", "projection_cm", "reference");

    public CatalogueSheet {
        rows = List.copyOf(rows);
    }

    /**
     * One line of the file.
     *
     * @param number counted from 1
     * @param cells stripped of blanks around them
     */
    public record Line(int number, List<String> cells) {
        public Line {
            cells = List.copyOf(cells);
        }
    }

    /** The cell of that line under that column, empty where the file has no such column or the line stops before it. */
    public String cell(Line line, String column) {
        int at = header.cells().indexOf(column);
        return at < 0 || at >= line.cells().size() ? "" : line.cells().get(at);
    }
}
