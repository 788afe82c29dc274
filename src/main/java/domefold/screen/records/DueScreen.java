package domefold.screen.records;

import domefold.canvas.Canvas;
import domefold.records.DueList;
import domefold.screen.Effect;
import domefold.screen.Key;
import domefold.screen.Screen;
import java.time.YearMonth;
import java.util.List;
import java.util.Optional;

/**
 * Who is due for imaging in a month: a calendar with counts, and the list with the reason of the one in focus.
 *
 * @param records the list it was opened from
 * @param month which month
 * @param due who is due in it
 * @param cursor which of them has the focus
 */
public record DueScreen(RecordsScreen records, YearMonth month, List<DueList.Due> due, int cursor) implements Screen {
    public DueScreen {
        due = List.copyOf(due);
    }

    public static DueScreen of(RecordsScreen records, YearMonth month) {
        return new DueScreen(records, month, DueList.of(records.list().all(), month), 0);
    }

    Optional<DueList.Due> focus() {
        return due.isEmpty() ? Optional.empty() : Optional.of(due.get(cursor));
    }

    @Override
    public Step onKey(Key key) {
        if (key.isCtrl('c')) {
            return new Step(this, Effect.QUIT);
        }
        int last = Math.max(0, due.size() - 1);
        return switch (key.kind()) {
            case ESCAPE, F8 -> new Step(records, records.wanted());
            case LEFT, PAGE_UP -> Step.to(of(records, month.minusMonths(1)));
            case RIGHT, PAGE_DOWN -> Step.to(of(records, month.plusMonths(1)));
            case UP -> Step.to(new DueScreen(records, month, due, Math.max(0, cursor - 1)));
            case DOWN -> Step.to(new DueScreen(records, month, due, Math.min(last, cursor + 1)));
            case HOME -> Step.to(new DueScreen(records, month, due, 0));
            case END -> Step.to(new DueScreen(records, month, due, last));
            case ENTER -> focus().map(this::opened).orElse(Step.to(this));
            default -> Step.to(this);
        };
    }

    private Step opened(DueList.Due one) {
        RecordsScreen narrowed = records.asked("case:" + one.header().id());
        return new Step(narrowed, narrowed.wanted());
    }

    @Override
    public void draw(Canvas canvas) {
        DueView.draw(canvas, this);
    }

    @Override
    public List<Hint> hints() {
        return List.of(new Hint("PgUp PgDn", "month"), new Hint("Up Down", "choose"), new Hint("Enter", "to the record"),
                new Hint("Esc", "list"));
    }
}
