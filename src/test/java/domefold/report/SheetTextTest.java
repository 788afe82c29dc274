package domefold.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import domefold.Approved;
import domefold.export.PlanLimits;
import domefold.record.RecordStatus;
import domefold.sheet.ClinicalSheet;
import domefold.sheet.SampleRecords;
import java.util.List;
import org.junit.jupiter.api.Test;

class SheetTextTest {
    private static String summary(RecordStatus status, boolean practice) {
        return SheetText.of(ClinicalSheet.of(SampleRecords.withStatus(status, practice), SampleRecords.SHA,
                PlanLimits.of(SampleRecords.PLAN_JSON)));
    }

    @Test
    void theSummaryOfAConsultLooksAsApproved() {
        Approved.check("consult-summary", summary(RecordStatus.SIGNED, false));
    }

    @Test
    void neverIsWiderThanEightyColumns() {
        assertEquals(List.of(), summary(RecordStatus.SIGNED, false).lines()
                .filter(line -> line.codePointCount(0, line.length()) > 80).toList());
    }

    @Test
    void aDraftAndAPracticeCaseSaySoAtTheTop() {
        assertTrue(summary(RecordStatus.DRAFT, false).lines().limit(6).anyMatch(line -> line.startsWith("DRAFT")));
        assertTrue(summary(RecordStatus.SIGNED, true).lines().limit(6).anyMatch(line -> line.startsWith("PRACTICE")));
    }
}
