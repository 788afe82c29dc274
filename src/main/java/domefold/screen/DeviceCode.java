package domefold.screen;

import domefold.canvas.TextWidth;

/** A device's code where there is little room: cut before its end, since codes differ there, in profile and size. */
final class DeviceCode {
    private static final char CUT = '…';
    private static final int LEAST_BEGINNING = 3;

    private DeviceCode() {}

    /** The code in at most {@code width} cells: as many of its last parts as fit whole, and its beginning. */
    static String within(String code, int width) {
        if (TextWidth.of(code) <= width) {
            return code;
        }
        int longest = width - 1 - LEAST_BEGINNING;
        int part = code.indexOf('-');
        while (part >= 0 && code.length() - part - 1 > longest) {
            part = code.indexOf('-', part + 1);
        }
        int end = part >= 0 && part < code.length() - 1 ? code.length() - part - 1 : Math.max(0, width / 2);
        int begin = width - 1 - end;
        return begin < 1 ? TextWidth.cut(code, width, CUT) : code.substring(0, begin) + CUT + code.substring(code.length() - end);
    }
}
