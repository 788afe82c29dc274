package domefold.report;

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
import java.util.stream.Collectors;

/** The devices: those that fit or are tight in one line each, then why; the rest counted by reason. */
final class CandidatesText {
    private static final int[] WIDTHS = {33, -4, -5, -5, 7, 7, 9};

    private CandidatesText() {}

    static void write(Page page, Plan plan) {
        page.heading("Devices");
        List<Candidate> shown = plan.candidates().stream().filter(one -> verdict(one) != Verdict.OUTSIDE).toList();
        long fitting = shown.stream().filter(one -> verdict(one) == Verdict.FITS).count();
        page.paragraph(0, Numbers.count(fitting) + " fit both sides, " + Numbers.count(shown.size() - fitting)
                + " are tight on a side, " + Numbers.count(plan.candidates().size() - shown.size()) + " are outside.");
        if (!shown.isEmpty()) {
            page.blank().row(WIDTHS, List.of("", "mL", "width", "proj.", "LEFT", "RIGHT", "incision"));
            for (Candidate candidate : shown) {
                page.row(WIDTHS, cells(candidate));
            }
            page.paragraph(0, "Width and projection as listed, incision as a range, all in cm.");
            for (String basis : bases(shown)) {
                page.hanging("  - ", basis);
            }
            followUp(page, shown);
            page.heading("Devices, one by one");
            shown.forEach(candidate -> details(page, candidate));
        }
        outside(page, plan);
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
        return cells;
    }

    private static Set<String> bases(List<Candidate> shown) {
        return shown.stream().flatMap(one -> one.incision().stream())
                .map(cut -> "Incision, " + cut.route().key() + ", " + (cut.device().equals("hand") ? "by hand" : "through a "
                        + cut.device()) + ": " + cut.basis()).collect(Collectors.toCollection(LinkedHashSet::new));
    }

    private static void followUp(Page page, List<Candidate> shown) {
        Set<String> lines = new LinkedHashSet<>();
        for (Candidate candidate : shown) {
            candidate.followUp().ifPresent(plan -> {
                lines.add(candidate.device().fill().key() + ": " + plan.text() + " Exams to year " + plan.horizonYears() + ": "
                        + (plan.examsLow() == plan.examsHigh() ? String.valueOf(plan.examsLow())
                                : plan.examsLow() + " to " + plan.examsHigh()) + ".");
                plan.outcomes().forEach(outcome -> lines.add(candidate.device().fill().key() + ": " + outcome.outcome()
                        + " by year " + outcome.year() + ", per 100 " + outcome.unit() + "s: "
                        + range(outcome.per100Low(), outcome.per100High()) + " (" + String.join(", ", outcome.cohorts()) + ")"));
            });
        }
        if (lines.isEmpty()) {
            page.heading("What owning it asks");
            page.hanging("  - ", "No imaging schedule is chosen, so no exam is counted.");
            return;
        }
        page.heading("What owning it asks");
        lines.forEach(line -> page.hanging("  - ", line));
    }

    private static String range(double per100Low, double per100High) {
        String low = Numbers.per100(per100Low);
        String high = Numbers.per100(per100High);
        return low.equals(high) ? low : low + " to " + high;
    }

    private static void details(Page page, Candidate candidate) {
        page.line("  " + candidate.device().id());
        for (Side side : Side.values()) {
            SideFit fit = candidate.side(side);
            page.hanging(side == Side.LEFT ? "    LEFT   " : "    RIGHT  ", sentence(fit));
            for (Note reason : fit.reasons()) {
                page.hanging("           - ", reason.text() + " [" + reason.code() + "]");
            }
            for (Note change : fit.wouldChange()) {
                page.hanging("           change: ", change.text());
            }
        }
        candidate.ripple().ifPresent(ripple -> page.hanging("    ripple index ", Numbers.plain(ripple.index(), 2)
                + " of 1, for ranking only. " + ripple.text()));
    }

    private static String sentence(SideFit fit) {
        List<String> parts = new ArrayList<>(List.of(fit.verdict().key()));
        fit.widthMarginCm().ifPresent(cm -> parts.add("width ceiling less width " + Numbers.marginCm(cm)));
        fit.volumeMarginMl().ifPresent(ml -> parts.add("inside the volume band by " + Numbers.marginMl(ml)));
        fit.foldLoweringCm().ifPresent(cm -> parts.add("fold lowered by " + Numbers.cm(cm)));
        fit.stability().ifPresent(share -> parts.add("not outside in " + Numbers.percent(share) + " of error draws"));
        fit.projectionGainCm().ifPresent(band -> parts.add("projection gain " + Numbers.cm(band)));
        return String.join("; ", parts);
    }

    private static void outside(Page page, Plan plan) {
        Map<String, Integer> counts = new LinkedHashMap<>();
        for (Candidate candidate : plan.candidates()) {
            if (verdict(candidate) == Verdict.OUTSIDE) {
                Set<String> codes = new LinkedHashSet<>();
                for (Side side : Side.values()) {
                    candidate.side(side).reasons().forEach(reason -> codes.add(reason.code()));
                }
                codes.forEach(code -> counts.merge(code, 1, Integer::sum));
            }
        }
        if (!counts.isEmpty()) {
            page.heading("Devices outside, by reason (a device may have several)");
            counts.entrySet().stream().sorted(Map.Entry.<String, Integer>comparingByValue().reversed()).forEach(
                    entry -> page.row(new int[] {-6, 40}, List.of(Numbers.count(entry.getValue()), entry.getKey())));
        }
    }
}
