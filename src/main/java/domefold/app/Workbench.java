package domefold.app;

import domefold.evidence.Evidence;

/** What a command or a face works with. */
public record Workbench(Console console, Evidence evidence) {}
