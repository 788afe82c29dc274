package domefold.practice;

import domefold.device.Device;
import domefold.device.Fill;
import domefold.engine.Exact;
import domefold.engine.RoutePermission;
import domefold.evidence.Evidence;
import domefold.followup.schedule.Schedule;
import domefold.followup.schedule.Schedules;
import domefold.outcome.Figures;
import domefold.outcome.Note;
import domefold.patient.Route;
import domefold.plan.Candidate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** What is decided once for both sides: route, incision, imaging schedule, reason. */
final class WholeMarks {
    private static final String REFUSED_ROUTE = "route-not-permitted";
    private final Evidence evidence;
    private final Schedules schedules;
    private final String scheduleViews;

    WholeMarks(Evidence evidence) {
        this.evidence = evidence;
        schedules = Schedules.of(evidence);
        scheduleViews = views(schedules);
    }

    /** What the other issuers ask for after gel, from the table itself. */
    private static String views(Schedules schedules) {
        List<String> views = new ArrayList<>();
        for (Schedule one : schedules.all()) {
            if (!one.superseded() && one.covers(Fill.GEL)) {
                String first = one.cycle().map(cycle -> ", first at year " + range(cycle.firstLowYears(),
                        cycle.firstHighYears()) + ", then every " + range(cycle.intervalLowYears(),
                        cycle.intervalHighYears()) + " years").orElse("");
                views.add(one.id() + ": " + one.rule() + first + " (" + one.source() + ", " + one.status().words() + ")");
            }
        }
        return "Issuers differ and are held side by side: " + String.join("; ", views);
    }

    private static String range(int low, int high) {
        return low == high ? Integer.toString(low) : low + " to " + high;
    }

    /** Inside: a plain yes in the table. Defensible: limited. Outside: no, or refused for the device. */
    Judged route(FellowPlan fellow, List<Device> devices, List<Candidate> candidates) {
        if (fellow.route().isEmpty()) {
            return Judged.notStated("a route is asked for");
        }
        Route route = fellow.route().get();
        Optional<Note> refused = candidates.stream().flatMap(one -> Stream.of(one.left(), one.right()))
                .flatMap(side -> side.reasons().stream()).filter(note -> note.code().equals(REFUSED_ROUTE)).findFirst();
        if (refused.isPresent()) {
            return Judged.of(Standing.OUTSIDE, route.key(), refused.get().text());
        }
        if (devices.isEmpty()) {
            return Judged.of(Standing.UNMARKED, route.key(), "no device of the list to hold it against");
        }
        Standing standing = Standing.INSIDE;
        List<String> answers = new ArrayList<>();
        for (Device device : devices) {
            RoutePermission answer = RoutePermission.of(route.key(), device.fill(),
                    device.heightCm() != device.widthCm(), evidence);
            Standing one = !answer.permitted() ? Standing.OUTSIDE
                    : answer.limited() ? Standing.DEFENSIBLE : Standing.INSIDE;
            standing = one.compareTo(standing) > 0 ? one : standing;
            String words = device.fill().key() + " by the " + route.key() + " route: " + answer.words() + " ("
                    + answer.source() + ", " + answer.status().words() + ")";
            if (!answers.contains(words)) {
                answers.add(words);
            }
        }
        answers.sort(null);
        return Judged.of(standing, route.key(), String.join("; ", answers));
    }

    /** Inside: in the band of the longer of the two. Defensible: longer by up to PRA-INCISION-LONGER. */
    Judged incision(FellowPlan fellow, List<Candidate> candidates) {
        String said = fellow.incisionCm().isPresent() ? Figures.cm(fellow.incisionCm().getAsDouble()) + " cm" : "not stated";
        Optional<Candidate.Incision> longest = candidates.stream().flatMap(one -> one.incision().stream())
                .max(Comparator.comparingDouble(Candidate.Incision::highCm)
                        .thenComparingDouble(Candidate.Incision::lowCm));
        if (longest.isEmpty()) {
            return Judged.of(Standing.UNMARKED, said, "no length is published for these devices by this route");
        }
        Candidate.Incision band = longest.get();
        String rule = "it needs " + Figures.cm(band.lowCm()) + " to " + Figures.cm(band.highCm()) + " cm (" + band.basis()
                + ")";
        if (fellow.incisionCm().isEmpty()) {
            return Judged.notStated(rule);
        }
        double stated = fellow.incisionCm().getAsDouble();
        double longer = evidence.constants().value("PRA-INCISION-LONGER");
        Standing standing = Exact.below(stated, band.lowCm()) || Exact.above(stated, band.highCm() + longer)
                ? Standing.OUTSIDE
                : Exact.above(stated, band.highCm()) ? Standing.DEFENSIBLE : Standing.INSIDE;
        return Judged.of(standing, said, rule);
    }

    /** Inside: in force and made for the fill, with a rule. Defensible: in force, states no interval. */
    Judged followUp(FellowPlan fellow, List<Device> devices) {
        if (fellow.schedule().isEmpty()) {
            return Judged.notStated("an imaging schedule is asked for");
        }
        String id = fellow.schedule().get();
        Optional<Schedule> found = schedules.find(id);
        if (found.isEmpty()) {
            return Judged.of(Standing.OUTSIDE, id, "there is no schedule " + id);
        }
        if (devices.isEmpty()) {
            return Judged.of(Standing.UNMARKED, id, "no device of the list to hold it against");
        }
        Schedule schedule = found.get();
        boolean gel = devices.stream().anyMatch(device -> device.fill() == Fill.GEL);
        return scheduled(schedule, gel ? Fill.GEL : Fill.SALINE).held(scheduleViews);
    }

    private static Judged scheduled(Schedule schedule, Fill fill) {
        String source = " (" + schedule.source() + ", " + schedule.status().words() + ")";
        if (schedule.superseded()) {
            return Judged.of(Standing.OUTSIDE, schedule.id(), "a later version replaced it: " + schedule.version() + source);
        }
        if (!schedule.covers(fill)) {
            return Judged.of(Standing.OUTSIDE, schedule.id(), "it is made for " + schedule.fillWords() + ", not for "
                    + fill.key() + source);
        }
        boolean whole = schedule.fillWords().equals(fill.key()) || schedule.fillWords().equals("all");
        if (!whole) {
            return Judged.of(Standing.OUTSIDE, schedule.id(), "it is made for " + schedule.fillWords() + " only" + source);
        }
        boolean plain = schedule.statesExams() || fill == Fill.SALINE;
        return Judged.of(plain ? Standing.INSIDE : Standing.DEFENSIBLE, schedule.id(), "for " + fill.key() + ": "
                + schedule.rule() + (plain ? "" : "; it gives no exam years") + source);
    }

    static Judged reason(FellowPlan fellow) {
        return fellow.reason().isBlank() ? Judged.notStated("a reason in words is asked for")
                : Judged.of(Standing.INSIDE, fellow.reason().strip(), "a reason is stated; its worth is for the tutor");
    }
}
