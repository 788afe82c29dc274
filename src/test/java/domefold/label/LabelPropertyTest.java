package domefold.label;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;

import domefold.outcome.Refusal;
import java.util.Locale;
import java.util.Random;
import org.junit.jupiter.api.Test;

class LabelPropertyTest {
    private static final long SEED = 20260304L;

    @Test
    void everySingleWrongDigitIsFound() {
        Random random = new Random(SEED);
        for (int round = 0; round < 300; round++) {
            String stem = String.format(Locale.ROOT, "%013d", random.nextLong(1_000_000_000_000L));
            String right = stem + Gs1CheckDigit.of(stem);
            for (int at = 0; at < right.length(); at++) {
                int other = (right.charAt(at) - '0' + 1 + random.nextInt(9)) % 10;
                String wrong = right.substring(0, at) + other + right.substring(at + 1);
                assertFalse(Gs1CheckDigit.holds(wrong), wrong + " for " + right + ", seed " + SEED);
            }
        }
    }

    @Test
    void everySingleWrongCharacterOfAHibcStringIsFound() {
        Random random = new Random(SEED);
        String body = "+A123BJC5D6E71/$$3310315LOT7/S77DE1G45";
        String right = body + Hibc43.of(body);
        for (int at = 1; at < right.length(); at++) {
            int shift = 1 + random.nextInt(Hibc43.ALPHABET.length() - 1);
            int place = (Hibc43.ALPHABET.indexOf(right.charAt(at)) + shift) % Hibc43.ALPHABET.length();
            String wrong = right.substring(0, at) + Hibc43.ALPHABET.charAt(place) + right.substring(at + 1);
            assertThrows(Refusal.class, () -> LabelReader.read(wrong, 2026), wrong + ", seed " + SEED);
        }
    }

    @Test
    void noTextWhateverEndsInAnythingButALabelOrARefusal() {
        Random random = new Random(SEED);
        String alphabet = "0123456789()ABCS+$/*]d \u001d\n217140é";
        for (int round = 0; round < 20_000; round++) {
            StringBuilder text = new StringBuilder(round % 3 == 0 ? "0109521101530001" : round % 3 == 1 ? "+A123" : "(01)");
            for (int i = random.nextInt(24); i >= 0; i--) {
                text.append(alphabet.charAt(random.nextInt(alphabet.length())));
            }
            if (round % 3 == 1 && text.chars().allMatch(c -> Hibc43.ALPHABET.indexOf(c) >= 0)) {
                text.append(Hibc43.of(text.toString()));
            }
            try {
                LabelReader.read(text.toString(), 2026);
            } catch (Refusal expected) {
                continue;
            } catch (RuntimeException defect) {
                throw new AssertionError("'" + text + "', seed " + SEED, defect);
            }
        }
    }
}
