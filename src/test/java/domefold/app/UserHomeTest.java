package domefold.app;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Clock;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** Source: XDG Base Directory Specification 0.8, whose defaults begin with {@code $HOME}. */
class UserHomeTest {
    private static Path records(Map<String, String> environment) {
        Console console = new Console(new ByteArrayOutputStream(), new ByteArrayOutputStream(), environment, Path.of(""),
                Clock.systemUTC(), false, StandardCharsets.UTF_8);
        return new Domefold(console, FacesHere.of()).homes().data();
    }

    @Test
    void theEnvironmentSaysWhereTheUserIsAtHome() {
        assertEquals(Path.of("/tmp/hers/.local/share/domefold"), records(Map.of("HOME", "/tmp/hers")));
        assertEquals(Path.of("/data/domefold"), records(Map.of("HOME", "/tmp/hers", "XDG_DATA_HOME", "/data")));
    }

    @Test
    void aHomeThatIsNoAbsolutePathIsPassedOver() {
        Path system = Path.of(System.getProperty("user.home"), ".local/share/domefold");
        assertEquals(system, records(Map.of("HOME", "hers")));
        assertEquals(system, records(Map.of()));
    }
}
