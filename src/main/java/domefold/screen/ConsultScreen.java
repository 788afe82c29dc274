package domefold.screen;

import domefold.canvas.Canvas;
import domefold.canvas.Role;
import domefold.interview.Exchange;
import domefold.interview.Interview;
import domefold.interview.Reply;
import domefold.interview.Room;
import domefold.interview.WhatIf;
import java.util.List;
import java.util.Optional;

/**
 * A consult, whichever room it is in.
 *
 * @param desk what does not change
 * @param interview how far the consult has come
 * @param shown the room on the glass; it follows the interview until the surgeon walks
 * @param entry the line being typed
 * @param said what the program answered last
 * @param saidRole how it is said
 * @param overlay what lies over the room
 * @param devices how the device list is looked at
 * @param scroll how far a room longer than the glass is scrolled
 * @param whatIf another answer tried out beside the consult
 * @param signed whether the consult as it stands has been signed
 */
public record ConsultScreen(
        Desk desk,
        Interview interview,
        Room shown,
        EntryLine entry,
        List<String> said,
        Role saidRole,
        Overlay overlay,
        DevicesState devices,
        Scrolled scroll,
        Optional<WhatIf> whatIf,
        boolean signed)
        implements Screen {

    public ConsultScreen {
        said = List.copyOf(said);
    }

    /** The first screen of a consult. */
    public static ConsultScreen of(Desk desk, Interview interview) {
        boolean readingsStand = interview.room().ordinal() > Room.LIMITS.ordinal() && interview.dossier().choices().settled().isEmpty();
        return new ConsultScreen(desk, interview, readingsStand ? Room.LIMITS : interview.room(), EntryLine.EMPTY, List.of(), Role.BODY,
                Overlay.NONE, DevicesState.FIRST, Scrolled.START, Optional.empty(), false);
    }

    @Override
    public void draw(Canvas canvas) {
        Chrome.draw(canvas, desk, interview, shown);
        int height = canvas.rows() - Chrome.TOP - Chrome.BOTTOM;
        if (overlay.kind() != Overlay.Kind.NONE) {
            OverlayView.draw(canvas, Chrome.TOP, height, this);
        } else if (whatIf.isPresent()) {
            WhatIfView.draw(canvas, Chrome.TOP, height, this);
        } else {
            RoomViews.draw(canvas, Chrome.TOP, height, this);
        }
    }

    @Override
    public Step onKey(Key key) {
        if (key.isCtrl('c')) {
            return new Step(this, Effect.QUIT);
        }
        if (overlay.kind() == Overlay.Kind.PAIRS && key.is(Key.Kind.ENTER)) {
            return PairsView.settled(this);
        }
        if (overlay.kind() != Overlay.Kind.NONE) {
            return Step.to(OverlayView.onKey(this, key));
        }
        if (whatIf.isPresent()) {
            return WhatIfKeys.onKey(this, key);
        }
        if (key.isCtrl('z') || key.isCtrl('y')) {
            return after(key.isCtrl('z') ? interview.undo() : interview.redo(), key.isCtrl('z') ? Effect.Journal.UNDO : Effect.Journal.REDO);
        }
        switch (key.kind()) {
            case F1:
                return Step.to(withOverlay(Overlay.of(Overlay.Kind.KEYS)));
            case F2:
                return Step.to(walk(-1));
            case F3:
                return Step.to(walk(1));
            case F4:
                return Step.to(withOverlay(Overlay.of(Overlay.Kind.WORKING)));
            case ESCAPE:
                return Step.to(escape());
            case ENTER:
                return enter();
            default:
                break;
        }
        if (shown == Room.DEVICES && (entry.isEmpty() || DevicesKeys.worksWhileTyping(key))) {
            Step step = DevicesKeys.onKey(this, key);
            if (step != null) {
                return step;
            }
        }
        if (key.is(Key.Kind.TAB)) {
            return Step.to(completed());
        }
        if (key.is(Key.Kind.PAGE_DOWN) || key.is(Key.Kind.PAGE_UP)) {
            return Step.to(withScroll(scroll.by(key.is(Key.Kind.PAGE_DOWN) ? 8 : -8)));
        }
        if (key.is(Key.Kind.DOWN) || key.is(Key.Kind.UP)) {
            return Step.to(withScroll(scroll.by(key.is(Key.Kind.DOWN) ? 1 : -1)));
        }
        if (key.isText() && key.codePoint() == '?' && entry.text().isEmpty()) {
            return Step.to(withOverlay(Overlay.of(Overlay.Kind.HELP)));
        }
        EntryLine next = entry.onKey(key);
        return Step.to(next == entry ? this : withEntry(next));
    }

    private ConsultScreen escape() {
        if (!entry.text().isEmpty()) {
            return withEntry(EntryLine.EMPTY).saying(List.of(), Role.BODY);
        }
        return walk(-1);
    }

    private Step enter() {
        Optional<Overlay.Kind> page = OverlayView.named(entry.text());
        if (page.isPresent()) {
            return Step.to(withEntry(EntryLine.EMPTY).withOverlay(Overlay.of(page.get())));
        }
        if (WhatIfKeys.asks(entry.text())) {
            return WhatIfKeys.asked(this);
        }
        if (shown == Room.LIMITS && entry.isEmpty()) {
            return Step.to(walk(1));
        }
        if (shown == Room.DEVICES && entry.isEmpty()) {
            return Step.to(walk(1));
        }
        if (shown == Room.RECORD) {
            return RecordKeys.enter(this);
        }
        return after(interview.say(entry.text()), entry.text().strip().equalsIgnoreCase("undo") ? Effect.Journal.UNDO
                : entry.text().strip().equalsIgnoreCase("redo") ? Effect.Journal.REDO : Effect.Journal.ANSWER);
    }

    /** The step that follows a typed line. */
    Step said(Reply reply, String what) {
        return after(reply, what);
    }

    private Step after(Reply reply, String what) {
        switch (reply.kind()) {
            case HELP:
                return Step.to(withEntry(EntryLine.EMPTY).withOverlay(Overlay.of(Overlay.Kind.HELP)));
            case WHY:
                return Step.to(withEntry(EntryLine.EMPTY).withOverlay(Overlay.of(Overlay.Kind.WORKING)));
            case SUMMARY:
                return Step.to(withEntry(EntryLine.EMPTY).withOverlay(Overlay.of(Overlay.Kind.SUMMARY)));
            case REFUSED:
                return Step.to(saying(reply.lines(), Role.REFUSED));
            case MOVED:
                return Step.to(moved(reply));
            default:
                break;
        }
        Room before = interview.room();
        Room now = reply.interview().room();
        ConsultScreen next = with(reply.interview(), shown == before || reply.kind() == Reply.Kind.UNDONE ? roomAfter(before, now) : shown)
                .withEntry(EntryLine.EMPTY)
                .saying(reply.kind() == Reply.Kind.UNDONE ? reply.lines() : outOfSight(reply), Role.FAINT);
        if (reply.kind() == Reply.Kind.UNDONE) {
            return new Step(next, new Effect.Journal(code(next), what, "", ""));
        }
        Exchange taken = lastOf(reply.interview());
        return new Step(next, new Effect.Journal(code(next), what, taken.questionId(), taken.typed()));
    }

    /** What was taken, where the room shows no conversation in which it would be seen. */
    private List<String> outOfSight(Reply reply) {
        Exchange taken = lastOf(reply.interview());
        return shown.asks() ? List.of() : List.of("Taken: " + reply.interview().question(taken.questionId()).label()
                .toLowerCase(java.util.Locale.ROOT) + ", " + taken.shown() + ".");
    }

    /** From the last question before the limits the way leads to the limits, not past them. */
    private static Room roomAfter(Room before, Room now) {
        return before.ordinal() < Room.LIMITS.ordinal() && now.ordinal() > Room.LIMITS.ordinal() ? Room.LIMITS : now;
    }

    private ConsultScreen moved(Reply reply) {
        Room room = reply.lines().stream().findFirst().flatMap(RoomViews::named).orElse(reply.interview().room());
        return with(reply.interview(), room).withEntry(EntryLine.EMPTY).saying(List.of(), Role.BODY);
    }

    private static Exchange lastOf(Interview interview) {
        return interview.exchanges().get(interview.exchanges().size() - 1);
    }

    static String code(ConsultScreen screen) {
        return screen.interview.dossier().patientCase().code();
    }

    /** An answer given by a key instead of a typed line, journalled like any other. */
    Step answered(String questionId, String typed) {
        try {
            Interview next = interview.answer(questionId, typed);
            return new Step(with(next, shown).saying(List.of(), Role.BODY),
                    new Effect.Journal(next.dossier().patientCase().code(), Effect.Journal.ANSWER, questionId, typed));
        } catch (domefold.outcome.Refusal refusal) {
            return Step.to(saying(List.of(refusal.getMessage()), Role.REFUSED));
        }
    }

    private ConsultScreen completed() {
        if (WhatIfKeys.asks(entry.text())) {
            return WhatIfKeys.completed(this);
        }
        String typed = entry.text().substring(entry.text().lastIndexOf(' ') + 1);
        List<String> found = interview.current().map(question -> question.words(interview.dossier(), interview.guide()))
                .orElse(List.of()).stream().filter(word -> word.toLowerCase(java.util.Locale.ROOT)
                        .startsWith(typed.toLowerCase(java.util.Locale.ROOT))).toList();
        if (found.size() == 1) {
            return withEntry(EntryLine.of(entry.text().substring(0, entry.text().length() - typed.length()) + found.get(0)));
        }
        return found.isEmpty() ? this : saying(List.of(String.join("   ", found)), Role.FAINT);
    }

    /** The room before or after the one shown; the interview's floor goes with it where the room asks. */
    ConsultScreen walk(int by) {
        int at = Math.max(0, Math.min(Room.values().length - 1, shown.ordinal() + by));
        Room room = Room.values()[at];
        return with(room.asks() ? interview.goTo(room) : interview, room).withScrollReset().saying(List.of(), Role.BODY);
    }

    @Override
    public Screen onOutcome(Effect.Outcome outcome) {
        if (outcome instanceof Effect.Failed failed) {
            return saying(List.of(failed.text()), Role.REFUSED);
        }
        if (outcome instanceof Effect.Done done && (done.of() instanceof Effect.Save || done.of() instanceof Effect.Nothing)) {
            boolean sign = done.of() instanceof Effect.Save save && save.sign();
            return new ConsultScreen(desk, interview, shown, entry, List.of(done.text()), Role.FITS, overlay, devices, scroll, whatIf,
                    signed || sign);
        }
        return this;
    }

    @Override
    public List<Hint> hints() {
        return overlay.kind() == Overlay.Kind.NONE ? RoomViews.hints(this) : OverlayView.hints(this);
    }

    ConsultScreen with(Interview next, Room room) {
        return new ConsultScreen(desk, next, room, entry, said, saidRole, overlay, devices, room == shown ? scroll : Scrolled.START, whatIf,
                signed && next == interview);
    }

    ConsultScreen withEntry(EntryLine line) {
        return new ConsultScreen(desk, interview, shown, line, said, saidRole, overlay, devices, scroll, whatIf, signed);
    }

    ConsultScreen saying(List<String> lines, Role role) {
        return new ConsultScreen(desk, interview, shown, entry, lines, role, overlay, devices, scroll, whatIf, signed);
    }

    ConsultScreen withOverlay(Overlay next) {
        return new ConsultScreen(desk, interview, shown, entry, said, saidRole, next, devices, scroll, whatIf, signed);
    }

    ConsultScreen withDevices(DevicesState next) {
        return new ConsultScreen(desk, interview, shown, entry, said, saidRole, overlay, next, scroll, whatIf, signed);
    }

    ConsultScreen withScroll(Scrolled next) {
        return new ConsultScreen(desk, interview, shown, entry, said, saidRole, overlay, devices, next, whatIf, signed);
    }

    ConsultScreen withWhatIf(Optional<WhatIf> next) {
        return new ConsultScreen(desk, interview, shown, EntryLine.EMPTY, List.of(), Role.BODY, overlay, devices, Scrolled.START, next, signed);
    }

    private ConsultScreen withScrollReset() {
        return withScroll(Scrolled.START);
    }
}
