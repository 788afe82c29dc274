package domefold.terminal;

import java.io.IOException;
import java.util.concurrent.TimeUnit;

/** This process and whatever the shell started together with it. */
public final class Job {
    private Job() {}

    /**
     * Stops all of it, as the terminal's own Ctrl-Z would have; returns when it is continued. Stopping this process alone would
     * leave the shell waiting for the others, for example for what the output is piped into.
     */
    public static void stop() throws IOException {
        Process stop = new ProcessBuilder("kill", "-STOP", "0").start();
        try {
            stop.waitFor(1, TimeUnit.SECONDS);
        } catch (InterruptedException interruption) {
            Thread.currentThread().interrupt();
        }
    }
}
