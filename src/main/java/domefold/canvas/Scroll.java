package domefold.canvas;

/** Where a list's window begins so that the chosen row is in sight, moved as little as possible. */
public final class Scroll {
    private Scroll() {}

    public static int toShow(int first, int chosen, int visible, int count) {
        int last = Math.max(0, count - Math.max(1, visible));
        int begin = Math.max(0, Math.min(first, last));
        if (chosen < begin) {
            return Math.max(0, chosen);
        }
        return chosen >= begin + visible ? Math.max(0, Math.min(last, chosen - Math.max(1, visible) + 1)) : begin;
    }
}
