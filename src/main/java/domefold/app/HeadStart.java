package domefold.app;

import domefold.store.CatalogueFile;
import domefold.store.EvidenceFiles;
import domefold.plan.Planner;

/**
 * What a start needs whatever its arguments turn out to be, begun on a second thread while the first takes the arguments apart
 * or opens the terminal. Nothing is handed over: what is ready is met where it lies, and what is not is waited for there.
 */
final class HeadStart {
    private HeadStart() {}

    /** Begins with what that command line will ask for; for one that needs none of it nothing is begun. */
    static void begin(String... args) {
        if (args.length == 0 || args[0].equals("plan") || args[0].equals("consult")) {
            Thread ahead = new Thread(HeadStart::tables, "head start");
            ahead.setDaemon(true);
            ahead.start();
        }
    }

    private static void tables() {
        EvidenceFiles.shipped();
        CatalogueFile.invented();
        Planner.prepare();
    }
}
