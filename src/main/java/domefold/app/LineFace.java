package domefold.app;

import domefold.line.LineConsult;
import domefold.line.Turn;
import domefold.screen.Effect;
import domefold.terminal.NoTerminal;
import domefold.terminal.TerminalModes;
import domefold.terminal.Tty;
import java.io.IOException;
import java.util.Optional;

/** Runs a consult line by line until it is signed, left or the input ends. */
final class LineFace {
    static final String PROMPT = "> ";

    private LineFace() {}

    static int run(Console console, LineConsult first, ConsultEffects effects) throws IOException {
        try (LineInput input = input(console)) {
            return run(console, first, effects, input);
        }
    }

    /** Edited on a terminal, else read one after the other. */
    static LineInput input(Console console) {
        TerminalModes modes = TerminalModes.detect(console.environment());
        if (console.terminal() && modes.fullScreen()) {
            try {
                return new TypedLines(Tty.open(modes));
            } catch (NoTerminal cannotBeEditedOn) {
                return new PipedLines(console, false);
            }
        }
        return new PipedLines(console, !console.terminal());
    }

    private static int run(Console console, LineConsult first, ConsultEffects effects, LineInput input) throws IOException {
        Turn turn = first.open();
        while (true) {
            turn = carriedOut(console, turn, effects);
            if (turn.effect() instanceof Effect.Quit) {
                break;
            }
            Optional<String> line = input.next(turn.next());
            if (line.isEmpty()) {
                break;
            }
            turn = turn.next().say(line.get());
        }
        sayWhatIsKept(console, effects.offeredAgain());
        return effects.unsaved();
    }

    /** The last word of either face. */
    static void sayWhatIsKept(Console console, boolean offeredAgain) {
        if (offeredAgain) {
            console.text("Left. The consult is kept and offered again at the next start.\n");
        }
    }

    /** Prints the turn and does what it asks; what comes of that may ask again. */
    private static Turn carriedOut(Console console, Turn asked, ConsultEffects effects) throws IOException {
        Turn turn = asked;
        console.text(turn.text());
        while (!(turn.effect() instanceof Effect.Nothing) && !(turn.effect() instanceof Effect.Quit)) {
            turn = turn.next().told(effects.carryOut(turn.effect()));
            console.text(turn.text());
        }
        return turn;
    }
}
