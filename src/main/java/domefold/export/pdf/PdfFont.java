package domefold.export.pdf;

import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.font.PDType0Font;

/** The embedded font of one document: which characters it has, and how wide words are. */
final class PdfFont {
    private static final String CARRIED = "/org/apache/pdfbox/resources/ttf/LiberationSans-Regular.ttf";
    private static final String MISSING = "?";
    private static final Pattern NUMBER_AND_UNIT = Pattern.compile("(\\d) (cm|mm|mL|kg|%)(?![\\p{Alnum}])");
    private static final String UNBROKEN = "$1\u00a0$2";

    private final PDType0Font font;
    private final Map<Integer, Boolean> known = new HashMap<>();

    PdfFont(PDDocument document) throws IOException {
        try (InputStream in = PDDocument.class.getResourceAsStream(CARRIED)) {
            if (in == null) {
                throw new IOException("PDFBox was packed without its font");
            }
            font = PDType0Font.load(document, in, true);
        }
    }

    PDType0Font font() {
        return font;
    }

    /** The text with a question mark for every character that the font does not have. */
    String printable(String text) {
        StringBuilder out = new StringBuilder();
        text.codePoints().forEach(c -> {
            String character = Character.isWhitespace(c) || Character.isISOControl(c) ? " " : Character.toString(c);
            out.append(known.computeIfAbsent(character.codePointAt(0), this::has) ? character : MISSING);
        });
        return out.toString();
    }

    private boolean has(int codePoint) {
        try {
            font.encode(Character.toString(codePoint));
            return true;
        } catch (IllegalArgumentException | IOException absent) {
            return false;
        }
    }

    float widthPt(String printable, float sizePt) throws IOException {
        return font.getStringWidth(printable) / 1000 * sizePt;
    }

    /** The text in lines no wider than that; a number stays with its unit, a word wider than the line is cut. */
    List<String> wrapped(String text, float sizePt, float widthPt) throws IOException {
        List<String> lines = new ArrayList<>();
        StringBuilder line = new StringBuilder();
        for (String word : NUMBER_AND_UNIT.matcher(printable(text)).replaceAll(UNBROKEN).strip().split(" +")) {
            String rest = word;
            if (!line.isEmpty() && widthPt(line + " " + rest, sizePt) <= widthPt) {
                line.append(' ').append(rest);
                continue;
            }
            if (!line.isEmpty()) {
                lines.add(line.toString());
                line.setLength(0);
            }
            while (widthPt(rest, sizePt) > widthPt && rest.codePointCount(0, rest.length()) > 1) {
                int fits = fitting(rest, sizePt, widthPt);
                lines.add(rest.substring(0, fits));
                rest = rest.substring(fits);
            }
            line.append(rest);
        }
        lines.add(line.toString());
        return lines;
    }

    private int fitting(String word, float sizePt, float widthPt) throws IOException {
        int fits = word.offsetByCodePoints(0, 1);
        while (fits < word.length()) {
            int next = word.offsetByCodePoints(fits, 1);
            if (widthPt(word.substring(0, next), sizePt) > widthPt) {
                break;
            }
            fits = next;
        }
        return fits;
    }
}
