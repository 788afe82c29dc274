package domefold.screen.records;

import domefold.canvas.Canvas;
import domefold.outcome.Refusal;
import domefold.records.RecordHeader;
import domefold.records.RecordList;
import domefold.records.TypedFilter;
import domefold.screen.Effect;
import domefold.screen.EntryLine;
import domefold.screen.Key;
import domefold.screen.Screen;
import domefold.screen.Scrolled;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.List;
import java.util.Optional;

/**
 * The list of records: what is typed narrows it, the summary of the one in focus stands beside or below it.
 *
 * @param list every record
 * @param today the day, proposed for what is entered
 * @param back where Esc leads, empty to leave
 * @param filter what is shown of the list
 * @param entry the line the filter is typed on
 * @param cursor which of the records shown has the focus
 * @param paper the text of that record
 * @param ask a deed that waits to be confirmed
 * @param said what happened last, possibly nothing
 * @param refused whether that was a refusal
 */
public record RecordsScreen(RecordList list, LocalDate today, Optional<Screen> back, TypedFilter filter, EntryLine entry,
        int cursor, Paper paper, Optional<Ask> ask, String said, boolean refused) implements Screen {
    private static final int PAGE = 10;
    private static final Hint MARKS = new Hint("F5-7", "ordered booked done");
    /** The page that F1 shows. */
    public static final String KEYS = """
            Keys

            Letters      narrow the list: words, a day (2026-03-04), a month (2026-03), a
                         range (2026-01..2026-03), case: device: fill: status:
            Up Down      choose; PgUp PgDn, Home and End in larger steps
            Enter        opens the summary of the record
            F3           prints the clinical summary into a file (PDF)
            F4           shows the order list; F3 there prints it
            F5           enters that it was ordered
            F6           enters a booking: before the operation and before the first exam
                         may be held for the operation, otherwise for imaging
            F7           enters that an imaging exam was done
            F8           who is due in a month
            Esc          steps back; Ctrl-C leaves

            F5, F6 and F7 write an event beside the record. The record itself never changes.
            """;

    /** The whole list. */
    public static RecordsScreen of(RecordList list, LocalDate today, Optional<Screen> back) {
        return new RecordsScreen(list, today, back, TypedFilter.over(list), EntryLine.EMPTY, 0, Paper.NONE, Optional.empty(),
                "", false);
    }

    /** The list under a question. */
    public RecordsScreen asked(String text) {
        return with(EntryLine.of(text), filter.typed(text), 0);
    }

    /** The record in focus. */
    Optional<RecordHeader> focus() {
        List<RecordHeader> shown = filter.shown();
        return shown.isEmpty() ? Optional.empty() : Optional.of(shown.get(Math.min(cursor, shown.size() - 1)));
    }

    /** The text that is not there yet. */
    public Effect wanted() {
        Optional<RecordHeader> focus = focus();
        return focus.isEmpty() || focus.get().id().equals(paper.id()) && !paper.text().isEmpty() ? Effect.NOTHING
                : new Effect.ReadRecord(focus.get().id(), Effect.ReadRecord.SUMMARY);
    }

    @Override
    public Step onKey(Key key) {
        if (key.isCtrl('c')) {
            return new Step(this, Effect.QUIT);
        }
        if (ask.isPresent()) {
            return asking(ask.get(), key);
        }
        Optional<Deed> deed = deed(key);
        if (deed.isPresent()) {
            return Step.to(focus().isEmpty() ? saying("No record has the focus.", true)
                    : withAsk(new Ask(deed.get(), EntryLine.of(deed.get().proposal(focus().get(), today)))));
        }
        return paper.whole() ? reading(key) : listing(key);
    }

    private Optional<Deed> deed(Key key) {
        return paper.ofKeys() ? Optional.empty() : switch (key.kind()) {
            case F3 -> Optional.of(paper.whole() && paper.what().equals(Effect.ReadRecord.ORDER) ? Deed.PRINT_ORDER : Deed.PRINT);
            case F5 -> Optional.of(Deed.ORDERED);
            case F6 -> Optional.of(Deed.BOOKED);
            case F7 -> Optional.of(Deed.DONE);
            default -> Optional.empty();
        };
    }

    private Step asking(Ask waiting, Key key) {
        if (key.is(Key.Kind.ESCAPE)) {
            return Step.to(withAsk(null));
        }
        if (!key.is(Key.Kind.ENTER)) {
            return Step.to(withAsk(new Ask(waiting.deed(), waiting.line().onKey(key))));
        }
        try {
            return new Step(withAsk(null), waiting.deed().effect(focus().orElseThrow(), waiting.line().text()));
        } catch (Refusal wrong) {
            return Step.to(withAsk(waiting).saying(wrong.getMessage(), true));
        }
    }

    private Step reading(Key key) {
        return switch (key.kind()) {
            case ESCAPE, ENTER -> {
                RecordsScreen closed = withPaper(Paper.NONE);
                yield new Step(closed, closed.wanted());
            }
            case F1 -> keys();
            default -> Step.to(paper.scroll().onKey(key, PAGE).map(to -> withPaper(paper.scrolled(to))).orElse(this));
        };
    }

    private Step keys() {
        return Step.to(withPaper(new Paper("", "keys", KEYS, Scrolled.START, true)));
    }

    private Step listing(Key key) {
        int last = Math.max(0, filter.shown().size() - 1);
        return switch (key.kind()) {
            case ESCAPE -> entry.text().isEmpty() ? back.map(Step::to).orElse(new Step(this, Effect.QUIT))
                    : moved(asked(""));
            case ENTER -> open(Effect.ReadRecord.SUMMARY);
            case F1 -> keys();
            case F4 -> open(Effect.ReadRecord.ORDER);
            case F8 -> Step.to(DueScreen.of(this, YearMonth.from(today)));
            case UP -> moved(with(entry, filter, Math.max(0, cursor - 1)));
            case DOWN -> moved(with(entry, filter, Math.min(last, cursor + 1)));
            case PAGE_UP -> moved(with(entry, filter, Math.max(0, cursor - PAGE)));
            case PAGE_DOWN -> moved(with(entry, filter, Math.min(last, cursor + PAGE)));
            case HOME -> moved(with(entry, filter, 0));
            case END -> moved(with(entry, filter, last));
            default -> typed(entry.onKey(key));
        };
    }

    private Step typed(EntryLine line) {
        boolean same = line.text().equals(entry.text());
        return moved(same ? with(line, filter, cursor) : with(line, filter.typed(line.text()), 0));
    }

    private Step open(String what) {
        return focus().isEmpty() ? Step.to(this)
                : new Step(withPaper(new Paper(focus().get().id(), what, "", Scrolled.START, true)), new Effect.ReadRecord(focus().get().id(), what));
    }

    private static Step moved(RecordsScreen next) {
        return new Step(next, next.wanted());
    }

    @Override
    public Screen onOutcome(Effect.Outcome outcome) {
        if (outcome instanceof Effect.Opened opened) {
            return opened.screen();
        }
        if (outcome instanceof Effect.Listed listed) {
            TypedFilter again = TypedFilter.over(listed.list()).typed(entry.text());
            return new RecordsScreen(listed.list(), today, back, again, entry, cursor, paper, Optional.empty(), listed.text(), false);
        }
        if (outcome instanceof Effect.Failed failed) {
            Paper left = outcome.of() instanceof Effect.ReadRecord && paper.whole() ? Paper.NONE : paper;
            return withPaper(left).saying(failed.text(), true);
        }
        if (outcome instanceof Effect.Done done && outcome.of() instanceof Effect.ReadRecord read) {
            return new RecordsScreen(list, today, back, filter, entry, cursor,
                    new Paper(read.id(), read.what(), done.text(), Scrolled.START, paper.whole()), ask, said, refused);
        }
        return outcome instanceof Effect.Done done ? saying(done.text(), false) : this;
    }

    @Override
    public void draw(Canvas canvas) {
        RecordsView.draw(canvas, this);
    }

    @Override
    public List<Hint> hints() {
        if (ask.isPresent()) {
            return List.of(new Hint("Enter", "does it"), new Hint("Esc", "does not"));
        }
        if (paper.whole()) {
            return paper.ofKeys() ? List.of(new Hint("Esc", "list"))
                    : List.of(new Hint("PgDn PgUp", "scroll"), new Hint("F3", "print"), MARKS, new Hint("Esc", "list"));
        }
        return List.of(new Hint("Enter", "open"), new Hint("F3", "print"), new Hint("F4", "order"), MARKS, new Hint("F8", "due"),
                new Hint("F1", "keys"), new Hint("Esc", entry.text().isEmpty() ? back.isPresent() ? "back" : "leave" : "all"));
    }

    private RecordsScreen with(EntryLine line, TypedFilter shown, int at) {
        return new RecordsScreen(list, today, back, shown, line, at, paper, Optional.empty(), "", false);
    }

    private RecordsScreen withPaper(Paper next) {
        return new RecordsScreen(list, today, back, filter, entry, cursor, next, Optional.empty(), "", false);
    }

    private RecordsScreen withAsk(Ask next) {
        return new RecordsScreen(list, today, back, filter, entry, cursor, paper, Optional.ofNullable(next), "", false);
    }

    private RecordsScreen saying(String text, boolean isRefusal) {
        return new RecordsScreen(list, today, back, filter, entry, cursor, paper, ask, text, isRefusal);
    }
}
