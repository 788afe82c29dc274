package domefold.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import domefold.interview.Interview;
import domefold.screen.ConsultScreen;
import domefold.screen.Effect;
import domefold.screen.Walk;
import domefold.store.Verification;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A consult is signed once; who signs again, or goes on answering, is told what to do instead. */
class SignedOnceTest {
    @TempDir
    private Path home;

    private static Interview complete(Interview first) {
        Interview interview = first;
        for (String line : Walk.ORDINARY) {
            interview = interview.say(line).interview();
        }
        return interview;
    }

    @Test
    void signingTwiceIsNoClashOfTwoWorkstations() throws IOException {
        Workbench bench = new Domefold(Cli.console(home, new ByteArrayOutputStream(), new ByteArrayOutputStream(),
                StandardCharsets.UTF_8), FacesHere.of()).bench(null);
        ConsultSaving saving = new ConsultSaving(bench);
        try (ConsultEffects effects = new ConsultEffects(bench, new ConsultDesk(bench, saving.offeredCode()), saving)) {
            ConsultScreen screen = (ConsultScreen) ((Effect.Opened) effects.carryOut(new Effect.Open(Optional.empty()))).screen();
            Effect.Save sign = new Effect.Save(complete(screen.interview()), true, "kb");
            assertInstanceOf(Effect.Done.class, effects.carryOut(sign));

            String again = ((Effect.Failed) effects.carryOut(sign)).text();
            assertTrue(again.startsWith("This consult is signed as version 1 already. `domefold records amend "), again);
            assertInstanceOf(Effect.Failed.class, effects.carryOut(new Effect.Save(sign.interview(), false, "")));
            String changed = ((Effect.Failed) effects.carryOut(new Effect.Journal("", Effect.Journal.ANSWER, "age", "32"))).text();
            assertTrue(changed.startsWith("This consult is signed; what is changed now is not kept."), changed);
            assertEquals(List.of(), Verification.of(home.resolve("records")).findings());

            assertInstanceOf(Effect.Opened.class, effects.carryOut(new Effect.Open(Optional.empty())));
            assertInstanceOf(Effect.Done.class, effects.carryOut(new Effect.Journal("", Effect.Journal.ANSWER, "age", "32")));
        }
    }

    @Test
    void aCaseThatWasSignedBeforeIsAmendedAndNoClash() throws IOException {
        Workbench bench = new Domefold(Cli.console(home, new ByteArrayOutputStream(), new ByteArrayOutputStream(),
                StandardCharsets.UTF_8), FacesHere.of()).bench(null);
        ConsultSaving saving = new ConsultSaving(bench);
        String code = saving.offeredCode();
        try (ConsultEffects effects = new ConsultEffects(bench, new ConsultDesk(bench, code), saving)) {
            ConsultScreen screen = (ConsultScreen) ((Effect.Opened) effects.carryOut(new Effect.Open(Optional.empty()))).screen();
            Interview complete = complete(screen.interview());
            assertInstanceOf(Effect.Done.class, effects.carryOut(new Effect.Save(complete, true, "kb")));
        }
        Workbench later = new Domefold(new Console(new ByteArrayOutputStream(), new ByteArrayOutputStream(),
                java.util.Map.of("DOMEFOLD_HOME", home.toString()), Path.of(""), java.time.Clock.offset(Cli.DAY, java.time.Duration.ofDays(1)),
                false, StandardCharsets.UTF_8), FacesHere.of()).bench(null);
        ConsultSaving again = new ConsultSaving(later);
        try (ConsultEffects effects = new ConsultEffects(later, new ConsultDesk(later, code), again)) {
            ConsultScreen screen = (ConsultScreen) ((Effect.Opened) effects.carryOut(new Effect.Open(Optional.empty()))).screen();
            Effect.Save sign = new Effect.Save(complete(screen.interview()), true, "kb");
            for (int i = 0; i < 2; i++) {
                String text = ((Effect.Failed) effects.carryOut(sign)).text();
                assertTrue(text.contains("was signed as version 1 before this consult was begun. `domefold records amend "), text);
            }
            assertEquals(Exit.REFUSED, effects.unsaved(), "a script learns of it");
            assertEquals(List.of(), Verification.of(home.resolve("records")).findings());
        }
    }
}
