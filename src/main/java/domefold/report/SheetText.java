package domefold.report;

import domefold.canvas.TextWidth;
import domefold.outcome.Numbers;
import domefold.sheet.Block;
import domefold.sheet.Sheet;
import java.util.ArrayList;
import java.util.List;

/** A sheet as readable text, the same words as on paper. */
public final class SheetText {
    private SheetText() {}

    /** The whole sheet. */
    public static String of(Sheet sheet) {
        Page page = new Page();
        page.line(sheet.title());
        sheet.marks().forEach(mark -> page.paragraph(0, mark.line()));
        sheet.banners().forEach(banner -> page.paragraph(0, banner));
        for (Block block : sheet.blocks()) {
            write(page, block);
        }
        return page.text();
    }

    private static void write(Page page, Block block) {
        if (block instanceof Block.Heading heading) {
            page.heading(heading.text());
        } else if (block instanceof Block.Words words) {
            page.paragraph(0, words.text());
        } else if (block instanceof Block.Facts facts) {
            facts(page, facts.facts());
        } else if (block instanceof Block.Grid grid) {
            grid(page, grid);
        } else if (block instanceof Block.Boxes boxes) {
            boxes.boxes().forEach(box -> page.hanging(box.ticked() ? "[x] " : "[ ] ", box.words()));
        } else if (block instanceof Block.Signatures signatures) {
            page.blank();
            signatures.lines().forEach(line -> page.line(TextWidth.padRight(line + ":", 10) + " " + "_".repeat(40)));
        } else if (block instanceof Block.Drawing drawing) {
            drawing.sides().forEach(side -> drawing(page, side));
        } else {
            throw new IllegalStateException("no text for " + block.getClass().getSimpleName());
        }
    }

    private static void facts(Page page, List<Block.Fact> facts) {
        int width = Math.min(30, facts.stream().mapToInt(fact -> TextWidth.of(fact.name())).max().orElse(0));
        facts.forEach(fact -> page.hanging(TextWidth.padRight(fact.name(), width) + "  ", fact.value()));
    }

    /** What paper draws to scale, text says in numbers. */
    private static void drawing(Page page, Block.SideDrawing side) {
        page.hanging(TextWidth.padRight(side.side().name(), 7), "device " + Numbers.cm(side.device().widthCm()) + " wide, "
                + "projecting " + Numbers.cm(side.device().projectionCm())
                + (side.baseWidthCm().isPresent() ? ", on a base of " + Numbers.cm(side.baseWidthCm().getAsDouble()) : "")
                + (side.widthCeilingCm().isPresent()
                        ? ", ceiling " + Numbers.cm(side.widthCeilingCm().getAsDouble()) : ""));
    }

    private static void grid(Page page, Block.Grid grid) {
        int[] widths = widths(grid);
        row(page, widths, grid.header());
        grid.rows().forEach(cells -> row(page, widths, cells));
    }

    /** As wide as the widest cell where all fit; else shared out by weight. */
    private static int[] widths(Block.Grid grid) {
        int columns = grid.header().size();
        int room = Page.COLUMNS - 2 * (columns - 1);
        int[] needed = new int[columns];
        int sum = 0;
        for (int i = 0; i < columns; i++) {
            int at = i;
            needed[i] = Math.max(TextWidth.of(grid.header().get(i)),
                    grid.rows().stream().mapToInt(row -> TextWidth.of(row.get(at))).max().orElse(0));
            sum += needed[i];
        }
        if (sum <= room) {
            return needed;
        }
        int weights = grid.weights().stream().mapToInt(Integer::intValue).sum();
        int[] shared = new int[columns];
        for (int i = 0; i < columns; i++) {
            shared[i] = Math.max(longestWord(grid.header().get(i)), room * grid.weights().get(i) / weights);
        }
        return shared;
    }

    private static int longestWord(String heading) {
        return java.util.Arrays.stream(heading.split(" ")).mapToInt(TextWidth::of).max().orElse(0);
    }

    private static void row(Page page, int[] widths, List<String> cells) {
        List<List<String>> wrapped = new ArrayList<>();
        int height = 0;
        for (int i = 0; i < cells.size(); i++) {
            List<String> lines = TextWidth.wrap(cells.get(i), widths[i]);
            wrapped.add(lines);
            height = Math.max(height, lines.size());
        }
        for (int line = 0; line < height; line++) {
            StringBuilder out = new StringBuilder();
            for (int i = 0; i < cells.size(); i++) {
                String part = line < wrapped.get(i).size() ? wrapped.get(i).get(line) : "";
                out.append(i == 0 ? "" : "  ").append(TextWidth.padRight(part, widths[i]));
            }
            page.line(out.toString());
        }
    }
}
