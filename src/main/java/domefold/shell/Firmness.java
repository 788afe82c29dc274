package domefold.shell;

import domefold.evidence.Constants;
import domefold.outcome.Figures;

/**
 * How firm the device itself is: the head at its apex in cm of water, 0 while the top is slack. Capsule and skin add to
 * it, usually more than the shell does; an order of magnitude, never a pressure to quote.
 *
 * @param apexHeadCm head at the apex, cm of filler
 * @param word soft, firm or tense
 * @param text one sentence
 */
public record Firmness(double apexHeadCm, String word, String text) {
    private static final double LEAST_SHOWN_CM = 0.1;

    public static Firmness of(ShellState state, Constants constants) {
        if (!state.hasShape()) {
            return new Firmness(Double.NaN, "beyond capacity", "more than this shell can hold without stretching: it holds "
                    + Figures.ml(state.capacityMl()) + " mL at most (model)");
        }
        double head = state.apexPressureHeadCm();
        String word = head < constants.value("FIRM-NOTED") ? "soft"
                : head < constants.value("FIRM-HARD") ? "firm" : "tense";
        return new Firmness(head, word, word + ": " + (head < LEAST_SHOWN_CM ? "under " + Figures.of(LEAST_SHOWN_CM, 1, 1) : "about " + Figures.of(head, 1, 1))
                + " cm of water at the apex, right to an order of magnitude only; tissue adds more");
    }
}
