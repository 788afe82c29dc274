package domefold.app;

import domefold.patient.Case;
import domefold.plan.Plan;
import domefold.report.PlanText;
import domefold.store.CaseFile;
import domefold.store.PlanJson;
import domefold.store.ProgramVersion;
import domefold.store.Stored;
import java.nio.file.Path;
import java.util.Optional;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Model.PositionalParamSpec;

/** {@code domefold plan}. Described by calls: reading annotations takes a third of what the plan takes. */
final class PlanCommand implements Runner {
    private final Domefold root;
    private PositionalParamSpec file;
    private OptionSpec list;
    private OptionSpec save;
    private OptionSpec as;

    PlanCommand(Domefold root) {
        this.root = root;
    }

    /**
     * The plan that the plainest command lines ask for, {@code plan CASE.json} with or without {@code --as json} or
     * {@code --as text} behind it, which need nothing taken apart; empty for all others.
     */
    static Optional<Runner> plain(Domefold root, String... args) {
        boolean as = args.length == 4 && args[2].equals("--as") && (args[3].equals("json") || args[3].equals("text"));
        if (!as && args.length != 2 || !args[0].equals("plan") || args[1].isEmpty() || args[1].startsWith("-")) {
            return Optional.empty();
        }
        boolean json = as && args[3].equals("json");
        return Optional.of(() -> run(root, args[1], null, false, json));
    }

    /** The command, its options and what they mean. */
    CommandSpec described() {
        file = PositionalParamSpec.builder().index("0").required(true).type(Path.class).paramLabel("CASE.json")
                .description("The case, domefold-case/1.").build();
        list = OptionSpec.builder("--catalogue").type(Path.class).paramLabel("FILE")
                .description("The practice's own device list, domefold-catalogue/1.").build();
        save = OptionSpec.builder("--save").type(boolean.class)
                .description("Also saves case and plan as a draft record, and says where on standard error.").build();
        as = As.option();
        CommandSpec spec = CommandSpec.wrapWithoutInspection(this).name("plan").addPositional(file).addOption(list).addOption(save)
                .addOption(as);
        spec.usageMessage().description("Reads a case and prints what the tissues allow and which devices remain, with the"
                + " reasons.", "").footer("", "Example: domefold plan demo-data/ordinary.json --as json");
        return spec;
    }

    @Override
    public int run() throws Exception {
        Path said = list.getValue();
        return run(root, file.<Path>getValue().toString(), said == null ? null : said.toString(), Boolean.TRUE.equals(save.getValue()), as.getValue() == Answer.JSON);
    }

    private static int run(Domefold root, String file, String list, boolean save, boolean json) throws Exception {
        CaseFile.Opened opened = CaseFile.open(root.console().path(file));
        Workbench bench = root.bench(list);
        Case read = bench.held(opened);
        Plan plan = bench.advisor().apply(read);
        if (save) {
            ConsultSaving saving = new ConsultSaving(bench);
            Stored saved = saving.draft(new ConsultDesk(bench, "").begin(Optional.of(read)), "", 0);
            root.console().say("saved as a draft: " + saved.file());
        }
        if (json) {
            root.console().bytes(PlanJson.bytes(plan, ProgramVersion.text()));
        } else {
            root.console().text(PlanText.of(plan, bench.catalogue(), ProgramVersion.text()));
        }
        return Exit.DONE;
    }
}
