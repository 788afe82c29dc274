package domefold.terminal;

import domefold.canvas.Canvas;
import domefold.canvas.Role;
import domefold.screen.Effect;
import domefold.screen.Key;
import domefold.screen.Screen;
import java.util.List;

/** A screen for trying the terminal: it names the last keys and shows the text typed. */
record KeyBoardScreen(String named, String typed) implements Screen {
    static final KeyBoardScreen EMPTY = new KeyBoardScreen("", "");

    @Override
    public Step onKey(Key key) {
        if (key.isText() && key.codePoint() == 'Q') {
            return new Step(this, Effect.QUIT);
        }
        if (key.isText() && key.codePoint() == 'X') {
            throw new IllegalStateException("a fault in a screen");
        }
        if (key.isText() && key.codePoint() == 'V') {
            return new Step(this, new Effect.Visit("next door"));
        }
        if (key.isText() && key.codePoint() == 'W') {
            return new Step(this, new Effect.Visit("nowhere"));
        }
        if (key.isText() && key.codePoint() == 'E') {
            System.err.println("a library complains");
        }
        String name = (key.ctrl() ? "Ctrl-" : "") + (key.alt() ? "Alt-" : "")
                + (key.kind() == Key.Kind.CHARACTER ? Character.toString(key.codePoint()) : key.kind().name());
        return Step.to(new KeyBoardScreen(name, key.isText() ? typed + Character.toString(key.codePoint()) : typed));
    }

    @Override
    public Screen onOutcome(Effect.Outcome outcome) {
        return outcome instanceof Effect.Done done ? new KeyBoardScreen(named, done.text()) : this;
    }

    @Override
    public void draw(Canvas canvas) {
        canvas.text(1, 1, "Key board " + canvas.columns() + " x " + canvas.rows(), Role.TITLE);
        canvas.text(1, 3, "last [" + named + "]", Role.BODY);
        canvas.cursor(canvas.text(1, 5, "typed " + typed, Role.ANSWER), 5);
        canvas.text(canvas.columns() - 1, canvas.rows() - 2, "#", Role.DRAWING);
    }

    @Override
    public List<Hint> hints() {
        return List.of(new Hint("Q", "quit"), new Hint("X", "fault"));
    }
}
