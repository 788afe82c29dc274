package domefold.app;

/** How an answer is printed. */
enum Answer {
    TEXT,
    JSON;

    @Override
    public String toString() {
        return name().toLowerCase(java.util.Locale.ROOT);
    }
}
