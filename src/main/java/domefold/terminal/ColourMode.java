package domefold.terminal;

/** How many colours the terminal shows. */
public enum ColourMode {
    NONE, ANSI_16, INDEXED_256, RGB
}
