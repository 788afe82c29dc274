package domefold.screen;

/** What a screen asks of the world. The set is closed; the shell carries out each. */
public sealed interface Effect {
    Effect NOTHING = new Nothing();
    Effect QUIT = new Quit();

    record Nothing() implements Effect {}

    record Quit() implements Effect {}

    /** What came of an effect. */
    sealed interface Outcome {
        Effect of();
    }

    /** It was done; {@code text} says what in one sentence. */
    record Done(Effect of, String text) implements Outcome {}

    /** It could not be done; {@code text} says why in one sentence. Nothing is half done. */
    record Failed(Effect of, String text) implements Outcome {}
}
