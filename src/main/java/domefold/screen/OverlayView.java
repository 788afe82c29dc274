package domefold.screen;

import domefold.canvas.Canvas;
import domefold.canvas.Role;
import domefold.canvas.TextWidth;
import domefold.interview.Question;
import domefold.outcome.Figures;
import domefold.outcome.Working;
import domefold.patient.Side;
import domefold.plan.Plan;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Pages that lie over a room: help, working, answers so far, keys. They scroll and Esc closes them. */
final class OverlayView {
    private static final int WIDEST_TEXT = 110;
    private static final int PAGE_ROWS = 10;

    private static final int WORD = 14;
    private static final int MEANING = 42;
    private static final List<Word> WORDS = List.of(new Word("same", "repeats the LEFT for the RIGHT", "12.5 same"),
            new Word("left, right", "change one side", "left 12.5"),
            new Word("again", "adds a second reading, averaged", "again 12.6 12.9"),
            new Word("skip", "leaves an optional reading open", ""),
            new Word("back, go", "return to any question or room", "go base width"),
            new Word("undo, redo", "takes the last answer back, gives it again", ""),
            new Word("why, summary", "the working behind it, the answers so far", ""));

    private OverlayView() {}

    /** A word that works everywhere, with an example or an empty one. */
    private record Word(String names, String meaning, String example) {}

    /** One line of a page. */
    record Line(int indent, String text, Role role) {}

    /** The page that a typed word opens. */
    static Optional<Overlay.Kind> named(String line) {
        return switch (line.strip().toLowerCase(java.util.Locale.ROOT)) {
            case "pairs" -> Optional.of(Overlay.Kind.PAIRS);
            case "doubt", "sure", "how sure" -> Optional.of(Overlay.Kind.DOUBT);
            case "keys" -> Optional.of(Overlay.Kind.KEYS);
            default -> Optional.empty();
        };
    }

    static ConsultScreen onKey(ConsultScreen screen, Key key) {
        Overlay overlay = screen.overlay();
        if (overlay.kind() == Overlay.Kind.PAIRS) {
            return PairsView.onKey(screen, key);
        }
        return switch (key.kind()) {
            case ESCAPE, ENTER -> screen.withOverlay(Overlay.NONE);
            case F1 -> screen.withOverlay(other(overlay, Overlay.Kind.KEYS));
            case F4 -> screen.withOverlay(other(overlay, Overlay.Kind.WORKING));
            default -> screen.withOverlay(key.isText() && key.codePoint() == 'q' ? Overlay.NONE
                    : new Overlay(overlay.kind(), overlay.scroll().onKey(key, PAGE_ROWS).orElse(overlay.scroll())));
        };
    }

    /** The key of the page that lies there closes it; the key of another opens that one in its place. */
    private static Overlay other(Overlay now, Overlay.Kind asked) {
        return now.kind() == asked ? Overlay.NONE : Overlay.of(asked);
    }

    /** A page longer than the window says itself how it is scrolled. */
    static List<Screen.Hint> hints(ConsultScreen screen) {
        return screen.overlay().kind() == Overlay.Kind.PAIRS ? PairsView.hints(screen) : List.of(new Screen.Hint("Esc", "closes"));
    }

    static void draw(Canvas canvas, int row, int height, ConsultScreen screen) {
        if (screen.overlay().kind() == Overlay.Kind.PAIRS) {
            PairsView.draw(canvas, row, height, screen);
            return;
        }
        int width = Math.min(canvas.columns() - 4, WIDEST_TEXT);
        List<Line> lines = Wrapped.of(canvas, page(screen, width), width);
        int from = screen.overlay().scroll().row(lines.size() - height + 1);
        for (int i = 0; i < height - 1 && from + i < lines.size(); i++) {
            Line line = lines.get(from + i);
            canvas.textWithin(2 + line.indent(), row + i, width - line.indent(), line.text(), line.role());
        }
        if (lines.size() > height - 1) {
            String where = "rows " + (from + 1) + "–" + Math.min(lines.size(), from + height - 1) + " of " + lines.size() + ", PgUp PgDn";
            canvas.textRight(canvas.columns() - 2, row + height - 1, where, Role.FAINT);
        }
    }

    private static List<Line> page(ConsultScreen screen, int width) {
        return switch (screen.overlay().kind()) {
            case HELP -> help(screen, width);
            case WORKING -> working(screen);
            case SUMMARY -> summary(screen);
            case DOUBT -> DoubtPage.lines(screen);
            default -> KeysPage.lines();
        };
    }

    private static List<Line> help(ConsultScreen screen, int width) {
        List<Line> lines = new ArrayList<>();
        Optional<Question> current = screen.interview().current();
        current.ifPresent(question -> {
            lines.add(new Line(0, question.prompt(), Role.TITLE));
            lines.add(new Line(0, question.expects(), Role.FAINT));
            lines.add(new Line(0, "", Role.BODY));
            question.help(screen.interview().guide()).forEach(text -> lines.add(new Line(0, text, Role.BODY)));
            lines.add(new Line(0, "", Role.BODY));
        });
        lines.add(new Line(0, "Words that work everywhere", Role.LABEL));
        boolean beside = width >= 2 + WORD + MEANING + WORDS.stream().mapToInt(word -> TextWidth.of(word.example())).max().orElse(0);
        for (Word word : WORDS) {
            String meaning = TextWidth.padRight(word.names(), WORD) + word.meaning();
            if (beside || word.example().isEmpty()) {
                lines.add(new Line(2, (TextWidth.padRight(meaning, WORD + MEANING) + word.example()).stripTrailing(), Role.BODY));
            } else {
                lines.add(new Line(2, meaning, Role.BODY));
                lines.add(new Line(2 + WORD, word.example(), Role.FAINT));
            }
        }
        return lines;
    }

    private static List<Line> working(ConsultScreen screen) {
        List<Line> lines = new ArrayList<>();
        Optional<Plan> plan = screen.interview().plan();
        if (plan.isEmpty()) {
            lines.add(new Line(0, "Nothing is computed yet: the age and both base widths come first.", Role.BODY));
            return lines;
        }
        for (Side side : Side.values()) {
            lines.add(new Line(0, side + ": the working", Role.TITLE));
            for (Working working : plan.get().side(side).working()) {
                String result = Double.isFinite(working.value())
                        ? " = " + Figures.of(working.value(), 0, 2) + (working.unit().isBlank() ? "" : " " + working.unit()) : "";
                lines.add(new Line(2, working.quantity() + ": " + working.expression() + result, Role.BODY));
                lines.add(new Line(4, working.source() + (working.source().endsWith(working.status().words()) ? ""
                        : " [" + working.status().words() + "]"), Role.FAINT));
            }
            lines.add(new Line(0, "", Role.BODY));
        }
        return lines;
    }

    private static List<Line> summary(ConsultScreen screen) {
        List<Line> lines = new ArrayList<>();
        lines.add(new Line(0, "Answers so far", Role.TITLE));
        screen.interview().summary().forEach(text -> lines.add(new Line(2, text, Role.BODY)));
        return lines;
    }
}
