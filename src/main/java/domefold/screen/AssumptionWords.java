package domefold.screen;

import domefold.canvas.TextWidth;
import domefold.evidence.Constant;
import domefold.evidence.Evidence;
import domefold.evidence.Status;
import domefold.followup.course.Strategy;
import domefold.followup.course.TestAccuracy;
import domefold.followup.schedule.Schedule;
import domefold.followup.schedule.Schedules;
import domefold.outcome.Figures;
import domefold.outcome.Numbers;
import domefold.outcome.Refusal;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Assumptions as they are typed and as they are read. */
final class AssumptionWords {
    static final String EXPECTED = "ultrasound, mri, both, `attend 60`, `year 30`, `schedule US-2020`, reset";

    private AssumptionWords() {}

    /** One assumption: its name, its value, where it comes from, whether it was changed in the pane. */
    record Said(String name, String value, String source, boolean changed) {}

    /**
     * The assumptions after a typed line.
     *
     * @param start what {@code reset} goes back to
     * @throws Refusal with one sentence if the line means nothing here
     */
    static Assumptions typed(String line, Assumptions now, Assumptions start, Evidence evidence) {
        String text = line.strip().toLowerCase(Locale.ROOT).replaceAll("\\s+", " ");
        switch (text) {
            case "reset":
                return start;
            case "ultrasound":
                return now.withStrategy(Strategy.ULTRASOUND);
            case "mri":
                return now.withStrategy(Strategy.MRI);
            case "both", "ultrasound then mri", "ultrasound-then-mri":
                return now.withStrategy(Strategy.ULTRASOUND_THEN_MRI);
            default:
                break;
        }
        if (text.endsWith("%")) {
            return now.withAdherence(percent(text.substring(0, text.length() - 1)));
        }
        if (text.startsWith("attend ")) {
            return now.withAdherence(percent(text.substring(7)));
        }
        if (text.startsWith("year ") || text.startsWith("horizon ")) {
            return now.withHorizon(years(text.substring(text.indexOf(' ') + 1)));
        }
        String id = text.startsWith("schedule ") ? text.substring(9) : text;
        Optional<String> known = Schedules.of(evidence).ids().stream().filter(one -> one.equalsIgnoreCase(id)).findFirst();
        if (known.isPresent()) {
            return now.withSchedule(known.get());
        }
        throw new Refusal("assumption", "owning", text.startsWith("schedule")
                ? "the schedules are " + String.join(", ", Schedules.of(evidence).ids())
                : "'" + line.strip() + "' is none of: " + EXPECTED);
    }

    private static double percent(String text) {
        double percent = number(text.replace("%", "").strip());
        if (!(percent >= 0 && percent <= 100)) {
            throw new Refusal("assumption", "owning", "exams attended run from 0 to 100 %, for example `attend 60`");
        }
        return percent / 100;
    }

    private static int years(String text) {
        double years = number(text.strip());
        if (years != Math.rint(years) || !(years >= 1 && years <= Assumptions.LONGEST_HORIZON_YEARS)) {
            throw new Refusal("assumption", "owning", "the horizon is a whole number of years from 1 to "
                    + Assumptions.LONGEST_HORIZON_YEARS + ", for example `year 30`");
        }
        return (int) years;
    }

    private static double number(String text) {
        return text.matches("\\d{1,4}(\\.\\d{1,4})?") ? Double.parseDouble(text) : Double.NaN;
    }

    /** The assumptions in one line. */
    static String line(Assumptions now, int width, char ellipsis) {
        String schedule = now.schedule().orElse("no schedule");
        String rest = "   " + exam(now.strategy()) + "   " + share(now.adherence()) + " attended   to year " + now.horizonYears();
        if (TextWidth.of(schedule + rest) <= width) {
            return schedule + rest;
        }
        String closer = rest.replace("   ", "  ");
        return TextWidth.cut(schedule, Math.max(1, width - TextWidth.of(closer)), ellipsis) + closer;
    }

    /** Each assumption with its source; a changed one also says what the consult has. */
    static List<Said> of(Assumptions now, Assumptions start, Evidence evidence) {
        Optional<Schedule> schedule = now.scheduleIn(evidence);
        Constant horizon = evidence.constants().get("FU-HORIZON");
        return List.of(
                said("schedule", schedule.map(s -> s.id() + ", " + s.issuer()).orElse("none chosen: `schedule US-2020` looks at one here"),
                        schedule.map(s -> said(s.source(), s.status())).orElse(""),
                        now.schedule().equals(start.schedule()), start.schedule().orElse("none")),
                said("exam", now.strategy().words(), schedule.filter(s -> s.modality().startsWith("MRI")).isPresent()
                        ? "the schedule names MRI" : Status.PROPOSAL.words() + ", where a schedule leaves it open",
                        now.strategy() == start.strategy(), exam(start.strategy())),
                said("attended", share(now.adherence()) + " of the exams", attendance(evidence),
                        now.adherence() == start.adherence(), share(start.adherence())),
                said("years", "exams counted to year " + now.horizonYears(), said(horizon.source(), horizon.status())
                        + ", unless the consult sets it", now.horizonYears() == start.horizonYears(), "year " + start.horizonYears()));
    }

    /** A source with its status; a gate of our own or common practice has none beside its status. */
    static String said(String source, Status status) {
        return status == Status.PROPOSAL || source.equals(status.words()) ? status.words() : source + " (" + status.words() + ")";
    }

    private static Said said(String name, String value, String source, boolean same, String consult) {
        return new Said(name, same ? value : value + ", changed here; the consult has " + consult, source, !same);
    }

    private static String attendance(Evidence evidence) {
        Constant usual = evidence.constants().get("FU-ADHERENCE");
        Constant seen = evidence.constants().get("FU-ADHERENCE-SEEN");
        return said(usual.source(), usual.status()) + "; large studies saw under " + share(seen.value()) + ": "
                + said(seen.source(), seen.status());
    }

    /** How good the tests are that an exam uses, each with its source. */
    static List<Said> tests(Strategy strategy, Evidence evidence) {
        TestAccuracy ultrasound = TestAccuracy.ultrasound(evidence.constants());
        TestAccuracy mri = TestAccuracy.mri(evidence.constants());
        return List.of(new Said("ultrasound", accuracy(ultrasound), said(ultrasound.source(), ultrasound.status()), false),
                new Said("MRI", accuracy(mri), said(mri.source(), mri.status()), false)).stream()
                .filter(said -> strategy == Strategy.ULTRASOUND_THEN_MRI
                        || said.name().equals(strategy == Strategy.MRI ? "MRI" : "ultrasound")).toList();
    }

    private static String accuracy(TestAccuracy test) {
        return "finds " + Numbers.plain(100 * test.sensitivity(), 1) + " %, passes " + Numbers.plain(100 * test.specificity(), 1)
                + " % of intact ones, per implant";
    }

    static String exam(Strategy strategy) {
        return switch (strategy) {
            case ULTRASOUND -> "ultrasound";
            case MRI -> "MRI";
            case ULTRASOUND_THEN_MRI -> "ultrasound, then MRI";
        };
    }

    static String share(double share) {
        return Figures.of(100 * share, 0, 1) + " %";
    }
}
