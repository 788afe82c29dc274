package domefold.export.pdf;

import domefold.sheet.Block;
import domefold.sheet.Mark;
import domefold.sheet.Sheet;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.math.BigInteger;
import java.time.Instant;
import org.apache.pdfbox.pdfwriter.compress.CompressParameters;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;

/** A sheet as PDF/A-1b. */
public final class PdfSheet {
    private static final float TITLE = 16;
    private static final float EDGE_TEXT = 7.5f;

    private PdfSheet() {}

    /**
     * The sheet in print. The same sheet and moment give the same bytes.
     *
     * @param saved when the record was saved; the PDF carries no other time
     */
    public static byte[] of(Sheet sheet, Instant saved, Paper paper) {
        try (PDDocument document = new PDDocument()) {
            PdfFont font = new PdfFont(document);
            try (PdfPen pen = new PdfPen(document, paper, font)) {
                pen.paragraph(sheet.title(), TITLE, true);
                pen.down(4);
                PdfBlocks blocks = new PdfBlocks(pen);
                for (Block block : sheet.blocks()) {
                    blocks.write(block);
                }
            }
            edges(document, sheet, font, paper);
            PdfArchive.mark(document, font.printable(sheet.title()), saved, identity(sheet));
            ByteArrayOutputStream bytes = new ByteArrayOutputStream();
            document.save(bytes, CompressParameters.NO_COMPRESSION);
            return bytes.toByteArray();
        } catch (IOException inMemory) {
            throw new UncheckedIOException("a PDF could not be laid out", inMemory);
        }
    }

    /** What stands at the head and the foot of every page; known only once the pages are counted. */
    private static void edges(PDDocument document, Sheet sheet, PdfFont font, Paper paper) throws IOException {
        int pages = document.getNumberOfPages();
        for (int i = 0; i < pages; i++) {
            PDPage page = document.getPage(i);
            try (PDPageContentStream stream = new PDPageContentStream(document, page,
                    PDPageContentStream.AppendMode.APPEND, true, true)) {
                float width = paper.widthPt() - 2 * PdfPen.MARGIN;
                String count = "page " + (i + 1) + " of " + pages;
                String foot = fitting(font, foot(sheet), width - font.widthPt(count, EDGE_TEXT) - 12);
                line(stream, font, foot, PdfPen.MARGIN, PdfPen.MARGIN);
                line(stream, font, count, paper.widthPt() - PdfPen.MARGIN - font.widthPt(count, EDGE_TEXT), PdfPen.MARGIN);
                float y = paper.heightPt() - PdfPen.MARGIN;
                for (String banner : sheet.banners()) {
                    line(stream, font, font.printable(banner), PdfPen.MARGIN, y);
                    y -= EDGE_TEXT * 1.2f;
                }
            }
        }
    }

    private static String foot(Sheet sheet) {
        if (sheet.marks().size() == 1) {
            return sheet.marks().get(0).line();
        }
        return sheet.title() + ", " + sheet.marks().size() + " records: "
                + String.join(", ", sheet.marks().stream().map(mark -> mark.id() + " v" + mark.version()).toList());
    }

    private static String fitting(PdfFont font, String text, float widthPt) throws IOException {
        String whole = font.printable(text);
        if (font.widthPt(whole, EDGE_TEXT) <= widthPt) {
            return whole;
        }
        return font.wrapped(whole, EDGE_TEXT, widthPt - font.widthPt(" …", EDGE_TEXT)).get(0) + " …";
    }

    private static void line(PDPageContentStream stream, PdfFont font, String text, float xPt, float yPt) throws IOException {
        stream.beginText();
        stream.setFont(font.font(), EDGE_TEXT);
        stream.newLineAtOffset(xPt, yPt);
        stream.showText(text);
        stream.endText();
    }

    /** A file identity made from the digests of what is printed. */
    private static long identity(Sheet sheet) {
        long identity = sheet.title().hashCode();
        for (Mark mark : sheet.marks()) {
            identity = 31 * identity + new BigInteger(mark.sha256().substring(0, 16), 16).longValue();
        }
        return identity;
    }
}
