package domefold.app;

import domefold.patient.Case;
import domefold.plan.Plan;
import domefold.report.PlanText;
import domefold.store.PlanJson;
import domefold.store.ProgramVersion;
import domefold.store.Stored;
import java.util.Optional;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Model.PositionalParamSpec;

/** {@code domefold plan}. Described by calls: reading annotations takes a third of what the plan takes. */
final class PlanCommand implements Runner {
    private final Domefold root;
    private final PositionalParamSpec file = PositionalParamSpec.builder().index("0").required(true).type(String.class)
            .paramLabel("CASE.json").description("The case, domefold-case/1.").build();
    private final OptionSpec list = OptionSpec.builder("--catalogue").type(String.class).paramLabel("FILE")
            .description("The practice's own device list, domefold-catalogue/1.").build();
    private final OptionSpec save = OptionSpec.builder("--save").type(boolean.class)
            .description("Also saves case and plan as a draft record, and says where on standard error.").build();
    private final OptionSpec as = As.option();

    PlanCommand(Domefold root) {
        this.root = root;
    }

    /** The command, its options and what they mean. */
    CommandSpec described() {
        CommandSpec spec = CommandSpec.wrapWithoutInspection(this).name("plan").addPositional(file).addOption(list).addOption(save)
                .addOption(as);
        spec.usageMessage().description("Reads a case and prints what the tissues allow and which devices remain, with the"
                + " reasons.", "").footer("", "Example: domefold plan demo-data/ordinary.json --as json");
        return spec;
    }

    @Override
    public int run() throws Exception {
        Workbench bench = root.bench(list.getValue());
        Case read = bench.readCase(root.console().path(file.getValue()));
        Plan plan = bench.advisor().apply(read);
        if (Boolean.TRUE.equals(save.getValue())) {
            ConsultSaving saving = new ConsultSaving(bench);
            Stored saved = saving.draft(new ConsultDesk(bench, "").begin(Optional.of(read)), "", 0);
            root.console().say("saved as a draft: " + saved.file());
        }
        if (as.getValue() == Answer.JSON) {
            root.console().bytes(PlanJson.bytes(plan, ProgramVersion.text()));
        } else {
            root.console().text(PlanText.of(plan, bench.catalogue(), ProgramVersion.text()));
        }
        return Exit.DONE;
    }
}
