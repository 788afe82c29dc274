package domefold.report;

import domefold.basics.Lists;
import domefold.basics.Order;
import domefold.outcome.Band;
import domefold.outcome.Note;
import domefold.outcome.Numbers;
import domefold.patient.Side;
import domefold.plan.Candidate;
import domefold.plan.Plan;
import domefold.plan.SideFit;
import domefold.plan.Verdict;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.BiConsumer;

/** The devices: those that fit or are tight in one line each, then why; the rest counted by reason. */
final class CandidatesText {
    private static final int[] WIDTHS = {33, -4, -5, -5, 5, 5, 8, -6};

    private CandidatesText() {}

    static void write(Page page, Plan plan) {
        page.heading("Devices");
        List<Candidate> shown = Lists.where(plan.candidates(), one -> verdict(one) != Verdict.OUTSIDE);
        int fitting = Lists.where(shown, one -> verdict(one) == Verdict.FITS).size();
        page.paragraph(0, Numbers.count(fitting) + " fit both sides, " + Numbers.count(shown.size() - fitting)
                + " are tight on a side, " + Numbers.count(plan.candidates().size() - shown.size()) + " are outside.");
        if (!shown.isEmpty()) {
            page.blank().row(WIDTHS, List.of("", "mL", "width", "proj.", "LEFT", "RIGHT", "incision", "ripple"));
            for (Candidate candidate : shown) {
                page.row(WIDTHS, cells(candidate));
            }
            page.paragraph(0, "Width and projection as listed and the incision's range are in cm. The ripple index, 0 to 1, only"
                    + " ranks devices on the side with less cover (assumed model); every device ripples.");
            for (String basis : bases(shown)) {
                page.hanging("  - ", basis);
            }
            OwningText.write(page, shown);
            each(page, shown, Verdict.FITS, "Devices that fit both sides", CandidatesText::margins);
            each(page, shown, Verdict.TIGHT, "Devices that are tight on a side, and what would change it",
                    CandidatesText::reasons);
        }
        outside(page, plan);
    }

    private static void each(Page page, List<Candidate> shown, Verdict verdict, String heading,
            BiConsumer<Page, Candidate> write) {
        List<Candidate> those = Lists.where(shown, one -> verdict(one) == verdict);
        if (!those.isEmpty()) {
            page.heading(heading);
            those.forEach(one -> write.accept(page, one));
        }
    }

    private static Verdict verdict(Candidate candidate) {
        return candidate.left().verdict().and(candidate.right().verdict());
    }

    private static List<String> cells(Candidate candidate) {
        List<String> cells = new ArrayList<>();
        cells.add(candidate.device().id());
        cells.add(Numbers.plain(candidate.device().nominalMl(), 0));
        cells.add(Numbers.plain(candidate.device().widthCm(), 1));
        cells.add(Numbers.plain(candidate.device().projectionCm(), 1));
        cells.add(candidate.left().verdict().key());
        cells.add(candidate.right().verdict().key());
        cells.add(candidate.incision().map(cut -> Numbers.range(new Band(cut.lowCm(), cut.highCm()), 1)).orElse(Numbers.NONE));
        cells.add(candidate.ripple().map(ripple -> Numbers.plain(ripple.index(), 3)).orElse(Numbers.NONE));
        return cells;
    }

    private static Set<String> bases(List<Candidate> shown) {
        Set<String> bases = new LinkedHashSet<>();
        for (Candidate one : shown) {
            one.incision().ifPresent(cut -> bases.add("Incision, " + cut.route().key() + ", "
                    + (cut.device().equals("hand") ? "by hand" : "through a " + cut.device()) + ": " + cut.basis()));
        }
        return bases;
    }

    private static void margins(Page page, Candidate candidate) {
        page.line("  " + candidate.device().id());
        page.hanging("    LEFT   ", margins(candidate.left()));
        page.hanging("    RIGHT  ", margins(candidate.right()));
    }

    private static String margins(SideFit fit) {
        List<String> parts = new ArrayList<>();
        fit.widthMarginCm().ifPresent(cm -> parts.add("ceiling less width " + Numbers.marginCm(cm)));
        fit.volumeMarginMl().ifPresent(ml -> parts.add("inside the volume band by " + Numbers.ml(ml)));
        fit.foldLoweringCm().ifPresent(cm -> parts.add("fold lowered by " + Numbers.cm(cm)));
        fit.projectionGainCm().ifPresent(band -> parts.add("projection gain " + Numbers.cm(band)));
        fit.fitShare().ifPresent(share -> parts.add("fits in " + Numbers.percent(share) + " of error draws"));
        fit.decidingReading().ifPresent(measure -> parts.add("decided most by " + measure.words()));
        return parts.isEmpty() ? "fits" : String.join("; ", parts);
    }

    private static void reasons(Page page, Candidate candidate) {
        page.line("  " + candidate.device().id());
        for (Side side : Side.values()) {
            SideFit fit = candidate.side(side);
            String lead = side == Side.LEFT ? "    LEFT   " : "    RIGHT  ";
            if (fit.reasons().isEmpty()) {
                page.hanging(lead, fit.verdict().key());
            }
            for (Note reason : fit.reasons()) {
                page.hanging(lead, reason.text() + " [" + reason.code() + "]");
                lead = "           ";
            }
            for (Note change : fit.wouldChange()) {
                page.hanging("           change: ", change.text());
            }
        }
    }

    private static void outside(Page page, Plan plan) {
        Map<String, Integer> counts = new LinkedHashMap<>();
        for (Candidate candidate : plan.candidates()) {
            if (verdict(candidate) == Verdict.OUTSIDE) {
                Set<String> codes = new LinkedHashSet<>();
                for (Side side : Side.values()) {
                    if (candidate.side(side).verdict() == Verdict.OUTSIDE) {
                        candidate.side(side).reasons().forEach(reason -> codes.add(reason.code()));
                    }
                }
                codes.forEach(code -> counts.merge(code, 1, Integer::sum));
            }
        }
        if (!counts.isEmpty()) {
            page.heading("Devices outside, by reason (a device may have several)");
            List<String> mostFirst = new ArrayList<>(counts.keySet());
            mostFirst.sort(Order.byRank(code -> -counts.get(code)));
            mostFirst.forEach(code -> page.row(new int[] {-6, 40}, List.of(Numbers.count(counts.get(code)), code)));
        }
    }
}
