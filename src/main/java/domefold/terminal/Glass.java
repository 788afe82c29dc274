package domefold.terminal;

import com.googlecode.lanterna.TerminalPosition;
import com.googlecode.lanterna.TerminalSize;
import com.googlecode.lanterna.TextCharacter;
import com.googlecode.lanterna.screen.Screen.RefreshType;
import com.googlecode.lanterna.screen.TerminalScreen;
import com.googlecode.lanterna.terminal.Terminal;
import domefold.canvas.Canvas;
import domefold.canvas.Role;
import java.io.IOException;
import java.util.HashMap;
import java.util.Map;

/**
 * What is painted: canvases in, the changed cells out, in one write. Painting and leaving exclude each other, so that a
 * signal that takes the screen down is never painted over.
 */
final class Glass {
    private final TerminalScreen cells;
    private final Palette palette;
    private final Map<Integer, TextCharacter> made = new HashMap<>();
    private boolean wholeNext = true;
    private boolean entered;

    Glass(Terminal terminal, Palette palette) throws IOException {
        this.cells = new TerminalScreen(terminal);
        this.palette = palette;
        cells.setCursorPosition(null);
    }

    /** Goes to the alternate screen. */
    synchronized void enter() throws IOException {
        cells.startScreen();
        entered = true;
        wholeNext = true;
    }

    /** Comes back from it, wiped, so that no old rows stay in the scrollback; a second call does nothing. */
    synchronized void leave() throws IOException {
        if (!entered) {
            return;
        }
        entered = false;
        Terminal terminal = cells.getTerminal();
        terminal.resetColorAndSGR();
        terminal.clearScreen();
        terminal.setCursorPosition(0, 0);
        cells.stopScreen(false);
        terminal.flush();
    }

    /** The next frame is sent whole, not as changes. */
    synchronized void repaintWhole() {
        wholeNext = true;
    }

    /** The size to draw the next frame in. */
    synchronized TerminalSize size() {
        if (cells.doResizeIfNecessary() != null) {
            wholeNext = true;
        }
        return cells.getTerminalSize();
    }

    synchronized void show(Canvas canvas) throws IOException {
        if (!entered) {
            return;
        }
        for (int row = 0; row < canvas.rows(); row++) {
            for (int column = 0; column < canvas.columns(); column++) {
                cells.setCharacter(column, row, character(canvas.codePointAt(column, row), canvas.roleAt(column, row)));
            }
        }
        cells.setCursorPosition(canvas.cursorRow() < 0 ? null
                : new TerminalPosition(canvas.cursorColumn(), canvas.cursorRow()));
        cells.refresh(wholeNext ? RefreshType.COMPLETE : RefreshType.DELTA);
        wholeNext = false;
    }

    /** Lanterna's own making of a character walks its graphemes; a screen has few different ones. */
    private TextCharacter character(int codePoint, Role role) {
        int key = codePoint * Role.values().length + role.ordinal();
        TextCharacter known = made.get(key);
        if (known == null) {
            Palette.Style style = palette.of(role);
            known = TextCharacter.fromString(Character.toString(codePoint), style.ink(), style.ground(),
                    style.weight())[0];
            made.put(key, known);
        }
        return known;
    }
}
