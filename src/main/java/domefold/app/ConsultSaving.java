package domefold.app;

import domefold.interview.Interview;
import domefold.interview.RecordDraft;
import domefold.record.ConsultRecord;
import domefold.record.Versions;
import domefold.store.AtomicFile;
import domefold.store.EvidenceFiles;
import domefold.store.PlanJson;
import domefold.store.ProgramVersion;
import domefold.store.RecordFile;
import java.io.IOException;
import java.time.Instant;
import java.util.UUID;

/** Saves a consult. */
final class ConsultSaving {
    private final Workbench bench;

    ConsultSaving(Workbench bench) {
        this.bench = bench;
    }

    String save(Interview interview, boolean sign, String author) throws IOException {
        Instant now = bench.console().clock().instant();
        String planJson = interview.plan().map(plan -> PlanJson.write(plan, ProgramVersion.text())).orElse("{}");
        Versions versions = new Versions(ProgramVersion.text(), bench.catalogue().name(), bench.catalogue().date(),
                bench.catalogue().sha256(), bench.catalogue().invented(), "");
        ConsultRecord draft = RecordDraft.of(interview, false, planJson, versions, author, now, UUID::randomUUID);
        ConsultRecord record = sign ? draft.signed(author, now) : draft;
        java.nio.file.Path file = bench.homes().records().resolve(record.id()).resolve("v1.json");
        AtomicFile.folder(file.getParent());
        AtomicFile.replace(file, RecordFile.bytes(record));
        return file.toString();
    }
}
