package domefold.line;

import domefold.screen.Effect;

/**
 * What a line led to.
 *
 * @param next the consult after it
 * @param text what to print, whole lines of at most 80 columns, possibly nothing
 * @param effect what the shell should do; its outcome goes to {@link LineConsult#told}
 */
public record Turn(LineConsult next, String text, Effect effect) {
    static Turn saying(LineConsult next, String text) {
        return new Turn(next, text, Effect.NOTHING);
    }
}
