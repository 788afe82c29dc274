package domefold.screen;

import domefold.canvas.Canvas;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Lines of a page wrapped as the canvas spells them; what follows a mark or a first column stays below its beginning. */
final class Wrapped {
    private static final Pattern HANGING = Pattern.compile("(! |\\d+\\. |\\S.{0,20}? {2,})(?=\\S)");

    private Wrapped() {}

    static List<OverlayView.Line> of(Canvas canvas, List<OverlayView.Line> lines, int width) {
        List<OverlayView.Line> out = new ArrayList<>();
        for (OverlayView.Line line : lines) {
            text(canvas, line.text(), width - line.indent())
                    .forEach(part -> out.add(new OverlayView.Line(line.indent(), part, line.role())));
        }
        return out;
    }

    /** One text; a part that fits is left as it is. */
    static List<String> text(Canvas canvas, String text, int width) {
        Matcher mark = HANGING.matcher(text);
        if (canvas.width(text) <= width || !mark.lookingAt() || mark.end() * 2 > width) {
            return canvas.wrap(text, width);
        }
        List<String> out = new ArrayList<>();
        for (String part : canvas.wrap(text.substring(mark.end()), width - mark.end())) {
            out.add((out.isEmpty() ? mark.group() : " ".repeat(mark.end())) + part);
        }
        return out;
    }
}
