package domefold.terminal;

import com.googlecode.lanterna.TerminalSize;
import com.googlecode.lanterna.input.KeyDecodingProfile;
import com.googlecode.lanterna.terminal.ansi.ANSITerminal;
import java.io.BufferedOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.EnumSet;
import org.jline.terminal.Attributes;
import org.jline.terminal.Terminal;

/**
 * Lanterna's terminal on JLine's: one owner of the tty and no helper processes. Output is gathered, so that a key costs one
 * write; Ctrl-C, Ctrl-Z, Ctrl-S and Ctrl-\ arrive as keys.
 */
final class TtyTerminal extends ANSITerminal {
    private static final int BUFFER_BYTES = 1 << 16;
    private static final TerminalSize UNKNOWN = new TerminalSize(80, 24);

    private final Terminal jline;
    private final KeyBytes keys;
    private final Attributes found;
    private boolean open = true;

    static TtyTerminal on(Terminal jline) {
        return new TtyTerminal(jline, new KeyBytes(jline.input()));
    }

    private TtyTerminal(Terminal jline, KeyBytes keys) {
        super(keys, new BufferedOutputStream(jline.output(), BUFFER_BYTES), jline.encoding());
        this.jline = jline;
        this.keys = keys;
        this.found = jline.getAttributes();
        takeKeys();
        onResized(findTerminalSize());
    }

    KeyBytes keys() {
        return keys;
    }

    /** Every key to the program, none to the line discipline. */
    void takeKeys() {
        Attributes raw = new Attributes(found);
        raw.setLocalFlags(EnumSet.of(Attributes.LocalFlag.ICANON, Attributes.LocalFlag.ECHO,
                Attributes.LocalFlag.IEXTEN, Attributes.LocalFlag.ISIG), false);
        raw.setInputFlags(EnumSet.of(Attributes.InputFlag.IXON, Attributes.InputFlag.INLCR), false);
        raw.setControlChar(Attributes.ControlChar.VMIN, 1);
        raw.setControlChar(Attributes.ControlChar.VTIME, 0);
        jline.setAttributes(raw);
    }

    /** The line discipline as it was found. */
    void giveKeysBack() {
        jline.setAttributes(found);
    }

    @Override
    protected KeyDecodingProfile getDefaultKeyDecodingProfile() {
        return new KeySequences();
    }

    /** Lanterna encodes one UTF-16 unit at a time: two-byte characters gain a NUL, and pairs become question marks. */
    @Override
    public void putString(String text) throws IOException {
        writeToTerminal(text.getBytes(getCharset() == null ? StandardCharsets.UTF_8 : getCharset()));
    }

    /** Asked of the system; Lanterna would ask the terminal and wait for an answer that a gathered write never causes. */
    @Override
    protected TerminalSize findTerminalSize() {
        if (jline == null) {
            return UNKNOWN;
        }
        int columns = jline.getColumns();
        int rows = jline.getRows();
        return columns > 0 && rows > 0 ? new TerminalSize(columns, rows) : UNKNOWN;
    }

    @Override
    public void close() throws IOException {
        if (!open) {
            return;
        }
        open = false;
        keys.stop();
        try {
            super.close();
            flush();
        } finally {
            giveKeysBack();
        }
    }
}
