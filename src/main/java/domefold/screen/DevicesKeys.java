package domefold.screen;

import domefold.interview.Choices;
import domefold.plan.Candidate;
import java.util.ArrayList;
import java.util.List;

/** Keys of the devices room. */
final class DevicesKeys {
    private static final int PAGE_ROWS = 8;

    private DevicesKeys() {}

    /** The step, or null where the key means nothing here. */
    static Screen.Step onKey(ConsultScreen screen, Key key) {
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
            case LEFT:
                return Screen.Step.to(screen.withDevices(state.withFirstPinned(state.firstPinned() - 1)));
            case RIGHT:
                return Screen.Step.to(screen.withDevices(state.withFirstPinned(
                        Math.min(state.firstPinned() + 1, Math.max(0, screen.interview().dossier().choices().pinned().size() - 1)))));
            case F5:
                return Screen.Step.to(screen.withDevices(state.withView(state.view().next())));
            case F6:
                return Screen.Step.to(screen.withDevices(state.withSort(state.sort().next())));
            case F7:
                return Screen.Step.to(screen.withDevices(state.withFittingOnly(!state.fittingOnly())));
            case CHARACTER:
                return key.isText() && key.codePoint() == ' ' ? pin(screen, rows) : null;
            default:
                return null;
        }
    }

    private static Screen.Step scrolled(ConsultScreen screen, int by) {
        DevicesState state = screen.devices();
        return Screen.Step.to(screen.withDevices(state.withColumnScroll(state.columnScroll() + by)));
    }

    private static Screen.Step moved(ConsultScreen screen, List<Candidate> rows, int to) {
        int row = Math.max(0, Math.min(rows.size() - 1, to));
        return Screen.Step.to(screen.withDevices(screen.devices().withCursor(row)));
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
