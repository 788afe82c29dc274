package domefold.plan;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import domefold.device.Catalogue;
import domefold.device.Device;
import domefold.evidence.Evidence;
import domefold.patient.Case;
import domefold.practice.PatientDraw;
import domefold.store.CatalogueFile;
import domefold.store.EvidenceFiles;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class DrawSetsPropertyTest {
    private static final long SEED = 20260304L;

    @Test
    void rankedAndPassedOverAreTheSameSets() {
        SplittableRandom random = new SplittableRandom(SEED);
        for (int round = 0; round < 50; round++) {
            double[] values = random.doubles(1 + random.nextInt(300)).map(value -> Math.round(value * 100) / 10.0).toArray();
            DrawSets few = DrawSets.of(values, 1);
            DrawSets many = DrawSets.of(values, DrawSets.WORTH_RANKING);
            for (int i = 0; i < 40; i++) {
                double limit = i % 2 == 0 ? values[random.nextInt(values.length)] : random.nextDouble() * 11 - 0.5;
                assertArrayEquals(many.atMost(limit), few.atMost(limit), "seed " + SEED + ", round " + round);
                assertArrayEquals(many.below(limit), few.below(limit), "seed " + SEED + ", round " + round);
            }
        }
    }

    @Test
    void aDeviceAloneIsJudgedAsInTheWholeList() {
        Evidence evidence = EvidenceFiles.shipped();
        Catalogue list = CatalogueFile.invented();
        assertTrue(list.devices().size() >= DrawSets.WORTH_RANKING);
        PatientDraw patients = PatientDraw.from(evidence);
        for (int number = 1; number <= 12; number++) {
            Case of = patients.of(number).of();
            Plan whole = Planner.plan(of, list, evidence, PlanOptions.DEFAULT);
            for (int i = number; i < list.devices().size(); i += 29) {
                Device device = list.devices().get(i);
                Plan alone = Planner.plan(of, new Catalogue(list.name(), list.date(), list.note(), list.sha256(),
                        list.invented(), List.of(device)), evidence, PlanOptions.DEFAULT);
                assertEquals(whole.candidates().get(i), alone.candidates().get(0), of.code() + " " + device.id());
            }
        }
    }
}
