package domefold.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import domefold.outcome.Refusal;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class HomesTest {
    private static final Path USER = Path.of("/home/qt");
    private static final Path HERE = Path.of("/somewhere");

    private static Homes of(String option, Map<String, String> environment) {
        return Homes.of(Optional.ofNullable(option), environment, USER, HERE);
    }

    /** XDG Base Directory Specification 0.8: defaults, and unset or empty means the default. */
    @Test
    void withoutAChoiceTheXdgDefaultsHold() {
        Homes homes = of(null, Map.of("XDG_DATA_HOME", "", "DOMEFOLD_HOME", ""));
        assertEquals(Path.of("/home/qt/.local/share/domefold/records"), homes.records());
        assertEquals(Path.of("/home/qt/.config/domefold/settings.json"), homes.settings());
        assertEquals(Path.of("/home/qt/.local/state/domefold/journal"), homes.journals());
        assertEquals(Path.of("/home/qt/.cache/domefold"), homes.cache());
    }

    /** XDG Base Directory Specification 0.8: a relative path is invalid and is ignored. */
    @Test
    void anXdgVariableCountsWhenItIsAbsolute() {
        assertEquals(Path.of("/data/domefold/records"), of(null, Map.of("XDG_DATA_HOME", "/data")).records());
        assertEquals(Path.of("/home/qt/.local/share/domefold/records"), of(null, Map.of("XDG_DATA_HOME", "data")).records());
    }

    @Test
    void theOptionGoesBeforeTheVariableAndTheVariableBeforeXdg() {
        Map<String, String> environment = Map.of("DOMEFOLD_HOME", "/b", "XDG_DATA_HOME", "/c");
        assertEquals(Path.of("/a/records"), of("/a", environment).records());
        assertEquals(Path.of("/somewhere/a/practice"), of("a", environment).practice());
        assertEquals(Path.of("/b/journal"), of("", environment).journals());
    }

    @Test
    void aRelativeVariableIsRefused() {
        Refusal refusal = assertThrows(Refusal.class, () -> of(null, Map.of("DOMEFOLD_HOME", "here")));
        assertEquals("DOMEFOLD_HOME", refusal.where());
    }
}
