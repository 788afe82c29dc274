package domefold.app;

import domefold.export.Lists;
import domefold.outcome.Refusal;
import domefold.records.DueList;
import domefold.records.RecordHeader;
import domefold.records.RecordList;
import domefold.records.RecordQuery;
import domefold.report.RecordsText;
import domefold.store.AnswerJson;
import domefold.store.Verification;
import java.time.YearMonth;
import java.util.List;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

@Command(name = "records", description = {"The coordinator's shell, or one command of it.", ""},
        footer = {"", "Example: domefold records find 2026-03"})
final class RecordsCommand implements Runner {
    static final List<String> LEAVES = List.of("find", "show", "export", "due", "order", "verify", "amend", "mark", "implanted",
            "backup", "restore");

    private final Domefold root;

    @CommandLine.Spec
    private CommandLine.Model.CommandSpec spec;

    RecordsCommand(Domefold root) {
        this.root = root;
    }

    /** One of the commands below this one. */
    static Object leaf(String name, Domefold root) {
        return switch (name) {
            case "find" -> new Find(root);
            case "show" -> new ShowCommand(root);
            case "export" -> new ExportCommand(root);
            case "due" -> new Due(root);
            case "order" -> new OrderCommand(root);
            case "verify" -> new Verify(root);
            case "amend" -> new AmendCommand(root);
            case "mark" -> new MarkCommand(root);
            case "implanted" -> new ImplantedCommand(root);
            case "backup" -> new BackupCommand(root);
            case "restore" -> new RestoreCommand(root);
            default -> throw new IllegalArgumentException("no command " + name);
        };
    }

    @Override
    public int run() throws Exception {
        if (!root.console().terminal()) {
            root.console().text(spec.commandLine().getUsageMessage(CommandLine.Help.Ansi.OFF));
            throw new WrongUsage("the coordinator's shell needs a terminal; name one of its commands");
        }
        return root.faces().records(root.bench(null));
    }

    @Command(name = "find", description = {"Records by words: case, date, status, device.", ""},
            footer = {"", "Example: domefold records find signed saline"})
    static final class Find implements Runner {
        private final Domefold root;

        @Parameters(paramLabel = "WORDS", arity = "0..*", description = "Words that a record must hold; none lists all.")
        private List<String> words = List.of();

        @Mixin
        private AsList as;

        Find(Domefold root) {
            this.root = root;
        }

        @Override
        public int run() throws Exception {
            RecordList list = new RecordRoom(root.homes()).list(root.console());
            String text = String.join(" ", words);
            List<RecordHeader> found = text.isBlank() ? list.all() : list.find(RecordQuery.of(text));
            as.answer(root.console(), () -> RecordsText.found(found, list.nothingFound(text)), () -> Lists.ofRecords(found));
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
        private AsList as;

        Due(Domefold root) {
            this.root = root;
        }

        @Override
        public int run() throws Exception {
            YearMonth asked = month == null ? YearMonth.now(root.console().clock()) : Days.month(month);
            RecordList list = new RecordRoom(root.homes()).list(root.console());
            List<DueList.Due> due = DueList.of(list.all(), asked);
            as.answer(root.console(), () -> RecordsText.due(asked, due, list), () -> Lists.ofDue(due));
            return Exit.DONE;
        }
    }

    @Command(name = "verify", description = {"Checks every record file against the audit logs; exit code 3 where something is"
            + " wrong.", ""}, footer = {"", "Example: domefold records verify"})
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
