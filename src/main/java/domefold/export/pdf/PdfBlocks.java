package domefold.export.pdf;

import domefold.sheet.Block;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;

/** Blocks in print. */
final class PdfBlocks {
    private static final float BODY = 9.5f;
    private static final float SMALL = 7.5f;
    private static final float HEADING = 12;
    private static final float GAP = 6;
    private static final float CELL = 2.5f;
    private static final float FACT_NAME = Paper.points(38);

    private final PdfPen pen;

    PdfBlocks(PdfPen pen) {
        this.pen = pen;
    }

    void write(Block block) throws IOException {
        if (block instanceof Block.Heading heading) {
            heading(heading);
        } else if (block instanceof Block.Words words) {
            pen.paragraph(words.text(), words.small() ? SMALL : BODY, false);
            pen.down(2);
        } else if (block instanceof Block.Facts facts) {
            facts(facts);
        } else if (block instanceof Block.Grid grid) {
            grid(grid);
        } else if (block instanceof Block.Boxes boxes) {
            boxes(boxes);
        } else if (block instanceof Block.Signatures signatures) {
            signatures(signatures);
        } else if (block instanceof Block.Drawing drawing) {
            new PdfDrawing(pen).draw(drawing);
        } else {
            throw new IllegalStateException("no print for " + block.getClass());
        }
    }

    private void heading(Block.Heading heading) throws IOException {
        pen.need(HEADING * 4);
        pen.down(GAP);
        pen.paragraph(heading.text(), HEADING, true);
        pen.down(3);
    }

    private void facts(Block.Facts facts) throws IOException {
        for (Block.Fact fact : facts.facts()) {
            List<String> name = pen.font().wrapped(fact.name(), BODY, FACT_NAME - 2 * CELL);
            List<String> value = pen.font().wrapped(fact.value(), BODY, pen.widthPt() - FACT_NAME);
            float line = BODY * PdfPen.LEADING;
            pen.need(Math.max(name.size(), value.size()) * line);
            float top = pen.yPt();
            lines(name, pen.leftPt(), top, true);
            lines(value, pen.leftPt() + FACT_NAME, top, false);
            pen.down(Math.max(name.size(), value.size()) * line);
        }
        pen.down(GAP / 2);
    }

    private void grid(Block.Grid grid) throws IOException {
        float[] widths = widths(grid);
        row(grid.header(), widths, true);
        for (List<String> row : grid.rows()) {
            List<List<String>> cells = wrapped(row, widths);
            if (pen.need(height(cells))) {
                row(grid.header(), widths, true);
            }
            row(row, widths, false);
        }
        pen.down(GAP);
    }

    private void row(List<String> row, float[] widths, boolean header) throws IOException {
        List<List<String>> cells = wrapped(row, widths);
        float height = height(cells);
        pen.need(height);
        float x = pen.leftPt();
        for (int i = 0; i < cells.size(); i++) {
            lines(cells.get(i), x + CELL, pen.yPt() - CELL, header || i == 0);
            x += widths[i];
        }
        pen.down(height);
        pen.line(pen.leftPt(), pen.yPt(), pen.leftPt() + pen.widthPt(), pen.yPt(), header ? 0.9f : 0.25f);
    }

    private float[] widths(Block.Grid grid) {
        float sum = grid.weights().stream().mapToInt(Integer::intValue).sum();
        float[] widths = new float[grid.weights().size()];
        for (int i = 0; i < widths.length; i++) {
            widths[i] = pen.widthPt() * grid.weights().get(i) / sum;
        }
        return widths;
    }

    private List<List<String>> wrapped(List<String> row, float[] widths) throws IOException {
        List<List<String>> cells = new ArrayList<>();
        for (int i = 0; i < widths.length; i++) {
            cells.add(pen.font().wrapped(row.get(i), BODY, widths[i] - 2 * CELL));
        }
        return cells;
    }

    private static float height(List<List<String>> cells) {
        return cells.stream().mapToInt(List::size).max().orElse(1) * BODY * PdfPen.LEADING + 2 * CELL;
    }

    private void lines(List<String> lines, float xPt, float topPt, boolean heavy) throws IOException {
        for (int i = 0; i < lines.size(); i++) {
            pen.text(lines.get(i), xPt, topPt - BODY - i * BODY * PdfPen.LEADING, BODY, heavy);
        }
    }

    private void boxes(Block.Boxes boxes) throws IOException {
        float indent = BODY * 1.6f;
        for (Block.Box box : boxes.boxes()) {
            List<String> words = pen.font().wrapped(box.words(), BODY, pen.widthPt() - indent);
            pen.need(words.size() * BODY * PdfPen.LEADING);
            pen.box(pen.leftPt(), pen.yPt() - BODY - 0.5f, BODY * 0.85f, box.ticked());
            lines(words, pen.leftPt() + indent, pen.yPt(), false);
            pen.down(words.size() * BODY * PdfPen.LEADING + 1);
        }
        pen.down(GAP / 2);
    }

    private void signatures(Block.Signatures signatures) throws IOException {
        float line = Paper.points(12);
        pen.need(line + BODY * 2);
        pen.down(line);
        float width = pen.widthPt() / signatures.lines().size();
        for (int i = 0; i < signatures.lines().size(); i++) {
            float x = pen.leftPt() + i * width;
            pen.line(x, pen.yPt(), x + width - GAP * 3, pen.yPt(), 0.5f);
            pen.text(signatures.lines().get(i), x, pen.yPt() - BODY, SMALL, false);
        }
        pen.down(BODY * 2);
    }
}
