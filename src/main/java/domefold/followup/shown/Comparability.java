package domefold.followup.shown;

import domefold.basics.Lists;
import domefold.device.Device;
import domefold.device.Fill;
import domefold.device.Surface;
import domefold.evidence.Status;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Whether a published row may stand for a first operation with a given device, and if not, why not. */
public final class Comparability {
    private static final double SAME_CM = 1e-9;

    private static final List<String> UNUSABLE = List.of("do not use", "do not fit", "leave out of fits");
    private static final List<String> PART_OF_A_COHORT = List.of("under muscle", "over muscle", "three surgeons", "filled");

    private Comparability() {}

    /** Empty when the row may enter a range for that device; else the reason in a sentence. */
    public static Optional<String> whyNot(OutcomeRow row, Device device) {
        return whyUnusable(row).or(() -> whyOtherWomen(row)).or(() -> whyOtherDevice(row, device));
    }

    /** Rows that never enter a range or a fit. */
    public static Optional<String> whyUnusable(OutcomeRow row) {
        String note = row.note().toLowerCase(Locale.ROOT);
        if (row.status() == Status.MEMORY_LOW
                || Lists.any(UNUSABLE, note::contains)) {
            return Optional.of(row.study() + ": the table marks the row as not to be used (" + row.note() + ")");
        }
        return row.percent().isEmpty() ? Optional.of(row.study() + ": no estimate is printed") : Optional.empty();
    }

    /** Rows about other women than those with a first augmentation. */
    public static Optional<String> whyOtherWomen(OutcomeRow row) {
        String indication = row.indication();
        if (indication.contains("REVISION")) {
            return Optional.of(row.study() + ": a revision cohort is never shown for a first operation");
        }
        if (!indication.startsWith("primary augmentation") || indication.contains("reconstruction")) {
            return Optional.of(row.study() + ": not a cohort of first augmentations only (" + indication + ")");
        }
        if (Lists.any(PART_OF_A_COHORT, indication::contains)) {
            return Optional.of(row.study() + ": part of a cohort (" + indication + ")");
        }
        return row.estimator().equals("km") ? Optional.empty()
                : Optional.of(row.study() + ": not an estimate over time (" + row.estimator() + ")");
    }

    private static Optional<String> whyOtherDevice(OutcomeRow row, Device device) {
        if (!row.fillWords().equals(device.fill().key())) {
            return Optional.of(row.study() + ": another fill (" + row.fillWords() + ")");
        }
        if (!surfaceMatches(row.surfaceWords(), device.surface())) {
            return Optional.of(row.study() + ": another surface (" + row.surfaceWords() + ")");
        }
        boolean shapedOnly = row.surfaceWords().contains("shaped") && !row.surfaceWords().contains("round");
        if (shapedOnly && Math.abs(device.heightCm() - device.widthCm()) < SAME_CM) {
            return Optional.of(row.study() + ": shaped devices, and this one is round");
        }
        return silentRuptureUnseen(row, device.fill());
    }

    private static Optional<String> silentRuptureUnseen(OutcomeRow row, Fill fill) {
        boolean unseen = fill == Fill.GEL && row.outcome().equals("rupture") && !scheduledMri(row);
        return unseen ? Optional.of(row.study() + ": no scheduled MRI, so silent ruptures were not seen") : Optional.empty();
    }

    /** True when every woman of the row's denominator was due for MRI. */
    public static boolean scheduledMri(OutcomeRow row) {
        return row.detection().startsWith("MRI") && !row.detection().contains("others");
    }

    /** A cohort with both surfaces, or of unnamed surface, stands for either. */
    static boolean surfaceMatches(String words, Surface surface) {
        return words.equals("mixed")
                || (surface == Surface.SMOOTH ? words.contains("smooth") : words.contains("textured"));
    }
}
