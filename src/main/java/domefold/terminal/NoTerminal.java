package domefold.terminal;

/** There is no terminal a screen can be painted on; the message is one sentence for the user. */
public final class NoTerminal extends Exception {
    private static final long serialVersionUID = 1L;

    NoTerminal(String sentence, Throwable cause) {
        super(sentence, cause);
    }
}
