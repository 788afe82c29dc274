package domefold.terminal;

import static org.junit.jupiter.api.Assertions.assertEquals;

import com.googlecode.lanterna.TerminalSize;
import com.googlecode.lanterna.input.KeyDecodingProfile;
import com.googlecode.lanterna.input.KeyStroke;
import com.googlecode.lanterna.terminal.ansi.ANSITerminal;
import domefold.screen.Key;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import org.jline.utils.NonBlockingInputStream;
import org.junit.jupiter.api.Test;

/** Bytes as a terminal sends them, to keys. */
class TypedBytesTest {
    @Test
    void aKeyThatArrivesInTwoPacketsIsOneKey() throws IOException {
        assertEquals(List.of(Key.of(Key.Kind.RIGHT)), keys(typed("\u001b").pause(20).then("[C")));
        assertEquals(List.of(Key.of(Key.Kind.DOWN)), keys(typed("\u001b[").pause(15).then("B")));
        assertEquals(List.of(Key.of(Key.Kind.F5)), keys(typed("\u001b[1").pause(15).then("5~")));
    }

    @Test
    void escapeAloneIsEscape() throws IOException {
        assertEquals(List.of(Key.of(Key.Kind.ESCAPE)), keys(typed("\u001b")));
        assertEquals(List.of(Key.of(Key.Kind.ESCAPE), Key.character('x')), keys(typed("\u001b").pause(60).then("x")));
    }

    @Test
    void charactersOfSeveralBytesArriveWhole() throws IOException {
        assertEquals(List.of(Key.character('é'), Key.character('½'), Key.character(0x1F600)),
                keys(typed("é½\ud83d\ude00")));
    }

    @Test
    void aPasteBetweenItsBracketsIsItsCharacters() throws IOException {
        assertEquals(List.of(Key.character('1'), Key.character('2')), keys(typed("\u001b[200~12\u001b[201~")));
    }

    @Test
    void aReportNobodyAskedForIsNoKey() throws IOException {
        assertEquals(List.of(Key.character('a')), keys(typed("\u001b[12;40Ra")));
        assertEquals(List.of(Key.character('a')), keys(typed("\u001b[Ia")));
        assertEquals(List.of(Key.character('a')), keys(typed("\u001b[?1;2ca")));
    }

    @Test
    void aSequenceNobodyKnowsIsNoText() throws IOException {
        assertEquals(List.of(Key.character('a')), keys(typed("\u001b[1;2;99~a")));
        assertEquals(List.of(Key.character('a')), keys(typed("\u001b[<0;12;7Ma")));
        assertEquals(List.of(Key.character('a')), keys(typed("\u001b[97;5u").then("a")));
    }

    @Test
    void knownSequencesStayKeys() throws IOException {
        assertEquals(List.of(Key.of(Key.Kind.UP), Key.of(Key.Kind.F1), Key.of(Key.Kind.F1), Key.of(Key.Kind.F5),
                Key.of(Key.Kind.BACK_TAB), Key.of(Key.Kind.DELETE)),
                keys(typed("\u001b[A\u001bOP\u001b[[A\u001b[15~\u001b[Z\u001b[3~")));
    }

    private static Script typed(String text) {
        return new Script().then(text);
    }

    /** Every key in the script, with pauses waited out as the loop does. */
    private static List<Key> keys(Script script) throws IOException {
        Typed terminal = new Typed(script);
        KeyReader reader = new KeyReader();
        List<Key> keys = new ArrayList<>();
        while (true) {
            KeyStroke stroke = terminal.pollInput();
            if (stroke != null) {
                reader.read(stroke).ifPresent(keys::add);
            } else if (!terminal.keys.await(100)) {
                return keys;
            }
        }
    }

    private static final class Typed extends ANSITerminal {
        private final KeyBytes keys;

        Typed(Script script) {
            this(new KeyBytes(script));
        }

        private Typed(KeyBytes keys) {
            super(keys, OutputStream.nullOutputStream(), StandardCharsets.UTF_8);
            this.keys = keys;
        }

        @Override
        protected KeyDecodingProfile getDefaultKeyDecodingProfile() {
            return new KeySequences();
        }

        @Override
        protected TerminalSize findTerminalSize() {
            return new TerminalSize(80, 24);
        }
    }

    /** Bytes and pauses, in time that passes only while somebody waits. */
    private static final class Script extends NonBlockingInputStream {
        private final Deque<Integer> events = new ArrayDeque<>();

        Script then(String text) {
            for (byte next : text.getBytes(StandardCharsets.UTF_8)) {
                events.add(next & 0xff);
            }
            return this;
        }

        Script pause(int milliseconds) {
            events.add(-1000 - milliseconds);
            return this;
        }

        @Override
        public int read(long timeout, boolean isPeek) {
            Integer next = events.peek();
            if (next == null) {
                return READ_EXPIRED;
            }
            if (next >= 0) {
                return isPeek ? next : events.remove();
            }
            long remaining = -1000 - next - timeout;
            events.remove();
            if (remaining > 0) {
                events.addFirst((int) (-1000 - remaining));
                return READ_EXPIRED;
            }
            return read(timeout, isPeek);
        }
    }
}
