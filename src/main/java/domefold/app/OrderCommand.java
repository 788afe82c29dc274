package domefold.app;

import domefold.export.Lists;
import domefold.outcome.Refusal;
import domefold.records.Bookings;
import domefold.records.RecordHeader;
import domefold.records.RecordList;
import domefold.report.SheetText;
import domefold.sheet.Allowed;
import domefold.sheet.Order;
import domefold.sheet.OrderSheet;
import domefold.sheet.Sheet;
import domefold.store.Stored;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

@Command(name = "order", description = {"The order list of a signed record, or of every operation booked for a day, with the"
        + " neighbouring sizes.", ""},
        footer = {"", "Example: domefold records order --day 2026-03-20"})
final class OrderCommand implements Runner {
    private final Domefold root;

    @Parameters(paramLabel = "ID", arity = "0..1", description = "The case code.")
    private String id;

    @Option(names = "--day", paramLabel = "DATE", description = "Every case whose operation is booked for that day.")
    private String day;

    @Mixin
    private AsList as;

    OrderCommand(Domefold root) {
        this.root = root;
    }

    @Override
    public int run() throws Exception {
        if (id == null == (day == null)) {
            throw new WrongUsage("name one case, or a day with --day 2026-03-20");
        }
        RecordRoom room = new RecordRoom(root.homes());
        if (id != null) {
            Stored stored = room.newest(id);
            answer(List.of(order(stored)), OrderSheet.of(order(stored)));
            return Exit.DONE;
        }
        LocalDate on = Days.day(day);
        RecordList list = room.list(root.console());
        List<Order> orders = new ArrayList<>();
        for (RecordHeader header : Bookings.operatedOn(list.all(), on)) {
            try {
                orders.add(order(room.newest(header.id())));
            } catch (Refusal notToOrder) {
                root.console().say("not on the list: " + notToOrder.getMessage());
            }
        }
        if (list.isEmpty()) {
            as.answer(root.console(), () -> RecordList.NONE_YET + "\n", () -> Lists.ofOrders(orders));
        } else {
            answer(orders, OrderSheet.ofDay(on, orders));
        }
        return Exit.DONE;
    }

    private static Order order(Stored stored) {
        Allowed.toOrder(stored.record());
        return Order.of(stored.record(), stored.loaded().sha256());
    }

    private void answer(List<Order> orders, Sheet sheet) {
        as.answer(root.console(), () -> SheetText.of(sheet), () -> Lists.ofOrders(orders));
    }
}
