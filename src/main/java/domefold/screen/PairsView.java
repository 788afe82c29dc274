package domefold.screen;

import domefold.canvas.Canvas;
import domefold.canvas.PointCm;
import domefold.canvas.Role;
import domefold.canvas.Silhouette;
import domefold.canvas.TextWidth;
import domefold.device.Device;
import domefold.device.Fill;
import domefold.interview.Interview;
import domefold.interview.Room;
import domefold.outcome.Figures;
import domefold.outcome.Numbers;
import domefold.patient.Side;
import domefold.plan.DevicePair;
import domefold.plan.Plan;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** Pairs of devices for two sides that differ: the list, and the pair in focus with both side views and both rulers. */
final class PairsView {
    private static final int PICTURE_ROWS = 8;
    private static final int PAGE = 8;
    private static final int WIDE = 79;

    private PairsView() {}

    static ConsultScreen onKey(ConsultScreen screen, Key key) {
        return switch (key.kind()) {
            case ESCAPE, F1, F4, F10 -> screen.withOverlay(Overlay.NONE);
            default -> key.isText() && key.codePoint() == 'q' ? screen.withOverlay(Overlay.NONE)
                    : screen.overlay().scroll().onKey(key, PAGE).map(to -> screen.withOverlay(new Overlay(Overlay.Kind.PAIRS, to)))
                            .orElse(screen);
        };
    }

    /** The pair in focus becomes what is settled, each answer journalled like any other. */
    static Screen.Step settled(ConsultScreen screen) {
        List<DevicePair> pairs = pairs(screen);
        if (pairs.isEmpty()) {
            return Screen.Step.to(screen.withOverlay(Overlay.NONE));
        }
        DevicePair pair = pairs.get(screen.overlay().scroll().row(pairs.size() - 1));
        Interview interview = screen.interview().answer("device", pair.leftId() + " " + pair.rightId());
        List<Effect> lines = new ArrayList<>(List.of(line(interview, "device", pair.leftId() + " " + pair.rightId())));
        boolean saline = interview.guide().catalogue().find(pair.leftId()).map(d -> d.fill() == Fill.SALINE).orElse(false);
        if (saline) {
            String fills = Figures.ml(pair.leftFillMl()) + " " + Figures.ml(pair.rightFillMl());
            interview = interview.answer("fill", fills);
            lines.add(line(interview, "fill", fills));
        }
        ConsultScreen next = screen.with(interview.goTo(Room.SETTLE), Room.SETTLE).withOverlay(Overlay.NONE);
        return new Screen.Step(next, new Effect.All(lines));
    }

    private static Effect line(Interview interview, String questionId, String typed) {
        return new Effect.Journal(interview.dossier().patientCase().code(), Effect.Journal.ANSWER, questionId, typed);
    }

    static List<Screen.Hint> hints(ConsultScreen screen) {
        Screen.Hint closes = new Screen.Hint("Esc", "closes");
        return pairs(screen).isEmpty() ? List.of(closes)
                : List.of(new Screen.Hint("Enter", "settles this pair"), new Screen.Hint("Up Down", "next pair"), closes);
    }

    static List<DevicePair> pairs(ConsultScreen screen) {
        return screen.interview().plan().map(Plan::pairs).orElse(List.of());
    }

    static void draw(Canvas canvas, int row, int height, ConsultScreen screen) {
        List<DevicePair> pairs = pairs(screen);
        canvas.text(1, row, "Pairs of devices for two sides", Role.TITLE);
        if (pairs.isEmpty()) {
            String why = screen.interview().plan().isEmpty() ? "Nothing is computed yet: the age and both base widths come first."
                    : "No pair: no device of one fill and surface is inside the limits of both sides, or a volume band is missing.";
            int at = row + 2;
            for (String text : canvas.wrap(why, canvas.columns() - 2)) {
                canvas.text(1, at++, text, Role.BODY);
            }
            return;
        }
        int at = screen.overlay().scroll().row(pairs.size() - 1);
        int below = PICTURE_ROWS + 6;
        int listRows = Math.max(2, height - below - 2);
        canvas.textWithin(3, row + 1, canvas.columns() - 4, header(canvas.columns() >= WIDE), Role.LABEL);
        int from = Math.max(0, Math.min(at - listRows / 2, pairs.size() - listRows));
        for (int i = 0; i < listRows && from + i < pairs.size(); i++) {
            line(canvas, row + 2 + i, screen, pairs.get(from + i), from + i == at);
        }
        focus(canvas, row + 2 + Math.min(listRows, pairs.size()) + 1, row + height, screen, pairs.get(at));
    }

    private static String header(boolean wide) {
        return TextWidth.padRight("LEFT", 28) + TextWidth.padRight("RIGHT", wide ? 22 : 21) + (wide ? "remains  forward  verdict" : "verdict");
    }

