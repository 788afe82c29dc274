package domefold.screen;

import domefold.canvas.Canvas;
import domefold.canvas.Role;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The first screen: what there is to do.
 *
 * @param list the device list in use
 * @param left consults that were not finished, the latest first
 * @param cursor which line has the focus
 * @param said what happened last, possibly nothing
 */
public record StartScreen(ListLine list, List<Left> left, int cursor, String said) implements Screen {

    /**
     * A consult that was not finished.
     *
     * @param journalId names its journal
     * @param code its case code, possibly blank
     * @param answers how many answers it holds
     * @param when the day and time of the last one, in words
     */
    public record Left(String journalId, String code, int answers, String when) {}

    private static final int POINTER = 2;
    private static final int NARROWEST_LABEL = 26;
    private static final int WIDEST_LABEL = 40;
    /** Lines of the menu that come before the caution where a window holds only one of them. */
    private static final int LINES_FIRST = 9;
    private static final String WHOSE = "For licensed surgeons. It supports your judgement and replaces none of it";
    private static final String CAUTION = WHOSE + "; device labelling and local rules come first."
            + " Group figures do not foretell one woman's result.";

    /** One line of the menu; what it is about also in fewer words, for a narrow window. */
    private record Item(String label, String about, String briefly, Effect effect) {
        Item(String label, String about, Effect effect) {
            this(label, about, about, effect);
        }
    }

    public StartScreen {
        left = List.copyOf(left);
    }

    public static StartScreen of(ListLine list, List<Left> left) {
        return new StartScreen(list, left, 0, "");
    }

    private List<Item> items() {
        List<Item> items = new ArrayList<>();
        for (Left one : left) {
            String answers = one.answers() + (one.answers() == 1 ? " answer" : " answers");
            items.add(new Item("Continue " + (one.code().isBlank() ? "(no code yet)" : one.code()),
                    answers + ", last " + one.when(), answers + ", " + one.when(), new Effect.Open(Optional.of(one.journalId()))));
        }
        items.add(new Item("New consult", "readings, limits, devices side by side, a record", "limits, devices, a record",
                new Effect.Open(Optional.empty())));
        items.add(new Item("Practise", "an invented patient, your plan marked", "your plan marked", new Effect.Visit("practise")));
        items.add(new Item("Records", "find, print, order, who is due", new Effect.Visit("records")));
        items.add(new Item("Leave", "", Effect.QUIT));
        return items;
    }

    @Override
    public Step onKey(Key key) {
        List<Item> items = items();
        int at = Math.min(cursor, items.size() - 1);
        if (key.isCtrl('c') || key.is(Key.Kind.ESCAPE) || key.isText() && key.codePoint() == 'q') {
            return new Step(this, Effect.QUIT);
        }
        return switch (key.kind()) {
            case UP, BACK_TAB -> Step.to(at((at + items.size() - 1) % items.size()));
            case DOWN, TAB -> Step.to(at((at + 1) % items.size()));
            case HOME -> Step.to(at(0));
            case END -> Step.to(at(items.size() - 1));
            case ENTER -> new Step(this, items.get(at).effect());
            case DELETE -> at < left.size() ? new Step(this, new Effect.SetAside(left.get(at).journalId())) : Step.to(this);
            default -> Step.to(this);
        };
    }

    private StartScreen at(int row) {
        return new StartScreen(list, left, row, "");
    }

    @Override
    public Screen onOutcome(Effect.Outcome outcome) {
        if (outcome instanceof Effect.Opened opened) {
            return opened.screen();
        }
        if (outcome instanceof Effect.Failed failed) {
            return new StartScreen(list, left, cursor, failed.text());
        }
        if (outcome instanceof Effect.Done done && done.of() instanceof Effect.SetAside aside) {
            return new StartScreen(list, left.stream().filter(one -> !one.journalId().equals(aside.journalId())).toList(), 0, done.text());
        }
        return this;
    }

    @Override
    public void draw(Canvas canvas) {
        int width = Math.min(canvas.columns() - 4, 84);
        int column = Math.max(2, (canvas.columns() - width) / 2);
        int row = Math.max(1, canvas.rows() / 2 - 9);
        canvas.text(column, row, "Domefold", Role.TITLE);
        canvas.textWithin(column, row + 1, width, "The measured consult for breast augmentation", Role.FAINT);
        int top = row + 3;
        int end = canvas.rows() - 3;
        List<Item> items = items();
        List<String> saying = said.isEmpty() ? List.of() : canvas.wrap(said, width);
        int body = end - top - (saying.isEmpty() ? 0 : saying.size() + 1);
        int beside = Math.max(LINES_FIRST, body - 1 - canvas.wrap(CAUTION, width).size());
        int room = Math.min(body, beside);
        int at = menu(canvas, column, top, width, items.size() <= room ? items.size() : Math.max(1, room - 1), items);
        at++;
        for (String line : saying) {
            canvas.text(column, at++, line, Role.CAUTION);
        }
        at += saying.isEmpty() ? 0 : 1;
        for (String line : caution(canvas, width, end - at)) {
            canvas.text(column, at++, line, Role.FAINT);
        }
        canvas.textWithin(1, canvas.rows() - 2, canvas.columns() - 2, list.sentence(canvas.columns() - 2),
                list.invented() ? Role.BANNER : Role.FAINT);
    }

    /** That many lines of the menu around the one in focus; returns the row after them. */
    private int menu(Canvas canvas, int column, int row, int width, int shown, List<Item> items) {
        int selected = Math.min(cursor, items.size() - 1);
        int from = Math.max(0, Math.min(selected - shown / 2, items.size() - shown));
        int widest = items.stream().mapToInt(item -> canvas.width(item.label())).max().orElse(0);
        int about = Math.min(WIDEST_LABEL, Math.max(NARROWEST_LABEL, POINTER + widest + 2));
        if (from > 0) {
            canvas.text(column + POINTER, row - 1, from + " more above", Role.FAINT);
        }
        int at = row;
        for (Item item : items.subList(from, from + shown)) {
            boolean here = item == items.get(selected);
            canvas.text(column, at, here ? String.valueOf(canvas.glyphs().pointer()) : " ", Role.LABEL);
            canvas.textWithin(column + POINTER, at, about - POINTER - 1, item.label(), here ? Role.SELECTED : Role.BODY);
            String words = canvas.width(item.about()) <= width - about ? item.about() : item.briefly();
            canvas.textWithin(column + about, at, width - about, words, Role.FAINT);
            if (here) {
                canvas.cursor(column + POINTER, at);
            }
            at++;
        }
        int after = items.size() - from - shown;
        if (after > 0) {
            canvas.text(column + POINTER, at++, after + " more below", Role.FAINT);
        }
        return at;
    }

    /** Whole, its first two sentences, or nothing, as there are rows. */
    private static List<String> caution(Canvas canvas, int width, int rows) {
        for (String text : List.of(CAUTION, WHOSE + ".")) {
            List<String> lines = canvas.wrap(text, width);
            if (lines.size() <= rows) {
                return lines;
            }
        }
        return List.of();
    }

    @Override
    public List<Hint> hints() {
        List<Hint> hints = new ArrayList<>(List.of(new Hint("Up Down", "choose"), new Hint("Enter", "opens")));
        if (cursor < left.size()) {
            hints.add(new Hint("Del", "sets this consult aside"));
        }
        hints.add(new Hint("Esc", "leaves"));
        return hints;
    }
}
