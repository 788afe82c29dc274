package domefold.screen.records;

import domefold.canvas.Canvas;
import domefold.canvas.Role;
import domefold.outcome.Numbers;
import domefold.patient.Side;
import domefold.record.CaseCode;
import domefold.record.RecordStatus;
import domefold.records.RecordHeader;
import domefold.sheet.DayText;
import java.util.List;
import java.util.Optional;

/** Draws the list of records and the text of the one in focus. */
final class RecordsView {
    /** Width of a summary as text. */
    private static final int PAPER_WIDTH = 80;
    private static final int LEAST_LIST_WIDTH = 70;
    private static final int TOP = 3;
    private static final int CASE = 15;
    private static final int DAY = 11;
    private static final int STANDS = 17;

    private static final int MOST_COMPARED = 50;
    private static final int MOST_NAMED = 2;

    private RecordsView() {}

    static void draw(Canvas canvas, RecordsScreen screen) {
        canvas.text(1, 0, "Records", Role.TITLE);
        canvas.textRight(canvas.columns() - 1, 0, screen.filter().shown().size() + " of "
                + Numbers.count(screen.list().all().size(), "record", "records"), Role.FAINT);
        int height = canvas.rows() - TOP - 2;
        if (screen.paper().whole()) {
            if (!screen.paper().ofKeys()) {
                facts(canvas, 1, screen);
            }
            canvas.fill(0, 2, canvas.columns(), canvas.glyphs().horizontal(), Role.FAINT);
            paper(canvas, 0, TOP, canvas.columns(), height, screen.paper());
        } else {
            question(canvas, screen);
            canvas.fill(0, 2, canvas.columns(), canvas.glyphs().horizontal(), Role.FAINT);
            both(canvas, height, screen);
        }
        foot(canvas, screen);
    }

    private static void question(Canvas canvas, RecordsScreen screen) {
        int at = canvas.text(1, 1, "find ", Role.LABEL);
        canvas.text(at, 1, screen.entry().text(), Role.ANSWER);
        if (screen.entry().text().isEmpty()) {
            canvas.textWithin(at + 2, 1, canvas.columns() - at - 3,
                    "words, 2026-03, 2026-01..2026-03, case: device: fill: status:", Role.FAINT);
        }
        if (screen.ask().isEmpty()) {
            canvas.cursor(at + canvas.width(screen.entry().text().substring(0, screen.entry().cursor())), 1);
        }
    }

    private static void both(Canvas canvas, int height, RecordsScreen screen) {
        int beside = canvas.columns() - PAPER_WIDTH - 3;
        if (beside >= LEAST_LIST_WIDTH) {
            rows(canvas, 1, TOP, beside - 1, height, screen);
            for (int row = TOP; row < TOP + height; row++) {
                canvas.put(beside + 1, row, canvas.glyphs().vertical(), Role.FAINT);
            }
            beside(canvas, beside + 3, TOP, PAPER_WIDTH, height, screen);
            return;
        }
        int listRows = Math.max(5, height * 2 / 5);
        rows(canvas, 1, TOP, canvas.columns() - 2, listRows, screen);
        canvas.fill(0, TOP + listRows, canvas.columns(), canvas.glyphs().horizontal(), Role.FAINT);
        beside(canvas, 0, TOP + listRows + 1, canvas.columns(), height - listRows - 1, screen);
    }

    private static void rows(Canvas canvas, int column, int row, int width, int height, RecordsScreen screen) {
        List<RecordHeader> shown = screen.filter().shown();
        if (shown.isEmpty()) {
            String nothing = screen.list().all().isEmpty() ? "There are no records yet; a consult that is saved stands here."
                    : screen.list().nothingFound(screen.entry().text());
            int at = row;
            for (String line : canvas.wrap(nothing, width)) {
                canvas.text(column, at++, line, Role.CAUTION);
            }
            return;
        }
        int devices = (width - CASE - DAY - STANDS) / 2;
        cells(canvas, column, row, devices, List.of("case", "consult", "stands", "LEFT", "RIGHT"), Role.LABEL);
        int room = height - 1;
        int cursor = Math.min(screen.cursor(), shown.size() - 1);
        int from = Math.max(0, Math.min(cursor - room / 2, shown.size() - room));
        for (int i = 0; i < room && from + i < shown.size(); i++) {
            RecordHeader header = shown.get(from + i);
            boolean here = from + i == cursor;
            cells(canvas, column, row + 1 + i, devices, List.of(header.id(), header.day().toString(), header.stands(),
                    device(header, Side.LEFT, devices), device(header, Side.RIGHT, devices)), header.status() == RecordStatus.ENTERED_IN_ERROR
                            ? Role.FAINT : Role.BODY);
            if (here) {
                canvas.paint(column, row + 1 + i, width, Role.SELECTED);
                canvas.put(column - 1, row + 1 + i, canvas.glyphs().pointer(), Role.LABEL);
            }
        }
    }

