package domefold.terminal;

import com.googlecode.lanterna.SGR;
import com.googlecode.lanterna.TextColor;
import domefold.canvas.Role;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.Map;

/**
 * Colours and weight for each role. Ordinary text keeps the terminal's own colours, so that both grounds work; the hues
 * are those of Okabe and Ito, told apart by most colour-blind people, darkened for a light ground. Where the ground is not known they
 * lie half-way, a little fainter than either and to be read on both.
 *
 * <p>Colour never carries a meaning alone: without colours bold, underline and reverse tell roles apart, and words stand
 * beside them. {@link Role#FAINT}, {@link Role#LABEL} and {@link Role#DRAWING} carry none and look like ordinary text.
 */
public final class Palette {
    private static final TextColor OWN = TextColor.ANSI.DEFAULT;
    private final Map<Role, Style> styles = new EnumMap<>(Role.class);

    /** How one role looks. */
    record Style(TextColor ink, TextColor ground, EnumSet<SGR> weight) {}

    /** The hues of one ground. */
    record Hues(Shade blue, Shade orange, Shade green, Shade yellow, Shade red, Shade grey) {
        static final Hues ON_DARK = new Hues(new Shade(0x56B4E9, 74, TextColor.ANSI.CYAN),
                new Shade(0xE69F00, 178, TextColor.ANSI.YELLOW), new Shade(0x00B386, 36, TextColor.ANSI.GREEN),
                new Shade(0xF0E442, 221, TextColor.ANSI.YELLOW_BRIGHT),
                new Shade(0xF0733A, 209, TextColor.ANSI.RED_BRIGHT), new Shade(0x8A8A8A, 245, TextColor.ANSI.DEFAULT));
        static final Hues ON_LIGHT = new Hues(new Shade(0x0072B2, 25, TextColor.ANSI.BLUE),
                new Shade(0x8F5A00, 94, TextColor.ANSI.MAGENTA), new Shade(0x00664D, 23, TextColor.ANSI.BLUE),
                new Shade(0x6B5900, 58, TextColor.ANSI.MAGENTA), new Shade(0xA83C00, 124, TextColor.ANSI.RED),
                new Shade(0x626262, 241, TextColor.ANSI.DEFAULT));
        /** Of one luminance, 0.21, which is as far from white as from a dark grey. */
        static final Hues ON_EITHER = new Hues(new Shade(0x1985C1, 31, TextColor.ANSI.BLUE_BRIGHT),
                new Shade(0xA77400, 166, TextColor.ANSI.MAGENTA), new Shade(0x008F6B, 29, TextColor.ANSI.BLUE_BRIGHT),
                new Shade(0x89800B, 100, TextColor.ANSI.MAGENTA), new Shade(0xDA5011, 196, TextColor.ANSI.RED_BRIGHT),
                new Shade(0x7E7E7E, 244, TextColor.ANSI.DEFAULT));

        static Hues on(Ground ground) {
            return switch (ground) {
                case DARK -> ON_DARK;
                case LIGHT -> ON_LIGHT;
                case UNKNOWN -> ON_EITHER;
            };
        }
    }

    Palette(ColourMode mode, Ground ground) {
        Hues hues = Hues.on(ground);
        for (Role role : Role.values()) {
            Shade shade = shade(role, hues);
            TextColor ink = shade == null ? OWN : shade.in(mode);
            styles.put(role, new Style(ink, OWN, mode == ColourMode.NONE ? plainWeight(role) : weight(role)));
        }
    }

    Style of(Role role) {
        return styles.get(role);
    }

    /** The hue of a role, null for the terminal's own. */
    private static Shade shade(Role role, Hues hues) {
        return switch (role) {
            case BODY, LABEL, QUESTION, SELECTED -> null;
            case FAINT -> hues.grey();
            case ANSWER, TITLE, DRAWING -> hues.blue();
            case DRAWING_OTHER, BANNER -> hues.orange();
            case FITS -> hues.green();
            case TIGHT, CAUTION -> hues.yellow();
            case OUTSIDE, REFUSED -> hues.red();
        };
    }

    private static EnumSet<SGR> weight(Role role) {
        return switch (role) {
            case QUESTION, TITLE, REFUSED, OUTSIDE -> EnumSet.of(SGR.BOLD);
            case SELECTED, BANNER -> EnumSet.of(SGR.REVERSE);
            default -> EnumSet.noneOf(SGR.class);
        };
    }

    private static EnumSet<SGR> plainWeight(Role role) {
        return switch (role) {
            case BODY, FAINT, LABEL, DRAWING -> EnumSet.noneOf(SGR.class);
            case QUESTION, FITS, DRAWING_OTHER -> EnumSet.of(SGR.BOLD);
            case ANSWER, TIGHT, CAUTION -> EnumSet.of(SGR.UNDERLINE);
            case TITLE, OUTSIDE, REFUSED -> EnumSet.of(SGR.BOLD, SGR.UNDERLINE);
            case SELECTED -> EnumSet.of(SGR.REVERSE);
            case BANNER -> EnumSet.of(SGR.REVERSE, SGR.BOLD);
        };
    }
}
