package domefold.app;

import domefold.line.LinePractice;
import domefold.screen.Effect;
import java.io.IOException;
import java.util.Optional;

/** Runs a practice case line by line until it is left or the input ends. */
final class PracticeLines {
    private PracticeLines() {}

    static int run(Console console, LinePractice first, PracticeRoom room) throws IOException {
        try (LineInput input = LineFace.input(console)) {
            LinePractice.Turn turn = first.open();
            while (true) {
                console.text(turn.text());
                if (turn.effect() instanceof Effect.Quit) {
                    return Exit.DONE;
                }
                if (PracticeRoom.isHere(turn.effect())) {
                    room.carryOut(turn.effect());
                }
                Optional<String> line = input.next(turn.next());
                if (line.isEmpty()) {
                    console.text(turn.next().left());
                    return Exit.DONE;
                }
                turn = turn.next().say(line.get());
            }
        }
    }
}
