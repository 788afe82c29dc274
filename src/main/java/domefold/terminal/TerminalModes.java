package domefold.terminal;

import domefold.canvas.Glyphs;
import java.util.Locale;
import java.util.Map;

/**
 * What this terminal can show, found from the environment alone.
 *
 * @param colour how many colours
 * @param utf8 whether its characters are UTF-8 and its font has drawing characters
 * @param ground what it says of its ground
 * @param fullScreen whether it can be painted at all
 */
public record TerminalModes(ColourMode colour, boolean utf8, Ground ground, boolean fullScreen) {
    private static final int DARKEST_LIGHT_GROUND = 9;
    private static final int LIGHT_GREY_GROUND = 7;

    /**
     * Colours: {@code NO_COLOR} present and not empty comes first (no-color.org), then a dumb terminal or one without colours, then
     * {@code COLORTERM}, then the terminal's name. Characters: the first of {@code LC_ALL}, {@code LC_CTYPE}, {@code LANG}
     * that is not empty, as POSIX has it; the Linux console is ASCII because its fonts lack braille. What the user says
     * stands above both: {@code DOMEFOLD_GROUND=light} or {@code dark}, {@code DOMEFOLD_ASCII} not empty.
     */
    public static TerminalModes detect(Map<String, String> environment) {
        String term = value(environment, "TERM").toLowerCase(Locale.ROOT);
        boolean dumb = term.isEmpty() || term.equals("dumb");
        boolean plain = term.equals("linux") || !value(environment, "DOMEFOLD_ASCII").isEmpty();
        return new TerminalModes(colour(environment, term, dumb), utf8(environment) && !plain, ground(environment, term), !dumb);
    }

    public TerminalModes withColour(ColourMode chosen) {
        return new TerminalModes(chosen, utf8, ground, fullScreen);
    }

    public TerminalModes inAscii() {
        return new TerminalModes(colour, false, ground, fullScreen);
    }

    public Glyphs glyphs() {
        return utf8 ? Glyphs.UNICODE : Glyphs.ASCII;
    }

    private static ColourMode colour(Map<String, String> environment, String term, boolean dumb) {
        if (dumb || !value(environment, "NO_COLOR").isEmpty()) {
            return ColourMode.NONE;
        }
        if (inOneColour(term)) {
            return ColourMode.NONE;
        }
        String colours = value(environment, "COLORTERM").toLowerCase(Locale.ROOT);
        if (colours.equals("truecolor") || colours.equals("24bit")) {
            return ColourMode.RGB;
        }
        if (term.endsWith("-direct")) {
            return ColourMode.RGB;
        }
        return term.contains("256color") ? ColourMode.INDEXED_256 : ColourMode.ANSI_16;
    }

    /** The VT100 to VT420, and names that say so; what ignores colours must get the weights that tell roles apart without. */
    private static boolean inOneColour(String term) {
        boolean video = term.startsWith("vt") && term.length() >= 5 && term.charAt(2) >= '1' && term.charAt(2) <= '4'
                && Character.isDigit(term.charAt(3)) && Character.isDigit(term.charAt(4));
        return video || term.endsWith("-m") || term.endsWith("-mono");
    }

    private static boolean utf8(Map<String, String> environment) {
        for (String name : new String[] {"LC_ALL", "LC_CTYPE", "LANG"}) {
            String locale = value(environment, name).toLowerCase(Locale.ROOT);
            if (!locale.isEmpty()) {
                return locale.contains("utf-8") || locale.contains("utf8");
            }
        }
        return false;
    }

    private static Ground ground(Map<String, String> environment, String term) {
        String said = value(environment, "DOMEFOLD_GROUND").toLowerCase(Locale.ROOT);
        if (!said.isEmpty()) {
            return said.equals("light") ? Ground.LIGHT : Ground.DARK;
        }
        return term.equals("linux") ? Ground.DARK : ground(value(environment, "COLORFGBG"));
    }

    /** {@code COLORFGBG} is {@code foreground;ground} in the sixteen colours; some terminals set it, most do not. */
    private static Ground ground(String foregroundAndGround) {
        String ground = foregroundAndGround.substring(foregroundAndGround.lastIndexOf(';') + 1);
        if (!ground.matches("[0-9]{1,2}")) {
            return Ground.UNKNOWN;
        }
        int index = Integer.parseInt(ground);
        return index == LIGHT_GREY_GROUND || index >= DARKEST_LIGHT_GROUND ? Ground.LIGHT : Ground.DARK;
    }

    private static String value(Map<String, String> environment, String name) {
        String value = environment.get(name);
        return value == null ? "" : value.strip();
    }
}
