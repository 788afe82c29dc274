package domefold.terminal;

import domefold.screen.Effect;
import java.io.IOException;

/** Carries out what a screen asks of the world. A failure the user can act on is an outcome; others are thrown. */
@FunctionalInterface
public interface Effects {
    Effect.Outcome carryOut(Effect effect) throws IOException;

    /** The first frame is up: the time to begin what the first key will want. */
    default void painted() {}
}
