package domefold.practice;

import domefold.device.Catalogue;
import domefold.device.Device;
import domefold.device.Fill;
import domefold.engine.LabelAge;
import domefold.evidence.Constants;
import domefold.evidence.Evidence;
import domefold.outcome.Note;
import domefold.patient.Measure;
import domefold.patient.Readings;
import domefold.patient.Side;
import domefold.plan.Candidate;
import domefold.plan.Plan;
import domefold.plan.SideFit;
import domefold.plan.Verdict;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Marks many plans with the tables read once. Weights are data: a missed block or flag weighs by its own
 * {@code PRA-FLAG-...}, every decision by {@code PRA-WEIGHT-...}, credit by {@code PRA-CREDIT-...}.
 */
public final class Marker {
    private static final Set<String> REASONS_TO_DECLINE = Set.of(Trap.AGE_BELOW_LABEL.code(),
            Trap.PTOSIS_FOR_LIFT.code(), Trap.WISH_BEYOND_BASE.code(), "irradiation", "nicotine");
    private final Constants constants;
    private final SideMarks sides;
    private final WholeMarks whole;

    public Marker(Evidence evidence) {
        constants = evidence.constants();
        sides = new SideMarks(evidence);
        whole = new WholeMarks(evidence);
    }

    /** As {@link Marking#mark}. */
    public Marking mark(PracticeCase of, FellowPlan fellow, Plan plan, Catalogue catalogue) {
        Map<String, String> flags = Flags.of(plan, constants);
        List<Mark> marks = new ArrayList<>();
        proceed(fellow, plan, flags, catalogue).ifPresent(marks::add);
        warnings(of, fellow, flags, marks);
        if (!fellow.declined()) {
            for (Side side : Side.values()) {
                side(side, of, fellow, plan, catalogue, marks);
            }
            bothSides(fellow, plan, catalogue, marks);
        }
        marks.add(weighed(Decision.REASON, Optional.empty(), WholeMarks.reason(fellow)));
        return new Marking(of.number(), of.level(), marks);
    }

    /** Marked where something blocks (a contraindication, an age below every label), or where she declines. */
    private Optional<Mark> proceed(FellowPlan fellow, Plan plan, Map<String, String> flags,
            Catalogue catalogue) {
        boolean blocked = !plan.blocked().isEmpty() || belowEveryLabel(plan);
        if (!blocked && !fellow.declined()) {
            return Optional.empty();
        }
        String said = fellow.declined() ? "not now" : "operate";
        String why = blocked ? Stream.concat(plan.blocked().stream().map(Note::text),
                        Stream.ofNullable(flags.get(Trap.AGE_BELOW_LABEL.code()))).collect(Collectors.joining("; "))
                : Stream.concat(flags.keySet().stream().filter(REASONS_TO_DECLINE::contains).map(flags::get),
                        nothingFits(plan, catalogue).stream()).collect(Collectors.joining("; "));
        Standing standing = blocked ? fellow.declined() ? Standing.INSIDE : Standing.OUTSIDE
                : why.isEmpty() ? Standing.OUTSIDE : Standing.DEFENSIBLE;
        return Optional.of(weighed(Decision.PROCEED, Optional.empty(),
                Judged.of(standing, said, why.isEmpty() ? "nothing in the case speaks against operating" : why)));
    }

    private boolean belowEveryLabel(Plan plan) {
        OptionalDouble age = plan.of().patient().value(Measure.AGE);
        return age.isPresent() && Stream.of(Fill.values())
                .allMatch(fill -> LabelAge.below(age.getAsDouble(), fill, constants));
    }

    /** Known only where the plan holds the whole list. */
    private static Optional<String> nothingFits(Plan plan, Catalogue catalogue) {
        if (plan.candidates().size() < catalogue.devices().size()) {
            return Optional.empty();
        }
        List<String> without = new ArrayList<>();
        for (Side side : Side.values()) {
            if (plan.candidates().stream().allMatch(one -> one.side(side).verdict() == Verdict.OUTSIDE)) {
                without.add(side.name());
            }
        }
        return without.isEmpty() ? Optional.empty() : Optional.of("no device of the list stays inside the limits of the "
                + String.join(" and the ", without) + " side");
    }

