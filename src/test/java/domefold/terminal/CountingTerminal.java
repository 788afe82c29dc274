package domefold.terminal;

import com.googlecode.lanterna.TerminalSize;
import com.googlecode.lanterna.terminal.ansi.ANSITerminal;
import java.io.BufferedOutputStream;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;

/** A terminal of fixed size that counts what is sent to it. */
final class CountingTerminal extends ANSITerminal {
    private final Counter counter;
    private final TerminalSize size;

    static final class Counter extends OutputStream {
        private long bytes;
        private long writes;

        @Override
        public void write(int one) {
            bytes++;
            writes++;
        }

        @Override
        public void write(byte[] from, int offset, int length) {
            bytes += length;
            writes++;
        }
    }

    static CountingTerminal of(int columns, int rows) {
        return new CountingTerminal(new Counter(), new TerminalSize(columns, rows));
    }

    private CountingTerminal(Counter counter, TerminalSize size) {
        super(new ByteArrayInputStream(new byte[0]), new BufferedOutputStream(counter, 1 << 16), StandardCharsets.UTF_8);
        this.counter = counter;
        this.size = size;
        onResized(size);
    }

    long bytes() {
        return counter.bytes;
    }

    long writes() {
        return counter.writes;
    }

    @Override
    public void putString(String text) throws IOException {
        writeToTerminal(text.getBytes(StandardCharsets.UTF_8));
    }

    @Override
    protected TerminalSize findTerminalSize() {
        return size == null ? new TerminalSize(80, 24) : size;
    }
}
