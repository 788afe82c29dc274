package domefold.line;

import domefold.device.Device;
import domefold.interview.Interview;
import domefold.outcome.Note;
import domefold.outcome.Numbers;
import domefold.patient.Side;
import domefold.plan.Candidate;
import domefold.plan.SideFit;
import domefold.report.Page;
import domefold.canvas.TextWidth;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;

/** The pinned devices: the numbers in a table, the rest in sentences. */
final class SideBySide {
    static final String NONE = "No device is pinned; `devices` prints the list, `pin 1` pins its first row.";
    private static final int LABEL = 15;
    private static final int WIDEST = 21;

    private final Page page = new Page();
    private final List<Candidate> shown;
    private final int width;

    private SideBySide(List<Candidate> shown) {
        this.shown = shown;
        this.width = Math.min(WIDEST, (Page.COLUMNS - LABEL - shown.size()) / shown.size());
    }

    /** The pinned devices of the plan, in the order of the pins. */
    static List<Candidate> pinned(Interview interview) {
        return interview.dossier().choices().pinned().stream().flatMap(id -> interview.plan().stream()
                .flatMap(plan -> plan.candidates().stream()).filter(c -> c.device().id().equals(id))).toList();
    }

    static String of(Interview interview) {
        List<Candidate> pinned = pinned(interview);
        if (pinned.isEmpty()) {
            return new Page().paragraph(0, NONE).text();
        }
        return new SideBySide(pinned).written();
    }

    private String written() {
        page.paragraph(0, "Pinned: " + QuestionInWords.pins(shown.stream().map(c -> c.device().id()).toList()) + ".");
        row("", c -> String.valueOf(shown.indexOf(c) + 1));
        row("device", c -> c.device().fill().key() + ", " + c.device().profile().key() + ", " + c.device().surface().key());
        row("volume", c -> Numbers.ml(c.device().nominalMl()) + c.device().labelFillMl().map(b -> ", label " + Numbers.ml(b)).orElse(""));
        row("width", c -> Numbers.cm(c.device().widthCm()) + (c.device().heightCm() == c.device().widthCm() ? ""
                : ", height " + Numbers.cm(c.device().heightCm())));
        row("projection", c -> Numbers.cm(c.device().projectionCm()));
        for (Side side : Side.values()) {
            row(side.toString(), c -> c.side(side).verdict().key());
            row("  to ceiling", c -> c.side(side).widthMarginCm().isPresent()
                    ? Numbers.marginCm(c.side(side).widthMarginCm().getAsDouble()) : "unknown");
            row("  in the band", c -> c.side(side).volumeMarginMl().isPresent()
                    ? Numbers.marginMl(c.side(side).volumeMarginMl().getAsDouble()) : "unknown");
            row("  fold target", c -> c.side(side).foldTargetCm().isPresent()
                    ? Numbers.cm(c.side(side).foldTargetCm().getAsDouble()) : "unknown");
            row("  lower fold", c -> c.side(side).foldLoweringCm().isPresent()
                    ? Numbers.cm(c.side(side).foldLoweringCm().getAsDouble()) : "unknown");
        }
        row("opening", c -> c.incision().map(i -> Numbers.cm(new domefold.outcome.Band(i.lowCm(), i.highCm()))).orElse("unknown"));
        row("exams", c -> c.followUp().map(f -> Numbers.range(new domefold.outcome.Band(f.examsLow(), f.examsHigh()), 0)
                + " to year " + f.horizonYears()).orElse("no schedule"));
        shown.forEach(this::sentences);
        return page.text();
    }

    private void row(String label, Function<Candidate, String> cell) {
        List<List<String>> cells = shown.stream().map(cell).map(text -> TextWidth.wrap(text, width)).toList();
        int height = cells.stream().mapToInt(List::size).max().orElse(1);
        int[] widths = new int[shown.size() + 1];
        java.util.Arrays.fill(widths, width);
        widths[0] = LABEL - 1;
        for (int line = 0; line < height; line++) {
            List<String> out = new ArrayList<>(List.of(line == 0 ? label : ""));
            for (List<String> one : cells) {
                out.add(line < one.size() ? one.get(line) : "");
            }
            page.row(widths, out);
        }
    }

    private void sentences(Candidate candidate) {
        Device device = candidate.device();
        page.heading((shown.indexOf(candidate) + 1) + ". " + device.id() + ", " + device.line() + ".");
        for (Side side : Side.values()) {
            side(candidate.side(side), side);
        }
        candidate.incision().ifPresent(i -> say("Opening: " + (i.typicalCm().isPresent()
                ? Numbers.cm(i.typicalCm().getAsDouble()) + ", " : "") + "band " + Numbers.cm(new domefold.outcome.Band(i.lowCm(), i.highCm()))
                + ", " + i.route().key() + ", " + (i.device().equals("hand") ? "by hand" : i.device()) + "; " + i.basis()));
        candidate.ripple().ifPresent(r -> say("Ripple: " + r.text()));
        candidate.followUp().ifPresent(f -> say("Exams under " + f.schedule() + ": "
                + (f.examsHigh() == 0 ? "none to year " + f.horizonYears() + ". " + f.text()
                        : "densest in years " + years(f.densestYears()) + "; sparsest in years " + years(f.sparsestYears()))));
        candidate.followUp().ifPresent(f -> f.outcomes().forEach(o -> say(published(o))));
    }

    /** A published outcome with its cohorts. */
    static String published(Candidate.Outcome o) {
        String low = Numbers.per100(o.per100Low());
        String high = Numbers.per100(o.per100High());
        return "Published: " + o.outcome() + ", " + low + (low.equals(high) ? "" : " to " + high) + " of 100 "
                + (o.unit().equals("patient") ? "women" : o.unit() + "s") + " by year " + o.year() + " ("
                + String.join(", ", o.cohorts().stream().map(cohort -> cohort.split(",")[0]).distinct().toList()) + ")";
    }

    private void side(SideFit fit, Side side) {
        say(side + ": " + fit.verdict().key() + (fit.stability().isEmpty() ? "" : ", within limits in "
                + Numbers.percent(fit.stability().getAsDouble()) + " of reading errors"
                + fit.decidingReading().map(m -> "; " + m.words() + " decides").orElse(""))
                + fit.projectionGainCm().map(band -> "; " + Numbers.cm(band) + " forward may be gained").orElse(""));
        fit.reasons().forEach(note -> say(side + ", against it: " + text(note)));
        fit.notes().forEach(note -> say(side + ", to know: " + text(note)));
        fit.wouldChange().forEach(note -> say(side + ", what would change it: " + text(note)));
    }

    private static String text(Note note) {
        return note.text();
    }

    private void say(String sentence) {
        page.hanging("  ", sentence.endsWith(".") ? sentence : sentence + ".");
    }

    static String years(List<Integer> years) {
        return years.isEmpty() ? "none" : String.join(", ", years.stream().map(String::valueOf).toList());
    }
}
