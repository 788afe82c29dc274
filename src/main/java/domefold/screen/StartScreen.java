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

    private static final int ABOUT = 24;

    /** One line of the menu. */
    private record Item(String label, String about, Effect effect) {}

    public StartScreen {
        left = List.copyOf(left);
    }

    public static StartScreen of(ListLine list, List<Left> left) {
        return new StartScreen(list, left, 0, "");
    }

    private List<Item> items() {
        List<Item> items = new ArrayList<>();
        for (Left one : left) {
            items.add(new Item("Continue " + (one.code().isBlank() ? "(no code yet)" : one.code()),
                    one.answers() + (one.answers() == 1 ? " answer" : " answers") + ", last " + one.when(),
                    new Effect.Open(Optional.of(one.journalId()))));
        }
        items.add(new Item("New consult", "readings, limits, devices side by side, a record", new Effect.Open(Optional.empty())));
        items.add(new Item("Practise", "an invented patient, your plan marked", new Effect.Visit("practise")));
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
        int at = row + 3;
        List<Item> items = items();
        int selected = Math.min(cursor, items.size() - 1);
        for (int i = 0; i < items.size() && at < canvas.rows() - 7; i++) {
            Item item = items.get(i);
            boolean here = i == selected;
            canvas.text(column, at, here ? String.valueOf(canvas.glyphs().pointer()) : " ", Role.LABEL);
            canvas.textWithin(column + 2, at, ABOUT - 3, item.label(), here ? Role.SELECTED : Role.BODY);
            canvas.textWithin(column + ABOUT, at, width - ABOUT, item.about(), Role.FAINT);
            if (here) {
                canvas.cursor(column + 2, at);
            }
            at++;
        }
        at++;
        if (!said.isEmpty()) {
            canvas.textWithin(column, at++, width, said, Role.CAUTION);
        }
        String caution = "For licensed surgeons. It supports your judgement and replaces none of it; device labelling and"
                + " local rules come first. Group figures do not foretell one woman's result.";
        for (String line : canvas.wrap(caution, width)) {
            canvas.text(column, Math.min(at++, canvas.rows() - 4), line, Role.FAINT);
        }
        canvas.textWithin(1, canvas.rows() - 2, canvas.columns() - 2, list.sentence(canvas.columns() - 2),
                list.invented() ? Role.BANNER : Role.FAINT);
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
