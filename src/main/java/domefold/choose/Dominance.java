package domefold.choose;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * The devices that no other beats. A device is dominated by another that is at least as good in every criterion that
 * counts and better in one. A device is not held against another in what is known for one of them only.
 */
public final class Dominance {
    private Dominance() {}

    /**
     * Why a device is dominated.
     *
     * @param by id of one that dominates it
     * @param in the criteria in which that one is better
     */
    public record Dominated(String by, List<Criterion> in) {
        public Dominated {
            in = List.copyOf(in);
        }
    }

    /** The dominated rows by device id, each with one that dominates it; what is missing from it is not dominated. */
    public static Map<String, Dominated> of(List<Profiled> rows, List<Criterion> counting) {
        double[][] values = new double[rows.size()][counting.size()];
        for (int i = 0; i < rows.size(); i++) {
            for (int c = 0; c < counting.size(); c++) {
                double value = rows.get(i).value(counting.get(c)).orElse(Double.NaN);
                values[i][c] = counting.get(c).moreIsBetter() ? value : -value;
            }
        }
        Map<String, Dominated> dominated = new LinkedHashMap<>();
        for (int i = 0; i < rows.size(); i++) {
            for (int j = 0; j < rows.size(); j++) {
                if (i != j && dominates(values[j], values[i])) {
                    dominated.put(rows.get(i).id(), new Dominated(rows.get(j).id(), better(values[j], values[i], counting)));
                    break;
                }
            }
        }
        return dominated;
    }

    private static boolean dominates(double[] one, double[] other) {
        boolean better = false;
        for (int c = 0; c < one.length; c++) {
            if (one[c] < other[c] || Double.isNaN(one[c]) != Double.isNaN(other[c])) {
                return false;
            }
            better |= one[c] > other[c];
        }
        return better;
    }

    private static List<Criterion> better(double[] one, double[] other, List<Criterion> counting) {
        List<Criterion> in = new ArrayList<>();
        for (int c = 0; c < one.length; c++) {
            if (one[c] > other[c]) {
                in.add(counting.get(c));
            }
        }
        return in;
    }
}
