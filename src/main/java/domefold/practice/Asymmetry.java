package domefold.practice;

import domefold.evidence.Evidence;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.Map;
import java.util.Set;
import org.apache.commons.math3.distribution.NormalDistribution;

/**
 * Which kinds of asymmetry a woman has.
 *
 * <p>Each kind k has a leaning {@code sqrt(r) g + sqrt(1 - r) e_k}, g common to all and e_k its own, both standard
 * normal; she has the kind where the leaning passes the point that leaves the published share above it. The single
 * shares are published (PMID 17366695, 100 women, 4 examiners); r is the value at which they give that series' 88 %
 * with any kind and 65 % with more than one.
 */
final class Asymmetry {
    private final Map<Kind, Double> thresholds = new EnumMap<>(Kind.class);
    private final double common;
    private final double own;

    Asymmetry(Evidence evidence) {
        double shared = evidence.constants().value("PRA-CORR-ASYMMETRY");
        common = StrictMath.sqrt(shared);
        own = StrictMath.sqrt(1 - shared);
        NormalDistribution normal = new NormalDistribution(null, 0, 1);
        for (Kind kind : Kind.values()) {
            double share = Published.share(evidence, kind.ruleId()) / 100;
            thresholds.put(kind, normal.inverseCumulativeProbability(1 - share));
        }
    }

    /**
     * One woman's kinds.
     *
     * @param ptosisLeaning her leaning to ptosis, standard normal over all women
     */
    record Kinds(Set<Kind> present, double ptosisLeaning) {
        boolean has(Kind kind) {
            return present.contains(kind);
        }
    }

    Kinds draw(Dice dice) {
        double g = dice.normal();
        Set<Kind> present = EnumSet.noneOf(Kind.class);
        double ptosis = 0;
        for (Kind kind : Kind.values()) {
            double leaning = common * g + own * dice.normal();
            if (leaning > thresholds.get(kind)) {
                present.add(kind);
            }
            if (kind == Kind.PTOSIS) {
                ptosis = leaning;
            }
        }
        return new Kinds(present, ptosis);
    }
}
