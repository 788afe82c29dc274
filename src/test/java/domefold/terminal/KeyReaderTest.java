package domefold.terminal;

import static org.junit.jupiter.api.Assertions.assertEquals;

import com.googlecode.lanterna.input.KeyStroke;
import com.googlecode.lanterna.input.KeyType;
import domefold.screen.Key;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class KeyReaderTest {
    private final KeyReader reader = new KeyReader();

    @Test
    void ctrlWithALetterIsTheSmallLetter() {
        assertEquals(Optional.of(Key.ctrl('z')), reader.read(new KeyStroke('Z', true, false)));
        assertEquals(Optional.of(Key.character('Z')), reader.read(new KeyStroke('Z', false, false)));
    }

    @Test
    void aCharacterInTwoHalvesIsOneKey() {
        assertEquals(Optional.empty(), reader.read(new KeyStroke('\ud83d', false, false)));
        assertEquals(Optional.of(Key.character(0x1F600)), reader.read(new KeyStroke('\ude00', false, false)));
        assertEquals(Optional.empty(), reader.read(new KeyStroke('\ude00', false, false)));
        assertEquals(Optional.of(Key.character('a')), reader.read(new KeyStroke('a', false, false)));
    }

    @Test
    void everyKindOfKeyTheProgramKnowsCanBePressed() {
        for (Key.Kind kind : Key.Kind.values()) {
            if (kind != Key.Kind.CHARACTER && kind != Key.Kind.OTHER) {
                assertEquals(1, java.util.Arrays.stream(KeyType.values()).filter(type -> type != KeyType.Character)
                        .filter(type -> reader.read(new KeyStroke(type)).equals(Optional.of(Key.of(kind)))).count(),
                        kind.name());
            }
        }
    }

    @Test
    void whatIsNoKeyIsDropped() {
        assertEquals(Optional.empty(), reader.read(new KeyStroke(KeyType.CursorLocation)));
        assertEquals(Optional.empty(), reader.read(new KeyStroke(KeyType.Unknown)));
        assertEquals(Optional.empty(), reader.read(new KeyStroke((char) 1, false, false)));
    }
}
