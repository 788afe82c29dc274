package domefold.screen;

import domefold.canvas.TextWidth;

/** A device's code where there is little room: cut in the middle, since codes differ at their ends, where the size stands. */
final class DeviceCode {
    private static final char CUT = '…';

    private DeviceCode() {}

    /** The code in at most {@code width} cells. */
    static String within(String code, int width) {
        int over = TextWidth.of(code) - width;
        if (over <= 0) {
            return code;
        }
        int size = code.length() - Math.max(0, code.lastIndexOf('-'));
        int end = size * 2 <= width ? Math.max(size, width * 2 / 5) : width / 2;
        int begin = width - end - 1;
        return begin < 1 ? TextWidth.cut(code, width, CUT) : code.substring(0, begin) + CUT + code.substring(code.length() - end);
    }
}
