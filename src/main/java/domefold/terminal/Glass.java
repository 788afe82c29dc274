package domefold.terminal;

import com.googlecode.lanterna.TerminalPosition;
import com.googlecode.lanterna.TerminalSize;
import com.googlecode.lanterna.TextCharacter;
import com.googlecode.lanterna.screen.Screen.RefreshType;
import com.googlecode.lanterna.screen.TerminalScreen;
import com.googlecode.lanterna.terminal.Terminal;
import com.googlecode.lanterna.terminal.virtual.DefaultVirtualTerminal;
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

    /** Paints it once where nobody looks, so that the first frame somebody sees is not the first ever. */
    static void rehearse(Canvas canvas, Palette palette) throws IOException {
        Glass glass = new Glass(new DefaultVirtualTerminal(new TerminalSize(canvas.columns(), canvas.rows())), palette);
        glass.enter();
        glass.show(canvas);
        glass.leave();
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

    /** A screen has few different characters. */
    private TextCharacter character(int codePoint, Role role) {
        int key = codePoint * Role.values().length + role.ordinal();
        TextCharacter known = made.get(key);
        if (known == null) {
            Palette.Style style = palette.of(role);
            known = Character.isBmpCodePoint(codePoint) ? single((char) codePoint, style)
                    : TextCharacter.fromString(Character.toString(codePoint), style.ink(), style.ground(), style.weight())[0];
            made.put(key, known);
        }
        return known;
    }

    /** Lanterna would rather walk the graphemes of a text, for which the JDK reads its tables of all languages before the first frame. */
    @SuppressWarnings("deprecation")
    private static TextCharacter single(char character, Palette.Style style) {
        return new TextCharacter(character, style.ink(), style.ground(), style.weight());
    }
}
