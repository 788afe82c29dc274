package domefold.shell;

import domefold.device.Device;
import domefold.device.Fill;
import domefold.evidence.Table;
import domefold.outcome.Band;
import java.util.Optional;

/** The plain lengths that common practice names for an opening, kept beside the model as its check. */
public final class PublishedOpenings {
    private PublishedOpenings() {}

    /** The range that common practice names through the fold (no source); over all rows of the device's own size, else the general one. */
    public static Optional<Band> practice(Table incision, Device device, boolean funnel) {
        Optional<Band> found = Optional.empty();
        boolean ownSize = false;
        for (Table.Row row : incision.rows()) {
            if (row.text("row_type").equals("length") && row.text("status").equals("practice")
                    && row.text("route").equals("inframammary") && row.number("incision_cm_high").isPresent()
                    && row.text("fill").startsWith(device.fill().key())
                    && (device.fill() == Fill.SALINE || row.text("device_help").equals(funnel ? "funnel" : "none"))
                    && within(row.text("volume_cc"), device.nominalMl())) {
                Band band = new Band(row.number("incision_cm").orElseThrow(), row.number("incision_cm_high").orElseThrow());
                boolean sized = !row.text("volume_cc").isEmpty();
                found = Optional.of(sized && ownSize
                        ? new Band(Math.min(found.get().low(), band.low()), Math.max(found.get().high(), band.high())) : band);
                ownSize = sized;
            }
        }
        return found;
    }

    /** Cells such as {@code >=400}, {@code >450}, {@code <=400}; an empty one holds for every volume. */
    private static boolean within(String cell, double volumeMl) {
        if (cell.isEmpty()) {
            return true;
        }
        double bound = Double.parseDouble(cell.replaceAll("[<>=]", ""));
        if (cell.startsWith(">=")) {
            return volumeMl >= bound;
        }
        if (cell.startsWith("<=")) {
            return volumeMl <= bound;
        }
        return cell.startsWith(">") ? volumeMl > bound : volumeMl == bound;
    }
}
