package domefold.app;

/** How a run ended; the numbers are part of the contract. */
final class Exit {
    static final int DONE = 0;
    /** A defect of ours. */
    static final int DEFECT = 1;
    static final int WRONG_USAGE = 2;
    /** The input was refused; nothing was written. */
    static final int REFUSED = 3;
    /** The world failed; nothing is half-written. */
    static final int WORLD_FAILED = 4;

    private Exit() {}
}
