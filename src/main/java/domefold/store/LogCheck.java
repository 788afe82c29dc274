package domefold.store;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The chains of every audit log.
 *
 * @param lines the lines that are as they were written
 * @param heads the last hash of each log
 */
record LogCheck(List<AuditLine> lines, Map<String, String> heads) {

    static LogCheck of(Path folder, List<Verification.Finding> findings) throws IOException {
        LogCheck check = new LogCheck(new ArrayList<>(), new HashMap<>());
        for (String name : RecordShelf.names(folder)) {
            if (name.endsWith(AuditLog.ENDING)) {
                check.log(folder.resolve(name), findings);
            } else if (name.endsWith(AtomicFile.UNFINISHED)) {
                findings.add(new Verification.Finding("half-written", RecordPlaces.AUDIT + "/" + name,
                        RecordPlaces.AUDIT + "/" + name + " was cut off while it was being written"));
            }
        }
        return check;
    }

    private void log(Path file, List<Verification.Finding> findings) throws IOException {
        String where = RecordPlaces.AUDIT + "/" + file.getFileName();
        byte[] bytes;
        try {
            bytes = Files.readAllBytes(file);
        } catch (IOException failure) {
            throw StoreFailure.of("cannot read", file, failure);
        }
        Optional<AuditLine> before = Optional.empty();
        boolean first = true;
        int number = 0;
        int from = 0;
        for (int at = 0; at < bytes.length; at++) {
            if (bytes[at] != '\n') {
                continue;
            }
            number++;
            Optional<AuditLine> line = AuditLine.read(new String(bytes, from, at - from, StandardCharsets.UTF_8));
            String place = where + " line " + number;
            if (line.isEmpty()) {
                findings.add(new Verification.Finding("log-altered", place, place + " is not as it was written"));
            } else {
                if ((first || before.isPresent()) && !follows(before, line.get())) {
                    findings.add(new Verification.Finding("chain-broken", place, place + " does not follow the line before it: lines"
                            + " were removed, added or exchanged there"));
                }
                lines.add(line.get());
            }
            before = line;
            first = false;
            from = at + 1;
        }
        if (from < bytes.length) {
            findings.add(new Verification.Finding("log-torn", where + " line " + (number + 1), where + " line " + (number + 1)
                    + " was cut off while it was being written, or its end was changed"));
        }
        heads.put(file.getFileName().toString(), before.map(AuditLine::hash).orElse(""));
    }

    private static boolean follows(Optional<AuditLine> before, AuditLine line) {
        return before.map(earlier -> line.seq() == earlier.seq() + 1 && line.previous().equals(earlier.hash()))
                .orElse(line.seq() == 1 && line.previous().equals(AuditLine.BEFORE_FIRST));
    }
}
