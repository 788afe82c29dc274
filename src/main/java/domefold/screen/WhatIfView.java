package domefold.screen;

import domefold.canvas.Canvas;
import domefold.canvas.Role;
import domefold.choose.Difference;
import domefold.interview.WhatIf;
import domefold.plan.Plan;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What another answer would change: as it stands and as it would be, line by line, what changed marked. */
final class WhatIfView {
    private static final int WIDEST_LABEL = 36;
    private static final int WIDEST = 124;
    private static final int FOLLOWED = 3;

    private WhatIfView() {}

    static void draw(Canvas canvas, int row, int height, ConsultScreen screen) {
        WhatIf whatIf = screen.whatIf().orElseThrow();
        int width = Math.min(WIDEST, canvas.columns() - 2);
        int at = row;
        for (WhatIf.Change change : whatIf.changes()) {
            at = heading(canvas, at, width, change);
        }
        Optional<Plan> before = whatIf.before().plan();
        Optional<Plan> after = whatIf.trial().plan();
        if (before.isEmpty() || after.isEmpty()) {
            canvas.text(1, at + 1, "Nothing to compare: one of the two has no plan.", Role.BODY);
        } else {
            Difference difference = Difference.between(before.get(), after.get(), followed(screen),
                    screen.interview().guide().evidence().constants());
            RoomViews.entry(canvas, row + height - 1, screen);
            rows(canvas, at + 1, width, row + height - 2 - at, screen.scroll(), difference);
            return;
        }
        RoomViews.entry(canvas, row + height - 1, screen);
    }

    private static int heading(Canvas canvas, int row, int width, WhatIf.Change change) {
        canvas.text(1, row, "What if", Role.LABEL);
        int at = row;
        for (String part : canvas.wrap(Character.toLowerCase(change.label().charAt(0)) + change.label().substring(1) + " were " + change.now() + ", not " + change.was(), width - 8)) {
            canvas.text(9, at++, part, Role.QUESTION);
        }
        return at;
    }

    /** The pinned devices, or the first of the list where none is pinned. */
    private static List<String> followed(ConsultScreen screen) {
        List<String> pinned = screen.interview().dossier().choices().pinned();
        return !pinned.isEmpty() ? pinned
                : DeviceRows.of(screen.interview(), screen.devices()).stream().limit(FOLLOWED).map(c -> c.device().id()).toList();
    }

    /** One drawn line: a group's name, or a row of the comparison. */
    private record Line(String heading, String label, String before, String after, boolean changed, boolean first) {}

    private static void rows(Canvas canvas, int row, int width, int height, Scrolled scroll, Difference difference) {
        int label = Math.min(WIDEST_LABEL, width / 3 + 4);
        int each = (width - label - 2) / 2;
        List<Line> lines = new ArrayList<>();
        String group = "";
        for (Difference.Row one : difference.rows()) {
            if (!one.group().equals(group)) {
                group = one.group();
                lines.add(new Line(group.equals("case") ? "the case" : group, "", "", "", false, true));
            }
            lines.addAll(wrapped(canvas, one, label - 3, each));
        }
        canvas.text(1 + label, row, "as it stands", Role.FAINT);
        canvas.text(3 + label + each, row, "as it would be", Role.FAINT);
        int body = height - 1;
        int from = scroll.row(lines.size() - body);
        for (int i = 0; i < body && from + i < lines.size(); i++) {
            line(canvas, row + 1 + i, label, each, lines.get(from + i));
        }
        if (lines.size() > body) {
            canvas.textRight(canvas.columns() - 1, Chrome.entryRow(canvas), "rows " + (from + 1) + "–" + Math.min(lines.size(), from + body)
                    + " of " + lines.size() + ", PgDn", Role.FAINT);
        }
    }

    /** A row of the comparison in as many lines as its longest entry takes. */
    private static List<Line> wrapped(Canvas canvas, Difference.Row row, int label, int each) {
        List<String> names = canvas.wrap(row.label(), label);
        List<String> before = canvas.wrap(row.before(), each - 1);
        List<String> after = canvas.wrap(row.after(), each - 1);
        List<Line> lines = new ArrayList<>();
        for (int i = 0; i < Math.max(names.size(), Math.max(before.size(), after.size())); i++) {
            lines.add(new Line("", at(names, i), at(before, i), at(after, i), row.changed(), i == 0));
        }
        return lines;
    }

    private static String at(List<String> parts, int index) {
        return index < parts.size() ? parts.get(index) : "";
    }

    private static void line(Canvas canvas, int row, int label, int each, Line line) {
        if (!line.heading().isEmpty()) {
            canvas.text(1, row, line.heading(), Role.LABEL);
            return;
        }
        boolean changed = line.changed();
        canvas.text(1, row, changed && line.first() ? String.valueOf(canvas.glyphs().pointer()) : " ", Role.CAUTION);
        canvas.textWithin(3, row, label - 3, line.label(), changed ? Role.BODY : Role.FAINT);
        canvas.textWithin(1 + label, row, each, line.before(), Role.FAINT);
        canvas.textWithin(3 + label + each, row, each, line.after(), changed ? Role.ANSWER : Role.FAINT);
    }
}
