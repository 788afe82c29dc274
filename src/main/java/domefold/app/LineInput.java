package domefold.app;

import domefold.line.LineConsult;
import java.io.IOException;
import java.util.Optional;

/** Where the line face gets its lines from. */
interface LineInput extends AutoCloseable {
    /** The next line, without its end; empty where there will be none, or the person leaves. */
    Optional<String> next(LineConsult at) throws IOException;

    @Override
    default void close() throws IOException {}
}
