package domefold.app;

import domefold.outcome.Refusal;
import domefold.records.DueList;
import domefold.records.RecordHeader;
import domefold.records.RecordList;
import domefold.records.RecordQuery;
import domefold.report.RecordsText;
import domefold.report.SheetText;
import domefold.sheet.Allowed;
import domefold.sheet.Order;
import domefold.sheet.OrderSheet;
import domefold.store.AnswerJson;
import domefold.store.RecordIndex;
import domefold.store.Stored;
import domefold.store.Verification;
import java.io.IOException;
import java.nio.file.Files;
import java.time.YearMonth;
import java.time.format.DateTimeParseException;
import java.util.List;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

@Command(name = "records", description = {"The coordinator's shell, or one command of it.", ""},
        footer = {"", "Example: domefold records find 2026-03"})
final class RecordsCommand implements Runner {
    private final Domefold root;

    RecordsCommand(Domefold root) {
        this.root = root;
    }

    CommandLine line() {
        return new CommandLine(this).addSubcommand(new Find(root)).addSubcommand(new Show(root))
                .addSubcommand(new ExportCommand(root)).addSubcommand(new Due(root)).addSubcommand(new OrderOf(root))
                .addSubcommand(new Verify(root));
    }

    @Override
    public int run() throws Exception {
        return root.faces().records(root.bench(null));
    }

    /** Every record that can be read; the others are named on standard error, so that nobody takes them for absent. */
    private static RecordList readable(Domefold root) throws IOException {
        RecordIndex.Opened opened = new RecordRoom(root.homes()).open();
        opened.unreadable().forEach((id, why) -> root.console().say("case " + id + " is not listed: its record " + why));
        return opened.list();
    }

    @Command(name = "find", description = {"Records by words: case, date, status, device.", ""},
            footer = {"", "Example: domefold records find signed saline"})
    static final class Find implements Runner {
        private final Domefold root;

        @Parameters(paramLabel = "WORDS", arity = "0..*", description = "Words that a record must hold; none lists all.")
        private List<String> words = List.of();

        @Mixin
        private As as;

        Find(Domefold root) {
            this.root = root;
        }

        @Override
        public int run() throws Exception {
            RecordList list = readable(root);
            String text = String.join(" ", words);
            List<RecordHeader> found = text.isBlank() ? list.all() : list.find(RecordQuery.of(text));
            root.console().answer(as.json(), () -> RecordsText.found(found, list.nothingFound(text)),
                    () -> AnswerJson.text(RecordsJson.found(found)));
            return Exit.DONE;
        }
    }

    @Command(name = "show", description = {"One record: its summary, or with json the file itself.", ""},
            footer = {"", "Example: domefold records show K-2041"})
    static final class Show implements Runner {
        private final Domefold root;

        @Parameters(paramLabel = "ID", description = "The case code.")
        private String id;

        @Mixin
        private As as;

        Show(Domefold root) {
            this.root = root;
        }

        @Override
        public int run() throws Exception {
            Stored stored = new RecordRoom(root.homes()).newest(id);
            if (as.json()) {
                root.console().bytes(Files.readAllBytes(stored.file()));
            } else {
                root.console().text(ConsultSaving.summary(stored.loaded()));
            }
            return Exit.DONE;
        }
    }

    @Command(name = "due", description = {"Who is due for imaging in a month.", ""},
            footer = {"", "Example: domefold records due 2031-03"})
    static final class Due implements Runner {
        private final Domefold root;

        @Parameters(paramLabel = "MONTH", arity = "0..1", description = "As 2031-03; this month without it.")
        private String month;

        @Mixin
        private As as;

        Due(Domefold root) {
            this.root = root;
        }

        @Override
        public int run() throws Exception {
            YearMonth asked = month == null ? YearMonth.now(root.console().clock()) : month(month);
            List<DueList.Due> due = DueList.of(readable(root).all(), asked);
            root.console().answer(as.json(), () -> RecordsText.due(asked, due), () -> AnswerJson.text(RecordsJson.due(asked, due)));
            return Exit.DONE;
        }

        private static YearMonth month(String typed) {
            try {
                return YearMonth.parse(typed);
            } catch (DateTimeParseException wrong) {
                throw new WrongUsage("'" + typed + "' is no month; write year and month as 2031-03");
            }
        }
    }

    @Command(name = "order", description = {"The order list of a signed record, with the neighbouring sizes.", ""},
            footer = {"", "Example: domefold records order K-2041"})
    static final class OrderOf implements Runner {
        private final Domefold root;

        @Parameters(paramLabel = "ID", description = "The case code.")
        private String id;

        @Mixin
        private As as;

        OrderOf(Domefold root) {
            this.root = root;
        }

        @Override
        public int run() throws Exception {
            Stored stored = new RecordRoom(root.homes()).newest(id);
            Allowed.toOrder(stored.record());
            Order order = Order.of(stored.record(), stored.loaded().sha256());
            root.console().answer(as.json(), () -> SheetText.of(OrderSheet.of(order)),
                    () -> AnswerJson.text(RecordsJson.order(id, order)));
            return Exit.DONE;
        }
    }

    @Command(name = "verify", description = {"Checks every record file against the audit logs; a finding is refused (exit code"
            + " 3).", ""}, footer = {"", "Example: domefold records verify"})
    static final class Verify implements Runner {
        private final Domefold root;

        @Mixin
        private As as;

        Verify(Domefold root) {
            this.root = root;
        }

        @Override
        public int run() throws Exception {
            Verification check = Verification.of(root.homes().records());
            root.console().answer(as.json(), () -> RecordsJson.verifyText(check),
                    () -> AnswerJson.text(RecordsJson.verify(check)));
            if (!check.sound()) {
                Verification.Finding first = check.findings().get(0);
                throw new Refusal(first.code(), first.where(), first.text());
            }
            return Exit.DONE;
        }
    }
}
