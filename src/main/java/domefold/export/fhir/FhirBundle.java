package domefold.export.fhir;

import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.SerializationFeature;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import domefold.evidence.Status;
import domefold.patient.HealthQuestion;
import domefold.patient.Side;
import domefold.record.Amendment;
import domefold.record.ConsultRecord;
import domefold.record.Settlement;
import domefold.sheet.Allowed;
import domefold.sheet.DeviceWords;
import domefold.sheet.PatientSheet;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;

/** A record as a document bundle: Composition first, then the patient without a name, readings, requests, provenance. */
public final class FhirBundle {
    private static final String CONSULT_NOTE_LOINC = "11488-4";

    private final ConsultRecord record;
    private final String sha256;
    private final FhirEntries entries;
    private final String author;
    private final ObjectNode composition;
    private final ArrayNode sections = FhirJson.list();

    private FhirBundle(ConsultRecord record, String sha256) {
        this.record = record;
        this.sha256 = sha256;
        this.entries = new FhirEntries(sha256);
        this.author = record.authorship().author().isBlank() ? "Consulting surgeon" : record.authorship().author();
        this.composition = FhirJson.resource("Composition");
    }

    /**
     * The bundle as JSON text, numbers at the precision they were typed in. The same record gives the same text.
     *
     * @param sha256 digest of the record file's exact bytes
     * @throws domefold.outcome.Refusal for an invented patient
     */
    public static String of(ConsultRecord record, String sha256) {
        Allowed.toLeave(record);
        ObjectNode bundle = new FhirBundle(record, sha256).bundle();
        List<String> problems = FhirCheck.problems(bundle);
        if (!problems.isEmpty()) {
            throw new IllegalStateException("the bundle contradicts itself: " + String.join("; ", problems));
        }
        try {
            return new ObjectMapper().enable(SerializationFeature.INDENT_OUTPUT)
                    .enable(JsonGenerator.Feature.WRITE_BIGDECIMAL_AS_PLAIN).writeValueAsString(bundle) + "\n";
        } catch (JsonProcessingException inMemory) {
            throw new IllegalStateException("a bundle could not be written", inMemory);
        }
    }

    private ObjectNode bundle() {
        String moment = record.authorship().savedAt().truncatedTo(ChronoUnit.SECONDS).toString();
        entries.add("composition", composition);
        ObjectNode patient = FhirJson.resource("Patient");
        patient.set("identifier", FhirJson.list(FhirJson.identifier(FhirJson.CASE, record.id())));
        entries.add("patient", patient);
        FhirObservations observations = new FhirObservations(entries, record.inputs(), status(), author);
        section("Patient", history(), observations.addOfPatient());
        for (Side side : Side.values()) {
            side(side, observations.addOfSide(side));
        }
        record.followUp().ifPresent(plan -> section("Follow-up",
                List.of(plan.issuer() + ", schedule " + plan.scheduleId() + ": " + plan.text()),
                new FhirFollowUp(entries, record).add(plan)));
        section("Discussed", record.topics().isEmpty() ? List.of("No topic was recorded.") : record.topics().stream()
                .map(topic -> topic.words() + (topic.discussed() ? ": discussed" : ": open")).toList(), List.of());
        if (!record.outcomes().isEmpty()) {
            section("Published figures that were shown", record.outcomes().stream().map(shown -> PatientSheet.figure(shown)
                    + " (" + String.join("; ", shown.cohorts()) + "; " + Status.of(shown.status()).words() + ")").toList(),
                    List.of());
        }
        compose(moment);
        entries.add("provenance", provenance(moment));
        ObjectNode bundle = FhirJson.resource("Bundle");
        bundle.set("identifier", FhirJson.identifier("urn:ietf:rfc:3986", entries.url("bundle")));
        bundle.put("type", "document").put("timestamp", moment);
        bundle.set("entry", entries.asList());
        return bundle;
    }

