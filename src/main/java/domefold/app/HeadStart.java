package domefold.app;

import domefold.followup.shown.OutcomeRow;
import domefold.plan.Planner;
import domefold.store.CatalogueFile;
import domefold.store.EvidenceFiles;
import domefold.store.PlanJson;

/**
 * What a plan needs whatever the case, begun on a second thread: while the first takes the arguments apart, or while somebody
 * looks at the start screen. Nothing is handed over: what is ready is met where it lies, and what is not is waited for there.
 */
final class HeadStart {
    private HeadStart() {}

    /** Begins where that command line will ask for a plan. */
    static void begin(String... args) {
        if (args.length > 0 && args[0].equals("plan") && CommandShell.asksForJson(args)) {
            begin(() -> {
                tables();
                PlanJson.prepare(CatalogueFile.invented().devices());
            });
        } else if (args.length > 0 && (args[0].equals("plan") || args[0].equals("consult"))) {
            begin();
        }
    }

    /** Begins now. */
    static void begin() {
        begin(HeadStart::tables);
    }

    /** What fails here fails again where it is needed, and is told there; of a thread of its own Java would print where it stood. */
    static Thread begin(Runnable work) {
        Thread ahead = new Thread(work, "head start");
        ahead.setDaemon(true);
        ahead.setUncaughtExceptionHandler((thread, toldLater) -> {});
        ahead.start();
        return ahead;
    }

    private static void tables() {
        EvidenceFiles.shipped();
        Planner.prepare();
        CatalogueFile.invented();
        OutcomeRow.all(EvidenceFiles.shipped());
    }
}
