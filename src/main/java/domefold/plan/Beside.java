package domefold.plan;

import java.util.function.Supplier;

/** A value computed on another processor while this one computes something else; which of them is first makes no difference. */
final class Beside<T> {
    private final Supplier<T> work;
    private final Thread thread;
    private T value;
    private RuntimeException failure;
    private Error fault;

    private Beside(Supplier<T> work, boolean worthIt) {
        this.work = work;
        this.thread = worthIt ? new Thread(this::run, "beside the fits") : null;
    }

    /** @param worthIt false for work that takes less time than handing it over: it is done at once then, and here */
    static <T> Beside<T> begin(boolean worthIt, Supplier<T> work) {
        Beside<T> beside = new Beside<>(work, worthIt);
        if (worthIt) {
            beside.thread.setDaemon(true);
            beside.thread.start();
        } else {
            beside.run();
        }
        return beside;
    }

    private void run() {
        try {
            value = work.get();
        } catch (RuntimeException thrown) {
            failure = thrown;
        } catch (Error thrown) {
            fault = thrown;
        }
    }

    /** The value, waited for; what the work threw is thrown here. */
    T result() {
        join();
        if (failure != null) {
            throw failure;
        }
        if (fault != null) {
            throw fault;
        }
        return value;
    }

    /** To the end of the work, even where somebody interrupts: an unfinished plan is of no use. What the thread wrote is seen after it. */
    private void join() {
        boolean interrupted = false;
        while (thread != null && thread.isAlive()) {
            try {
                thread.join();
            } catch (InterruptedException later) {
                interrupted = true;
            }
        }
        if (interrupted) {
            Thread.currentThread().interrupt();
        }
    }
}