    /** Health questions in words: "not asked" is not "no". */
    private List<String> history() {
        List<String> words = new ArrayList<>(List.of("Case " + record.id() + ", consult of " + record.inputs().date() + "."));
        for (HealthQuestion question : HealthQuestion.values()) {
            Boolean yes = record.inputs().history().get(question);
            words.add(question.words() + ": " + (yes == null ? "not asked" : yes ? "yes" : "no"));
        }
        return words;
    }

    private void compose(String moment) {
        composition.set("text", FhirJson.narrative(List.of("Consult for breast augmentation, case " + record.id()
                + ", version " + record.version() + " (" + record.status().words() + ").")));
        composition.set("identifier", FhirJson.identifier(FhirJson.CASE, record.id() + "/v" + record.version()));
        composition.put("status", status());
        composition.set("type", FhirJson.concept(FhirJson.LOINC, CONSULT_NOTE_LOINC, "Consult note", "Consult note"));
        composition.set("subject", FhirJson.reference(entries.url("patient")));
        composition.put("date", moment);
        composition.set("author", FhirJson.list(FhirJson.object().put("display", author)));
        composition.put("title", "Consult for breast augmentation, case " + record.id());
        record.amendment().ifPresent(change -> {
            ObjectNode relates = FhirJson.object().put("code", "replaces");
            relates.set("targetIdentifier", FhirJson.identifier(FhirJson.CASE,
                    record.id() + "/v" + change.supersedesVersion()));
            composition.set("relatesTo", FhirJson.list(relates));
        });
        composition.set("section", sections);
    }

    /** Composition and Observation share these four words. */
    private String status() {
        switch (record.status()) {
            case DRAFT:
                return "preliminary";
            case SIGNED:
                return "final";
            case AMENDED:
                return "amended";
            default:
                return "entered-in-error";
        }
    }

    private void side(Side side, List<String> observations) {
        List<String> urls = new ArrayList<>(observations);
        List<String> words = new ArrayList<>();
        if (record.side(side).isPresent()) {
            Settlement settled = record.side(side).get();
            urls.add(new FhirOrders(entries, record).add(settled));
            words.add(side.name() + ": " + settled.device().id() + ", " + DeviceWords.kind(settled.device()) + ", fill "
                    + DeviceWords.exactMl(settled.fillMl()) + ".");
            words.add(side.name() + ": " + settled.fold().plan() + "; route "
                    + settled.route().map(route -> route.key()).orElse("not settled") + "; pocket "
                    + settled.pocket().map(pocket -> pocket.key()).orElse("not settled") + ".");
        } else {
            words.add(side.name() + ": nothing was settled.");
        }
        section(BodySite.of(side).words(), words, urls);
    }

    private void section(String title, List<String> words, List<String> urls) {
        ObjectNode section = FhirJson.object().put("title", title);
        section.set("text", FhirJson.narrative(words));
        if (!urls.isEmpty()) {
            ArrayNode list = FhirJson.list();
            urls.forEach(url -> list.add(FhirJson.reference(url)));
            section.set("entry", list);
        }
        sections.add(section);
    }

    private ObjectNode provenance(String moment) {
        ObjectNode provenance = FhirJson.resource("Provenance");
        provenance.set("target", FhirJson.list(FhirJson.reference(entries.url("composition"))));
        provenance.put("recorded", moment);
        ObjectNode person = FhirJson.object();
        person.set("who", FhirJson.object().put("display", author));
        ObjectNode program = FhirJson.object();
        program.set("who", FhirJson.object().put("display", "Domefold " + record.versions().engine() + " (software)"));
        provenance.set("agent", FhirJson.list(person, program));
        ArrayNode sources = FhirJson.list(source("source", sha256));
        record.amendment().map(Amendment::supersedesSha256).ifPresent(old -> sources.add(source("revision", old)));
        provenance.set("entity", sources);
        return provenance;
    }

    private static ObjectNode source(String role, String digest) {
        ObjectNode entity = FhirJson.object().put("role", role);
        ObjectNode what = FhirJson.object();
        what.set("identifier", FhirJson.identifier(FhirJson.DIGEST, digest));
        entity.set("what", what);
        return entity;
    }
}
