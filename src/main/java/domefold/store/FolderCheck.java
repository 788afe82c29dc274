package domefold.store;

import domefold.outcome.Refusal;
import domefold.record.ConsultRecord;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.Collectors;

/** One record's folder against the log lines about it. */
final class FolderCheck {
    private static final String DISCARDED = "draft-discarded";

    private final Path home;
    private final String id;
    private final List<AuditLine> lines;
    private final List<Verification.Finding> findings;

    FolderCheck(Path home, String id, List<AuditLine> lines, List<Verification.Finding> findings) {
        this.home = home;
        this.id = id;
        this.lines = lines;
        this.findings = findings;
    }

    /** Looks at each file once; gives how many there are. */
    int run() throws IOException {
        List<String> names = RecordShelf.names(home);
        Set<String> there = new HashSet<>(names);
        for (String name : names) {
            if (name.startsWith(Claims.NAME)) {
                continue;
            }
            if (name.endsWith(AtomicFile.UNFINISHED)) {
                found("half-written", name, "was cut off while it was being written; nothing was published from it");
            } else if (name.endsWith(".txt")) {
                String json = name.substring(0, name.length() - ".txt".length()) + ".json";
                if (!there.contains(json)) {
                    found("stray-file", name, "has no record beside it");
                }
            } else if (isOurs(name)) {
                file(name, there);
            } else {
                found("stray-file", name, "is no part of a record");
            }
        }
        gaps(names);
        missing(there);
        return names.size();
    }

    private static boolean isOurs(String name) {
        Path file = Path.of(name);
        return RecordPlaces.versionOf(file).isPresent() || RecordPlaces.draftOf(file).isPresent()
                || RecordPlaces.isEvent(name) || RecordPlaces.isConflict(name);
    }

    private void file(String name, Set<String> there) throws IOException {
        byte[] bytes = bytes(name);
        String digest = Digest.sha256(bytes);
        List<AuditLine> about = lines.stream().filter(line -> line.file().equals(name) && !line.event().equals(DISCARDED)).toList();
        Optional<AuditLine> matching = about.stream().filter(line -> line.sha256().equals(digest)).findFirst();
        if (about.isEmpty()) {
            found("unlogged", name, "stands in no audit log: it was saved just before a crash, its log line was removed, or"
                    + " another hand put it there");
        } else if (matching.isEmpty()) {
            found("altered", name, "is not as it was saved: its digest is " + digest.substring(0, 12) + " and the audit log says "
                    + about.get(about.size() - 1).sha256().substring(0, 12));
        }
        if (!RecordPlaces.isEvent(name)) {
            content(name, bytes);
            summary(name, matching.isPresent() ? matching : about.stream().findFirst(), there);
        }
        if (RecordPlaces.isConflict(name)) {
            found("conflict-open", name, "lost a clash of two workstations and waits for somebody to look at both");
        }
    }

    private void content(String name, byte[] bytes) throws IOException {
        try {
            ConsultRecord record = RecordFile.read(bytes, Shown.plain(name)).record();
            if (!record.id().equals(id)) {
                found("wrong-place", name, "is a record of another case");
            }
            OptionalInt version = RecordPlaces.versionOf(Path.of(name));
            if (version.isPresent() && (record.version() != version.getAsInt() || !record.status().isFrozen())) {
                found("wrong-place", name, "is not the frozen version that its name says");
            }
            if (version.isPresent() && version.getAsInt() > 1) {
                supersedes(name, record);
            }
        } catch (Refusal refusal) {
            found(refusal.code().equals("newer-format") ? "newer-format" : "unreadable", name, "cannot be read here: "
                    + refusal.getMessage());
        }
    }

    private void supersedes(String name, ConsultRecord record) throws IOException {
        Path former = home.resolve(RecordPlaces.version(record.version() - 1));
        if (record.amendment().isEmpty() || record.amendment().get().supersedesVersion() != record.version() - 1) {
            found("chain-broken", name, "does not say that it follows version " + (record.version() - 1));
        } else if (Files.exists(former) && !Digest.sha256(bytes(former.getFileName().toString()))
                .equals(record.amendment().get().supersedesSha256())) {
            found("chain-broken", name, "follows another " + former.getFileName() + " than the one that is here");
        }
    }

    private void summary(String name, Optional<AuditLine> line, Set<String> there) throws IOException {
        String text = RecordPlaces.summary(name);
        if (!there.contains(text)) {
            found("summary-missing", text, "is not there; it can be printed again from " + name);
        } else if (line.isPresent() && !line.get().summarySha256().equals(Digest.sha256(bytes(text)))) {
            found("summary-altered", text, "is not as it was saved; " + name + " beside it is the record");
        }
    }

    private void gaps(List<String> names) {
        Set<Integer> versions = names.stream().map(name -> RecordPlaces.versionOf(Path.of(name)))
                .filter(OptionalInt::isPresent).map(OptionalInt::getAsInt).collect(Collectors.toSet());
        int highest = versions.stream().mapToInt(Integer::intValue).max().orElse(0);
        for (int version = 1; version < highest; version++) {
            if (!versions.contains(version)) {
                found("missing-version", RecordPlaces.version(version), "is missing, and a later version is here");
            }
        }
        boolean draft = names.stream().anyMatch(name -> RecordPlaces.draftOf(Path.of(name)).isPresent());
        if (draft && highest > 0) {
            found("draft-beside-signed", "", "holds a draft beside a signed version; the signed version counts");
        }
    }

    private void missing(Set<String> there) {
        Set<String> named = new HashSet<>();
        for (AuditLine line : lines) {
            if (!line.file().isEmpty() && !there.contains(line.file()) && !gaveWay(line) && named.add(line.file())) {
                boolean version = RecordPlaces.versionOf(Path.of(line.file())).isPresent();
                found(version ? "missing-version" : "missing-file", line.file(),
                        "was saved (" + line.event() + ", " + line.at() + ") and is not there");
            }
        }
    }

    /** A state of a draft goes when a later one, or a signed version, is there, or when it is thrown away. */
    private boolean gaveWay(AuditLine gone) {
        OptionalInt revision = RecordPlaces.draftOf(Path.of(gone.file()));
        return revision.isPresent() && lines.stream().anyMatch(line ->
                line.file().equals(gone.file()) && line.event().equals(DISCARDED)
                        || RecordPlaces.versionOf(Path.of(line.file())).isPresent()
                        || RecordPlaces.draftOf(Path.of(line.file())).orElse(0) > revision.getAsInt());
    }

    private byte[] bytes(String name) throws IOException {
        try {
            return Files.readAllBytes(home.resolve(name));
        } catch (NoSuchFileException gone) {
            return new byte[0];
        } catch (IOException failure) {
            throw StoreFailure.of("cannot read", home.resolve(name), failure);
        }
    }

    private void found(String code, String name, String text) {
        String where = home.getFileName() + (name.isEmpty() ? "" : "/" + name);
        findings.add(new Verification.Finding(code, where, Shown.plain(where) + " " + text));
    }
}
