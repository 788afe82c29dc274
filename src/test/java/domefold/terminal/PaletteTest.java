package domefold.terminal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.googlecode.lanterna.TextColor;
import domefold.canvas.Role;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;

class PaletteTest {
    /** Smallest contrast for text in WCAG 2.2, criterion 1.4.3. */
    private static final double LEAST_CONTRAST = 4.5;
    /** On a ground that is not known: no hue has 4.5 on white and on a dark grey, 3 is what the same criterion asks of large text. */
    private static final double LEAST_ON_EITHER = 3.6;
    private static final double WHITE = 1;
    private static final double BLACK = 0;
    private static final double DARK_GREY = luminance(new TextColor.RGB(0x1e, 0x1e, 0x1e));

    private static final Map<TextColor.ANSI, TextColor> COMMON = Map.of(
            TextColor.ANSI.RED, new TextColor.RGB(205, 0, 0), TextColor.ANSI.GREEN, new TextColor.RGB(0, 205, 0),
            TextColor.ANSI.YELLOW, new TextColor.RGB(205, 205, 0), TextColor.ANSI.BLUE, new TextColor.RGB(0, 0, 238),
            TextColor.ANSI.MAGENTA, new TextColor.RGB(205, 0, 205), TextColor.ANSI.CYAN, new TextColor.RGB(0, 205, 205),
            TextColor.ANSI.RED_BRIGHT, new TextColor.RGB(255, 0, 0), TextColor.ANSI.YELLOW_BRIGHT, new TextColor.RGB(255, 255, 0),
            TextColor.ANSI.BLUE_BRIGHT, new TextColor.RGB(92, 92, 255));

    private static final Set<Role> WITHOUT_MEANING = EnumSet.of(Role.BODY, Role.FAINT, Role.LABEL, Role.DRAWING);

    @Test
    void everyHueStandsOutFromItsGround() {
        for (ColourMode mode : List.of(ColourMode.RGB, ColourMode.INDEXED_256)) {
            standsOut(mode, Ground.DARK, LEAST_CONTRAST, BLACK);
            standsOut(mode, Ground.LIGHT, LEAST_CONTRAST, WHITE);
            standsOut(mode, Ground.UNKNOWN, LEAST_ON_EITHER, WHITE, BLACK, DARK_GREY);
        }
    }

    /** The sixteen are the user's own; as a common terminal sets them, none of ours sinks into its ground. */
    @Test
    void theSixteenColoursStandOutAsACommonTerminalSetsThem() {
        standsOut(ColourMode.ANSI_16, Ground.DARK, LEAST_CONTRAST, BLACK);
        standsOut(ColourMode.ANSI_16, Ground.LIGHT, LEAST_CONTRAST, WHITE);
        standsOut(ColourMode.ANSI_16, Ground.UNKNOWN, LEAST_ON_EITHER, WHITE, BLACK);
    }

    private static void standsOut(ColourMode mode, Ground ground, double least, double... luminances) {
        Palette palette = new Palette(mode, ground);
        for (Role role : Role.values()) {
            TextColor ink = palette.of(role).ink();
            if (ink != TextColor.ANSI.DEFAULT) {
                for (double under : luminances) {
                    double contrast = contrast(luminance(ink instanceof TextColor.ANSI ? COMMON.get(ink) : ink), under);
                    assertTrue(contrast >= least, role + " " + mode + " " + ground + " on luminance " + under + ": " + contrast);
                }
            }
        }
    }

    @Test
    void withoutColoursEveryRoleWithAMeaningDiffersFromPlainText() {
        Palette palette = new Palette(ColourMode.NONE, Ground.UNKNOWN);
        for (Role role : Role.values()) {
            assertEquals(TextColor.ANSI.DEFAULT, palette.of(role).ink());
            assertEquals(TextColor.ANSI.DEFAULT, palette.of(role).ground());
            if (!WITHOUT_MEANING.contains(role)) {
                assertNotEquals(palette.of(Role.BODY).weight(), palette.of(role).weight(), role.name());
            }
        }
    }

    @Test
    void rolesThatStandInForEachOtherNeverLookAlike() {
        List<Set<Role>> rivals = List.of(EnumSet.of(Role.FITS, Role.TIGHT, Role.OUTSIDE, Role.SELECTED),
                EnumSet.of(Role.CAUTION, Role.REFUSED, Role.BODY), EnumSet.of(Role.DRAWING, Role.DRAWING_OTHER),
                EnumSet.of(Role.QUESTION, Role.ANSWER, Role.BODY), EnumSet.of(Role.TITLE, Role.QUESTION),
                EnumSet.of(Role.BANNER, Role.SELECTED));
        for (ColourMode mode : ColourMode.values()) {
            for (Ground ground : Ground.values()) {
                Palette palette = new Palette(mode, ground);
                for (Set<Role> group : rivals) {
                    assertEquals(group.size(), group.stream().map(palette::of).distinct().count(), mode + " " + group);
                }
            }
        }
    }

    /** Relative luminance as WCAG 2.2 defines it, from sRGB. */
    private static double luminance(TextColor colour) {
        return 0.2126 * linear(colour.getRed()) + 0.7152 * linear(colour.getGreen()) + 0.0722 * linear(colour.getBlue());
    }

    private static double linear(int eightBits) {
        double share = eightBits / 255.0;
        return share <= 0.04045 ? share / 12.92 : Math.pow((share + 0.055) / 1.055, 2.4);
    }

    private static double contrast(double one, double other) {
        return (Math.max(one, other) + 0.05) / (Math.min(one, other) + 0.05);
    }
}
