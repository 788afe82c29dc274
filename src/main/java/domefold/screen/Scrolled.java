package domefold.screen;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * How far a page is scrolled, kept as the steps that scrolled it: where they end depends on the window, which only the one
 * who draws knows. Each step stops at the first and at the last page, so that the first key back moves at once, however often
 * the key before was pressed.
 *
 * @param steps rows down, above 0, or up, below 0, in their order
 */
public record Scrolled(List<Integer> steps) {
    /** Where a page begins. */
    public static final Scrolled START = new Scrolled(List.of());
    private static final int BEYOND_ANY_PAGE = Integer.MAX_VALUE / 4;
    /** The last page. */
    public static final Scrolled END = new Scrolled(List.of(BEYOND_ANY_PAGE));

    public Scrolled {
        steps = List.copyOf(steps);
    }

    /** That many rows further. */
    public Scrolled by(int rows) {
        if (rows == 0) {
            return this;
        }
        List<Integer> next = new ArrayList<>(steps);
        next.add(rows);
        while (joined(next)) {
            continue;
        }
        return new Scrolled(next);
    }

    /**
     * Joins the last steps where one step leads from anywhere to the same row: two the same way, or three of which the
     * middle one is the shortest. What is left grows and shrinks again, so it stays short.
     */
    private static boolean joined(List<Integer> steps) {
        int last = steps.size() - 1;
        if (last >= 1 && steps.get(last) > 0 == steps.get(last - 1) > 0) {
            join(steps, 2);
            return true;
        }
        if (last >= 2 && Math.abs(steps.get(last - 1)) <= Math.min(Math.abs(steps.get(last)), Math.abs(steps.get(last - 2)))) {
            join(steps, 3);
            return true;
        }
        return false;
    }

    private static void join(List<Integer> steps, int count) {
        List<Integer> tail = steps.subList(steps.size() - count, steps.size());
        int sum = tail.stream().mapToInt(Integer::intValue).sum();
        tail.clear();
        steps.add(Math.max(-BEYOND_ANY_PAGE, Math.min(BEYOND_ANY_PAGE, sum)));
    }

    /** What a key that scrolls leads to, with that many rows for a page; empty for any other key. */
    public Optional<Scrolled> onKey(Key key, int pageRows) {
        return switch (key.kind()) {
            case UP -> Optional.of(by(-1));
            case DOWN -> Optional.of(by(1));
            case PAGE_UP -> Optional.of(by(-pageRows));
            case PAGE_DOWN -> Optional.of(by(pageRows));
            case HOME -> Optional.of(START);
            case END -> Optional.of(END);
            default -> Optional.empty();
        };
    }

    /** The first row in sight of a page that scrolls {@code last} rows at most. */
    public int row(int last) {
        return row(0, last);
    }

    /** The same, counted from another row than the first. */
    int row(int from, int last) {
        int most = Math.max(0, last);
        int at = Math.max(0, Math.min(from, most));
        for (int step : steps) {
            at = Math.max(0, Math.min(at + step, most));
        }
        return at;
    }
}
