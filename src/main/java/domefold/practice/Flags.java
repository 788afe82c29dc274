package domefold.practice;

import domefold.engine.Exact;
import domefold.evidence.Constants;
import domefold.outcome.Figures;
import domefold.outcome.Note;
import domefold.patient.Side;
import domefold.plan.Plan;
import domefold.plan.SideLimits;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;

/** What a case calls to be warned of: the engine's notes that have a weight, and a wish beyond the band. */
public final class Flags {
    private static final String WEIGHT = "PRA-FLAG-";

    private Flags() {}

    /** The weight's constant of that code. */
    static String weightId(String code) {
        return WEIGHT + code.toUpperCase(Locale.ROOT);
    }

    /** The codes that can be warned of, in table order. */
    public static List<String> known(Constants constants) {
        return constants.all().stream().map(one -> one.id()).filter(id -> id.startsWith(WEIGHT))
                .map(id -> id.substring(WEIGHT.length()).toLowerCase(Locale.ROOT)).toList();
    }

    /** Every flag of the plan by its code, in alphabetical order, with the sentence that raised it. */
    public static Map<String, String> of(Plan plan, Constants constants) {
        List<Note> notes = new ArrayList<>(plan.blocked());
        notes.addAll(plan.notes());
        Map<String, String> flags = new TreeMap<>();
        notes.forEach(note -> add(flags, "", note, constants));
        for (Side side : Side.values()) {
            plan.side(side).notes().forEach(note -> add(flags, side.name() + ": ", note, constants));
        }
        wish(plan, constants).ifPresent(text -> flags.put(Trap.WISH_BEYOND_BASE.code(), text));
        return flags;
    }

    private static void add(Map<String, String> flags, String where, Note note, Constants constants) {
        if (constants.has(weightId(note.code()))) {
            String text = where + note.text();
            flags.merge(note.code(), text, (one, other) -> one.contains(other) ? one : one + "; " + other);
        }
    }

    /** The size wished lies above both sides' bands by more than VERDICT-VOLUME. */
    private static Optional<String> wish(Plan plan, Constants constants) {
        OptionalDouble wished = plan.of().wishes().sizeWishMl();
        double highest = Double.NEGATIVE_INFINITY;
        for (Side side : Side.values()) {
            SideLimits limits = plan.side(side);
            if (limits.volumeBandMl().isPresent()) {
                highest = Math.max(highest, limits.volumeBandMl().get().high());
            }
        }
        double allowed = constants.value("VERDICT-VOLUME");
        if (wished.isEmpty() || Double.isInfinite(highest) || !Exact.above(wished.getAsDouble(), highest + allowed)) {
            return Optional.empty();
        }
        return Optional.of("the size wished, " + Figures.ml(wished.getAsDouble()) + " mL, is more than "
                + Figures.ml(allowed) + " mL above the wider side's band, which ends at "
                + Figures.ml(highest) + " mL");
    }
}
