package domefold.app;

/** The command line itself was wrong; the message is one sentence. */
final class WrongUsage extends RuntimeException {
    private static final long serialVersionUID = 1L;

    WrongUsage(String sentence) {
        super(sentence);
    }
}
