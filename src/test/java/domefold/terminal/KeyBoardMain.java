package domefold.terminal;

import java.io.IOException;

/** Runs the key board in the terminal it was started on. */
public final class KeyBoardMain {
    private KeyBoardMain() {}

    public static void main(String[] arguments) throws IOException {
        try (Tty tty = Tty.open(TerminalModes.detect(System.getenv()))) {
            FullScreen.Ended ended = new FullScreen(tty).run(KeyBoardScreen.EMPTY, effect -> {
                throw new IOException("nothing to carry out");
            });
            System.out.println("ended " + ended);
        } catch (NoTerminal none) {
            System.out.println("sentence: " + none.getMessage());
            System.exit(2);
        } catch (RuntimeException fault) {
            System.out.println("fault: " + fault.getMessage());
            System.exit(1);
        }
    }
}
