package domefold.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

class PlanJsonTest {
    private static final String PLAN = PlanJson.write(Samples.plan(Samples.ordinary()), "0.1.0");

    @Test
    void aPlanPassesItsSchema() {
        assertEquals(List.of(), Schemas.faults("plan-1", PLAN));
    }

    @Test
    void everyFieldStandsUnderItsPublishedName() throws IOException {
        JsonNode plan = new ObjectMapper().readTree(PLAN);
        JsonNode candidate = plan.at("/candidates/0");
        assertEquals("domefold-plan/1", plan.at("/format").asText());
        assertEquals("K-2041", plan.at("/case").asText());
        assertEquals(265, plan.at("/left/volumeBandMl/low").asDouble());
        assertEquals(0.4, plan.at("/left/foldLoweringCm").asDouble());
        assertEquals("foldPinchCm", plan.at("/left/incomplete/0").asText());
        assertEquals("practice", plan.at("/left/working/0/status").asText());
        assertTrue(plan.at("/left/working/1/value").isNull(), "a word has no number");
        assertTrue(plan.at("/right/startingVolumeMl").isNull());
        assertEquals("tight", candidate.at("/left/verdict").asText());
        assertEquals("outside", candidate.at("/right/verdict").asText());
        assertEquals(3.3, candidate.at("/left/projected/projectionGainCm/high").asDouble());
        assertEquals(3.6, candidate.at("/incisionCm/typical").asDouble());
        assertEquals(8, candidate.at("/followUp/exams/high").asInt());
        assertEquals("[[6,9,12,15,18],[5,7,9,11,13,15,17,19]]", candidate.at("/followUp/examYears").toString());
        assertEquals(19, candidate.at("/followUp/outcomes/0/per100/high").asInt());
        assertEquals(0.3, candidate.at("/ripple/index").asDouble());
        assertEquals(310, plan.at("/pairs/0/fillMl/right").asDouble());
    }

    @Test
    void numbersKeepEveryBit() throws IOException {
        JsonNode plan = new ObjectMapper().readTree(PLAN);
        assertEquals(0.1 + 0.2, plan.at("/candidates/0/left/widthMarginCm").asDouble());
        assertEquals(2.0 / 3, plan.at("/candidates/0/left/fitShare").asDouble());
        assertTrue(PLAN.contains("\"volumeMl\": 290,"), "a whole number has no point");
        long seed = 20260304;
        Random random = new Random(seed);
        for (int i = 0; i < 20_000; i++) {
            double value = i % 2 == 0 ? random.nextGaussian() * 1000 : Double.longBitsToDouble(random.nextLong());
            if (Double.isFinite(value)) {
                assertEquals(value == 0 ? 0.0 : value, Double.parseDouble(JsonOut.digits(value)), "seed " + seed + ": " + value);
            }
        }
        assertThrows(IllegalArgumentException.class, () -> JsonOut.digits(Double.NaN));
    }

    @Test
    void theSchemaRefusesWhatIsNoPlan() {
        assertFalse(Schemas.faults("plan-1", PLAN.replace("\"tight\"", "\"perhaps\"")).isEmpty());
        assertFalse(Schemas.faults("plan-1", PLAN.replace("\"foldTargetCm\"", "\"foldTarget\"")).isEmpty());
    }
}
