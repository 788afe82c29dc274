package domefold.terminal;

import java.io.IOException;
import java.io.InputStream;
import org.jline.utils.NonBlockingInputStream;

/**
 * The bytes typed, for Lanterna's decoder. After an ESC byte, and until the sequence it begins has its last byte, it waits
 * a moment for more, which over a slow link or on a busy machine arrives by itself; Lanterna itself can wait in steps of
 * 250 ms only.
 *
 * <p>Every read is timed: JLine's untimed one holds a monitor that closing the terminal needs.
 */
final class KeyBytes extends InputStream {
    private static final int ESCAPE = 27;
    private static final int REST_OF_SEQUENCE_MS = 25;
    private static final int AT_ONCE_MS = 1;
    private static final int LOOK_UP_MS = 250;

    private final NonBlockingInputStream typed;
    private Place place = Place.OUTSIDE;
    private volatile boolean stopped;

    /** Where in a key's sequence the last byte stood. */
    private enum Place {
        OUTSIDE,
        AFTER_ESCAPE,
        IN_SEQUENCE;

        /** ESC [ and ESC O begin a sequence that ends with a byte from {@code @} to {@code ~} (ECMA-48, 5.4). */
        Place after(int next) {
            if (next == ESCAPE) {
                return AFTER_ESCAPE;
            }
            if (this == AFTER_ESCAPE) {
                return next == '[' || next == 'O' ? IN_SEQUENCE : OUTSIDE;
            }
            return this == IN_SEQUENCE && (next < '@' || next > '~') ? IN_SEQUENCE : OUTSIDE;
        }
    }

    KeyBytes(InputStream typed) {
        this.typed = (NonBlockingInputStream) typed;
    }

    /** Waits at most that long for a byte and tells whether there is one, or the end, to read. */
    boolean await(int milliseconds) throws IOException {
        return stopped || typed.peek(milliseconds) != NonBlockingInputStream.READ_EXPIRED;
    }

    void stop() {
        stopped = true;
    }

    @Override
    public int available() throws IOException {
        return typed.peek(place != Place.OUTSIDE ? REST_OF_SEQUENCE_MS : AT_ONCE_MS) >= 0 ? 1 : 0;
    }

    @Override
    public int read() throws IOException {
        int next = NonBlockingInputStream.READ_EXPIRED;
        while (next == NonBlockingInputStream.READ_EXPIRED) {
            if (stopped) {
                return -1;
            }
            next = typed.read((long) LOOK_UP_MS);
        }
        place = place.after(next);
        return next < 0 ? -1 : next;
    }

    @Override
    public int read(byte[] into, int offset, int length) throws IOException {
        if (length == 0) {
            return 0;
        }
        int count = 0;
        do {
            int next = read();
            if (next < 0) {
                return count == 0 ? -1 : count;
            }
            into[offset + count++] = (byte) next;
        } while (count < length && typed.available() > 0);
        return count;
    }
}
