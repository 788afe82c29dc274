package domefold.screen.records;

import domefold.screen.EntryLine;

/** A deed that waits for its day or file, and for Enter. */
record Ask(Deed deed, EntryLine line) {}
