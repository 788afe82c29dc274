package domefold.report;

import domefold.canvas.TextWidth;
import java.util.List;

/** Text built line by line, never wider than 80 columns where words allow it. */
public final class Page {
    public static final int COLUMNS = 80;
    private final StringBuilder out = new StringBuilder();

    /** A line as it is, blanks at its end removed. */
    public Page line(String text) {
        out.append(text.stripTrailing()).append('\n');
        return this;
    }

    public Page blank() {
        if (!out.isEmpty()) {
            out.append('\n');
        }
        return this;
    }

    /** A heading, a blank line before it. */
    public Page heading(String text) {
        return blank().line(text);
    }

    /** Text on the left and text on the right end of one line, on two lines where they do not fit. */
    Page ends(String left, String right) {
        int gap = COLUMNS - TextWidth.of(left) - TextWidth.of(right);
        return gap < 2 ? line(left).line(right) : line(left + " ".repeat(gap) + right);
    }

    /** Wrapped text, every line indented. */
    public Page paragraph(int indent, String text) {
        return hanging(" ".repeat(indent), text);
    }

    /** Wrapped text after a first-line prefix; the following lines stand under its end. */
    public Page hanging(String prefix, String text) {
        int width = TextWidth.of(prefix);
        String lead = prefix;
        for (String line : TextWidth.wrap(text, COLUMNS - width)) {
            line(lead + line);
            lead = " ".repeat(width);
        }
        return this;
    }

    /** Cells in columns: a positive width aligns left, a negative one right; one blank between, none is cut. */
    public Page row(int[] widths, List<String> cells) {
        StringBuilder line = new StringBuilder();
        for (int i = 0; i < widths.length; i++) {
            String cell = i < cells.size() ? cells.get(i) : "";
            line.append(i == 0 ? "" : " ");
            line.append(widths[i] >= 0 ? TextWidth.padRight(cell, widths[i]) : TextWidth.padLeft(cell, -widths[i]));
        }
        return line(line.toString());
    }

    /** Everything written so far. */
    public String text() {
        return out.toString();
    }
}
