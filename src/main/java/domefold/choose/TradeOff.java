package domefold.choose;

import domefold.device.Device;
import domefold.evidence.Constants;
import domefold.outcome.Figures;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/**
 * What one device gains and gives up against another, in words and numbers.
 *
 * @param one the device spoken of
 * @param other the device it is held against
 * @param gains in what it is better
 * @param givesUp in what it is worse
 * @param even in what there is nothing between them, criterion words only
 */
public record TradeOff(Device one, Device other, List<String> gains, List<String> givesUp, List<String> even) {
    public TradeOff {
        gains = List.copyOf(gains);
        givesUp = List.copyOf(givesUp);
        even = List.copyOf(even);
    }

    /** {@code one} against {@code other}, over every criterion known for both; what is too small to matter is even. */
    public static TradeOff between(Profiled one, Profiled other, Constants constants) {
        List<String> gains = new ArrayList<>();
        List<String> givesUp = new ArrayList<>();
        List<String> even = new ArrayList<>();
        for (Criterion criterion : Criterion.values()) {
            OptionalDouble a = one.value(criterion);
            OptionalDouble b = other.value(criterion);
            if (a.isEmpty() || b.isEmpty()) {
                continue;
            }
            double difference = a.getAsDouble() - b.getAsDouble();
            if (Math.abs(difference) <= criterion.evenBelow(constants)) {
                even.add(criterion.words());
            } else {
                boolean better = criterion.moreIsBetter() == difference > 0;
                (better ? gains : givesUp).add(words(criterion, a.getAsDouble(), b.getAsDouble()));
            }
        }
        return new TradeOff(one.candidate().device(), other.candidate().device(), gains, givesUp, even);
    }

    private static String words(Criterion criterion, double a, double b) {
        double size = Math.abs(a - b);
        boolean more = a > b;
        return switch (criterion) {
            case TISSUE_MARGIN -> Figures.cm(size) + " cm " + (more ? "more" : "less") + " margin to the width ceiling";
            case LOOK -> (more ? "further from" : "nearer to") + " the look wished";
            case SIZE -> Figures.ml(size) + " mL " + (more ? "further from" : "nearer to") + " the size wished";
            case SCAR -> "opening " + Figures.cm(size) + " cm " + (more ? "longer" : "shorter");
            case SOFTNESS -> "feels " + (more ? "softer" : "less soft");
            case IMAGING -> a == 0 ? "no imaging" : b == 0 ? "imaging to the horizon: " + Figures.of(a, 0, 1) + " exams"
                    : Figures.of(size, 0, 1) + (more ? " more" : " fewer") + " exams to the horizon";
            case EXCHANGE -> (more ? "easier" : "harder") + " to exchange";
            case ADJUSTMENT -> Figures.ml(a) + " mL steps against " + Figures.ml(b) + " mL";
            case EDGES -> "ripples " + (more ? "more" : "less") + " under this cover";
            case COST -> Figures.of(size, 0, 0) + (more ? " more" : " less") + " in the practice's own prices";
        };
    }

    /** The whole comparison in one sentence. */
    public String sentence() {
        return name(one) + " against " + name(other) + ": "
                + (gains.isEmpty() ? "gains nothing" : String.join(", ", gains)) + "; "
                + (givesUp.isEmpty() ? "gives up nothing" : String.join(", ", givesUp)) + ".";
    }

    private static String name(Device device) {
        return device.fill().key() + " " + Figures.ml(device.nominalMl()) + " " + device.profile().key();
    }
}