    private void warnings(PracticeCase of, FellowPlan fellow, Map<String, String> flags, List<Mark> marks) {
        flags.forEach((code, text) -> {
            boolean named = fellow.warnings().contains(code);
            marks.add(warning(code, named ? Standing.INSIDE : Standing.OUTSIDE, named ? "named" : "not named", text,
                    constants.value(Flags.weightId(code))));
        });
        Set<String> unfounded = new TreeSet<>(fellow.warnings());
        unfounded.removeAll(flags.keySet());
        if (unfounded.contains(Trap.CONSTRICTED_BASE.code()) && of.sightings().stream().anyMatch(seen -> seen.kind() == Kind.BASE_CONSTRICTION)) {
            unfounded.remove(Trap.CONSTRICTED_BASE.code());
            marks.add(new Mark(Decision.WARNING, Optional.empty(), Optional.of(Trap.CONSTRICTED_BASE.code()), Standing.UNMARKED,
                    "named", "the eye sees it; the readings stay above the limits that raise it", "", Optional.empty(), List.of(), 0, 0));
        }
        unfounded.forEach(code -> marks.add(warning(code, Standing.OUTSIDE, "named", "nothing in the case raises it",
                constants.value("PRA-WEIGHT-UNFOUNDED"))));
    }

    private Mark warning(String code, Standing standing, String said, String why, double weight) {
        return new Mark(Decision.WARNING, Optional.empty(), Optional.of(code), standing, said, why, "",
                Optional.empty(), List.of(), weight, credit(standing));
    }

    private void side(Side side, PracticeCase of, FellowPlan fellow, Plan plan, Catalogue catalogue, List<Mark> marks) {
        SidePlan said = fellow.side(side);
        Readings readings = of.of().side(side).readings();
        Optional<Device> device = DeviceMarks.find(said, catalogue);
        Optional<SideFit> fit = candidate(said, plan).map(one -> one.side(side));
        marks.add(weighed(Decision.WIDTH_CEILING, Optional.of(side), sides.ceiling(said, plan.side(side), readings)));
        marks.add(weighed(Decision.VOLUME, Optional.of(side), sides.volume(said, plan.side(side))));
        marks.add(weighed(Decision.POCKET, Optional.of(side), sides.pocket(said, plan.side(side), readings)));
        marks.add(weighed(Decision.FOLD, Optional.of(side), sides.fold(said, plan.side(side), fit, readings)));
        marks.add(weighed(Decision.DEVICE, Optional.of(side), DeviceMarks.device(said, fit)));
        marks.add(weighed(Decision.FILL, Optional.of(side), DeviceMarks.fill(said, device, fit)));
        marks.add(weighed(Decision.PROFILE, Optional.of(side),
                DeviceMarks.profile(said, device, of.of().wishes())));
    }

    private void bothSides(FellowPlan fellow, Plan plan, Catalogue catalogue, List<Mark> marks) {
        List<Device> devices = new ArrayList<>();
        List<Candidate> candidates = new ArrayList<>();
        for (Side side : Side.values()) {
            DeviceMarks.find(fellow.side(side), catalogue).ifPresent(devices::add);
            candidate(fellow.side(side), plan).ifPresent(candidates::add);
        }
        marks.add(weighed(Decision.ROUTE, Optional.empty(), whole.route(fellow, devices, candidates)));
        marks.add(weighed(Decision.INCISION, Optional.empty(), whole.incision(fellow, candidates)));
        marks.add(weighed(Decision.FOLLOW_UP, Optional.empty(), whole.followUp(fellow, devices)));
    }

    private static Optional<Candidate> candidate(SidePlan said, Plan plan) {
        return said.deviceId().flatMap(id -> plan.candidates().stream()
                .filter(one -> one.device().id().equals(id)).findFirst());
    }

    private Mark weighed(Decision decision, Optional<Side> side, Judged judged) {
        boolean counts = judged.standing() != Standing.UNMARKED;
        return new Mark(decision, side, Optional.empty(), judged.standing(), judged.said(), judged.decidedBy(),
                judged.readingError(), judged.bothHeld(), judged.working(),
                counts ? constants.value(decision.weightId()) : 0, counts ? credit(judged.standing()) : 0);
    }

    private double credit(Standing standing) {
        return constants.value("PRA-CREDIT-" + standing.name());
    }
}
