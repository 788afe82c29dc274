package domefold.export.pdf;

import domefold.outcome.Numbers;
import domefold.shell.Silhouette;
import domefold.sheet.Block;
import java.io.IOException;
import java.util.List;
import java.util.OptionalDouble;

/** Silhouettes and rulers at true scale, with a bar to check the print by. */
final class PdfDrawing {
    static final double BAR_MM = 100;
    private static final float TEXT = 8;
    private static final float STEP = Paper.points(5);
    private static final float TICK = Paper.points(1.5);
    private static final float APART = Paper.points(12);

    private final PdfPen pen;

    PdfDrawing(PdfPen pen) {
        this.pen = pen;
    }

    void draw(Block.Drawing drawing) throws IOException {
        float tallest = (float) drawing.sides().stream().mapToDouble(side -> side.device().heightCm()).max().orElse(0);
        float silhouettes = Paper.points(10 * tallest) + 3 * STEP;
        float rulers = drawing.sides().size() * 5 * STEP;
        pen.need(Math.min(4 * STEP + silhouettes + rulers, Paper.points(230)));
        pen.paragraph("Drawn at true scale. Print at actual size and check with a ruler: the bar is 100 mm long.", TEXT, true);
        bar();
        silhouettes(drawing.sides(), Paper.points(10 * tallest));
        for (Block.SideDrawing side : drawing.sides()) {
            rulers(side);
        }
        pen.paragraph("The silhouette is the device as listed, seen from the side, not the breast over it.", TEXT - 0.5f, false);
    }

    private void bar() throws IOException {
        pen.down(2 * STEP);
        measured(pen.leftPt(), pen.yPt(), Paper.points(BAR_MM), 1);
        pen.text("100 mm", pen.leftPt() + Paper.points(BAR_MM) + STEP / 2, pen.yPt() - TEXT / 3, TEXT, false);
        pen.down(STEP);
    }

    private void silhouettes(List<Block.SideDrawing> sides, float heightPt) throws IOException {
        float top = pen.yPt();
        float x = pen.leftPt() + STEP;
        for (Block.SideDrawing side : sides) {
            pen.text(side.side().name() + ": " + side.device().id(), x, top - STEP, TEXT, true);
            float middle = top - 2 * STEP - heightPt / 2;
            float half = Paper.points(5 * side.device().heightCm());
            pen.line(x, middle - half, x, middle + half, 0.4f);
            float baseX = x;
            pen.outline(Silhouette.listed(side.device()).points().stream().map(point -> new float[] {
                baseX + Paper.points(10 * point.xCm()), middle + Paper.points(10 * point.yCm())}).toList(), 0.8f);
            x += Math.max(Paper.points(10 * side.device().projectionCm()), Paper.points(45)) + APART;
        }
        pen.down(heightPt + 3 * STEP);
    }

    private void rulers(Block.SideDrawing side) throws IOException {
        pen.need(5 * STEP);
        pen.down(STEP);
        pen.text(side.side().name(), pen.leftPt(), pen.yPt(), TEXT, true);
        ruler("base width", side.baseWidthCm());
        ruler("width ceiling", side.widthCeilingCm());
        ruler("device width", OptionalDouble.of(side.device().widthCm()));
        pen.down(STEP);
    }

    private void ruler(String name, OptionalDouble lengthCm) throws IOException {
        pen.down(STEP);
        if (lengthCm.isEmpty()) {
            pen.text(name + ": not known", pen.leftPt(), pen.yPt(), TEXT, false);
            return;
        }
        float length = Paper.points(10 * lengthCm.getAsDouble());
        measured(pen.leftPt(), pen.yPt(), length, 0.8f);
        String words = name + " " + Numbers.cm(lengthCm.getAsDouble());
        float beside = pen.leftPt() + length + STEP / 2;
        boolean fits = beside + pen.font().widthPt(words, TEXT) <= pen.leftPt() + pen.widthPt();
        pen.text(words, fits ? beside : pen.leftPt() + STEP / 2, pen.yPt() + (fits ? -TEXT / 3 : 2), TEXT, false);
    }

    /** A line of exactly that length between two upright ticks. */
    private void measured(float xPt, float yPt, float lengthPt, float lineWidthPt) throws IOException {
        pen.line(xPt, yPt, xPt + lengthPt, yPt, lineWidthPt);
        pen.line(xPt, yPt - TICK, xPt, yPt + TICK, lineWidthPt);
        pen.line(xPt + lengthPt, yPt - TICK, xPt + lengthPt, yPt + TICK, lineWidthPt);
    }
}
