package domefold.app;

/** A command once its arguments are known. */
interface Runner {
    /** Does it and returns the exit code. */
    int run() throws Exception;
}
