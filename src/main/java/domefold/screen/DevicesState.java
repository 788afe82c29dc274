package domefold.screen;

import java.util.HashMap;
import java.util.Map;
import java.util.OptionalDouble;

/**
 * How the device list is looked at.
 *
 * @param sort what orders the list
 * @param fittingOnly true leaves out what lies outside on both sides
 * @param cursor row of the list that has the focus
 * @param view list beside columns, or one of them alone
 * @param columnScroll how far the columns are scrolled
 * @param firstPinned the pinned device in the first column
 * @param fillsMl saline fills turned away from nominal, by device id
 * @param overlaid true draws every outline over the one before it
 */
public record DevicesState(Sort sort, boolean fittingOnly, int cursor, View view, Scrolled columnScroll, int firstPinned,
        Map<String, Double> fillsMl, boolean overlaid) {
    public static final DevicesState FIRST = new DevicesState(Sort.WISHES, true, 0, View.BOTH, Scrolled.START, 0, Map.of(), false);

    public DevicesState {
        fillsMl = Map.copyOf(fillsMl);
    }

    /** What orders the list. */
    public enum Sort {
        WISHES("fits first, by her weights"),
        VERDICT("fits first, nearest the wish"),
        VOLUME("by volume"),
        WIDTH("by width"),
        PROJECTION("by projection"),
        STABILITY("the surest fit first"),
        INCISION("the shortest opening first"),
        EXAMS("the fewest exams first");

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

    public DevicesState withSort(Sort next) {
        return new DevicesState(next, fittingOnly, 0, view, columnScroll, firstPinned, fillsMl, overlaid);
    }

    public DevicesState withFittingOnly(boolean only) {
        return new DevicesState(sort, only, 0, view, columnScroll, firstPinned, fillsMl, overlaid);
    }

    DevicesState withCursor(int row) {
        return new DevicesState(sort, fittingOnly, row, view, columnScroll, firstPinned, fillsMl, overlaid);
    }

    DevicesState withView(View next) {
        return new DevicesState(sort, fittingOnly, cursor, next, columnScroll, firstPinned, fillsMl, overlaid);
    }

    DevicesState withColumnScroll(Scrolled next) {
        return new DevicesState(sort, fittingOnly, cursor, view, next, firstPinned, fillsMl, overlaid);
    }

    /** The first column shown of that many pinned devices; keys and picture both ask here. */
    int firstOf(int pinned) {
        return Math.max(0, Math.min(firstPinned, pinned - 1));
    }

    DevicesState withFirstPinned(int index) {
        return new DevicesState(sort, fittingOnly, cursor, view, columnScroll, Math.max(0, index), fillsMl, overlaid);
    }

    /** The fill a saline device was turned to, empty at nominal. */
    OptionalDouble fillMl(String deviceId) {
        Double ml = fillsMl.get(deviceId);
        return ml == null ? OptionalDouble.empty() : OptionalDouble.of(ml);
    }

    DevicesState withFill(String deviceId, double ml) {
        Map<String, Double> changed = new HashMap<>(fillsMl);
        changed.put(deviceId, ml);
        return new DevicesState(sort, fittingOnly, cursor, view, columnScroll, firstPinned, changed, overlaid);
    }

    DevicesState withOverlaid(boolean over) {
        return new DevicesState(sort, fittingOnly, cursor, view, columnScroll, firstPinned, fillsMl, over);
    }
}
