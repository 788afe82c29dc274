package domefold.engine;

import domefold.evidence.Constants;
import domefold.outcome.Figures;
import domefold.outcome.Note;
import domefold.outcome.Working;
import domefold.patient.Pocket;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * The plane, from two pinches. The surgeon's choice stands; where the cover speaks against it, that is said.
 *
 * <pre>
 *   upper pole pinch &lt; POC-01   muscle over the upper device (dual plane or partly under the muscle)
 *   upper pole pinch otherwise   over the muscle or under the fascia is permissible
 *   fold pinch &lt; POC-03         the muscle stays attached along the fold
 * </pre>
 *
 * Source: Tebbetts and Adams 2005, thresholds from memory (POC-01 to POC-03). Strict as written.
 *
 * @param pocket the surgeon's plane, else the one advised; empty without an upper pole pinch
 * @param notes what is to be said of it
 * @param working the two comparisons
 */
public record PocketAdvice(Optional<Pocket> pocket, List<Note> notes, List<Working> working) {
    public PocketAdvice {
        notes = List.copyOf(notes);
        working = List.copyOf(working);
    }

    public static PocketAdvice of(
            OptionalDouble upperPinchCm, OptionalDouble foldPinchCm, Optional<Pocket> chosen, Constants constants) {
        List<Note> notes = new ArrayList<>();
        List<Working> working = new ArrayList<>();
        Optional<Pocket> pocket = chosen;
        if (upperPinchCm.isPresent()) {
            pocket = Optional.of(chosen.orElse(upper(upperPinchCm.getAsDouble(), chosen, notes, working, constants)));
        }
        if (foldPinchCm.isPresent()) {
            fold(foldPinchCm.getAsDouble(), pocket, notes, working, constants);
        }
        return new PocketAdvice(pocket, notes, working);
    }

    private static Pocket upper(double pinchCm, Optional<Pocket> chosen, List<Note> notes, List<Working> working,
            Constants constants) {
        double limitCm = constants.value("POC-01");
        boolean thin = Exact.below(pinchCm, limitCm);
        working.add(Working.by(constants.get("POC-01"), "cover of the upper pole", "upper pole pinch "
                + Figures.cm(pinchCm) + (thin ? " is below " : " is not below ") + Figures.cm(limitCm)
                + (thin ? ": muscle over the upper device" : ": over the muscle or under the fascia is permissible"),
                pinchCm, "cm"));
        if (!thin) {
            notes.add(new Note("over-muscle-permissible", "an upper pole pinch of " + Figures.cm(pinchCm)
                    + " cm is not below " + Figures.cm(limitCm)
                    + " cm: over the muscle (subglandular) or under the fascia is permissible"));
            return Pocket.SUBGLANDULAR;
        }
        notes.add(new Note("muscle-cover", "an upper pole pinch of " + Figures.cm(pinchCm) + " cm is below "
                + Figures.cm(limitCm) + " cm: cover the upper device with muscle; ripples and edges may show"));
        if (chosen.isPresent() && !chosen.get().underMuscle()) {
            notes.add(new Note("pocket-against-cover", "the chosen pocket is " + chosen.get().key()
                    + ", which leaves the upper device without muscle over a pinch of " + Figures.cm(pinchCm) + " cm"));
        }
        return Pocket.DUAL_PLANE;
    }

    private static void fold(double pinchCm, Optional<Pocket> pocket, List<Note> notes, List<Working> working,
            Constants constants) {
        double limitCm = constants.value("POC-03");
        boolean thin = Exact.below(pinchCm, limitCm);
        working.add(Working.by(constants.get("POC-03"), "cover at the fold", "fold pinch " + Figures.cm(pinchCm)
                + (thin ? " is below " : " is not below ") + Figures.cm(limitCm)
                + (thin ? ": keep the muscle at the fold" : ""), pinchCm, "cm"));
        if (thin) {
            String conflict = pocket.filter(plane -> plane == Pocket.DUAL_PLANE)
                    .map(plane -> "; a dual plane divides it there").orElse("");
            notes.add(new Note("keep-muscle-at-fold", "a fold pinch of " + Figures.cm(pinchCm) + " cm is below "
                    + Figures.cm(limitCm) + " cm: leave the muscle attached along the fold" + conflict));
        }
    }
}
