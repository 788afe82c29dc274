package domefold.sheet;

import domefold.device.Device;
import domefold.patient.Side;
import java.util.List;
import java.util.OptionalDouble;

/** A piece of a sheet. */
public sealed interface Block {

    /** Opens a section. */
    record Heading(String text) implements Block {}

    /** A paragraph; {@code small} for what stands behind a figure. */
    record Words(String text, boolean small) implements Block {}

    /** Names and values in one column, for example "case" and "K-2041". */
    record Facts(List<Fact> facts) implements Block {
        public Facts {
            facts = List.copyOf(facts);
        }
    }

    /** One name with its value. */
    record Fact(String name, String value) {}

    /**
     * A table. Every row has as many cells as the header; the header is repeated where a page ends.
     *
     * @param weights how wide each column is beside the others
     */
    record Grid(List<String> header, List<Integer> weights, List<List<String>> rows) implements Block {
        public Grid {
            header = List.copyOf(header);
            weights = List.copyOf(weights);
            rows = rows.stream().map(List::copyOf).toList();
            int columns = header.size();
            if (weights.size() != columns || rows.stream().anyMatch(row -> row.size() != columns)) {
                throw new IllegalArgumentException("each row of a grid has " + columns + " cells");
            }
        }
    }

    /** Lines with a box before each, ticked or open. */
    record Boxes(List<Box> boxes) implements Block {
        public Boxes {
            boxes = List.copyOf(boxes);
        }
    }

    /** One box with its words. */
    record Box(String words, boolean ticked) {}

    /** Lines to sign on, each with what the signature stands for. */
    record Signatures(List<String> lines) implements Block {
        public Signatures {
            lines = List.copyOf(lines);
        }
    }

    /** Silhouettes and rulers at true scale where the medium has one. */
    record Drawing(List<SideDrawing> sides) implements Block {
        public Drawing {
            sides = List.copyOf(sides);
        }
    }

    /**
     * What is drawn for one side.
     *
     * @param device drawn at its listed dimensions
     * @param baseWidthCm the measured base width
     * @param widthCeilingCm the width that the tissues allow
     */
    record SideDrawing(Side side, Device device, OptionalDouble baseWidthCm, OptionalDouble widthCeilingCm) {}
}
