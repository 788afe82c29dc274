package domefold.sheet;

import java.util.List;

/**
 * One document, ready to be printed.
 *
 * @param title what it is, for example "Clinical summary"
 * @param marks the records it was made from; the mark of a sheet for one case is repeated on every page
 * @param banners what must be read first: a draft, an invented patient, an invented device list
 * @param blocks its contents in order
 */
public record Sheet(String title, List<Mark> marks, List<String> banners, List<Block> blocks) {
    public Sheet {
        if (title.isBlank()) {
            throw new IllegalArgumentException("a sheet has a title");
        }
        marks = List.copyOf(marks);
        banners = List.copyOf(banners);
        blocks = List.copyOf(blocks);
    }
}
