package domefold.app;

import domefold.interview.Interview;
import domefold.screen.ConsultScreen;
import domefold.screen.Key;
import domefold.screen.Walk;
import domefold.store.Stored;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;

/** A whole consult, signed. */
final class AmendedConsult {
    private AmendedConsult() {}

    static Stored signed(Path home) throws IOException {
        Walk walk = Walk.consult().lines(Walk.ORDINARY).key(Key.Kind.F3).key(Key.Kind.F6).key(Key.character(' '))
                .key(Key.Kind.DOWN).key(Key.character(' ')).key(Key.Kind.F3)
                .lines(List.of("dual-plane", "1 2", "target same", "typical", "all but 3"));
        Interview interview = ((ConsultScreen) walk.screen()).interview();
        Console console = Cli.console(home, new java.io.ByteArrayOutputStream(), new java.io.ByteArrayOutputStream(),
                StandardCharsets.UTF_8);
        return new ConsultSaving(new Domefold(console, FacesHere.of()).bench(null)).sign(interview, "kb", 0);
    }
}
