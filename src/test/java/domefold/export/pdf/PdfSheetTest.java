package domefold.export.pdf;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import domefold.outcome.Band;
import domefold.patient.Side;
import domefold.record.ConsultRecord;
import domefold.record.RecordStatus;
import domefold.sheet.Block;
import domefold.sheet.ClinicalSheet;
import domefold.sheet.Limits;
import domefold.sheet.Mark;
import domefold.sheet.Order;
import domefold.sheet.OrderSheet;
import domefold.sheet.PatientSheet;
import domefold.sheet.SampleRecords;
import domefold.sheet.Sheet;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.contentstream.PDFGraphicsStreamEngine;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.preflight.ValidationResult;
import org.apache.pdfbox.preflight.parser.PreflightParser;
import org.apache.pdfbox.rendering.ImageType;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class PdfSheetTest {
    private static final Instant SAVED = Instant.parse("2026-03-04T09:41:07Z");
    private static final Map<Side, Limits> LIMITS = Map.of(
            Side.LEFT, new Limits(OptionalDouble.of(11.2), OptionalDouble.of(300), Optional.of(new Band(265, 330))),
            Side.RIGHT, new Limits(OptionalDouble.of(11.75), OptionalDouble.of(325.4), Optional.empty()));
    private static final Sheet CLINICAL = ClinicalSheet.of(SampleRecords.signed(), SampleRecords.SHA, LIMITS);

    @TempDir
    Path folder;

    /** An independent checker of PDF/A-1b (Apache preflight). */
    @Test
    void everySheetIsFitForTheArchive() throws IOException {
        List<Sheet> sheets = List.of(CLINICAL, PatientSheet.of(SampleRecords.signed(), SampleRecords.SHA),
                OrderSheet.of(Order.of(SampleRecords.signed(), SampleRecords.SHA)));
        for (Sheet sheet : sheets) {
            Path file = folder.resolve("sheet.pdf");
            Files.write(file, PdfSheet.of(sheet, SAVED, Paper.A4));
            ValidationResult result = PreflightParser.validate(file.toFile());
            assertTrue(result.isValid(), () -> sheet.title() + ": " + result.getErrorsList().stream()
                    .map(error -> error.getErrorCode() + " " + error.getDetails()).toList());
        }
    }

    @Test
    void theSameSheetGivesTheSameBytes() throws InterruptedException {
        byte[] first = PdfSheet.of(CLINICAL, SAVED, Paper.A4);
        Thread.sleep(1100);
        assertArrayEquals(first, PdfSheet.of(CLINICAL, SAVED, Paper.A4));
    }

    @Test
    void everyPageCarriesItsNumberTheRecordTheVersionTheDigestAndTheBanners() throws IOException {
        ConsultRecord draft = SampleRecords.withStatus(RecordStatus.DRAFT, false);
        byte[] pdf = PdfSheet.of(ClinicalSheet.of(draft, SampleRecords.SHA, LIMITS), SAVED, Paper.LETTER);
        try (PDDocument document = Loader.loadPDF(pdf)) {
            int pages = document.getNumberOfPages();
            assertTrue(pages >= 3, pages + " pages");
            for (int page = 1; page <= pages; page++) {
                String text = text(document, page);
                for (String needed : List.of("page " + page + " of " + pages, "case K-2041", "version 1 (draft)",
                        "sha256 0123456789ab", "DRAFT: not signed.", "INVENTED DEVICE LIST")) {
                    assertTrue(text.contains(needed), needed + " on page " + page + ":\n" + text);
                }
            }
        }
    }

    @Test
    void whatIsPrintedReadsBackSideBySide() throws IOException {
        try (PDDocument document = Loader.loadPDF(PdfSheet.of(CLINICAL, SAVED, Paper.A4))) {
            String all = new PDFTextStripper().getText(document).replace('\u00a0', ' ');
            assertTrue(all.contains("Fill 290 mL 330 mL"), all);
            assertTrue(all.contains("Width ceiling 11.2 cm"), all);
            assertTrue(all.contains("Ngũgĩ"), all);
            assertTrue(all.contains("Print at actual size and check with a ruler"), all);
        }
    }

    @Test
    void noSideAndNoSizeIsBrokenOverTwoLinesOfTheOrder() throws IOException {
        Sheet sheet = OrderSheet.of(Order.of(SampleRecords.signed(), SampleRecords.SHA));
        try (PDDocument document = Loader.loadPDF(PdfSheet.of(sheet, SAVED, Paper.LETTER))) {
            String all = text(document, 1).replace('\u00a0', ' ');
            for (String whole : List.of("LEFT GEL-M-290", "RIGHT GEL-M-330", "290 mL 11.0 cm × 4.1 cm settled 1")) {
                assertTrue(all.contains(whole), whole + " in " + all);
            }
        }
    }

    /** 100 mm are 283.46 points; the line is looked up in the page's own drawing operators. */
    @Test
    void theBarAndEveryRulerAreAsLongInPointsAsInLife() throws IOException {
        List<Float> lengths = new ArrayList<>();
        try (PDDocument document = Loader.loadPDF(PdfSheet.of(CLINICAL, SAVED, Paper.A4))) {
            for (PDPage page : document.getPages()) {
                new LineLengths(page, lengths).processPage(page);
            }
        }
        for (double lengthMm : new double[] {100, 120, 128, 112, 117.5, 110, 115}) {
            double points = lengthMm / 25.4 * 72;
            assertTrue(lengths.stream().anyMatch(found -> Math.abs(found - points) < 0.01), lengthMm + " mm in " + lengths);
        }
        assertEquals(283.46, PdfDrawing.BAR_MM / 25.4 * 72, 0.005);
    }

    /** The outline of each device spans its listed height and projection on paper, in points. */
    @Test
    void theSilhouetteIsDrawnAtTrueScale() throws IOException {
        Sheet sheet = new Sheet("One", List.of(), List.of(), List.of(new Block.Drawing(List.of(new Block.SideDrawing(Side.LEFT,
                SampleRecords.LEFT_GEL, OptionalDouble.empty(), OptionalDouble.empty())))));
        List<Float> lengths = new ArrayList<>();
        try (PDDocument document = Loader.loadPDF(PdfSheet.of(sheet, SAVED, Paper.A4))) {
            LineLengths lines = new LineLengths(document.getPage(0), lengths);
            lines.processPage(document.getPage(0));
            assertEquals(110 / 25.4 * 72, lines.longestOutline.getHeight(), 0.01);
            assertEquals(41 / 25.4 * 72, lines.longestOutline.getWidth(), 0.01);
        }
    }

    /** The rendered page, measured in pixels at 300 to the inch: one pixel is 0.085 mm. */
    @Test
    void theRenderedBarMeasuresAHundredMillimetres() throws IOException {
        int dpi = 300;
        Sheet sheet = new Sheet("Bar", List.of(Mark.of(SampleRecords.signed(), SampleRecords.SHA)), List.of(),
                List.of(new Block.Drawing(List.of())));
        try (PDDocument document = Loader.loadPDF(PdfSheet.of(sheet, SAVED, Paper.A4))) {
            BufferedImage image = new PDFRenderer(document).renderImageWithDPI(0, dpi, ImageType.GRAY);
            int longest = 0;
            for (int y = 0; y < image.getHeight(); y++) {
                int run = 0;
                for (int x = 0; x < image.getWidth(); x++) {
                    run = (image.getRGB(x, y) & 0xff) < 160 ? run + 1 : 0;
                    longest = Math.max(longest, run);
                }
            }
            assertEquals(100.0, longest * 25.4 / dpi, 0.5);
        }
    }

    @Test
    void aCharacterThatTheFontLacksPrintsAsAQuestionMark() throws IOException {
        Sheet sheet = new Sheet("Odd", List.of(Mark.of(SampleRecords.signed(), SampleRecords.SHA)), List.of(),
                List.of(new Block.Words("before 漢😀\u0007 after", false)));
        try (PDDocument document = Loader.loadPDF(PdfSheet.of(sheet, SAVED, Paper.A4))) {
            assertTrue(text(document, 1).contains("before ?? after"), text(document, 1));
        }
    }

    @Test
    void aLongGridRepeatsItsHeaderOnEveryPage() throws IOException {
        List<List<String>> rows = new ArrayList<>();
        for (int i = 0; i < 150; i++) {
            rows.add(List.of("row " + i, "x".repeat(90)));
        }
        Sheet sheet = new Sheet("Long", List.of(), List.of(),
                List.of(new Block.Grid(List.of("Name", "LEFT"), List.of(1, 2), rows)));
        try (PDDocument document = Loader.loadPDF(PdfSheet.of(sheet, SAVED, Paper.A4))) {
            int seen = 0;
            for (int page = 1; page <= document.getNumberOfPages(); page++) {
                assertTrue(text(document, page).contains("Name LEFT"), "page " + page);
                seen += text(document, page).split("row ").length - 1;
            }
            assertEquals(150, seen);
        }
    }

    @Test
    void theFontIsEmbeddedAndTheTitleNamesNoOne() throws IOException {
        try (PDDocument document = Loader.loadPDF(PdfSheet.of(CLINICAL, SAVED, Paper.A4))) {
            for (PDPage page : document.getPages()) {
                for (COSName name : page.getResources().getFontNames()) {
                    assertTrue(page.getResources().getFont(name).isEmbedded());
                }
            }
            assertEquals("Clinical summary", document.getDocumentInformation().getTitle());
            assertEquals(null, document.getDocumentInformation().getAuthor());
        }
    }

    private static String text(PDDocument document, int page) throws IOException {
        PDFTextStripper stripper = new PDFTextStripper();
        stripper.setStartPage(page);
        stripper.setEndPage(page);
        return stripper.getText(document);
    }

    /** Collects the lengths of the straight lines a page draws. */
    private static final class LineLengths extends PDFGraphicsStreamEngine {
        private final List<Float> lengths;
        private java.awt.geom.Rectangle2D longestOutline = new java.awt.geom.Rectangle2D.Float();
        private java.awt.geom.Rectangle2D outline;
        private int corners;
        private int mostCorners;
        private float x;
        private float y;

        LineLengths(PDPage page, List<Float> lengths) {
            super(page);
            this.lengths = lengths;
        }

        @Override
        public void moveTo(float toX, float toY) {
            outline = new java.awt.geom.Rectangle2D.Float(toX, toY, 0, 0);
            corners = 0;
            x = toX;
            y = toY;
        }

        @Override
        public void lineTo(float toX, float toY) {
            lengths.add((float) Math.hypot(toX - x, toY - y));
            outline.add(toX, toY);
            corners++;
            if (corners > mostCorners) {
                mostCorners = corners;
                longestOutline = outline;
            }
            x = toX;
            y = toY;
        }

        @Override
        public java.awt.geom.Point2D getCurrentPoint() {
            return new java.awt.geom.Point2D.Float(x, y);
        }

        @Override
        public void appendRectangle(java.awt.geom.Point2D a, java.awt.geom.Point2D b, java.awt.geom.Point2D c,
                java.awt.geom.Point2D d) {}

        @Override
        public void drawImage(org.apache.pdfbox.pdmodel.graphics.image.PDImage image) {}

        @Override
        public void clip(int windingRule) {}

        @Override
        public void curveTo(float x1, float y1, float x2, float y2, float x3, float y3) {}

        @Override
        public void closePath() {}

        @Override
        public void endPath() {}

        @Override
        public void strokePath() {}

        @Override
        public void fillPath(int windingRule) {}

        @Override
        public void fillAndStrokePath(int windingRule) {}

        @Override
        public void shadingFill(COSName shadingName) {}
    }
}
