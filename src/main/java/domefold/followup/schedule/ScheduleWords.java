package domefold.followup.schedule;

import domefold.basics.Lists;
import domefold.device.Fill;

/** A schedule in sentences. */
public final class ScheduleWords {
    private ScheduleWords() {}

    /** What is asked of a woman without symptoms who owns that fill. */
    static String rule(Schedule schedule, Fill fill, int horizonYears) {
        String ends = schedule.superseded() ? " This version is superseded and stands here as history." : "";
        return asked(schedule, fill, horizonYears) + ends;
    }

    private static String asked(Schedule schedule, Fill fill, int horizonYears) {
        if (!schedule.covers(fill)) {
            return fill == Fill.SALINE
                    ? schedule.id() + " is written for gel. A saline device asks for no imaging while nothing has changed: "
                            + "when it deflates, the breast shows it."
                    : schedule.id() + " is written for saline and says nothing about gel: choose a schedule for gel.";
        }
        if (schedule.cycle().isPresent()) {
            return cycle(schedule, schedule.cycle().get());
        }
        if (!schedule.fixedYears().isEmpty()) {
            return fixed(schedule, horizonYears);
        }
        String only = schedule.fillWords().contains(",") ? " It speaks about " + schedule.fillWords() + "." : "";
        return schedule.id() + " (" + schedule.issuer() + (schedule.version().equals("-") ? "" : ", " + schedule.version())
                + ") gives no imaging years; its rule: "
                + schedule.rule() + "." + only;
    }

    private static String cycle(Schedule schedule, Schedule.Cycle c) {
        return schedule.id() + " asks for " + schedule.modality() + ", first at year " + span(c.firstLowYears(), c.firstHighYears())
                + ", then every " + (c.intervalHighYears() == 1 ? "year" : span(c.intervalLowYears(), c.intervalHighYears()) + " years")
                + ".";
    }

    private static String fixed(Schedule schedule, int horizonYears) {
        int last = schedule.fixedYears().get(schedule.fixedYears().size() - 1);
        String years = Lists.joined(schedule.fixedYears(), ", ", String::valueOf);
        String after = horizonYears > last ? " Nothing is published for the years after " + last + "." : "";
        return schedule.id() + " asks for " + schedule.modality() + " at years " + years + " only." + after;
    }

    private static String span(int low, int high) {
        return low == high ? String.valueOf(low) : low + " to " + high;
    }

    /** What to do about a new symptom, which no schedule postpones. */
    public static String symptom(Schedule schedule, Fill fill) {
        if (!schedule.covers(fill)) {
            return (fill == Fill.SALINE ? "A loss of volume or another change is looked at now, with ultrasound where it is unclear."
                    : "A new symptom is looked into now, with imaging where rupture is suspected.") + " " + schedule.id()
                    + " is not written for " + fill.key() + ".";
        }
        String path = schedule.symptomaticAction().isEmpty() || schedule.symptomaticAction().equals("none")
                ? schedule.id() + " names no path for it."
                : schedule.id() + ": " + schedule.symptomaticAction() + ".";
        return "A new symptom is looked into now, with imaging where " + (fill == Fill.SALINE ? "the loss of volume is unclear"
                : "rupture is suspected") + ", whatever the schedule says. " + path;
    }
}
