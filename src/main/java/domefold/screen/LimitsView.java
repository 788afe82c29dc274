package domefold.screen;

import domefold.canvas.Canvas;
import domefold.canvas.Role;
import domefold.outcome.Numbers;
import domefold.patient.Measure;
import domefold.patient.Side;
import domefold.plan.Plan;
import domefold.plan.SideLimits;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What the tissues allow, per side, in full: rulers to one scale, fold by method, pocket, every note. */
final class LimitsView {
    private static final int WIDE = 120;

    private LimitsView() {}

    static void draw(Canvas canvas, int row, int height, ConsultScreen screen) {
        Optional<Plan> plan = screen.interview().plan();
        int body = height - 1;
        if (plan.isEmpty()) {
            canvas.text(1, row, "Nothing can be said yet: the age and both base widths come first.", Role.BODY);
            canvas.text(1, row + 2, "Type `go age` or `go base width`, then Enter.", Role.FAINT);
        } else {
            boolean beside = canvas.columns() >= WIDE;
            int width = beside ? (canvas.columns() - 5) / 2 : canvas.columns() - 2;
            List<Canvas> pages = new ArrayList<>();
            for (Side side : Side.values()) {
                pages.add(page(canvas, width, screen, plan.get(), side));
            }
            Canvas whole = joined(canvas, blocked(canvas, canvas.columns() - 2, plan.get()), pages, beside, width,
                    whole(canvas, canvas.columns() - 2, plan.get()));
            int from = screen.scroll().row(whole.rows() - body);
            for (int r = 0; r < body && from + r < whole.rows(); r++) {
                for (int c = 0; c < whole.columns(); c++) {
                    canvas.put(1 + c, row + r, whole.codePointAt(c, from + r), whole.roleAt(c, from + r));
                }
            }
            if (whole.rows() > body) {
                canvas.textRight(canvas.columns() - 1, row + height - 1, "rows " + (from + 1) + "–" + (from + body)
                        + " of " + whole.rows() + ", PgDn", Role.FAINT);
            }
        }
        RoomViews.entry(canvas, row + height - 1, screen);
    }

    private static Canvas joined(Canvas like, Canvas above, List<Canvas> pages, boolean beside, int width, Canvas below) {
        int sides = beside ? Math.max(pages.get(0).rows(), pages.get(1).rows())
                : pages.get(0).rows() + 1 + pages.get(1).rows();
        Canvas whole = new Canvas(like.columns() - 2, above.rows() + sides + 1 + below.rows(), like.glyphs());
        whole.draw(0, 0, above);
        whole.draw(0, above.rows(), pages.get(0));
        whole.draw(beside ? width + 3 : 0, above.rows() + (beside ? 0 : pages.get(0).rows() + 1), pages.get(1));
        whole.draw(0, above.rows() + sides + 1, below);
        return whole;
    }

    /** What stands against any operation now comes before everything else; no row where nothing does. */
    private static Canvas blocked(Canvas like, int width, Plan plan) {
        if (plan.blocked().isEmpty()) {
            return new Canvas(width, 0, like.glyphs());
        }
        List<OverlayView.Line> lines = new ArrayList<>();
        plan.blocked().forEach(note -> lines.add(new OverlayView.Line(0, "BLOCKED  " + note.text(), Role.REFUSED)));
        lines.add(new OverlayView.Line(0, "", Role.BODY));
        return text(like, width, lines);
    }

    private static Canvas whole(Canvas like, int width, Plan plan) {
        List<OverlayView.Line> lines = new ArrayList<>();
        plan.notes().forEach(note -> lines.add(new OverlayView.Line(0, "! " + note.text(), Role.CAUTION)));
        lines.add(new OverlayView.Line(0, AllowsView.devices(plan), Role.LABEL));
        AllowsView.legend(like, width).forEach(line -> lines.add(new OverlayView.Line(0, line, Role.FAINT)));
        return text(like, width, lines);
    }

    private static Canvas text(Canvas like, int width, List<OverlayView.Line> lines) {
        List<OverlayView.Line> out = Wrapped.of(like, lines, width);
        Canvas page = new Canvas(width, Math.max(1, out.size()), like.glyphs());
        for (int i = 0; i < out.size(); i++) {
            page.text(out.get(i).indent(), i, out.get(i).text(), out.get(i).role());
        }
        return page;
    }

    private static Canvas page(Canvas like, int width, ConsultScreen screen, Plan plan, Side side) {
        SideLimits limits = plan.side(side);
        List<OverlayView.Line> words = new ArrayList<>();
        words.add(new OverlayView.Line(0, FoldWords.of(limits, screen.interview().dossier().patientCase(), side), Role.BODY));
        for (SideLimits.FoldMethod method : limits.foldByMethod()) {
            words.add(new OverlayView.Line(2, (method.drives() ? "used: " : "beside: ") + method.name() + " "
                    + Numbers.cm(method.targetCm()) + (method.remark().isBlank() ? "" : "; " + method.remark()), Role.FAINT));
        }
        words.add(new OverlayView.Line(0, "", Role.BODY));
        limits.notes().forEach(note -> words.add(new OverlayView.Line(0, "! " + note.text(), Role.CAUTION)));
        if (!limits.incomplete().isEmpty()) {
            words.add(new OverlayView.Line(0, "not taken: " + String.join(", ", limits.incomplete().stream().map(Measure::wordsOf).toList()), Role.CAUTION));
        }
        Canvas below = text(like, width, words);
        Canvas page = new Canvas(width, 8 + below.rows(), like.glyphs());
        page.text(0, 0, side.toString(), Role.TITLE);
        List<String> sentence = AllowsView.parts(like, limits, width - 7);
        for (int i = 0; i < sentence.size(); i++) {
            page.text(7, i, sentence.get(i), Role.BODY);
        }
        page.text(0, 2, "width", Role.FAINT);
        AllowsView.widthRuler(page, 0, 2, width, screen, plan, side);
        SideRuler.WIDTH_CM.scale(page, 7, 3, width - 7, 1, "cm");
        page.text(0, 5, "volume", Role.FAINT);
        AllowsView.volumeRuler(page, 0, 5, width, screen, limits);
        SideRuler.VOLUME_ML.scale(page, 7, 6, width - 7, 100, "mL");
        page.draw(0, 8, below);
        return page;
    }
}
