package domefold.terminal;

import com.googlecode.lanterna.TextColor;

/**
 * One colour in each of the three ways a terminal may show it. The sixteen are whatever the user has set them to.
 *
 * @param rgb red, green and blue as 0xRRGGBB
 * @param index place in the 256 colours
 * @param named one of the sixteen
 */
record Shade(int rgb, int index, TextColor.ANSI named) {
    TextColor in(ColourMode mode) {
        return switch (mode) {
            case NONE -> TextColor.ANSI.DEFAULT;
            case ANSI_16 -> named;
            case INDEXED_256 -> new TextColor.Indexed(index);
            case RGB -> new TextColor.RGB(rgb >> 16 & 0xff, rgb >> 8 & 0xff, rgb & 0xff);
        };
    }
}
