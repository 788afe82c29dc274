package domefold.practice;

import domefold.device.Catalogue;
import domefold.evidence.Evidence;
import domefold.plan.Plan;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/**
 * A fellow's plan, marked.
 *
 * @param number the practice case's number
 * @param level the practice case's level
 * @param marks every decision, in a fixed order
 */
public record Marking(int number, int level, List<Mark> marks) {
    private static final double PER_CENT = 100;

    public Marking {
        marks = List.copyOf(marks);
    }

    /**
     * Marks a plan against the engine's.
     *
     * @param plan the engine's plan of {@link FellowPlan#settingOn} of the case; its device list needs to hold the
     *     fellow's devices only
     * @param catalogue the list she chose from
     */
    public static Marking mark(PracticeCase of, FellowPlan fellow, Plan plan, Catalogue catalogue, Evidence evidence) {
        return new Marker(evidence).mark(of, fellow, plan, catalogue);
    }

    public double points() {
        return marks.stream().mapToDouble(Mark::points).sum();
    }

    public double outOf() {
        return marks.stream().mapToDouble(Mark::weight).sum();
    }

    /** The points in per cent of what there was to earn; 100 where there was nothing. */
    public double percent() {
        return outOf() == 0 ? PER_CENT : PER_CENT * points() / outOf();
    }

    /** Points and what there was to earn. */
    public record Score(double points, double outOf) {
        public Score plus(Score other) {
            return new Score(points + other.points, outOf + other.outOf);
        }

        public double percent() {
            return outOf == 0 ? PER_CENT : PER_CENT * points / outOf;
        }
    }

    /** The score by kind of decision, without those that were not marked. */
    public Map<Decision, Score> byDecision() {
        Map<Decision, Score> scores = new EnumMap<>(Decision.class);
        for (Mark mark : marks) {
            if (mark.weight() > 0) {
                scores.merge(mark.decision(), new Score(mark.points(), mark.weight()), Score::plus);
            }
        }
        return scores;
    }

    /** What cost points, dearest first. */
    public List<Mark> lost() {
        return marks.stream().filter(mark -> mark.points() < mark.weight())
                .sorted(Comparator.comparingDouble((Mark mark) -> mark.points() - mark.weight())).toList();
    }
}
