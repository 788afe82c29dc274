package domefold.plan;

import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;
import java.util.function.Supplier;

/** A value computed on another processor while this one computes something else; which of them is first makes no difference. */
final class Beside<T> {
    private final CompletableFuture<T> task;

    private Beside(CompletableFuture<T> task) {
        this.task = task;
    }

    /** @param worthIt false for work that takes less time than handing it over: it is done at once then, and here */
    static <T> Beside<T> begin(boolean worthIt, Supplier<T> work) {
        return new Beside<>(worthIt ? CompletableFuture.supplyAsync(work) : CompletableFuture.completedFuture(work.get()));
    }

    /** The value, waited for; what the work threw is thrown here. */
    T result() {
        try {
            return task.join();
        } catch (CompletionException failure) {
            if (failure.getCause() instanceof RuntimeException thrown) {
                throw thrown;
            }
            if (failure.getCause() instanceof Error thrown) {
                throw thrown;
            }
            throw failure;
        }
    }
}
