package domefold.terminal;

/** What a terminal's text stands on. Most do not say, and both are common. */
enum Ground {
    DARK, LIGHT, UNKNOWN
}
