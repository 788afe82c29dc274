package domefold.app;

import domefold.line.LinePractice;
import domefold.screen.Effect;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;

/** Runs a practice case line by line until it is left or the input ends. */
final class PracticeLines {
    private PracticeLines() {}

    static int run(Console console, LinePractice first, PracticeRoom room) throws IOException {
        BufferedReader input = new BufferedReader(new InputStreamReader(console.in(), StandardCharsets.UTF_8));
        LinePractice.Turn turn = first.open();
        while (true) {
            console.text(turn.text());
            if (turn.effect() instanceof Effect.Quit) {
                return Exit.DONE;
            }
            if (PracticeRoom.isHere(turn.effect())) {
                room.carryOut(turn.effect());
            }
            console.text(LineFace.PROMPT);
            String line = input.readLine();
            if (line == null) {
                return Exit.DONE;
            }
            turn = turn.next().say(line);
        }
    }
}
