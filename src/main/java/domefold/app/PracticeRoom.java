package domefold.app;

import domefold.line.LinePractice;
import domefold.practice.PracticeCase;
import domefold.screen.Desk;
import domefold.screen.Effect;
import domefold.screen.PracticeDesk;
import domefold.screen.PracticeScreen;
import domefold.store.ProgressFile;
import java.io.IOException;
import java.util.List;
import java.util.OptionalInt;

/** Opens practice and keeps what was practised, apart from every record. */
final class PracticeRoom {
    private final Desk desk;
    private final ProgressFile progress;

    /** @param consult the desk of a consult on the same evidence and list */
    PracticeRoom(Workbench bench, Desk consult) {
        this.desk = new Desk(consult.guide(), consult.today(), true);
        this.progress = new ProgressFile(bench.homes().practice());
    }

    PracticeScreen screen(OptionalInt level, OptionalInt number, List<PracticeCase> own) throws IOException {
        return new PracticeDesk(desk, progress.read(), own).begin(level, number);
    }

    /** The same line by line. */
    LinePractice lines(OptionalInt level, OptionalInt number, List<PracticeCase> own) throws IOException {
        return LinePractice.of(new PracticeDesk(desk, progress.read(), own), level, number);
    }

    static boolean isHere(Effect effect) {
        return effect instanceof Effect.Practised || effect instanceof Effect.Drilled
                || effect instanceof Effect.Visit visit && visit.place().equals("practise");
    }

    Effect.Outcome carryOut(Effect effect) throws IOException {
        if (effect instanceof Effect.Practised practised) {
            progress.add(practised.entry());
        } else if (effect instanceof Effect.Drilled drilled) {
            progress.add(drilled.drill());
        } else {
            return new Effect.Opened(effect, screen(OptionalInt.empty(), OptionalInt.empty(), List.of()));
        }
        return new Effect.Done(effect, "");
    }
}
