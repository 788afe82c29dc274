package domefold.app;

import domefold.patient.Case;
import domefold.plan.Plan;
import domefold.report.PlanText;
import domefold.store.PlanJson;
import domefold.store.ProgramVersion;
import domefold.store.Stored;
import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

@Command(name = "plan", description = {"Reads a case and prints what the tissues allow and which devices remain, with the"
        + " reasons.", ""}, footer = {"", "Example: domefold plan demo-data/ordinary.json --as json"})
final class PlanCommand implements Runner {
    private final Domefold root;

    @Parameters(paramLabel = "CASE.json", description = "The case, domefold-case/1.")
    private String file;

    @Option(names = "--catalogue", paramLabel = "FILE", description = "The practice's own device list, domefold-catalogue/1.")
    private String list;

    @Option(names = "--save", description = "Also saves case and plan as a draft record, and says where on standard error.")
    private boolean save;

    @Mixin
    private As as;

    PlanCommand(Domefold root) {
        this.root = root;
    }

    @Override
    public int run() throws Exception {
        Workbench bench = root.bench(list);
        Case read = bench.readCase(root.console().path(file));
        Plan plan = bench.advisor().apply(read);
        if (save) {
            ConsultSaving saving = new ConsultSaving(bench);
            Stored saved = saving.draft(new ConsultDesk(bench, "").begin(Optional.of(read)), "", 0);
            root.console().say("saved as a draft: " + saved.file());
        }
        if (as.json()) {
            root.console().bytes(PlanJson.bytes(plan, ProgramVersion.text()));
        } else {
            root.console().text(PlanText.of(plan, bench.catalogue(), ProgramVersion.text()));
        }
        return Exit.DONE;
    }
}
