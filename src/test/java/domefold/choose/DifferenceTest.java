package domefold.choose;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import domefold.patient.Case;
import domefold.patient.HealthQuestion;
import domefold.patient.Measure;
import domefold.plan.Plan;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

class DifferenceTest {
    private static final Case SETTLED = Invented.of(Invented.SIDE, Invented.SIDE);
    private static final Plan BEFORE = Invented.plan(SETTLED);
    private static final String PINNED = "gel-smooth-moderate-plus-300";

    private static Difference.Row row(Difference difference, String group, String label) {
        return difference.rows().stream().filter(r -> r.group().equals(group) && r.label().equals(label))
                .findFirst().orElseThrow(() -> new AssertionError("no line " + group + ", " + label));
    }

    @Test
    void aPlanAgainstItselfChangesNothing() {
        Difference same = Difference.between(BEFORE, Invented.plan(SETTLED), List.of(PINNED), Invented.CONSTANTS);
        assertEquals(List.of(), same.changed());
        assertTrue(same.rows().size() > 20, "both columns stand there all the same");
    }

    @Test
    void aNarrowerBaseOnOneSideShowsOnThatSideOnly() {
        Plan after = Invented.plan(Invented.of(Invented.SIDE.with(Measure.BASE_WIDTH, 11.5), Invented.SIDE));
        Difference difference = Difference.between(BEFORE, after, List.of(PINNED), Invented.CONSTANTS);
        Difference.Row ceiling = row(difference, "LEFT", "width ceiling");
        assertEquals("11.0 cm", ceiling.before());
        assertEquals("10.0 cm", ceiling.after());
        assertTrue(ceiling.changed());
        assertFalse(row(difference, "RIGHT", "width ceiling").changed());
        assertNotEquals(row(difference, PINNED, "LEFT verdict").before(), row(difference, PINNED, "LEFT verdict").after());
        assertFalse(row(difference, PINNED, "RIGHT verdict").changed());
        assertFalse(row(difference, PINNED, "opening").changed());
    }

    @Test
    void aChangeTooSmallForTheUsualDecimalsIsPrintedWithMore() {
        Plan after = Invented.plan(Invented.of(Invented.SIDE.with(Measure.BASE_WIDTH, 12.52), Invented.SIDE));
        Difference.Row ceiling = row(Difference.between(BEFORE, after, List.of(), Invented.CONSTANTS), "LEFT", "width ceiling");
        assertEquals("11.00 cm", ceiling.before());
        assertEquals("11.02 cm", ceiling.after());
    }

    @Test
    void aBlockedCaseSaysWhyAndTakesEveryDeviceOutOfTheOrder() {
        Map<HealthQuestion, Boolean> history = new java.util.EnumMap<>(SETTLED.history());
        for (HealthQuestion question : HealthQuestion.values()) {
            history.put(question, true);
        }
        Difference difference = Difference.between(BEFORE, Invented.plan(SETTLED.withHistory(history)), List.of(PINNED),
                Invented.CONSTANTS);
        Difference.Row blocked = row(difference, "case", "blocked");
        assertEquals("–", blocked.before());
        assertTrue(blocked.changed());
        assertEquals("0", row(difference, "devices", "gel, fit both sides").after());
        assertTrue(row(difference, PINNED, "place in her order").before().matches("[0-9]+ of [0-9]+"));
        assertEquals("not ordered: outside", row(difference, PINNED, "place in her order").after());
    }

    @Test
    void aDeviceThatIsNoLongerOfferedSaysSo() {
        Plan without = Invented.plan(SETTLED, Invented.list(Invented.LADDER.devices().stream()
                .filter(device -> !device.id().equals(PINNED)).toList()));
        Difference difference = Difference.between(BEFORE, without, List.of(PINNED), Invented.CONSTANTS);
        assertEquals("not offered", row(difference, PINNED, "LEFT verdict").after());
        assertEquals("not offered", row(difference, PINNED, "place in her order").after());
    }
}
