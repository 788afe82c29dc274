package domefold.export.pdf;

import java.io.IOException;
import java.util.List;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.graphics.state.RenderingMode;

/**
 * Writes down the page and starts the next one. {@code y} counts from the foot of the page, as PDF does; {@link #yPt} is the
 * lower edge of what was written last.
 */
final class PdfPen implements AutoCloseable {
    static final float MARGIN = Paper.points(18);
    static final float LEADING = 1.3f;
    private static final float HEAD = Paper.points(9);
    private static final float FOOT = Paper.points(9);
    private static final float HEAVY = 0.35f;

    private final PDDocument document;
    private final Paper paper;
    private final PdfFont font;
    private PDPageContentStream stream;
    private float yPt;

    PdfPen(PDDocument document, Paper paper, PdfFont font) throws IOException {
        this.document = document;
        this.paper = paper;
        this.font = font;
        newPage();
    }

    PdfFont font() {
        return font;
    }

    float yPt() {
        return yPt;
    }

    float leftPt() {
        return MARGIN;
    }

    float widthPt() {
        return paper.widthPt() - 2 * MARGIN;
    }

    /** Room left on this page. */
    float roomPt() {
        return yPt - MARGIN - FOOT;
    }

    void newPage() throws IOException {
        close();
        PDPage page = new PDPage(new PDRectangle(paper.widthPt(), paper.heightPt()));
        document.addPage(page);
        stream = new PDPageContentStream(document, page);
        yPt = paper.heightPt() - MARGIN - HEAD;
    }

    /** Starts a new page unless that much room is left; true if it did. */
    boolean need(float heightPt) throws IOException {
        if (roomPt() >= heightPt) {
            return false;
        }
        newPage();
        return true;
    }

    void down(float heightPt) {
        yPt -= heightPt;
    }

    /** A paragraph over the whole width. */
    void paragraph(String text, float sizePt, boolean heavy) throws IOException {
        for (String line : font.wrapped(text, sizePt, widthPt())) {
            need(sizePt * LEADING);
            down(sizePt * LEADING);
            text(line, leftPt(), yPt, sizePt, heavy);
        }
    }

    /** One line of text from a given point; it is not wrapped. */
    void text(String line, float xPt, float baselinePt, float sizePt, boolean heavy) throws IOException {
        String printable = font.printable(line);
        if (printable.isBlank()) {
            return;
        }
        stream.beginText();
        stream.setFont(font.font(), sizePt);
        stream.setRenderingMode(heavy ? RenderingMode.FILL_STROKE : RenderingMode.FILL);
        stream.setLineWidth(HEAVY);
        stream.newLineAtOffset(xPt, baselinePt);
        stream.showText(printable);
        stream.endText();
    }

    void line(float fromX, float fromY, float toX, float toY, float lineWidthPt) throws IOException {
        stream.setLineWidth(lineWidthPt);
        stream.moveTo(fromX, fromY);
        stream.lineTo(toX, toY);
        stream.stroke();
    }

    /** An outline through those points, x and y in turn. */
    void outline(List<float[]> points, float lineWidthPt) throws IOException {
        stream.setLineWidth(lineWidthPt);
        stream.moveTo(points.get(0)[0], points.get(0)[1]);
        for (float[] point : points.subList(1, points.size())) {
            stream.lineTo(point[0], point[1]);
        }
        stream.stroke();
    }

    void box(float xPt, float lowPt, float sidePt, boolean ticked) throws IOException {
        stream.setLineWidth(0.7f);
        stream.addRect(xPt, lowPt, sidePt, sidePt);
        stream.stroke();
        if (ticked) {
            line(xPt, lowPt, xPt + sidePt, lowPt + sidePt, 0.7f);
            line(xPt, lowPt + sidePt, xPt + sidePt, lowPt, 0.7f);
        }
    }

    @Override
    public void close() throws IOException {
        if (stream != null) {
            stream.close();
            stream = null;
        }
    }
}
