package domefold.screen;

import domefold.canvas.Canvas;
import domefold.canvas.Glyphs;
import domefold.canvas.Role;
import domefold.device.Device;
import domefold.outcome.Refusal;
import domefold.plan.Candidate;
import java.util.List;
import java.util.stream.Stream;

/**
 * What owning the devices held side by side asks, over the consult it was opened from; Esc goes back there.
 *
 * @param under the consult
 * @param owning everything computed, under the assumptions in use
 * @param entry the line being typed
 * @param said what the program answered last
 * @param saidRole how it is said
 * @param part the part of the page that scrolling counts from
 * @param scroll how far the page is scrolled from its beginning
 * @param first how far the devices are moved, where not all fit beside each other
 */
record OwningScreen(ConsultScreen under, Owning owning, EntryLine entry, String said, Role saidRole, int part, Scrolled scroll,
        Scrolled first)
        implements Screen {
    private static final int NARROWEST_COLUMN = 38;
    private static final int WIDEST_COLUMN = 58;
    private static final int HEAD_ROWS = 3;
    private static final int PAGE_ROWS = 10;
    private static final int NUMBER_CELLS = 3;
    private static final int ENTRY_CELLS = 20;

    /** The pane over the pinned devices, or over the one in focus; the consult itself where there is none. */
    static Screen over(ConsultScreen consult, List<Candidate> rows) {
        if (consult.interview().plan().isEmpty() || rows.isEmpty()) {
            return consult;
        }
        List<Device> pinned = DevicesView.pinned(consult, consult.interview().plan().get()).stream().map(Candidate::device).toList();
        List<Device> devices = pinned.isEmpty()
                ? List.of(rows.get(Math.min(consult.devices().cursor(), rows.size() - 1)).device()) : pinned;
        var evidence = consult.interview().guide().evidence();
        var patientCase = consult.interview().dossier().patientCase();
        Assumptions start = Assumptions.of(patientCase.setting(), evidence);
        return new OwningScreen(consult, Owning.of(devices, start, consult.desk().prices(), patientCase.date(), evidence),
                EntryLine.EMPTY, "", Role.BODY, 0, Scrolled.START, Scrolled.START);
    }

    @Override
    public void draw(Canvas canvas) {
        Chrome.draw(canvas, under.desk(), under.interview(), under.shown());
        int width = canvas.columns() - 2;
        int fit = fit(width);
        int from = first.row(owning.devices().size() - fit);
        int each = Math.min(WIDEST_COLUMN, (width - (fit - 1) * StripPage.GAP) / fit);
        head(canvas, width, from, fit, each);
        StripPage page = OwningParts.page(owning.showing(from, fit), canvas.glyphs(), width, each);
        int top = Chrome.TOP + HEAD_ROWS;
        int height = Chrome.entryRow(canvas) - top;
        int offset = scroll.row(page.partRows().get(Math.min(part, page.partRows().size() - 1)), page.lastOffset(height));
        page.draw(canvas, 1, top, height, offset);
        foot(canvas, page, height, offset, from, fit);
    }

    private int fit(int width) {
        return Math.max(1, Math.min(owning.devices().size(), (width + StripPage.GAP) / (NARROWEST_COLUMN + StripPage.GAP)));
    }

    private void head(Canvas canvas, int width, int from, int fit, int each) {
        int at = canvas.text(1, Chrome.TOP, "What owning it asks", Role.TITLE);
        boolean changed = !owning.now().equals(owning.start());
        canvas.textWithin(1, Chrome.TOP + 1, width, AssumptionWords.line(owning.now(), width, canvas.glyphs().ellipsis()), changed ? Role.QUESTION : Role.BODY);
        String note = changed ? "changed here; F10 goes back" : "as the consult has it";
        canvas.textWithin(at + 3, Chrome.TOP, width - at - 2, note, Role.FAINT);
        for (int i = 0; i < fit; i++) {
            canvas.textWithin(1 + i * (each + StripPage.GAP), Chrome.TOP + 2, each,
                    (from + i + 1) + "  " + DeviceCode.within(owning.devices().get(from + i).id(), each - NUMBER_CELLS), Role.TITLE);
        }
    }

    private void foot(Canvas canvas, StripPage page, int height, int offset, int from, int fit) {
        int row = Chrome.entryRow(canvas);
        int at = canvas.text(1, row, "> ", Role.QUESTION);
        canvas.text(at, row, entry.text(), Role.ANSWER);
        canvas.cursor(at + entry.cursor(), row);
        if (entry.isEmpty() && !said.isEmpty()) {
            canvas.textWithin(at + 1, row, canvas.columns() - at - 2, said, saidRole);
            return;
        }
        String where = where(canvas, page, height, offset, from, fit);
        int free = Math.max(1 + ENTRY_CELLS, at + canvas.width(entry.text()) + 1);
        if (canvas.width(where) < canvas.columns() - free) {
            canvas.textRight(canvas.columns() - 1, row, where, Role.FAINT);
        }
    }

    /** Which devices and rows are in sight; the part and the keys are named where the entry line leaves them room. */
    private String where(Canvas canvas, StripPage page, int height, int offset, int from, int fit) {
        String hidden = owning.devices().size() > fit
                ? (from + 1) + (fit > 1 ? "–" + (from + fit) : "") + " of " + owning.devices().size() : "";
        String rows = "rows " + (offset + 1) + "–" + Math.min(page.height(), offset + height) + " of " + page.height();
        String keys = hidden.isEmpty() ? "" : hidden + " devices, Left Right; ";
        return Stream.of(keys + page.partAt(offset) + ", " + rows, keys + rows)
                .filter(text -> canvas.width(text) < canvas.columns() - 1 - ENTRY_CELLS).findFirst()
                .orElse((hidden.isEmpty() ? "" : hidden + ", ") + rows);
    }

    @Override
    public Step onKey(Key key) {
        if (key.isCtrl('c')) {
            return new Step(this, Effect.QUIT);
        }
        return switch (key.kind()) {
            case ESCAPE -> Step.to(entry.text().isEmpty() ? under : typing(EntryLine.EMPTY));
            case F9 -> Step.to(under);
            case ENTER -> Step.to(entered());
            case F5 -> Step.to(assuming(owning.now().nextStrategy()));
            case F6 -> Step.to(assuming(owning.now().nextAdherence(owning.evidence().constants())));
            case F7 -> Step.to(assuming(owning.now().nextSchedule(owning.evidence())));
            case F8 -> Step.to(assuming(owning.now().nextHorizon()));
            case F10 -> Step.to(assuming(owning.start()));
            case DOWN -> Step.to(at(scroll.by(1)));
            case UP -> Step.to(at(scroll.by(-1)));
            case PAGE_DOWN -> Step.to(at(scroll.by(PAGE_ROWS)));
            case PAGE_UP -> Step.to(at(scroll.by(-PAGE_ROWS)));
            case TAB -> Step.to(toPart(1));
            case BACK_TAB -> Step.to(toPart(-1));
            default -> Step.to(line(key));
        };
    }

    private OwningScreen line(Key key) {
        if (entry.text().isEmpty() && (key.is(Key.Kind.LEFT) || key.is(Key.Kind.RIGHT))) {
            return new OwningScreen(under, owning, entry, "", saidRole, part, scroll, first.by(key.is(Key.Kind.RIGHT) ? 1 : -1));
        }
        if (entry.text().isEmpty() && key.is(Key.Kind.HOME)) {
            return toPart(-part);
        }
        if (entry.text().isEmpty() && key.is(Key.Kind.END)) {
            return at(Scrolled.END);
        }
        EntryLine next = entry.onKey(key);
        return next == entry ? this : typing(next);
    }

    private OwningScreen toPart(int by) {
        int parts = OwningParts.page(owning, Glyphs.UNICODE, NARROWEST_COLUMN, NARROWEST_COLUMN).partRows().size();
        int next = Math.max(0, Math.min(parts - 1, part + by));
        return new OwningScreen(under, owning, entry, "", saidRole, next, Scrolled.START, first);
    }

    private OwningScreen typing(EntryLine line) {
        return new OwningScreen(under, owning, line, said, saidRole, part, scroll, first);
    }

    private OwningScreen at(Scrolled to) {
        return new OwningScreen(under, owning, entry, "", saidRole, part, to, first);
    }

    private OwningScreen assuming(Assumptions changed) {
        return new OwningScreen(under, owning.under(changed), EntryLine.EMPTY, "", Role.FAINT, part, scroll, first);
    }

    private OwningScreen entered() {
        if (entry.isEmpty()) {
            return new OwningScreen(under, owning, EntryLine.EMPTY, AssumptionWords.EXPECTED, Role.FAINT, part, scroll, first);
        }
        try {
            return assuming(AssumptionWords.typed(entry.text(), owning.now(), owning.start(), owning.evidence()));
        } catch (Refusal refusal) {
            return new OwningScreen(under, owning, EntryLine.EMPTY, refusal.getMessage(), Role.REFUSED, part, scroll, first);
        }
    }

    @Override
    public Screen onOutcome(Effect.Outcome outcome) {
        return under.onOutcome(outcome) instanceof ConsultScreen consult
                ? new OwningScreen(consult, owning, entry, said, saidRole, part, scroll, first) : this;
    }

    @Override
    public List<Hint> hints() {
        return List.of(new Hint("F5", "exam"), new Hint("F6", "attended"), new Hint("F7", "schedule"), new Hint("F8", "years"),
                new Hint("Esc", "back"), new Hint("Tab", "next part"), new Hint("F10", "reset"), new Hint("PgDn", "scrolls"),
                new Hint("Ctrl-C", "leaves"));
    }
}
