package domefold.screen;

import domefold.canvas.Canvas;
import domefold.canvas.Role;
import domefold.outcome.Refusal;
import domefold.practice.ReadingDrill;
import domefold.practice.Sighting;
import domefold.practice.Slipped;
import domefold.practice.exercise.Logbook;
import domefold.practice.exercise.SlipWords;
import domefold.practice.exercise.Taken;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * Readings with slips planted; the fellow types which are wrong.
 *
 * @param desk what every practice screen has at hand
 * @param back where Esc returns to
 * @param drill the readings
 * @param answered what came of her answer; empty before it
 * @param entry the line being typed
 * @param said why a line was not accepted
 * @param help true while help lies over the readings
 * @param scroll how far the page is scrolled
 */
public record DrillScreen(PracticeDesk desk, PracticeScreen back, ReadingDrill drill, Optional<ReadingDrill.Answered> answered,
        EntryLine entry, String said, boolean help, Scrolled scroll) implements Screen {
    private static final int WIDE = 110;
    private static final int TABLE = 57;
    private static final int PAGE_ROWS = 8;

    static DrillScreen of(PracticeDesk desk, PracticeScreen back) {
        return new DrillScreen(desk, back, ReadingDrill.of(desk.log().nextDrill(), desk.desk().guide().evidence()), Optional.empty(),
                EntryLine.EMPTY, "", false, Scrolled.START);
    }

    @Override
    public Step onKey(Key key) {
        if (key.isCtrl('c')) {
            return new Step(this, Effect.QUIT);
        }
        switch (key.kind()) {
            case ESCAPE:
                return Step.to(help ? with(false) : entry.text().isEmpty() ? back.withDesk(desk) : typed(EntryLine.EMPTY));
            case ENTER:
                return help ? Step.to(with(false)) : enter();
            case F1:
                return Step.to(with(!help));
            case DOWN, UP, PAGE_DOWN, PAGE_UP:
                int by = key.is(Key.Kind.DOWN) ? 1 : key.is(Key.Kind.UP) ? -1 : key.is(Key.Kind.PAGE_DOWN) ? PAGE_ROWS : -PAGE_ROWS;
                return Step.to(new DrillScreen(desk, back, drill, answered, entry, said, help, scroll.by(by)));
            default:
                break;
        }
        if (key.isText() && key.codePoint() == '?' && entry.text().isEmpty()) {
            return Step.to(with(true));
        }
        EntryLine next = entry.onKey(key);
        return Step.to(next == entry || help ? this : typed(next));
    }

    private Step enter() {
        String word = entry.text().strip().toLowerCase(Locale.ROOT);
        if (word.equals("next") || answered.isPresent() && word.isEmpty()) {
            return Step.to(answered.isPresent() ? of(desk, back) : saying("Say first which readings are wrong, or `none`."));
        }
        if (answered.isPresent()) {
            return Step.to(saying("This drill is answered; Enter draws the next one."));
        }
        try {
            ReadingDrill.Answered check = drill.check(SlipWords.read(word), desk.desk().guide().evidence());
            Logbook.Drilled done = new Logbook.Drilled(desk.desk().today(), drill.number(), check.found().size(),
                    check.missed().size(), check.unfounded().size());
            return new Step(new DrillScreen(desk.with(desk.log().with(done)), back, drill, Optional.of(check), EntryLine.EMPTY, "", false, Scrolled.START),
                    new Effect.Drilled(done));
        } catch (Refusal refusal) {
            return Step.to(saying(refusal.getMessage()));
        }
    }

    @Override
    public Screen onOutcome(Effect.Outcome outcome) {
        return outcome instanceof Effect.Failed failed ? saying(failed.text()) : this;
    }

    @Override
    public void draw(Canvas canvas) {
        PracticeChrome.draw(canvas, desk, "reading drill " + drill.number());
        canvas.text(1, 1, "Which of these readings are wrong?", Role.QUESTION);
        int height = canvas.rows() - Chrome.TOP - Chrome.BOTTOM;
        int body = height - 2;
        boolean wide = canvas.columns() >= WIDE;
        if (!wide && (help || answered.isPresent())) {
            PracticeChrome.lines(canvas, 1, Chrome.TOP, canvas.columns() - 2, body, beside(), scroll);
        } else if (wide) {
            ReadingsTable.draw(canvas, 1, Chrome.TOP, TABLE, body, Taken.all(drill.shown()), scroll);
            PracticeChrome.lines(canvas, TABLE + 5, Chrome.TOP, canvas.columns() - TABLE - 6, body, beside(), Scrolled.START);
        } else {
            List<OverlayView.Line> seen = PracticeChrome.wrapped(List.of(new OverlayView.Line(0, seen(), Role.BODY)), canvas.columns() - 2);
            PracticeChrome.lines(canvas, 1, Chrome.TOP, canvas.columns() - 2, seen.size(), seen, Scrolled.START);
            ReadingsTable.compact(canvas, 1, Chrome.TOP + seen.size() + 1, canvas.columns() - 2, body - seen.size() - 1,
                    Taken.all(drill.shown()), scroll);
        }
        entry.draw(canvas, 1, Chrome.TOP + height - 2, canvas.columns() - 2);
        canvas.textWithin(1, Chrome.TOP + height - 1, canvas.columns() - 2, said, Role.REFUSED);
    }

    private String seen() {
        return drill.sightings().isEmpty() ? "Nothing stood out to the eye." : "Seen before the tape: "
                + String.join(" ", drill.sightings().stream().map(Sighting::text).toList());
    }

    private List<OverlayView.Line> beside() {
        List<OverlayView.Line> lines = new ArrayList<>();
        if (answered.isEmpty()) {
            if (!help) {
                lines.add(new OverlayView.Line(0, seen(), Role.BODY));
                lines.add(new OverlayView.Line(0, "", Role.BODY));
            }
            lines.add(new OverlayView.Line(0, "Up to three slips may be planted, or none. Write each at its place, commas between:", Role.LABEL));
            SlipWords.WAYS.forEach(way -> lines.add(new OverlayView.Line(2, way, Role.FAINT)));
            return lines;
        }
        ReadingDrill.Answered check = answered.get();
        lines.add(new OverlayView.Line(0, check.allRight() ? check.found().isEmpty() ? "Right: nothing is wrong here." : "All right."
                : "Not all right.", check.allRight() ? Role.FITS : Role.OUTSIDE));
        check.found().forEach(slip -> lines.add(new OverlayView.Line(0, "found: " + slip.text(), Role.FITS)));
        check.missed().forEach(text -> lines.add(new OverlayView.Line(0, "missed: " + text, Role.OUTSIDE)));
        for (Slipped slip : check.unfounded()) {
            lines.add(new OverlayView.Line(0, "not so: " + slip.text(), Role.TIGHT));
        }
        lines.add(new OverlayView.Line(0, "", Role.BODY));
        lines.add(new OverlayView.Line(0, "Enter draws the next drill; Esc goes back.", Role.FAINT));
        return lines;
    }

    @Override
    public List<Hint> hints() {
        return help ? List.of(new Hint("Esc", "closes")) : answered.isPresent()
                ? List.of(new Hint("Enter", "next drill"), new Hint("Esc", "back"))
                : List.of(new Hint("Enter", "answers"), new Hint("?", "how slips are written"), new Hint("Esc", "back"));
    }

    private DrillScreen typed(EntryLine line) {
        return new DrillScreen(desk, back, drill, answered, line, said, help, scroll);
    }

    private DrillScreen saying(String text) {
        return new DrillScreen(desk, back, drill, answered, entry, text, help, scroll);
    }

    private DrillScreen with(boolean helping) {
        return new DrillScreen(desk, back, drill, answered, entry, said, helping, Scrolled.START);
    }
}
