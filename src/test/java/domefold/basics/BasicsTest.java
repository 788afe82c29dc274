package domefold.basics;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** The plain loops against what the JDK does in their place. */
class BasicsTest {
    private static final List<String> WORDS = List.of("gel", "", "saline", "round", "shaped", "gel");

    @Test
    void listsAreWhatStreamsMakeOfThem() {
        assertEquals(WORDS.stream().map(String::length).toList(), Lists.map(WORDS, String::length));
        assertEquals(WORDS.stream().filter(word -> word.length() > 3).toList(), Lists.where(WORDS, word -> word.length() > 3));
        assertEquals(WORDS.stream().filter(word -> word.startsWith("s")).findFirst(), Lists.first(WORDS, word -> word.startsWith("s")));
        assertEquals(Optional.empty(), Lists.first(WORDS, "none"::equals));
        assertEquals(WORDS.stream().collect(Collectors.joining(", ")), Lists.joined(WORDS, ", ", word -> word));
        assertArrayEquals(WORDS.stream().mapToDouble(String::length).toArray(), Lists.doubles(WORDS, String::length));
        assertTrue(Lists.any(WORDS, String::isEmpty) && !Lists.any(List.of(), any -> true));
        assertTrue(Lists.all(List.of(), any -> false) && !Lists.all(WORDS, String::isEmpty));
        assertThrows(UnsupportedOperationException.class, () -> Lists.map(WORDS, word -> word).add("more"));
        assertThrows(UnsupportedOperationException.class, () -> Lists.where(WORDS, word -> true).remove(0));
    }

    @Test
    void sumsAndEndsAreThoseOfStreamsToTheLastBit() {
        Random random = new Random(20261126);
        for (int size = 1; size < 200; size++) {
            List<Double> numbers = random.doubles(size, -1e3, 1e3).map(x -> x * Math.pow(10, random.nextInt(9) - 4)).boxed().toList();
            assertEquals(numbers.stream().mapToDouble(x -> x).sum(), Lists.sum(numbers, x -> x));
            assertEquals(numbers.stream().mapToDouble(x -> x).min().orElseThrow(), Lists.least(numbers, x -> x));
            assertEquals(numbers.stream().mapToDouble(x -> x).max().orElseThrow(), Lists.most(numbers, x -> x));
        }
        double infinite = Double.POSITIVE_INFINITY;
        for (List<Double> numbers : List.of(List.<Double>of(), List.of(infinite, 1.0), List.of(1.0, -infinite, 2.0), List.of(infinite, infinite),
                List.of(infinite, -infinite), List.of(Double.NaN, infinite), List.of(1e308, 1e308), List.of(0.0, Double.NaN), List.of(-0.0))) {
            assertEquals(numbers.stream().mapToDouble(x -> x).sum(), Lists.sum(numbers, x -> x), numbers.toString());
            assertEquals(numbers.stream().mapToDouble(x -> x).min().orElse(infinite), Lists.least(numbers, x -> x), numbers.toString());
            assertEquals(numbers.stream().mapToDouble(x -> x).max().orElse(-infinite), Lists.most(numbers, x -> x), numbers.toString());
        }
        assertEquals(Double.POSITIVE_INFINITY, Lists.least(List.<Double>of(), x -> x));
        assertEquals(Double.NEGATIVE_INFINITY, Lists.most(List.<Double>of(), x -> x));
    }

    @Test
    void ordersAreThoseOfTheJdkAndKeepWhatIsEqualInPlace() {
        assertEquals(sorted(Comparator.comparingDouble(String::length)), sorted(Order.byNumber(String::length)));
        assertEquals(sorted(Comparator.comparingInt(String::length)), sorted(Order.byRank(String::length)));
        assertEquals(sorted(Comparator.naturalOrder()), sorted(Order.by(word -> word)));
        assertEquals(sorted(Comparator.comparingInt(String::length).thenComparing(Comparator.reverseOrder())),
                sorted(Order.then(Order.byRank(String::length), Comparator.reverseOrder())));
    }

    private static List<String> sorted(Comparator<String> order) {
        List<String> words = new ArrayList<>(WORDS);
        words.sort(order);
        return words;
    }

    @Test
    void numbersAndDaysAreToldFromOtherTextAsPatternsTellThem() {
        for (String text : List.of("", "1", "12.5", ".5", "5.", "1.2.3", "-1", "+1", "1,5", " 1", "1 ", "1e3", "123456789", "1234567890",
                "0.123456789", "0.1234567890", "\u0663", "1\u0663")) {
            assertEquals(text.matches("[0-9]+([.][0-9]+)?"), Digits.isDecimal(text), text);
            assertEquals(text.matches("[0-9]{1,9}([.][0-9]{1,9})?"), Digits.isDecimal(text, 9), text);
        }
        for (String text : List.of("2026-03-04", "2026-3-04", "2026-99-99", "02026-03-04", "2026/03/04", "2026-03-0x", "", "----------")) {
            assertEquals(text.matches("[0-9]{4}-[0-9]{2}-[0-9]{2}"), Digits.isDay(text), text);
        }
        assertFalse(Digits.isDecimal("."));
    }
}
