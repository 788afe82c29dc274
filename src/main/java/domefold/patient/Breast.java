package domefold.patient;

import java.util.Optional;

/** One side: its readings and its ptosis grade, if looked at. */
public record Breast(Readings readings, Optional<Ptosis> ptosis) {
    public static final Breast UNSEEN = new Breast(Readings.NONE, Optional.empty());
}