    private static void line(Canvas canvas, int row, ConsultScreen screen, DevicePair pair, boolean focused) {
        Role role = focused ? Role.SELECTED : Role.BODY;
        boolean wide = canvas.columns() >= WIDE;
        Canvas line = new Canvas(canvas.columns() - 2, 1, canvas.glyphs());
        line.fill(0, 0, line.columns(), ' ', role);
        line.text(0, 0, focused ? String.valueOf(canvas.glyphs().pointer()) : " ", role);
        line.textWithin(2, 0, 27, words(screen, pair.leftId(), pair.leftFillMl()), role);
        line.textWithin(30, 0, wide ? 21 : 20, alike(screen, pair.rightId(), pair.rightFillMl()), role);
        if (wide) {
            line.text(52, 0, pair.volumeGapMl().isPresent() ? Numbers.ml(Math.abs(pair.volumeGapMl().getAsDouble())) : "unknown", role);
            line.text(61, 0, Numbers.marginCm(pair.projectionGapCm()), role);
        }
        line.text(wide ? 70 : 51, 0, pair.verdict().key(), focused ? role : DevicesView.roleOf(pair.verdict()));
        canvas.draw(1, row, line);
    }

    private static String words(ConsultScreen screen, String id, double fillMl) {
        return screen.interview().guide().catalogue().find(id)
                .map(d -> d.fill().key() + " " + d.profile().key() + " " + Figures.ml(fillMl) + " mL").orElse(id);
    }

    /** The right device beside a left of the same fill and surface. */
    private static String alike(ConsultScreen screen, String id, double fillMl) {
        return screen.interview().guide().catalogue().find(id)
                .map(d -> d.profile().key() + " " + Figures.ml(fillMl) + " mL").orElse(id);
    }

    /** Both side views to one scale and both width rulers; her left stands first, in words, as in every list. */
    private static void focus(Canvas canvas, int row, int end, ConsultScreen screen, DevicePair pair) {
        Optional<Device> left = screen.interview().guide().catalogue().find(pair.leftId());
        Optional<Device> right = screen.interview().guide().catalogue().find(pair.rightId());
        if (left.isEmpty() || right.isEmpty()) {
            return;
        }
        List<PointCm> leftOutline = Turned.of(left.get(), OptionalDouble.of(pair.leftFillMl()), screen.interview()).outline();
        List<PointCm> rightOutline = Turned.of(right.get(), OptionalDouble.of(pair.rightFillMl()), screen.interview()).outline();
        int half = (canvas.columns() - 3) / 2;
        List<String> words = canvas.wrap(pair.text(), canvas.columns() - 2);
        int pictureRows = Math.max(0, Math.min(PICTURE_ROWS, end - row - 2 - words.size()));
        Silhouette scale = Silhouette.fitting(Math.min(24, half), pictureRows, canvas.glyphs(), List.of(leftOutline, rightOutline));
        List<String> names = names(canvas, half, pair);
        canvas.text(1, row, names.get(0), Role.LABEL);
        canvas.text(2 + half, row, names.get(1), Role.LABEL);
        side(canvas, 1, row, half, pictureRows, screen, Side.LEFT, left.get(), leftOutline, scale);
        side(canvas, 2 + half, row, half, pictureRows, screen, Side.RIGHT, right.get(), rightOutline, scale);
        int at = row + pictureRows + 2;
        for (String text : words) {
            if (at < end) {
                canvas.text(1, at++, text, Role.BODY);
            }
        }
    }

    /** Both names, the fills behind them where there is room on both sides; a code that is cut is cut alike. */
    private static List<String> names(Canvas canvas, int width, DevicePair pair) {
        List<String> filled = List.of(Side.LEFT + "  " + pair.leftId() + " at " + Numbers.ml(pair.leftFillMl()),
                Side.RIGHT + "  " + pair.rightId() + " at " + Numbers.ml(pair.rightFillMl()));
        if (filled.stream().allMatch(name -> canvas.width(name) <= width)) {
            return filled;
        }
        int code = width - Side.RIGHT.name().length() - 2;
        return List.of(Side.LEFT + "  " + DeviceCode.within(pair.leftId(), code), Side.RIGHT + "  " + DeviceCode.within(pair.rightId(), code));
    }

    private static void side(Canvas canvas, int column, int row, int width, int rows, ConsultScreen screen, Side side,
            Device device, List<PointCm> outline, Silhouette scale) {
        scale.draw(canvas, column, row + 1, Math.min(24, width), rows, outline, List.of(), true);
        Canvas ruler = new Canvas(width - 1, 1, canvas.glyphs());
        AllowsView.widthRuler(ruler, 0, 0, width - 1, screen, screen.interview().plan().orElseThrow(), side);
        SideRuler.WIDTH_CM.mark(ruler, 7, 0, width - 8, OptionalDouble.of(device.widthCm()), canvas.glyphs().marker(), Role.QUESTION);
        ruler.text(0, 0, "width", Role.FAINT);
        canvas.draw(column, row + 1 + rows, ruler);
    }
}
