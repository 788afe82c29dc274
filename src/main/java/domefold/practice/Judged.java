package domefold.practice;

import domefold.outcome.Working;
import java.util.List;
import java.util.Optional;

/** A decision's standing and its reasons, before it is weighed. */
record Judged(Standing standing, String said, String decidedBy, String readingError, Optional<String> bothHeld,
        List<Working> working) {
    static Judged of(Standing standing, String said, String decidedBy) {
        return new Judged(standing, said, decidedBy, "", Optional.empty(), List.of());
    }

    static Judged notStated(String limit) {
        return of(Standing.OUTSIDE, "not stated", limit);
    }

    Judged reading(String error) {
        return new Judged(standing, said, decidedBy, error, bothHeld, working);
    }

    Judged held(String other) {
        return new Judged(standing, said, decidedBy, readingError, Optional.of(other), working);
    }

    Judged by(List<Working> lines) {
        return new Judged(standing, said, decidedBy, readingError, bothHeld, lines);
    }
}
