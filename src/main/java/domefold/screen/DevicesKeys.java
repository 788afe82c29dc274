package domefold.screen;

import domefold.device.Device;
import domefold.interview.Choices;
import domefold.plan.Candidate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Keys of the devices room. */
final class DevicesKeys {
    private static final int PAGE_ROWS = 8;

    private DevicesKeys() {}

    /** Keys of the list and the columns that an entry line has no use for. */
    static boolean worksWhileTyping(Key key) {
        return switch (key.kind()) {
            case UP, DOWN, PAGE_UP, PAGE_DOWN, F5, F6, F7, F8, F9, F10 -> true;
            default -> false;
        };
    }

    /** The step, or null where the key means nothing here; what was said before it is said no longer. */
    static Screen.Step onKey(ConsultScreen screen, Key key) {
        return step(screen.said().isEmpty() ? screen : screen.saying(List.of(), domefold.canvas.Role.BODY), key);
    }

    private static Screen.Step step(ConsultScreen screen, Key key) {
        DevicesState state = screen.devices();
        List<Candidate> rows = DeviceRows.of(screen.interview(), state);
        boolean columns = state.view() == DevicesState.View.COLUMNS;
        switch (key.kind()) {
            case UP:
                return columns ? scrolled(screen, -1) : moved(screen, rows, state.cursor() - 1);
            case DOWN:
                return columns ? scrolled(screen, 1) : moved(screen, rows, state.cursor() + 1);
            case HOME:
                return moved(screen, rows, 0);
            case END:
                return moved(screen, rows, rows.size() - 1);
            case PAGE_UP:
                return scrolled(screen, -PAGE_ROWS);
            case PAGE_DOWN:
                return scrolled(screen, PAGE_ROWS);
            case LEFT, RIGHT:
                int pinned = pinned(screen).size();
                return Screen.Step.to(screen.withDevices(state.withFirstPinned(
                        Math.min(pinned - 1, state.firstOf(pinned) + (key.is(Key.Kind.RIGHT) ? 1 : -1)))));
            case F5:
                return Screen.Step.to(screen.withDevices(state.withView(state.view().next())));
            case F6:
                return Screen.Step.to(screen.withDevices(state.withSort(state.sort().next())));
            case F7:
                return Screen.Step.to(screen.withDevices(state.withFittingOnly(!state.fittingOnly())));
            case F10:
                return Screen.Step.to(screen.withOverlay(Overlay.of(Overlay.Kind.PAIRS)));
            case F8:
                return Screen.Step.to(screen.withDevices(state.withOverlaid(!state.overlaid())));
            case F9:
                return Screen.Step.to(OwningScreen.over(screen, rows));
            case CHARACTER:
                return key.isText() ? character(screen, rows, key.codePoint()) : null;
            default:
                return null;
        }
    }

    private static Screen.Step scrolled(ConsultScreen screen, int by) {
        DevicesState state = screen.devices();
        return Screen.Step.to(screen.withDevices(state.withColumnScroll(state.columnScroll().by(by))));
    }

    private static List<Candidate> pinned(ConsultScreen screen) {
        return screen.interview().plan().map(plan -> DevicesView.pinned(screen, plan)).orElse(List.of());
    }

    private static Screen.Step moved(ConsultScreen screen, List<Candidate> rows, int to) {
        int row = Math.max(0, Math.min(rows.size() - 1, to));
        return Screen.Step.to(screen.withDevices(screen.devices().withCursor(row)));
    }

    private static Screen.Step character(ConsultScreen screen, List<Candidate> rows, int typed) {
        return switch (typed) {
            case ' ' -> pin(screen, rows);
            case '+' -> turn(screen, rows, 1);
            case '-' -> turn(screen, rows, -1);
            case '.' -> turn(screen, rows, 5);
            case ',' -> turn(screen, rows, -5);
            case '>' -> turn(screen, rows, 25);
            case '<' -> turn(screen, rows, -25);
            default -> null;
        };
    }

    /** Turns the fill of the saline device in focus: the one under the cursor, or the first column shown. */
    private static Screen.Step turn(ConsultScreen screen, List<Candidate> rows, double byMl) {
        DevicesState state = screen.devices();
        List<Candidate> pins = pinned(screen);
        Optional<Device> focus = state.view() == DevicesState.View.COLUMNS && !pins.isEmpty()
                ? Optional.of(pins.get(state.firstOf(pins.size())).device())
                : rows.isEmpty() ? Optional.empty() : Optional.of(rows.get(Math.min(state.cursor(), rows.size() - 1)).device());
        if (focus.isEmpty() || focus.get().labelFillMl().isEmpty()) {
            return Screen.Step.to(screen.saying(List.of("Only a saline device is filled here; this one comes filled."), domefold.canvas.Role.FAINT));
        }
        Device device = focus.get();
        double ml = Math.max(1, state.fillMl(device.id()).orElse(device.nominalMl()) + byMl);
        String pinned = pins.stream().anyMatch(one -> one.device().equals(device)) ? "" : " Space pins it, so that it shows.";
        return Screen.Step.to(screen.withDevices(state.withFill(device.id(), ml))
                .saying(List.of(device.id() + " at " + domefold.outcome.Numbers.ml(ml) + "." + pinned), domefold.canvas.Role.FAINT));
    }

    private static Screen.Step pin(ConsultScreen screen, List<Candidate> rows) {
        if (rows.isEmpty()) {
            return Screen.Step.to(screen);
        }
        String id = rows.get(Math.min(screen.devices().cursor(), rows.size() - 1)).device().id();
        List<String> pins = new ArrayList<>(screen.interview().dossier().choices().pinned());
        if (!pins.remove(id)) {
            if (pins.size() == Choices.MOST_PINNED) {
                return Screen.Step.to(screen.saying(List.of("Four devices stand side by side already; Space on one of them lets it go."),
                        domefold.canvas.Role.CAUTION));
            }
            pins.add(id);
        }
        return screen.answered("pins", pins.isEmpty() ? "-" : String.join(" ", pins));
    }
}
