package domefold.export.pdf;

import static org.junit.jupiter.api.Assertions.assertTrue;

import domefold.sheet.Block;
import domefold.sheet.Sheet;
import java.io.IOException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.junit.jupiter.api.Test;

class PdfPropertyTest {
    private static final long SEED = 1901L;

    @Test
    void whateverIsTypedIsPrintedSomehow() throws IOException {
        Random random = new Random(SEED);
        for (int round = 0; round < 40; round++) {
            List<Block> blocks = new ArrayList<>();
            for (int i = 0; i < 12; i++) {
                blocks.add(new Block.Words(text(random), random.nextBoolean()));
                blocks.add(new Block.Grid(List.of(text(random), "", "RIGHT"), List.of(1, 1 + random.nextInt(60), 20),
                        List.of(List.of(text(random), text(random), text(random)))));
                blocks.add(new Block.Boxes(List.of(new Block.Box(text(random), true))));
                blocks.add(new Block.Facts(List.of(new Block.Fact(text(random), text(random)))));
            }
            byte[] pdf = PdfSheet.of(new Sheet("t" + text(random), List.of(), List.of(text(random)), blocks),
                    Instant.parse("2026-03-04T09:41:07Z"), Paper.LETTER);
            try (PDDocument document = Loader.loadPDF(pdf)) {
                assertTrue(document.getNumberOfPages() >= 1, "seed " + SEED + ", round " + round);
            }
        }
    }

    /** Letters, long words, line ends, controls, other scripts, lone surrogates and marks that combine. */
    private static String text(Random random) {
        StringBuilder text = new StringBuilder();
        for (int i = random.nextInt(60); i > 0; i--) {
            switch (random.nextInt(8)) {
                case 0 -> text.append(' ');
                case 1 -> text.append((char) random.nextInt(0x20));
                case 2 -> text.append((char) (0xD800 + random.nextInt(0x800)));
                case 3 -> text.appendCodePoint(0x300 + random.nextInt(0x500));
                case 4 -> text.appendCodePoint(0x1F300 + random.nextInt(0x200));
                case 5 -> text.append("ffi");
                default -> text.append((char) ('a' + random.nextInt(26)));
            }
        }
        return text.toString();
    }
}
