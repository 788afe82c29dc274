package domefold.screen;

import domefold.canvas.Canvas;
import domefold.canvas.Role;
import domefold.canvas.TextWidth;
import domefold.outcome.Figures;
import domefold.plan.Candidate;
import domefold.plan.Plan;
import domefold.plan.Verdict;
import java.util.List;
import java.util.Optional;

/** Devices: the list, and the pinned ones side by side. */
final class DevicesView {
    private static final int LIST_WIDTH = 62;
    private static final int WIDE = 126;
    private static final int LABEL_WIDTH = 13;
    private static final int NARROWEST_COLUMN = 30;

    private DevicesView() {}

    static void draw(Canvas canvas, int row, int height, ConsultScreen screen) {
        Optional<Plan> plan = screen.interview().plan();
        if (plan.isEmpty()) {
            canvas.text(1, row, "No device can be held against anything yet: the age and both base widths come first.", Role.BODY);
            canvas.text(1, row + 2, "`go age` or `go base width`, then Enter.", Role.FAINT);
            RoomViews.entry(canvas, row + height - 1, screen);
            return;
        }
        List<Candidate> rows = DeviceRows.of(screen.interview(), screen.devices());
        List<Candidate> pinned = pinned(screen, plan.get());
        DevicesState.View view = pinned.isEmpty() ? DevicesState.View.LIST : screen.devices().view();
        int body = height - 1;
        if (view == DevicesState.View.LIST) {
            list(canvas, 1, row, canvas.columns() - 2, body, screen, rows, plan.get());
        } else if (view == DevicesState.View.COLUMNS) {
            columns(canvas, 1, row, canvas.columns() - 2, body, screen, pinned, plan.get());
        } else if (canvas.columns() >= WIDE) {
            list(canvas, 1, row, LIST_WIDTH, body, screen, rows, plan.get());
            columns(canvas, LIST_WIDTH + 3, row, canvas.columns() - LIST_WIDTH - 4, body, screen, pinned, plan.get());
        } else {
            int listRows = Math.max(5, body / 3);
            list(canvas, 1, row, canvas.columns() - 2, listRows, screen, rows, plan.get());
            columns(canvas, 1, row + listRows + 1, canvas.columns() - 2, body - listRows - 1, screen, pinned, plan.get());
        }
        RoomViews.entry(canvas, row + height - 1, screen);
    }

    static List<Candidate> pinned(ConsultScreen screen, Plan plan) {
        return screen.interview().dossier().choices().pinned().stream()
                .flatMap(id -> plan.candidates().stream().filter(c -> c.device().id().equals(id))).toList();
    }

    private static void list(Canvas canvas, int column, int row, int width, int height, ConsultScreen screen,
            List<Candidate> rows, Plan plan) {
        DevicesState state = screen.devices();
        long fits = rows.stream().filter(c -> DeviceRows.both(c) == Verdict.FITS).count();
        String heading = (state.fittingOnly() ? rows.size() + " of " + plan.candidates().size() + " devices, "
                : rows.size() + " devices, ") + fits + " fit both sides; " + state.sort().words();
        canvas.textWithin(column, row, width, heading, Role.FAINT);
        canvas.textWithin(column, row + 1, width, header(width), Role.LABEL);
        int room = height - 2;
        int cursor = Math.min(state.cursor(), Math.max(0, rows.size() - 1));
        int from = Math.max(0, Math.min(cursor - room / 2, rows.size() - room));
        if (rows.isEmpty()) {
            canvas.textWithin(column, row + 2, width,
                    "Nothing fits or nearly fits. F7 shows every device with what stands against it.", Role.CAUTION);
        }
        for (int i = 0; i < room && from + i < rows.size(); i++) {
            line(canvas, column, row + 2 + i, width, screen, rows.get(from + i), from + i == cursor);
        }
    }

    private static String header(int width) {
        return "  " + TextWidth.padRight("device", 15) + TextWidth.padRight("fill", 7) + TextWidth.padRight("profile", 14)
                + "   mL    W    P  " + TextWidth.padRight("LEFT", 8) + TextWidth.padRight("RIGHT", 8)
                + (width > 72 ? "opening" : "");
    }

    private static void line(Canvas canvas, int column, int row, int width, ConsultScreen screen, Candidate candidate,
            boolean focused) {
        int pin = screen.interview().dossier().choices().pinned().indexOf(candidate.device().id());
        Role role = focused ? Role.SELECTED : Role.BODY;
        canvas.fill(column, row, width, ' ', role);
        int at = canvas.text(column, row, focused ? String.valueOf(canvas.glyphs().pointer()) : " ", role);
        at = canvas.text(at, row, pin >= 0 ? String.valueOf(pin + 1) : " ", pin >= 0 && !focused ? Role.LABEL : role);
        at = canvas.text(at, row, TextWidth.padRight(TextWidth.cut(candidate.device().id(), 14, canvas.glyphs().ellipsis()), 15), role);
        at = canvas.text(at, row, TextWidth.padRight(candidate.device().fill().key(), 7), role);
        at = canvas.text(at, row, TextWidth.padRight(candidate.device().profile().key(), 14), role);
        at = canvas.text(at, row, TextWidth.padLeft(Figures.ml(candidate.device().nominalMl()), 5), role);
        at = canvas.text(at, row, TextWidth.padLeft(Figures.of(candidate.device().widthCm(), 1, 1), 5), role);
        at = canvas.text(at, row, TextWidth.padLeft(Figures.of(candidate.device().projectionCm(), 1, 1), 5) + "  ", role);
        at = canvas.text(at, row, TextWidth.padRight(candidate.left().verdict().key(), 8), focused ? role : roleOf(candidate.left().verdict()));
        at = canvas.text(at, row, TextWidth.padRight(candidate.right().verdict().key(), 8), focused ? role : roleOf(candidate.right().verdict()));
        if (width > 72) {
            canvas.text(at, row, candidate.incision().map(i -> Figures.of(i.lowCm(), 1, 1) + "–"
                    + Figures.of(i.highCm(), 1, 1)).orElse("?"), role);
        }
    }

    static Role roleOf(Verdict verdict) {
        return switch (verdict) {
            case FITS -> Role.FITS;
            case TIGHT -> Role.TIGHT;
            case OUTSIDE -> Role.OUTSIDE;
        };
    }

    private static void columns(Canvas canvas, int column, int row, int width, int height, ConsultScreen screen,
            List<Candidate> pinned, Plan plan) {
        int fit = Math.max(1, Math.min(pinned.size(), (width - LABEL_WIDTH) / NARROWEST_COLUMN));
        int first = Math.max(0, Math.min(screen.devices().firstPinned(), pinned.size() - fit));
        List<Candidate> shown = pinned.subList(first, Math.min(pinned.size(), first + fit));
        int columnWidth = Math.min(46, (width - LABEL_WIDTH) / Math.max(1, shown.size()));
        List<SideBySide.Row> rows = DeviceColumns.rows(screen, plan, shown, first, columnWidth - 2);
        int total = SideBySide.draw(canvas, column, row, width, height, LABEL_WIDTH, columnWidth, rows, screen.devices().columnScroll());
        if (total > height) {
            int from = Math.max(0, Math.min(screen.devices().columnScroll(), total - height));
            canvas.textRight(column + width, row + height - 1,
                    " rows " + (from + 1) + "–" + (from + height) + " of " + total + (pinned.size() > shown.size()
                            ? ", " + shown.size() + " of " + pinned.size() + " pinned " : " "), Role.FAINT);
        }
    }
}
