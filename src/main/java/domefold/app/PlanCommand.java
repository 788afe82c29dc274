package domefold.app;

import domefold.patient.Case;
import domefold.plan.Plan;
import domefold.report.PlanText;
import domefold.store.PlanJson;
import domefold.store.ProgramVersion;
import picocli.CommandLine.Command;
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

    PlanCommand(Domefold root) {
        this.root = root;
    }

    @Override
    public int run() throws Exception {
        Workbench bench = root.bench(list);
        Case read = bench.readCase(root.console().path(file));
        Plan plan = bench.advisor().apply(read);
        if (root.asJson()) {
            root.console().json(PlanJson.write(plan, ProgramVersion.text()));
        } else {
            root.console().text(PlanText.of(plan, bench.catalogue(), ProgramVersion.text()));
        }
        return Exit.DONE;
    }
}
