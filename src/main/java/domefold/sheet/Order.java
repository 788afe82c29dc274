package domefold.sheet;

import domefold.device.Device;
import domefold.patient.Side;
import domefold.record.ConsultRecord;
import domefold.record.Settlement;
import domefold.record.Versions;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * What has to be in theatre for one case.
 *
 * @param mark the record it was made from
 * @param lines LEFT first, then RIGHT; on each side the settled device, then its neighbours by volume
 */
public record Order(Mark mark, boolean catalogueInvented, List<Line> lines) {
    public Order {
        lines = List.copyOf(lines);
    }

    /** What a line is for. */
    public enum Purpose {
        SETTLED("settled"),
        SMALLER("smaller, in reserve"),
        SAME_VOLUME("same volume, in reserve"),
        LARGER("larger, in reserve");

        private final String words;

        Purpose(String words) {
            this.words = words;
        }

        public String words() {
            return words;
        }
    }

    /**
     * One device to have.
     *
     * @param fillMl the volume settled; the nominal one for a reserve
     * @param quantity pieces
     */
    public record Line(Side side, Purpose purpose, Device device, double fillMl, int quantity) {}

    /** The order of a record as it stands; whether it may be ordered from is {@code Allowed}'s to say. */
    public static Order of(ConsultRecord record, String sha256) {
        List<Line> lines = new ArrayList<>();
        for (Side side : Side.values()) {
            record.side(side).ifPresent(settled -> addSide(settled, lines));
        }
        return new Order(Mark.of(record, sha256), record.versions().catalogueInvented(), lines);
    }

    private static void addSide(Settlement settled, List<Line> lines) {
        lines.add(new Line(settled.side(), Purpose.SETTLED, settled.device(), settled.fillMl(), 1));
        for (Device near : settled.neighbours()) {
            double moreMl = near.nominalMl() - settled.device().nominalMl();
            Purpose purpose = moreMl < 0 ? Purpose.SMALLER : moreMl > 0 ? Purpose.LARGER : Purpose.SAME_VOLUME;
            lines.add(new Line(settled.side(), purpose, near, near.nominalMl(), 1));
        }
    }

    public Versions versions() {
        return mark.versions();
    }

    /** Pieces by order code over several cases, in the codes' own order. */
    public static Map<String, Integer> pieces(List<Order> orders) {
        Map<String, Integer> pieces = new TreeMap<>();
        for (Order order : orders) {
            order.lines().forEach(line -> pieces.merge(line.device().id(), line.quantity(), Integer::sum));
        }
        return pieces;
    }
}
