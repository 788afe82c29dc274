package domefold.shell;

import domefold.basics.Digits;
import domefold.basics.Lists;
import domefold.evidence.Constants;
import domefold.evidence.Table;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/**
 * The one number of the gel plug that can be told from published lengths: the factor chi / (1 + e).
 * <pre>
 *   ln length = ln factor + ln(pi d(V) / 2),  d(V) = d(V0) (V / V0)^(1/3)
 * </pre>
 * fitted by least squares with the power of the volume fixed; d is the plug of the moderate-plus ladder shape, which is
 * what the published rows used, so other profiles get the same opening (nothing published separates them).
 *
 * @param factor chi / (1 + e), no unit
 * @param relativeSd spread of the rows about the fit, on ln length
 * @param rows how many rows it rests on
 * @param basis which rows, in words, with status
 */
public record PlugFit(double factor, double relativeSd, int rows, String basis) {

    /** The cadaver rows: gel by hand through the fold, 100 to 700 mL. */
    public static PlugFit byHand(Table incision, Constants constants) {
        List<Double> logs = new ArrayList<>();
        double least = Double.MAX_VALUE;
        double most = 0;
        for (Table.Row row : incision.rows()) {
            OptionalDouble volume = plainNumber(row.text("volume_cc"));
            if (row.text("row_type").equals("length") && row.text("device_help").equals("none")
                    && row.text("status").equals("read") && volume.isPresent()) {
                double length = row.number("incision_cm").orElseThrow();
                logs.add(Math.log(length / unitSlitCm(volume.getAsDouble(), constants)));
                least = Math.min(least, volume.getAsDouble());
                most = Math.max(most, volume.getAsDouble());
            }
        }
        if (logs.size() < 2) {
            throw new IllegalArgumentException("the incision table has fewer than two cadaver rows");
        }
        double mean = Lists.sum(logs, x -> x) / logs.size();
        double squares = Lists.sum(logs, x -> (x - mean) * (x - mean));
        double sd = Math.sqrt(squares / (logs.size() - 1));
        return new PlugFit(Math.exp(mean), sd, logs.size(), "gel plug fitted to " + logs.size() + " cadaver rows, "
                + Math.round(least) + " to " + Math.round(most) + " mL (largest device that passes; read, one small study)");
    }

    /** The one published funnel row; it states no volume, so one is assumed. */
    public static PlugFit withFunnel(Table incision, Constants constants) {
        for (Table.Row row : incision.rows()) {
            if (row.text("row_type").equals("length") && row.text("device_help").equals("funnel")
                    && row.text("status").equals("read") && row.number("sd").isPresent()) {
                double length = row.number("incision_cm").orElseThrow();
                double sd = row.number("sd").getAsDouble() / length;
                double volume = constants.value("INC-FUNNEL-VOLUME");
                return new PlugFit(length / unitSlitCm(volume, constants), sd, 1, "gel plug through a funnel, one published mean of "
                                + length + " cm (SD " + row.text("sd") + "; read), taken at " + Math.round(volume)
                                + " mL (assumed: the review states no volume)");
            }
        }
        throw new IllegalArgumentException("the incision table has no funnel row with a spread");
    }

    /** Opening for that volume. */
    public double typicalCm(double volumeMl, Constants constants) {
        return factor * unitSlitCm(volumeMl, constants);
    }

    /** Half the girth of the moderate-plus plug of that volume: the opening at factor 1. */
    static double unitSlitCm(double volumeMl, Constants constants) {
        SizeLadder shape = SizeLadder.of(constants.value("LIST-TAU-MODERATE-PLUS"), constants.value("LIST-FORM"), 1);
        double area = GelPlug.deviceAreaCm2(shape.widthCm(), shape.projectionCm(), constants.value("INC-AREA-SHARE"));
        double unit = GelPlug.diameterCm(area, 1);
        return GelPlug.slitCm(unit * Math.pow(volumeMl, constants.value("INC-SLOPE")), 1);
    }

    private static OptionalDouble plainNumber(String cell) {
        return Digits.isDecimal(cell) ? OptionalDouble.of(Double.parseDouble(cell)) : OptionalDouble.empty();
    }
}
