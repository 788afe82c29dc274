package domefold.screen;

import domefold.canvas.Canvas;
import domefold.canvas.Columns;
import domefold.canvas.Role;
import domefold.canvas.TextWidth;
import domefold.choose.ByWishes;
import domefold.choose.Criterion;
import domefold.choose.Dominance;
import domefold.device.Device;
import domefold.outcome.Figures;
import domefold.outcome.Numbers;
import domefold.plan.Candidate;
import domefold.plan.Plan;
import domefold.plan.Verdict;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** Devices: the list, and the pinned ones side by side. */
final class DevicesView {
    private static final int LIST_WIDTH = 67;
    private static final int WIDE = 126;
    private static final int LABEL_WIDTH = 15;
    private static final int COLUMN_GAP = 2;
    private static final int ROWS_FOR_PICTURES_FIRST = 24;
    private static final int NARROWEST_COLUMN = 30;
    private static final int WIDEST_COLUMN = 46;
    private static final int WIDTH_WITH_UNITS = 78;
    private static final int WIDTH_WITH_SURFACE = 66;
    private static final int WIDTH_WITH_OPENING = 75;
    private static final int WIDTH_WITH_LINE = 100;

    private DevicesView() {}

    static void draw(Canvas canvas, int row, int height, ConsultScreen screen) {
        Optional<Plan> plan = screen.interview().plan();
        if (plan.isEmpty()) {
            canvas.text(1, row, "No device can be judged yet: the age and both base widths come first.", Role.BODY);
            canvas.text(1, row + 2, "Type `go age` or `go base width`, then Enter.", Role.FAINT);
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
            columns(canvas, 1, row, canvas.columns() - 2, body, screen, pinned);
        } else if (canvas.columns() >= WIDE) {
            list(canvas, 1, row, LIST_WIDTH, body, screen, rows, plan.get());
            columns(canvas, LIST_WIDTH + 3, row, canvas.columns() - LIST_WIDTH - 4, body, screen, pinned);
        } else {
            int listRows = Math.max(5, body / 3);
            list(canvas, 1, row, canvas.columns() - 2, listRows, screen, rows, plan.get());
            columns(canvas, 1, row + listRows + 1, canvas.columns() - 2, body - listRows - 1, screen, pinned);
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
        String heading = !rows.isEmpty() && screen.interview().byWishes().dominated()
                .containsKey(rows.get(Math.min(state.cursor(), rows.size() - 1)).device().id())
                ? dominated(screen, rows.get(Math.min(state.cursor(), rows.size() - 1))) : (state.fittingOnly() ? rows.size() + " of " + devices(plan.candidates().size()) + ", "
                : devices(rows.size()) + ", ") + fits + (fits == 1 ? " fits" : " fit") + " both sides; " + state.sort().words();
        canvas.textWithin(column, row, width, canvas.width(heading) <= width ? heading : heading.replace(" devices, ", ", "), Role.FAINT);
        canvas.textWithin(column, row + 1, width, header(width).stripTrailing(), Role.LABEL);
        ByWishes chosen = screen.interview().byWishes();
        int room = height - 2;
        int cursor = Math.min(state.cursor(), Math.max(0, rows.size() - 1));
        int from = Math.max(0, Math.min(cursor - room / 2, rows.size() - room));
        if (rows.isEmpty()) {
            String blocked = plan.blocked().isEmpty() ? "" : "Blocked: " + plan.blocked().get(0).text().replaceFirst("\\.$", "") + ". ";
            int at = row + 2;
            for (String text : canvas.wrap(blocked
                    + "Nothing fits or nearly fits. F7 shows every device with what stands against it.", width)) {
                canvas.text(column, at++, text, Role.CAUTION);
            }
        }
        for (int i = 0; i < room && from + i < rows.size(); i++) {
            line(canvas, column, row + 2 + i, width, screen, rows.get(from + i), from + i == cursor,
                    chosen.dominated().containsKey(rows.get(from + i).device().id()));
        }
    }

    private static String devices(int count) {
        return Numbers.count(count, "device", "devices");
    }

    /** By which device the one in focus is dominated, and in what. */
    private static String dominated(ConsultScreen screen, Candidate candidate) {
        Dominance.Dominated by = screen.interview().byWishes().dominated().get(candidate.device().id());
        return "dominated by " + by.by() + " in " + by.in().stream().map(Criterion::words).collect(Collectors.joining(", "));
    }

    private static String header(int width) {
        return "   " + TextWidth.padRight("fill", 7) + (width >= WIDTH_WITH_SURFACE ? TextWidth.padRight("surface", 9) : "") + TextWidth.padRight("profile", 14)
                + numbers(width, "mL", units(width) ? "wide cm" : "wide", units(width) ? "proj cm" : "proj")
                + TextWidth.padRight("LEFT", 8) + TextWidth.padRight("RIGHT", 8)
                + (width >= WIDTH_WITH_OPENING ? TextWidth.padRight(units(width) ? "open cm" : "opening", 9) : "")
                + (width >= WIDTH_WITH_LINE ? "code and line" : "");
    }

    /** True where there is room for the unit of each column. */
    private static boolean units(int width) {
        return width >= WIDTH_WITH_UNITS;
    }

    /** Volume, width and projection, or what stands over them. */
    private static String numbers(int width, String volume, String wide, String projection) {
        int length = units(width) ? 8 : 5;
        return TextWidth.padLeft(volume, units(width) ? 4 : 5) + TextWidth.padLeft(wide, length) + TextWidth.padLeft(projection, length) + "  ";
    }

    private static void line(Canvas canvas, int column, int row, int width, ConsultScreen screen, Candidate candidate,
            boolean focused, boolean dominated) {
        int pin = screen.interview().dossier().choices().pinned().indexOf(candidate.device().id());
        Device device = candidate.device();
        Role role = focused ? Role.SELECTED : dominated ? Role.FAINT : Role.BODY;
        Canvas line = new Canvas(width, 1, canvas.glyphs());
        line.fill(0, 0, width, ' ', role);
        line.text(0, 0, focused ? String.valueOf(canvas.glyphs().pointer()) : " ", role);
        line.text(1, 0, pin >= 0 ? String.valueOf(pin + 1) : " ", pin >= 0 && !focused ? Role.LABEL : role);
        int at = line.text(3, 0, TextWidth.padRight(device.fill().key(), 7)
                + (width >= WIDTH_WITH_SURFACE ? TextWidth.padRight(device.surface().key(), 9) : "")
                + TextWidth.padRight(device.profile().key(), 14) + numbers(width, Figures.ml(device.nominalMl()),
                        Figures.of(device.widthCm(), 1, 1), Figures.of(device.projectionCm(), 1, 1)), role);
        at = line.text(at, 0, TextWidth.padRight(candidate.left().verdict().key(), 8), focused ? role : roleOf(candidate.left().verdict()));
        at = line.text(at, 0, TextWidth.padRight(candidate.right().verdict().key(), 8), focused ? role : roleOf(candidate.right().verdict()));
        if (width >= WIDTH_WITH_OPENING) {
            at = line.text(at, 0, TextWidth.padRight(candidate.incision().map(i -> Figures.of(i.lowCm(), 1, 1) + "–"
                    + Figures.of(i.highCm(), 1, 1)).orElse("?"), 9), role);
        }
        if (width >= WIDTH_WITH_LINE) {
            line.textWithin(at, 0, width - at, device.id() + "  " + device.line(), focused ? role : Role.FAINT);
        }
        canvas.draw(column, row, line);
    }

    static Role roleOf(Verdict verdict) {
        return switch (verdict) {
            case FITS -> Role.FITS;
            case TIGHT -> Role.TIGHT;
            case OUTSIDE -> Role.OUTSIDE;
        };
    }

    private static void columns(Canvas canvas, int column, int row, int width, int height, ConsultScreen screen,
            List<Candidate> pinned) {
        int fit = Math.max(1, Math.min(pinned.size(), (width - LABEL_WIDTH) / NARROWEST_COLUMN));
        int first = screen.devices().firstOf(pinned.size());
        List<Candidate> shown = pinned.subList(first, Math.min(pinned.size(), first + fit));
        int each = Math.min(WIDEST_COLUMN, (width - LABEL_WIDTH) / shown.size() - COLUMN_GAP);
        Columns columns = new DeviceColumns(screen, shown, first, each).of(height >= ROWS_FOR_PICTURES_FIRST);
        int used = Math.min(width, LABEL_WIDTH + (each + COLUMN_GAP) * shown.size());
        int offset = screen.devices().columnScroll().row(columns.lastOffset(height));
        columns.draw(canvas, column, row, used, height, offset);
        String hidden = pinned.size() > shown.size() ? shown.size() + " of " + pinned.size() + " pinned, Left Right; " : "";
        String rows = columns.height() > height - 1
                ? "rows " + (offset + 1) + "–" + (offset + height - 1) + " of " + columns.height() + ", PgDn" : "";
        canvas.textRight(canvas.columns() - 1, Chrome.entryRow(canvas), hidden + rows, Role.FAINT);
    }
}
