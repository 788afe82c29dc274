package domefold.app;

import domefold.export.PlanLimits;
import domefold.interview.Interview;
import domefold.interview.RecordDraft;
import domefold.outcome.Refusal;
import domefold.practice.PracticeCase;
import domefold.record.CaseCode;
import domefold.record.ConsultRecord;
import domefold.record.RecordStatus;
import domefold.record.Versions;
import domefold.report.SheetText;
import domefold.sheet.ClinicalSheet;
import domefold.store.EvidenceFiles;
import domefold.store.Journals;
import domefold.store.PlanJson;
import domefold.store.ProgramVersion;
import domefold.store.RecordFile;
import domefold.store.RecordStore;
import domefold.store.Stored;
import domefold.store.Workstation;
import java.io.IOException;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.UUID;

/** Saves a consult as a record, JSON with its readable summary beside it, and offers codes for new ones. */
final class ConsultSaving {
    private final Workbench bench;
    private final RecordStore store;

    ConsultSaving(Workbench bench) {
        this.bench = bench;
        this.store = new RecordStore(bench.homes().records(), false, Workstation.here(bench.console().environment()));
    }

    /** A code that no record and no unfinished consult has, with its check digit. */
    String offeredCode() throws IOException {
        int year = LocalDate.now(bench.console().clock()).getYear();
        List<String> taken = new ArrayList<>(store.shelf().ids());
        Journals.unfinished(bench.homes().journals()).forEach(left -> left.entries().stream()
                .filter(entry -> entry.question().equals("case")).forEach(entry -> taken.add(entry.text())));
        return CaseCode.issue(year, CaseCode.nextNumber(year, taken));
    }

    /** The signed version of that case that was there already at that moment. */
    Optional<Stored> signedBefore(String caseCode, Instant moment) throws IOException {
        return caseCode.isBlank() ? Optional.empty() : store.shelf().newest(caseCode)
                .filter(stored -> stored.record().authorship().signedAt().map(moment::isAfter).orElse(false));
    }

    /** The state of the draft of that case, 0 where there is none. */
    int revision(String caseCode) throws IOException {
        return caseCode.isBlank() ? 0 : store.shelf().draft(caseCode).map(Stored::revision).orElse(0);
    }

    /** Saves a draft over the state it was read from. */
    Stored draft(Interview interview, String author, int revision) throws IOException {
        return store.saveDraft(record(interview, author, now()), revision, ConsultSaving::summary);
    }

    /** Signs: the record is version 1 and never changes. */
    Stored sign(Interview interview, String author, int revision) throws IOException {
        Instant now = now();
        return store.sign(record(interview, author, now), revision, author, now, ConsultSaving::summary);
    }

    /** Signs what the consult says now as the version after that one; reminders keep their ids where their day stays. */
    Stored amend(Interview interview, String author, Stored from, String reason) throws IOException {
        ConsultRecord changed = record(interview, author, now());
        ConsultRecord before = from.record();
        if (!changed.id().equals(before.id())) {
            throw new Refusal("other-case", changed.id(), "an amendment keeps its case code " + before.id()
                    + "; it was changed to '" + changed.id() + "'");
        }
        return store.amend(from, changed.asOf(before), RecordStatus.AMENDED, reason, author, now(), ConsultSaving::summary);
    }

    private Instant now() {
        return bench.console().clock().instant();
    }

    /** An invented patient must not become a record: from there she could be ordered for or booked. */
    static void refusePractice(String code) {
        if (PracticeCase.isCode(code)) {
            throw new Refusal("practice-case", code, code + " is the code of a practice case; nothing of practice is saved as a"
                    + " record, ordered, exported or put in a calendar");
        }
    }

    private ConsultRecord record(Interview interview, String author, Instant now) throws IOException {
        refusePractice(interview.dossier().patientCase().code());
        String engine = ProgramVersion.text();
        String planJson = interview.plan().map(plan -> PlanJson.write(plan, engine)).orElse("{}");
        Versions versions = new Versions(engine, bench.catalogue().name(), bench.catalogue().date(),
                bench.catalogue().sha256(), bench.catalogue().invented(), EvidenceFiles.digest());
        return RecordDraft.of(interview, false, planJson, versions, author, now, UUID::randomUUID);
    }

    /** The readable summary that lies beside a record. */
    static String summary(RecordFile.Loaded loaded) {
        ConsultRecord record = loaded.record();
        return SheetText.of(ClinicalSheet.of(record, loaded.sha256(), PlanLimits.of(record.planJson())));
    }
}
