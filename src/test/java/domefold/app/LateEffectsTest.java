package domefold.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;

import domefold.outcome.Refusal;
import domefold.screen.ConsultScreen;
import domefold.screen.Effect;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class LateEffectsTest {
    private static final Effect OPEN = new Effect.Open(Optional.empty());

    @TempDir
    private Path home;

    private int times;

    private ConsultEffects laid() throws IOException {
        times++;
        Domefold root = new Domefold(Cli.console(home, new ByteArrayOutputStream(), new ByteArrayOutputStream(),
                StandardCharsets.UTF_8), FacesHere.of());
        Workbench bench = root.bench(null);
        ConsultSaving saving = new ConsultSaving(bench);
        return new ConsultEffects(bench, new ConsultDesk(bench, saving.offeredCode()), saving);
    }

    @Test
    void nothingIsLaidOutUntilSomethingIsAskedFor() throws IOException {
        try (LateEffects effects = new LateEffects(this::laid)) {
            effects.painted();
            assertEquals(0, times);
            assertInstanceOf(ConsultScreen.class, ((Effect.Opened) effects.carryOut(OPEN)).screen());
            effects.carryOut(new Effect.Visit("start"));
            assertEquals(1, times);
        }
    }

    @Test
    void whatCannotBeLaidOutIsSaidAndTriedAgain() throws IOException {
        try (LateEffects effects = new LateEffects(() -> {
            if (times++ == 0) {
                throw new Refusal("bad-settings", "settings.json", "the settings name no list");
            }
            return laid();
        })) {
            assertEquals("the settings name no list", ((Effect.Failed) effects.carryOut(OPEN)).text());
            assertInstanceOf(Effect.Opened.class, effects.carryOut(OPEN));
        }
    }

    @Test
    void aDefectIsNotHidden() throws IOException {
        try (LateEffects effects = new LateEffects(() -> {
            throw new IllegalStateException("ours");
        })) {
            assertThrows(IllegalStateException.class, () -> effects.carryOut(OPEN));
        }
    }
}
