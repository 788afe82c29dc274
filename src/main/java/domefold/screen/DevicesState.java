package domefold.screen;

/**
 * How the device list is looked at.
 *
 * @param sort what orders the list
 * @param fittingOnly true leaves out what lies outside on both sides
 * @param cursor row of the list that has the focus
 * @param view list beside columns, or one of them alone
 * @param columnScroll rows the columns are scrolled
 * @param firstPinned the first pinned device shown, where not all fit beside each other
 */
public record DevicesState(Sort sort, boolean fittingOnly, int cursor, View view, int columnScroll, int firstPinned) {
    public static final DevicesState FIRST = new DevicesState(Sort.VERDICT, true, 0, View.BOTH, 0, 0);

    /** What orders the list. */
    public enum Sort {
        VERDICT("fits first, then nearest the size wished"),
        VOLUME("volume"),
        WIDTH("width"),
        PROJECTION("projection"),
        STABILITY("how surely it fits"),
        INCISION("shortest opening"),
        EXAMS("fewest exams");

        private final String words;

        Sort(String words) {
            this.words = words;
        }

        public String words() {
            return words;
        }

        Sort next() {
            return values()[(ordinal() + 1) % values().length];
        }
    }

    /** What is on the glass. */
    public enum View {
        BOTH,
        LIST,
        COLUMNS;

        View next() {
            return values()[(ordinal() + 1) % values().length];
        }
    }

    DevicesState withSort(Sort next) {
        return new DevicesState(next, fittingOnly, 0, view, columnScroll, firstPinned);
    }

    DevicesState withFittingOnly(boolean only) {
        return new DevicesState(sort, only, 0, view, columnScroll, firstPinned);
    }

    DevicesState withCursor(int row) {
        return new DevicesState(sort, fittingOnly, row, view, columnScroll, firstPinned);
    }

    DevicesState withView(View next) {
        return new DevicesState(sort, fittingOnly, cursor, next, columnScroll, firstPinned);
    }

    DevicesState withColumnScroll(int rows) {
        return new DevicesState(sort, fittingOnly, cursor, view, Math.max(0, rows), firstPinned);
    }

    DevicesState withFirstPinned(int index) {
        return new DevicesState(sort, fittingOnly, cursor, view, columnScroll, Math.max(0, index));
    }
}
