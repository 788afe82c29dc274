package domefold.terminal;

import domefold.screen.Effect;
import java.io.IOException;

/** Runs the key board in the terminal it was started on. */
public final class KeyBoardMain {
    private KeyBoardMain() {}

    public static void main(String[] arguments) {
        try (Tty tty = Tty.open(TerminalModes.detect(System.getenv()))) {
            FullScreen.Ended ended = new FullScreen(tty).run(KeyBoardScreen.EMPTY, KeyBoardMain::carryOut);
            System.out.println("ended " + ended);
        } catch (NoTerminal none) {
            System.out.println("sentence: " + none.getMessage());
            System.exit(2);
        } catch (IOException | RuntimeException fault) {
            System.out.println("fault: " + fault.getMessage());
            System.exit(1);
        }
    }

    private static Effect.Outcome carryOut(Effect effect) throws IOException {
        if (effect.equals(new Effect.Visit("nowhere"))) {
            throw new IOException("no such place");
        }
        return new Effect.Done(effect, "been there");
    }
}
