package domefold.app;

import domefold.device.Catalogue;
import domefold.evidence.Evidence;
import domefold.store.Homes;

/** What a command or a face works with. */
public record Workbench(Console console, Evidence evidence, Catalogue catalogue, Homes homes) {}
