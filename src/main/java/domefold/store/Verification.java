package domefold.store;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Every file of a records folder against the audit logs, and the logs against themselves. Finds a changed byte, a missing
 * version, a broken chain and a half-written file, and says where. It is evidence, not proof.
 *
 * @param records how many record folders were looked at
 * @param files how many files
 * @param lines how many log lines
 * @param heads the last hash of each log, to compare with a print
 * @param findings what is wrong, empty where nothing is
 */
public record Verification(int records, int files, int lines, Map<String, String> heads, List<Finding> findings) {
    public Verification {
        heads = java.util.Collections.unmodifiableMap(new java.util.TreeMap<>(heads));
        findings = List.copyOf(findings);
    }

    /**
     * One thing that is wrong.
     *
     * @param code kebab-case, stable
     * @param where the file, and the line in a log
     * @param text in one sentence
     */
    public record Finding(String code, String where, String text) {}

    /** Looks at everything; changes nothing. */
    public static Verification of(Path folder) throws IOException {
        List<Finding> findings = new ArrayList<>();
        LogCheck logs = LogCheck.of(folder.resolve(RecordPlaces.AUDIT), findings);
        Map<String, List<AuditLine>> byId = new HashMap<>();
        for (AuditLine line : logs.lines()) {
            byId.computeIfAbsent(line.id(), id -> new ArrayList<>()).add(line);
        }
        int records = 0;
        int files = 0;
        for (String name : RecordShelf.names(folder)) {
            Path home = folder.resolve(name);
            if (name.startsWith(".") && Files.isDirectory(home)) {
                continue;
            }
            if (!Files.isDirectory(home)) {
                findings.add(new Finding("stray-file", name, Shown.plain(name) + " is no record folder and no part of one"));
                continue;
            }
            List<AuditLine> lines = byId.remove(RecordPlaces.id(name));
            FolderCheck check = new FolderCheck(home, RecordPlaces.id(name), lines == null ? List.of() : lines, findings);
            files += check.run();
            records++;
        }
        for (Map.Entry<String, List<AuditLine>> gone : byId.entrySet()) {
            new FolderCheck(folder.resolve(RecordPlaces.folderName(gone.getKey())), gone.getKey(), gone.getValue(), findings).run();
        }
        return new Verification(records, files, logs.lines().size(), logs.heads(), findings);
    }

    public boolean sound() {
        return findings.isEmpty();
    }
}
