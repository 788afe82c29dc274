package domefold.line;

import domefold.device.Fill;
import domefold.interview.Interview;
import domefold.outcome.Note;
import domefold.outcome.Numbers;
import domefold.patient.Case;
import domefold.patient.Measure;
import domefold.patient.Side;
import domefold.plan.Candidate;
import domefold.plan.Plan;
import domefold.plan.SideLimits;
import domefold.plan.Verdict;
import domefold.report.Page;
import domefold.screen.FoldWords;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/** What the tissues allow, in sentences that begin with LEFT or RIGHT. */
final class LimitsInWords {
    private LimitsInWords() {}

    /** Two sentences and a count; nothing before there is a plan. */
    static List<String> brief(Interview interview) {
        List<String> lines = new ArrayList<>();
        interview.plan().ifPresent(plan -> {
            for (Side side : Side.values()) {
                lines.add(side + ": " + side(plan.side(side), interview.dossier().patientCase(), side));
            }
            lines.add(devices(plan));
        });
        return lines;
    }

    private static String side(SideLimits limits, Case patientCase, Side side) {
        List<String> parts = new ArrayList<>();
        OptionalDouble baseCm = patientCase.side(side).readings().value(Measure.BASE_WIDTH);
        if (limits.widthCeilingCm().isPresent()) {
            parts.add("width ceiling " + (limits.widthCeilingSdCm().isPresent()
                    ? Numbers.cmWithin(limits.widthCeilingCm().getAsDouble(), limits.widthCeilingSdCm().getAsDouble())
                    : Numbers.cm(limits.widthCeilingCm().getAsDouble()))
                    + (baseCm.isPresent() ? " on a base of " + Numbers.cm(baseCm.getAsDouble()) : ""));
        }
        if (limits.startingVolumeMl().isPresent()) {
            parts.add("starting volume " + Numbers.ml(limits.startingVolumeMl().getAsDouble())
                    + limits.volumeBandMl().map(band -> ", band " + Numbers.ml(band)).orElse(""));
        } else {
            limits.volumeBandMl().ifPresent(band -> parts.add("volume about " + Numbers.ml(band)));
        }
        if (limits.foldTargetCm().isPresent()) {
            parts.add("fold " + FoldWords.of(limits, patientCase, side));
        }
        limits.pocket().ifPresent(pocket -> parts.add("pocket " + pocket.key()));
        return parts.isEmpty() ? "nothing can be said yet." : String.join("; ", parts) + ".";
    }

    private static String devices(Plan plan) {
        return "Devices that fit both sides: " + count(plan, Fill.GEL) + " gel, " + count(plan, Fill.SALINE) + " saline, of "
                + plan.candidates().size() + ".";
    }

    private static long count(Plan plan, Fill fill) {
        return plan.candidates().stream().filter(c -> c.device().fill() == fill).filter(LimitsInWords::fitsBoth).count();
    }

    private static boolean fitsBoth(Candidate candidate) {
        return candidate.left().verdict() == Verdict.FITS && candidate.right().verdict() == Verdict.FITS;
    }

    /** Every caution of the plan, what blocks first; the one about the invented list has its own sentence. */
    static List<String> cautions(Interview interview) {
        List<String> lines = new ArrayList<>();
        interview.plan().ifPresent(plan -> {
            plan.blocked().forEach(note -> lines.add("BLOCKED: " + note.text()));
            for (Side side : Side.values()) {
                plan.side(side).notes().forEach(note -> lines.add("Caution, " + side + ": " + note.text()));
            }
            plan.notes().stream().filter(note -> !note.code().equals("invented-catalogue")).map(Note::text)
                    .forEach(text -> lines.add("Caution: " + text));
        });
        return lines.stream().distinct().toList();
    }

    /** The room of the limits, in full. */
    static String whole(Interview interview) {
        Page page = new Page();
        if (interview.plan().isEmpty()) {
            return page.paragraph(0, "Nothing can be said yet: the age and both base widths come first.").text();
        }
        Plan plan = interview.plan().get();
        page.line("What the tissues allow");
        brief(interview).forEach(line -> page.paragraph(0, line));
        for (Side side : Side.values()) {
            SideLimits limits = plan.side(side);
            for (SideLimits.FoldMethod method : limits.foldByMethod()) {
                page.hanging("  ", side + " fold, " + (method.drives() ? "used: " : "beside it: ") + method.name() + " "
                        + Numbers.cm(method.targetCm()) + (method.remark().isBlank() ? "." : "; " + method.remark() + "."));
            }
            if (!limits.incomplete().isEmpty()) {
                page.hanging("  ", side + " is missing: " + String.join(", ", limits.incomplete().stream().map(Measure::wordsOf).toList()) + ".");
            }
        }
        cautions(interview).forEach(line -> page.hanging("  ", line + (line.endsWith(".") ? "" : ".")));
        return page.text();
    }
}
