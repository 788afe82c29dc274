package domefold.terminal;

import com.googlecode.lanterna.input.CharacterPattern;
import com.googlecode.lanterna.input.DefaultKeyDecodingProfile;
import com.googlecode.lanterna.input.KeyDecodingProfile;
import com.googlecode.lanterna.input.KeyStroke;
import com.googlecode.lanterna.input.KeyType;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;

/**
 * Lanterna's key sequences, and before them one that takes any other control sequence whole. Without it the inside of a
 * sequence nobody knows, such as the {@code 200} of a paste bracket, would arrive as typed digits.
 *
 * <p>A control sequence is ESC [, parameters 0x30 to 0x3F, intermediates 0x20 to 0x2F and one final byte 0x40 to 0x7E
 * (ECMA-48, section 5.4). The decoder lets the last pattern that fits win, so known keys stay what they are.
 */
final class KeySequences implements KeyDecodingProfile {
    @Override
    public Collection<CharacterPattern> getPatterns() {
        List<CharacterPattern> patterns = new ArrayList<>();
        patterns.add(KeySequences::anyControlSequence);
        patterns.addAll(new DefaultKeyDecodingProfile().getPatterns());
        return patterns;
    }

    private static CharacterPattern.Matching anyControlSequence(List<Character> typed) {
        if (typed.get(0) != KeyDecodingProfile.ESC_CODE || typed.size() > 1 && typed.get(1) != '[') {
            return null;
        }
        for (int i = 2; i < typed.size(); i++) {
            char next = typed.get(i);
            boolean last = i == typed.size() - 1;
            if (next >= 0x40 && next <= 0x7e) {
                return last ? new CharacterPattern.Matching(new KeyStroke(KeyType.Unknown)) : null;
            }
            if (next < 0x20 || next > 0x7e) {
                return null;
            }
        }
        return CharacterPattern.Matching.NOT_YET;
    }
}
