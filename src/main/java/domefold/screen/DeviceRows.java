package domefold.screen;

import domefold.choose.Order;
import domefold.interview.Interview;
import domefold.patient.Side;
import domefold.plan.Candidate;
import domefold.plan.Plan;
import domefold.plan.Verdict;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/** The devices of a plan as the list shows them: which, and in what order. */
public final class DeviceRows {
    private DeviceRows() {}

    /** The rows in their order; none before there is a plan. */
    public static List<Candidate> of(Interview interview, DevicesState state) {
        Optional<Plan> plan = interview.plan();
        if (plan.isEmpty()) {
            return List.of();
        }
        return plan.get().candidates().stream()
                .filter(candidate -> !state.fittingOnly() || both(candidate) != Verdict.OUTSIDE
                        || candidate.left().verdict() != Verdict.OUTSIDE || candidate.right().verdict() != Verdict.OUTSIDE)
                .sorted(order(interview, state.sort()))
                .toList();
    }

    /** The stricter of both sides' verdicts. */
    public static Verdict both(Candidate candidate) {
        return candidate.left().verdict().and(candidate.right().verdict());
    }

    private static Comparator<Candidate> order(Interview interview, DevicesState.Sort sort) {
        return switch (sort) {
            case WISHES -> {
                Map<String, Order.Place> places = interview.byWishes().places();
                yield Comparator.comparing(DeviceRows::both).thenComparingInt(c ->
                        places.containsKey(c.device().id()) ? places.get(c.device().id()).rank() : Integer.MAX_VALUE);
            }
            case VERDICT -> Comparator.comparing(DeviceRows::both).thenComparingDouble(c -> fromWish(interview, c));
            case VOLUME -> Comparator.comparingDouble(c -> c.device().nominalMl());
            case WIDTH -> Comparator.comparingDouble(c -> c.device().widthCm());
            case PROJECTION -> Comparator.comparingDouble(c -> c.device().projectionCm());
            case STABILITY -> Comparator.comparingDouble(c -> -lower(c));
            case INCISION -> Comparator.comparingDouble(c -> c.incision()
                    .map(i -> i.typicalCm().orElse((i.lowCm() + i.highCm()) / 2)).orElse(Double.MAX_VALUE));
            case EXAMS -> Comparator.comparingInt(c -> c.followUp().map(Candidate.FollowUp::examsHigh).orElse(0));
        };
    }

    /** Distance to the size wished, else to the middle of what both sides start from, in mL. */
    private static double fromWish(Interview interview, Candidate candidate) {
        OptionalDouble wish = interview.dossier().patientCase().wishes().sizeWishMl();
        double aim = wish.orElseGet(() -> middle(interview.plan().orElseThrow()));
        return Math.abs(candidate.device().nominalMl() - aim);
    }

    private static double middle(Plan plan) {
        double sum = 0;
        int sides = 0;
        for (Side side : Side.values()) {
            OptionalDouble startMl = plan.side(side).startingVolumeMl();
            if (startMl.isPresent()) {
                sum += startMl.getAsDouble();
                sides++;
            }
        }
        return sides == 0 ? 0 : sum / sides;
    }

    private static double lower(Candidate candidate) {
        return Math.min(candidate.left().fitShare().orElse(0), candidate.right().fitShare().orElse(0));
    }
}
