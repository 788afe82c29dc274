package domefold.record;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;

class CaseCodeTest {
    @Test
    void anIssuedCodeCarriesItsCheckDigit() {
        assertEquals("C-2026-0042-9", CaseCode.issue(2026, 42));
        assertFalse(CaseCode.isMistyped("C-2026-0042-9"));
        assertFalse(CaseCode.isMistyped(CaseCode.issue(2026, 123_456)));
    }

    @Test
    void aMistypedOneIsNoticedAndAPracticesOwnIsTakenAsItIs() {
        assertTrue(CaseCode.isMistyped("C-2026-0024-9"));
        assertTrue(CaseCode.isMistyped("C-2026-0042-8"));
        assertFalse(CaseCode.isMistyped("K-2041"));
        assertFalse(CaseCode.isMistyped("C-2026-42"));
    }

    @Test
    void theNextNumberFollowsTheHighestOfItsYear() {
        List<String> codes = List.of("K-2041", CaseCode.issue(2025, 90), CaseCode.issue(2026, 7), CaseCode.issue(2026, 3));
        assertEquals(8, CaseCode.nextNumber(2026, codes));
        assertEquals(1, CaseCode.nextNumber(2027, codes));
    }

    @Test
    void codesThatAreEasilyMixedUpAreNamed() {
        List<String> others = List.of("K-2041", "K-2O41", "k 2041", "K-2014", "K-2042", "K-20411", "K-0241", "K-3051", "X-2041x");
        assertEquals(List.of("K-0241", "K-2014", "K-20411", "K-2042", "K-2O41", "k 2041"), CaseCode.lookAlikes("K-2041", others));
        assertEquals(List.of(), CaseCode.lookAlikes("A-1", List.of("B-22", "A-1")));
    }
}
