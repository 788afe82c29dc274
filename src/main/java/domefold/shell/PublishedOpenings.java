package domefold.shell;

import domefold.basics.Lists;
import domefold.device.Device;
import domefold.device.Fill;
import domefold.evidence.Table;
import domefold.outcome.Band;
import java.util.List;
import java.util.Optional;

/**
 * The plain lengths that common practice names for an opening through the fold (no source), kept beside the model as its check.
 *
 * @param rows as they stand in the incision table
 */
public record PublishedOpenings(List<Row> rows) {
    /**
     * One row.
     *
     * @param fill begins with the kind of device it is for
     * @param help how a gel device is brought in, {@code none} or {@code funnel}
     * @param size {@code >=}, {@code >}, {@code <=}, {@code =} for the device's volume against the bound, empty for every volume
     */
    record Row(String fill, String help, String size, double boundMl, Band lengthCm) {
        static Row of(Table.Row row) {
            String cell = row.text("volume_cc");
            int digits = 0;
            while (digits < cell.length() && "<>=".indexOf(cell.charAt(digits)) >= 0) {
                digits++;
            }
            return new Row(row.text("fill"), row.text("device_help"), cell.isEmpty() ? "" : digits == 0 ? "=" : cell.substring(0, digits),
                    cell.isEmpty() ? Double.NaN : Double.parseDouble(cell.substring(digits)),
                    new Band(row.number("incision_cm").orElseThrow(), row.number("incision_cm_high").orElseThrow()));
        }

        boolean holdsFor(double volumeMl) {
            return switch (size) {
                case "" -> true;
                case ">=" -> volumeMl >= boundMl;
                case "<=" -> volumeMl <= boundMl;
                case ">" -> volumeMl > boundMl;
                case "=" -> volumeMl == boundMl;
                default -> throw new IllegalArgumentException("no comparison " + size);
            };
        }
    }

    /** Those of the incision table. */
    public static PublishedOpenings of(Table incision) {
        return new PublishedOpenings(Lists.map(Lists.where(incision.rows(), row -> row.text("row_type").equals("length")
                && row.text("status").equals("practice") && row.text("route").equals("inframammary")
                && row.number("incision_cm_high").isPresent()), Row::of));
    }

    /** The range for a device; over all rows of the device's own size, else the general one. */
    public Optional<Band> practice(Device device, boolean funnel) {
        Optional<Band> found = Optional.empty();
        boolean ownSize = false;
        for (Row row : rows) {
            if (row.fill().startsWith(device.fill().key())
                    && (device.fill() == Fill.SALINE || row.help().equals(funnel ? "funnel" : "none"))
                    && row.holdsFor(device.nominalMl())) {
                Band band = row.lengthCm();
                boolean sized = !row.size().isEmpty();
                found = Optional.of(sized && ownSize
                        ? new Band(Math.min(found.get().low(), band.low()), Math.max(found.get().high(), band.high())) : band);
                ownSize = sized;
            }
        }
        return found;
    }
}
