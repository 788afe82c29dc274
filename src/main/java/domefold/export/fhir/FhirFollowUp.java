package domefold.export.fhir;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import domefold.patient.Side;
import domefold.record.ConsultRecord;
import domefold.record.FollowUp;
import domefold.record.RecordStatus;
import java.util.ArrayList;
import java.util.List;

/** Imaging as agreed on: one ServiceRequest per exam, from its earliest to its latest day, under one CarePlan. */
final class FhirFollowUp {
    private final FhirEntries entries;
    private final ConsultRecord record;

    FhirFollowUp(FhirEntries entries, ConsultRecord record) {
        this.entries = entries;
        this.record = record;
    }

    /** Adds the plan and its exams; their addresses, the plan first. */
    List<String> add(FollowUp plan) {
        List<String> urls = new ArrayList<>();
        ArrayNode activities = FhirJson.list();
        for (int i = 0; i < plan.densest().size(); i++) {
            String url = entries.add("exam " + i, exam(plan, i));
            urls.add(url);
            ObjectNode activity = FhirJson.object();
            activity.set("reference", FhirJson.reference(url));
            activities.add(activity);
        }
        if (activities.isEmpty()) {
            ObjectNode activity = FhirJson.object();
            activity.set("detail", FhirJson.object().put("status", "not-started").put("description", plan.text()));
            activities.add(activity);
        }
        ObjectNode care = FhirJson.resource("CarePlan").put("status", status()).put("intent", "plan")
                .put("title", "Follow-up by schedule " + plan.scheduleId()).put("description", plan.issuer() + ": " + plan.text());
        care.set("subject", FhirJson.reference(entries.url("patient")));
        care.put("created", record.authorship().savedAt().toString());
        care.set("activity", activities);
        care.set("note", FhirJson.list(FhirJson.object().put("text", "Source: " + plan.source() + " (" + plan.status() + ")")));
        urls.add(0, entries.add("care plan", care));
        return urls;
    }

    private ObjectNode exam(FollowUp plan, int index) {
        ObjectNode request = FhirJson.resource("ServiceRequest").put("status", status()).put("intent", "plan");
        request.set("code", FhirJson.words("imaging of the implants, schedule " + plan.scheduleId() + ", exam " + (index + 1)));
        request.set("subject", FhirJson.reference(entries.url("patient")));
        ObjectNode period = FhirJson.object().put("start", plan.densest().get(index).date().toString());
        if (index < plan.sparsest().size() && !plan.sparsest().get(index).date().isBefore(plan.densest().get(index).date())) {
            period.put("end", plan.sparsest().get(index).date().toString());
        }
        request.set("occurrencePeriod", period);
        request.put("authoredOn", record.authorship().savedAt().toString());
        ArrayNode sites = FhirJson.list();
        for (Side side : Side.values()) {
            if (plan.sides().contains(side)) {
                sites.add(FhirJson.bodySite(side));
            }
        }
        if (!sites.isEmpty()) {
            request.set("bodySite", sites);
        }
        return request;
    }

    private String status() {
        return record.status() == RecordStatus.DRAFT ? "draft"
                : record.status() == RecordStatus.ENTERED_IN_ERROR ? "entered-in-error" : "active";
    }
}
