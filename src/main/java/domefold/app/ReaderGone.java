package domefold.app;

/** Whoever read standard output has gone away, as {@code head} does; nothing is wrong. */
final class ReaderGone extends RuntimeException {
    private static final long serialVersionUID = 1L;
}
