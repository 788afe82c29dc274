package domefold;

import static org.junit.jupiter.api.Assertions.assertEquals;

import domefold.evidence.Constant;
import domefold.evidence.Evidence;
import domefold.evidence.Table;
import domefold.followup.shown.Disagreements;
import domefold.screen.KeysPage;
import domefold.store.EvidenceFiles;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;

/** Pages written from the program's own tables; {@code -Dapproved.update=true} writes them anew. */
class GeneratedDocsTest {
    private static final Evidence EVIDENCE = EvidenceFiles.shipped();

    @Test
    void keysAreThoseOfTheTable() throws IOException {
        StringBuilder page = new StringBuilder("# Keys\n\nThe full screen's, written from the table that the F1 page shows. Line by"
                + " line `if`, `take`, `doubt` and `pairs` are words too, and `help` lists the rest.\n");
        String where = "";
        for (KeysPage.Row row : KeysPage.ROWS) {
            if (!row.where().equals(where)) {
                where = row.where();
                page.append("\n## ").append(where.equals("everywhere") ? "Everywhere in a consult" : where).append("\n\n| key | does |\n|---|---|\n");
            }
            page.append("| `").append(row.key()).append("` | ").append(row.meaning()).append(" |\n");
        }
        page.append("\n## Records\n\n```\n").append(domefold.screen.records.RecordsScreen.KEYS.replaceFirst("Keys\n\n", "")).append("```\n");
        check("keys.md", page.toString());
    }

    @Test
    void sourcesAreThoseOfTheTables() throws IOException {
        Map<String, TreeSet<String>> sources = new TreeMap<>();
        for (Constant constant : EVIDENCE.constants().all()) {
            sources.computeIfAbsent(constant.source() + " [" + constant.status().code() + "]", key -> new TreeSet<>()).add(constant.id());
        }
        StringBuilder page = new StringBuilder("# Sources\n\nEvery constant in use, by who stands behind it, written from"
                + " `shared/evidence/constants-*.csv`; then who stands behind the published tables.\n"
                + "`scripts/run evidence WORDS` shows each with its value.\n\n## Constants\n\n");
        sources.forEach((source, ids) -> page.append("- ").append(source).append(": ").append(String.join(", ", ids)).append('\n'));
        new TreeMap<>(EVIDENCE.tables()).forEach((name, table) -> {
            if (table.columns().contains("source")) {
                TreeSet<String> named = new TreeSet<>();
                for (Table.Row row : table.rows()) {
                    named.add(row.text("source") + (table.columns().contains("status") ? " [" + row.text("status") + "]" : ""));
                }
                page.append("\n## ").append(name).append("\n\n");
                named.forEach(source -> page.append("- ").append(source).append('\n'));
            }
        });
        check("sources.md", page.toString());
    }

    @Test
    void discrepanciesAreThoseTheProgramShows() throws IOException {
        StringBuilder page = new StringBuilder("# Where the evidence disagrees\n\nWritten from `shared/evidence/disagreements.csv`;"
                + " the program shows each as a disagreement and takes no side.\n");
        for (Disagreements.Disagreement one : Disagreements.of(EVIDENCE)) {
            page.append("\n## ").append(one.question()).append("\n\n");
            one.positions().forEach(position -> page.append("- ").append(position.text()).append(" (").append(position.source())
                    .append(" [").append(position.status().code()).append("])\n"));
            page.append("\n").append(one.caution()).append("\n");
        }
        check("discrepancies.md", page.toString());
    }

    private static void check(String name, String text) throws IOException {
        Path page = Path.of("docs", name);
        if (Boolean.getBoolean("approved.update")) {
            Files.writeString(page, text);
            return;
        }
        assertEquals(text, Files.readString(page), "docs/" + name + " is stale; run with -Dapproved.update=true");
    }
}
