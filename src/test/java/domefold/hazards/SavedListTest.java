package domefold.hazards;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import domefold.device.Catalogue;
import domefold.device.Device;
import domefold.interview.Guide;
import domefold.interview.Interview;
import domefold.interview.RecordDraft;
import domefold.record.Versions;
import domefold.screen.ConsultScreen;
import domefold.screen.Walk;
import domefold.sheet.ClinicalSheet;
import domefold.export.PlanLimits;
import domefold.report.SheetText;
import domefold.store.CatalogueFile;
import domefold.store.PlanJson;
import domefold.store.RecordFile;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.util.UUID;
import org.junit.jupiter.api.Test;

/** A record outlives the device list it was made with. */
class SavedListTest {
    private static final String SETTLED = "gel-smooth-full-300";

    @Test
    void theListAndItsDigestStandInTheRecordAndItsDeviceStaysWhenTheListChanges() {
        Guide guide = Walk.desk().guide();
        Catalogue list = guide.catalogue();
        Interview interview = ((ConsultScreen) Walk.consult().lines(Walk.ORDINARY).screen()).interview()
                .answer("device", SETTLED + " same");
        var record = RecordDraft.of(interview, false, PlanJson.write(interview.plan().orElseThrow(), "0"),
                new Versions("0", list.name(), list.date(), list.sha256(), list.invented(), "0".repeat(64)), "qt",
                Instant.parse("2026-03-04T10:15:30Z"), () -> new UUID(1, 2));
        byte[] bytes = RecordFile.bytes(record);
        JsonNode json = Mirrored.read(new String(bytes, StandardCharsets.UTF_8));
        assertEquals(CatalogueFile.invented().sha256(), json.at("/versions/catalogue/sha256").asText());
        assertEquals(list.sha256(), json.at("/plan/catalogue/sha256").asText());
        assertEquals(list.date(), json.at("/versions/catalogue/date").asText());

        RecordFile.Loaded later = RecordFile.read(bytes, "v1.json");
        Device kept = later.record().left().orElseThrow().device();
        assertEquals(list.find(SETTLED).orElseThrow(), kept);
        String summary = SheetText.of(ClinicalSheet.of(later.record(), later.sha256(), PlanLimits.of(later.record().planJson())));
        assertTrue(summary.contains(list.name()) && summary.contains(SETTLED), summary);
    }
}