    private static void cells(Canvas canvas, int column, int row, int devices, List<String> cells, Role role) {
        int[] widths = {CASE, DAY, STANDS, devices, devices};
        int at = column;
        for (int i = 0; i < widths.length; i++) {
            canvas.textWithin(at, row, widths[i] - 1, cells.get(i), role);
            at += widths[i];
        }
    }

    /** Volume and order code where they fit, else volume and fill; the summary has the rest. */
    private static String device(RecordHeader header, Side side, int width) {
        Optional<RecordHeader.SideLine> line = header.side(side);
        return line.map(one -> {
            String code = Numbers.ml(one.fillMl()) + " " + one.deviceId();
            return code.length() < width ? code : Numbers.ml(one.fillMl()) + " " + one.fill().key();
        }).orElse("nothing settled");
    }

    /** The summary of the record in focus; where nothing is found, none of what was. */
    private static void beside(Canvas canvas, int column, int row, int width, int height, RecordsScreen screen) {
        if (screen.focus().isPresent()) {
            paper(canvas, column, row, width, height, screen.paper());
        }
    }

    private static void paper(Canvas canvas, int column, int row, int width, int height, Paper paper) {
        List<String> lines = paper.lines();
        int from = paper.scroll().row(lines.size() - height);
        for (int i = 0; i < height && from + i < lines.size(); i++) {
            boolean more = i == height - 1 && from + height < lines.size();
            String line = more ? canvas.glyphs().ellipsis() + " " + (lines.size() - from - i)
                    + (paper.whole() ? " more lines; PgDn goes on" : " more lines; Enter opens") : lines.get(from + i);
            canvas.textWithin(column, row + i, width, line, more ? Role.FAINT : Role.BODY);
        }
    }

    /** Which case of which day, and where it stands: seen before anything is done to it. */
    private static void facts(Canvas canvas, int row, RecordsScreen screen) {
        screen.focus().ifPresent(header -> canvas.textWithin(1, row, canvas.columns() - 2, facts(header), Role.LABEL));
    }

    private static String facts(RecordHeader header) {
        return header.id() + " · consult of " + DayText.of(header.day()) + " · version " + header.version() + ", "
                + header.stands();
    }

    private static void foot(Canvas canvas, RecordsScreen screen) {
        int row = canvas.rows() - 2;
        canvas.fill(0, row, canvas.columns(), ' ', Role.BODY);
        if (screen.ask().isPresent()) {
            Ask ask = screen.ask().get();
            canvas.fill(0, row - 1, canvas.columns(), ' ', Role.BODY);
            facts(canvas, row - 1, screen);
            int at = canvas.text(1, row, ask.deed().words() + " ", Role.QUESTION);
            int after = canvas.text(at, row, ask.line().text(), Role.ANSWER);
            canvas.cursor(at + canvas.width(ask.line().text().substring(0, ask.line().cursor())), row);
            if (!screen.said().isEmpty()) {
                canvas.textWithin(after + 2, row, canvas.columns() - after - 3, screen.said(), Role.REFUSED);
            }
        } else if (!screen.said().isEmpty()) {
            canvas.textWithin(1, row, canvas.columns() - 2, screen.said(), screen.refused() ? Role.REFUSED : Role.FITS);
        } else if (!screen.paper().ofKeys()) {
            screen.focus().flatMap(header -> alike(header, screen.filter().shown()))
                    .ifPresent(text -> canvas.textWithin(1, row, canvas.columns() - 2, text, Role.CAUTION));
        }
    }

    /** Codes in sight that are easily taken for the one in focus; a long list is narrowed first. */
    private static Optional<String> alike(RecordHeader header, List<RecordHeader> shown) {
        if (shown.size() > MOST_COMPARED) {
            return Optional.empty();
        }
        List<String> alike = CaseCode.lookAlikes(header.id(), shown.stream().map(RecordHeader::id).toList());
        return alike.isEmpty() ? Optional.empty() : Optional.of(header.id() + " is easily taken for "
                + String.join(", ", alike.subList(0, Math.min(MOST_NAMED, alike.size())))
                + (alike.size() > MOST_NAMED ? " and " + (alike.size() - MOST_NAMED) + " more" : "")
                + "; compare day and devices.");
    }
}
