package domefold.sheet;

import domefold.outcome.Numbers;
import domefold.record.Versions;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** The order of one case, or of every case of a day, on one sheet. */
public final class OrderSheet {
    private static final List<String> HEADER =
            List.of("Side", "Order code", "Device", "Size", "Width × projection", "For", "Pieces");
    private static final List<Integer> WEIGHTS = List.of(12, 20, 32, 20, 24, 20, 12);

    private OrderSheet() {}

    /** The order of one case. */
    public static Sheet of(Order order) {
        return sheet("Order sheet", List.of(order), Optional.empty());
    }

    /** Every order of a day, in the order given. */
    public static Sheet ofDay(LocalDate day, List<Order> orders) {
        return sheet("Order list for " + DayText.both(day), orders, Optional.of(day));
    }

    private static Sheet sheet(String title, List<Order> orders, Optional<LocalDate> day) {
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Block.Words("LEFT and RIGHT are the patient's own. Check side, device and size against the record"
                + " and against the label before opening a pack.", false));
        for (Order order : orders) {
            blocks.add(new Block.Heading("Case " + order.mark().id()));
            blocks.add(new Block.Grid(HEADER, WEIGHTS, order.lines().stream().map(OrderSheet::row).toList()));
            blocks.add(new Block.Words(order.mark().line(), true));
        }
        blocks.add(new Block.Heading("Pieces by order code"));
        blocks.add(new Block.Boxes(Order.pieces(orders).entrySet().stream()
                .map(entry -> new Block.Box(entry.getKey() + ": " + entry.getValue(), false)).toList()));
        lists(orders).forEach(list -> blocks.add(new Block.Words(list, true)));
        if (orders.isEmpty()) {
            blocks.add(new Block.Words("No case has anything to order" + day.map(on -> " for " + DayText.both(on)).orElse("")
                    + ".", false));
        }
        blocks.add(new Block.Boxes(List.of(new Block.Box("side checked against the record", false),
                new Block.Box("size checked against the record", false), new Block.Box("ordered", false),
                new Block.Box("arrived", false))));
        blocks.add(new Block.Signatures(List.of("Ordered by", "Checked by")));
        boolean invented = orders.stream().anyMatch(Order::catalogueInvented);
        return new Sheet(title, orders.stream().map(Order::mark).toList(), invented
                ? List.of("INVENTED DEVICE LIST: made by a geometric rule; nobody sells these devices.") : List.of(), blocks);
    }

    private static List<String> row(Order.Line line) {
        return List.of(line.side().name(), line.device().id(), DeviceWords.kind(line.device()),
                size(line), Numbers.cm(line.device().widthCm()) + " × "
                        + Numbers.cm(line.device().projectionCm()),
                line.purpose().words(), Integer.toString(line.quantity()));
    }

    /** The listed size, and the fill where it differs from it. */
    static String size(Order.Line line) {
        String listed = DeviceWords.exactMl(line.device().nominalMl());
        return line.fillMl() == line.device().nominalMl() ? listed
                : listed + ", filled to " + DeviceWords.exactMl(line.fillMl());
    }

    private static Set<String> lists(List<Order> orders) {
        Set<String> lists = new LinkedHashSet<>();
        for (Order order : orders) {
            lists.add("Device list: " + listWords(order.versions()));
        }
        return lists;
    }

    /** Name, date and digest of a device list. */
    static String listWords(Versions versions) {
        return versions.catalogueName() + ", " + (versions.catalogueDate().isBlank() ? "no date stated"
                : "dated " + versions.catalogueDate()) + ", sha256 " + versions.catalogueSha256();
    }
}
