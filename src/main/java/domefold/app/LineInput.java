package domefold.app;

import domefold.line.Completing;
import java.io.IOException;
import java.util.Optional;

/** Where what is led line by line gets its lines from. */
interface LineInput extends AutoCloseable {
    /** The next line, without its end; empty where there will be none, or the person leaves. */
    Optional<String> next(Completing at) throws IOException;

    @Override
    default void close() throws IOException {}
}
