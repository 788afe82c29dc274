package domefold.screen;

import domefold.canvas.Canvas;
import domefold.canvas.Role;
import domefold.canvas.TextWidth;
import domefold.evidence.Constants;
import domefold.practice.Decision;
import domefold.practice.Marking;
import domefold.practice.Progress;
import domefold.practice.exercise.WarningWords;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/**
 * History by kind of decision as plain bars, the cases marked, and the flags missed most.
 *
 * @param back where Esc returns to
 * @param scroll how far the page is scrolled
 */
public record ProgressScreen(PracticeDesk desk, PracticeScreen back, Scrolled scroll) implements Screen {
    /** Rows of words below the bars that are still worth a window of their own. */
    private static final int LEAST_WORDS = 4;
    private static final int LABEL = 21;
    private static final int WIDE = 110;
    private static final int WIDEST_BAR = 50;
    private static final int MOST_MISSED = 5;
    private static final double WHOLE = 100;

    static ProgressScreen of(PracticeDesk desk, PracticeScreen back) {
        return new ProgressScreen(desk, back, Scrolled.START);
    }

    @Override
    public Step onKey(Key key) {
        if (key.isCtrl('c')) {
            return new Step(this, Effect.QUIT);
        }
        return switch (key.kind()) {
            case ESCAPE, ENTER -> Step.to(back);
            case DOWN, PAGE_DOWN -> Step.to(new ProgressScreen(desk, back, scroll.by(key.is(Key.Kind.DOWN) ? 1 : 8)));
            case UP, PAGE_UP -> Step.to(new ProgressScreen(desk, back, scroll.by(key.is(Key.Kind.UP) ? -1 : -8)));
            default -> Step.to(this);
        };
    }

    @Override
    public void draw(Canvas canvas) {
        PracticeChrome.draw(canvas, desk, "progress");
        int height = canvas.rows() - Chrome.TOP - Chrome.BOTTOM;
        if (desk.log().progress().entries().isEmpty()) {
            canvas.text(1, Chrome.TOP, "No case is marked yet: `commit` a plan, and its marks stand here.", Role.BODY);
            return;
        }
        boolean wide = canvas.columns() >= WIDE;
        int width = wide ? canvas.columns() / 2 - 2 : canvas.columns() - 2;
        if (!wide && height - desk.log().progress().byDecision().size() - 1 < LEAST_WORDS) {
            PracticeChrome.lines(canvas, 1, Chrome.TOP, width, height, figures(), scroll);
            return;
        }
        int after = bars(canvas, width);
        if (wide) {
            PracticeChrome.lines(canvas, width + 4, Chrome.TOP, width - 2, height, words(), scroll);
        } else {
            PracticeChrome.lines(canvas, 1, after + 1, width, Chrome.TOP + height - after - 1, words(), scroll);
        }
    }

    private int bars(Canvas canvas, int width) {
        Constants constants = desk.desk().guide().evidence().constants();
        Map<Decision, Marking.Score> scores = desk.log().progress().byDecision();
        List<Decision> weak = desk.log().progress().weakSpots(constants);
        List<Decision> strong = desk.log().progress().strengths(constants);
        int cells = Math.min(WIDEST_BAR, width - LABEL - 13);
        int at = Chrome.TOP;
        for (Decision decision : Decision.values()) {
            if (scores.containsKey(decision)) {
                double percent = scores.get(decision).percent();
                Role role = weak.contains(decision) ? Role.OUTSIDE : strong.contains(decision) ? Role.FITS : Role.DRAWING;
                canvas.textWithin(1, at, LABEL - 1, decision.words(), Role.LABEL);
                canvas.fill(1 + LABEL, at, cells, canvas.glyphs().dot(), Role.FAINT);
                canvas.fill(1 + LABEL, at, (int) Math.round(cells * percent / WHOLE), canvas.glyphs().full(), role);
                canvas.text(1 + LABEL + cells + 1, at++, TextWidth.padLeft(Math.round(percent) + " %", 5)
                        + (weak.contains(decision) ? " weak" : strong.contains(decision) ? " strong" : ""), role == Role.DRAWING ? Role.BODY : role);
            }
        }
        return at;
    }

    /** Figures in place of bars and the words after them, scrolled together: for a window too low for both. */
    private List<OverlayView.Line> figures() {
        Constants constants = desk.desk().guide().evidence().constants();
        List<Decision> weak = desk.log().progress().weakSpots(constants);
        List<Decision> strong = desk.log().progress().strengths(constants);
        List<OverlayView.Line> lines = new ArrayList<>();
        desk.log().progress().byDecision().forEach((decision, score) -> lines.add(new OverlayView.Line(0,
                TextWidth.padRight(decision.words(), LABEL) + TextWidth.padLeft(Math.round(score.percent()) + " %", 5)
                        + (weak.contains(decision) ? " weak" : strong.contains(decision) ? " strong" : ""), Role.BODY)));
        lines.add(new OverlayView.Line(0, "", Role.BODY));
        lines.addAll(words());
        return lines;
    }

    private List<OverlayView.Line> words() {
        Constants constants = desk.desk().guide().evidence().constants();
        Progress progress = desk.log().progress();
        List<OverlayView.Line> lines = new ArrayList<>();
        List<String> missed = progress.missedWarnings(constants);
        if (!missed.isEmpty()) {
            lines.add(new OverlayView.Line(0, "Missed most: " + String.join("; ", missed.stream().limit(MOST_MISSED)
                    .map(WarningWords::of).toList()), Role.CAUTION));
        }
        if (!desk.log().drills().isEmpty()) {
            long right = desk.log().drills().stream().filter(one -> one.missed() == 0 && one.unfounded() == 0).count();
            lines.add(new OverlayView.Line(0, "Reading drills: " + desk.log().drills().size() + ", all right in " + right, Role.BODY));
        }
        lines.add(new OverlayView.Line(0, "Weak and strong look at the last " + Math.round(constants.value("PRA-RECENT-CASES"))
                + " cases; the bars at all of them.", Role.FAINT));
        lines.add(new OverlayView.Line(0, "", Role.BODY));
        lines.add(new OverlayView.Line(0, "Cases, the latest first", Role.LABEL));
        for (int i = progress.entries().size() - 1; i >= 0; i--) {
            Progress.Entry entry = progress.entries().get(i);
            lines.add(new OverlayView.Line(2, entry.date() + "   case " + TextWidth.padRight(String.valueOf(entry.number()), 6)
                    + "   level " + entry.level() + TextWidth.padLeft(Math.round(entry.score().percent()) + " %", 8), Role.BODY));
        }
        return lines;
    }

    @Override
    public List<Hint> hints() {
        return List.of(new Hint("Esc", "back"));
    }
}
