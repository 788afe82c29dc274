package domefold.screen;

import domefold.canvas.Role;
import java.util.List;

/**
 * One band of a page of comparisons: a heading over the whole width, and below it one cell a device or one over the whole
 * width.
 *
 * @param part name of the part that begins here, else empty
 * @param heading lines over the cells, wrapped already; may be none
 * @param cells one over the whole width, one a device, or none
 * @param whole true where the single cell takes the whole width
 */
record Strip(String part, List<String> heading, Role role, List<Cell> cells, boolean whole) {
    Strip {
        heading = List.copyOf(heading);
        cells = List.copyOf(cells);
    }

    boolean beginsPart() {
        return !part.isEmpty();
    }

    int height() {
        return (beginsPart() ? 1 : 0) + heading.size() + cells.stream().mapToInt(Cell::height).max().orElse(0);
    }
}
