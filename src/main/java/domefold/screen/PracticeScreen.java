package domefold.screen;

import domefold.canvas.Canvas;
import domefold.canvas.Role;
import domefold.interview.Choices;
import domefold.interview.Dossier;
import domefold.interview.Interview;
import domefold.interview.Room;
import domefold.patient.Side;
import domefold.practice.exercise.Exercise;
import domefold.practice.exercise.Logbook;
import domefold.practice.exercise.Page;
import domefold.practice.exercise.Said;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * A practice case, from its history to its marking.
 *
 * @param desk what every practice screen has at hand
 * @param exercise how far the fellow has come
 * @param entry the line being typed
 * @param said what the program answered last
 * @param saidRole how it is said
 * @param help true while help lies over the page
 * @param cursor which mark has the focus
 * @param scroll how far the page is scrolled
 * @param looking the consult's limits and devices, opened after the commitment
 */
public record PracticeScreen(PracticeDesk desk, Exercise exercise, EntryLine entry, List<String> said, Role saidRole,
        boolean help, int cursor, Scrolled scroll, Optional<ConsultScreen> looking) implements Screen {
    private static final String NOTHING_LEAVES = "Practice: nothing of it is saved as a record, ordered, exported or booked.";
    private static final String NOT_KEPT = "Your plan is not handed in and would be lost: once more leaves it, `commit` marks it.";
    private static final int PAGE_ROWS = 8;

    public PracticeScreen {
        said = List.copyOf(said);
    }

    static PracticeScreen of(PracticeDesk desk, Exercise exercise, String why) {
        return new PracticeScreen(desk, exercise, EntryLine.EMPTY, why.isEmpty() ? List.of() : List.of(why), Role.FAINT, false,
                0, Scrolled.START, Optional.empty());
    }

    @Override
    public void draw(Canvas canvas) {
        if (looking.isPresent()) {
            looking.get().draw(canvas);
            return;
        }
        PracticeChrome.draw(canvas, desk, "case " + which());
        PracticeChrome.pages(canvas, exercise.page());
        int height = canvas.rows() - Chrome.TOP - Chrome.BOTTOM;
        if (help) {
            ExerciseView.help(canvas, Chrome.TOP, height, this);
        } else if (exercise.page() == Page.MARKING) {
            MarkingView.draw(canvas, Chrome.TOP, height, this);
        } else {
            ExerciseView.draw(canvas, Chrome.TOP, height, this);
        }
    }

    /** The case's number and level, so that it can be repeated; a tutor's own by its code. */
    private String which() {
        return desk.own().contains(exercise.practice()) ? exercise.practice().of().code()
                : exercise.practice().number() + ", level " + exercise.practice().level();
    }

    @Override
    public Step onKey(Key key) {
        if (key.isCtrl('c')) {
            return new Step(this, Effect.QUIT);
        }
        if (looking.isPresent()) {
            return looked(key);
        }
        if (help) {
            return Step.to(scrolled(key).orElseGet(() -> key.is(Key.Kind.ESCAPE) || key.is(Key.Kind.ENTER) || key.is(Key.Kind.F1)
                    ? with(false, Scrolled.START) : this));
        }
        if (key.isCtrl('z')) {
            return said(exercise.say("undo"));
        }
        switch (key.kind()) {
            case F1:
                return Step.to(with(true, Scrolled.START));
            case F2, F3:
                return Step.to(turned(key.is(Key.Kind.F2) ? -1 : 1));
            case ESCAPE:
                return escape();
            case ENTER:
                return enter();
            case UP, DOWN:
                return Step.to(moved(key.is(Key.Kind.DOWN) ? 1 : -1));
            default:
                break;
        }
        if (key.isText() && key.codePoint() == '?' && entry.text().isEmpty()) {
            return Step.to(with(true, Scrolled.START));
        }
        EntryLine next = entry.onKey(key);
        return Step.to(next == entry ? scrolled(key).orElse(this) : typed(next));
    }

    private Step escape() {
        if (!entry.text().isEmpty()) {
            return Step.to(typed(EntryLine.EMPTY).saying(List.of(), Role.BODY));
        }
        return warned() ? new Step(this, new Effect.Visit("start")) : Step.to(saying(List.of(NOT_KEPT), Role.CAUTION));
    }

    /** True where nothing would be lost by leaving, or she was told that it would be. */
    private boolean warned() {
        return exercise.answers().isEmpty() || exercise.marking().isPresent() || said.equals(List.of(NOT_KEPT));
    }

    private Step enter() {
        String word = entry.text().strip().toLowerCase(Locale.ROOT);
        switch (word) {
            case "next":
                return Step.to(warned() ? desk.after(exercise.practice()) : saying(List.of(NOT_KEPT), Role.CAUTION));
            case "progress":
                return Step.to(ProgressScreen.of(desk, typed(EntryLine.EMPTY)));
            case "drill":
                return Step.to(DrillScreen.of(desk, typed(EntryLine.EMPTY)));
            case "devices", "limits":
                return exercise.marking().isPresent() ? Step.to(look(word.equals("limits") ? Room.LIMITS : Room.DEVICES))
                        : Step.to(saying(List.of("The limits and the devices open once your plan is handed in: `commit`."), Role.REFUSED));
            case "sign", "save", "order", "calendar", "export", "print":
                return Step.to(saying(List.of(NOTHING_LEAVES), Role.REFUSED));
            default:
                return said(exercise.say(entry.text()));
        }
    }

    private Step said(Said said) {
        switch (said.kind()) {
            case HELP:
                return Step.to(typed(EntryLine.EMPTY).with(true, Scrolled.START));
            case REFUSED:
                return Step.to(saying(said.lines(), Role.REFUSED));
            case COMMITTED:
                Logbook longer = desk.log().with(said.exercise().marking().orElseThrow(), desk.desk().today());
                return new Step(new PracticeScreen(desk.with(longer), said.exercise(), EntryLine.EMPTY, List.of(), Role.BODY, false,
                        0, Scrolled.START, Optional.empty()), new Effect.Practised(longer.last()));
            default:
                return Step.to(new PracticeScreen(desk, said.exercise(), EntryLine.EMPTY, said.lines(), Role.BODY, false, 0, Scrolled.START,
                        Optional.empty()));
        }
    }

    /** The consult's own screen on this patient, her devices pinned. */
    private PracticeScreen look(Room room) {
        List<String> pinned = Stream.of(Side.LEFT, Side.RIGHT).flatMap(side -> exercise.stated().side(side).deviceId().stream())
                .distinct().toList();
        Interview interview = Interview.begin(desk.desk().guide(), new Dossier(
                exercise.stated().settingOn(exercise.practice().of()), Choices.NONE.withPinned(pinned)));
        ConsultScreen consult = ConsultScreen.of(desk.desk(), interview).with(interview, room);
        return new PracticeScreen(desk, exercise, EntryLine.EMPTY, List.of(), Role.BODY, false, cursor, scroll, Optional.of(consult));
    }

    /** A key while the consult is looked at: nothing it would keep leaves this screen. */
    private Step looked(Key key) {
        ConsultScreen consult = looking.get();
        if (key.is(Key.Kind.ESCAPE) && consult.overlay().kind() == Overlay.Kind.NONE && consult.entry().text().isEmpty()) {
            return Step.to(looking(Optional.empty()));
        }
        if (consult.shown() == Room.RECORD && key.is(Key.Kind.ENTER) && !consult.entry().isEmpty()) {
            return Step.to(looking(Optional.of(consult.withEntry(EntryLine.EMPTY).saying(List.of(NOTHING_LEAVES), Role.REFUSED))));
        }
        Step step = consult.onKey(key);
        if (step.effect() instanceof Effect.Quit) {
            return new Step(this, Effect.QUIT);
        }
        ConsultScreen next = step.next() instanceof ConsultScreen same ? same : consult;
        return Step.to(looking(Optional.of(step.effect() instanceof Effect.Save
                ? next.saying(List.of(NOTHING_LEAVES), Role.REFUSED) : next)));
    }

    private PracticeScreen turned(int by) {
        return new PracticeScreen(desk, exercise.turned(by), entry, List.of(), Role.BODY, false, 0, Scrolled.START, Optional.empty());
    }

    private PracticeScreen moved(int by) {
        if (exercise.page() != Page.MARKING) {
            return with(false, scroll.by(by));
        }
        int last = MarkingView.order(exercise.marking().orElseThrow()).size() - 1;
        return new PracticeScreen(desk, exercise, entry, said, saidRole, help, Math.max(0, Math.min(last, cursor + by)), Scrolled.START, looking);
    }

    private Optional<PracticeScreen> scrolled(Key key) {
        int by = switch (key.kind()) {
            case PAGE_DOWN -> PAGE_ROWS;
            case PAGE_UP -> -PAGE_ROWS;
            case DOWN -> 1;
            case UP -> -1;
            default -> 0;
        };
        return by == 0 ? Optional.empty() : Optional.of(with(help, scroll.by(by)));
    }

    @Override
    public Screen onOutcome(Effect.Outcome outcome) {
        if (outcome instanceof Effect.Opened opened) {
            return opened.screen();
        }
        return outcome instanceof Effect.Failed failed ? saying(List.of(failed.text()), Role.REFUSED) : this;
    }

    @Override
    public List<Hint> hints() {
        if (looking.isPresent() && looking.get().overlay().kind() != Overlay.Kind.NONE) {
            return looking.get().hints();
        }
        if (looking.isPresent()) {
            return Stream.concat(Stream.of(new Hint("Esc", "back to the marking")), looking.get().hints().stream()
                    .filter(hint -> !hint.key().equals("Esc"))).toList();
        }
        if (help) {
            return List.of(new Hint("Esc", "closes"));
        }
        if (exercise.page() == Page.MARKING) {
            return List.of(new Hint("Up Down", "choose"), new Hint("next", "another case"),
                    new Hint("limits devices", "open"), new Hint("drill", "readings"), new Hint("progress", "shows"),
                    new Hint("?", "help"), new Hint("Esc", "leaves"));
        }
        if (exercise.page() == Page.PLAN) {
            boolean optional = exercise.current().filter(one -> !one.required()).isPresent();
            return whileTyping(Stream.of(new Hint("Enter", "takes the line"), new Hint("?", "help"), new Hint("skip", "leaves open"),
                    new Hint("F2", "readings"), new Hint("Ctrl-Z", "undo"), new Hint("Esc", "leaves"))
                    .filter(hint -> optional || !hint.key().equals("skip")).toList());
        }
        return whileTyping(List.of(new Hint("Enter", "next page"), new Hint("ask …", "one reading"), new Hint("state", "your plan"),
                        new Hint("F2", "page before"), new Hint("?", "help"), new Hint("Esc", "leaves")));
    }

    /** A line that was refused is kept for mending; how it is cleared stands where it is seen in any window. */
    private List<Hint> whileTyping(List<Hint> hints) {
        if (entry.isEmpty()) {
            return hints;
        }
        List<Hint> typing = new ArrayList<>(hints);
        typing.removeIf(hint -> hint.key().equals("Esc"));
        typing.add(1, new Hint("Esc", "clears"));
        return typing;
    }

    private PracticeScreen typed(EntryLine line) {
        return new PracticeScreen(desk, exercise, line, said, saidRole, help, cursor, scroll, looking);
    }

    private PracticeScreen saying(List<String> lines, Role role) {
        return new PracticeScreen(desk, exercise, entry, lines, role, help, cursor, scroll, looking);
    }

    private PracticeScreen with(boolean helping, Scrolled to) {
        return new PracticeScreen(desk, exercise, entry, said, saidRole, helping, cursor, to, looking);
    }

    private PracticeScreen looking(Optional<ConsultScreen> at) {
        return new PracticeScreen(desk, exercise, entry, said, saidRole, help, cursor, scroll, at);
    }

    /** The same place with a longer logbook, as a drill leaves it. */
    PracticeScreen withDesk(PracticeDesk changed) {
        return new PracticeScreen(changed, exercise, entry, said, saidRole, help, cursor, scroll, looking);
    }
}
