package domefold.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import domefold.Check;
import domefold.engine.SizingRule;
import domefold.evidence.Constant;
import domefold.evidence.Constants;
import domefold.evidence.Evidence;
import domefold.evidence.Status;
import domefold.outcome.Working;
import domefold.patient.Measure;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Rules of the evidence itself (proposal): source and status beside every number, edits marked, nothing unconfirmed used. */
class ProvenanceReferenceTest {
    @Test
    @Check("C-PRO-01")
    void everyLineOfWorkingNamesSourceAndStatus() {
        for (Constant constant : Sample.SHIPPED.constants().all()) {
            assertFalse(constant.source().isBlank(), constant.id());
            assertFalse(constant.unit().isBlank(), constant.id());
        }
        SideLimits left = Sample.left(Sample.with(Sample.SIDE));
        assertTrue(left.working().size() > 12);
        for (Working line : left.working()) {
            assertFalse(line.source().isBlank(), line.quantity());
            assertFalse(line.status().words().isBlank(), line.quantity());
        }
        assertTrue(Sample.text(Sample.plan(Sample.with(Sample.SIDE)).notes(), "memory-value-used").contains("WID-02"));
    }

    @Test
    @Check("C-PRO-02")
    void theSurgeonsRowIsUsedMarkedAndTheOriginalKept() {
        Evidence changed = Sample.SHIPPED.with(Sample.SHIPPED.constants().with("VOL-12",
                new Constant.Override(290, LocalDate.of(2026, 3, 4), "own results")));
        Plan plan = Planner.plan(Sample.with(Sample.SIDE.with(Measure.BASE_WIDTH, 12.0)), Sample.list(), changed,
                PlanOptions.DEFAULT);
        assertEquals(290, plan.left().startingVolumeMl().orElseThrow(), 0);
        Working line = plan.left().working().stream().filter(work -> work.quantity().equals("volume for the base width"))
                .findFirst().orElseThrow();
        assertEquals(Status.SURGEON, line.status());
        assertTrue(line.source().contains("own results"));
        assertEquals(300, changed.constants().get("VOL-12").original().orElseThrow().value(), 0);
    }

    @Test
    @Check("C-PRO-03")
    void aRowMarkedDoNotUseNeverEntersAComputation() {
        Constant forbidden = new Constant("X-1", "a definition not confirmed", 7, "cm", "somebody", Status.MEMORY_LOW,
                "2026-11-25", "DO NOT USE", Optional.empty(), Optional.empty());
        List<Constant> rows = new ArrayList<>(Sample.SHIPPED.constants().all());
        rows.add(forbidden);
        assertThrows(IllegalArgumentException.class, () -> Constants.of(rows).get("X-1"));
        for (String id : List.of("HYP-01", "PTO-10", "BVF-02")) {
            assertThrows(IllegalArgumentException.class, () -> SizingRule.of(id, Sample.SHIPPED), id);
        }
        for (Constant constant : Sample.SHIPPED.constants().all()) {
            if (!Constants.usable(constant)) {
                assertThrows(IllegalArgumentException.class, () -> Sample.SHIPPED.constants().get(constant.id()));
            }
        }
    }
}
