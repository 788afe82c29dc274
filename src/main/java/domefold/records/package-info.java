/**
 * Finding records again: a list of headers, questions put to it, what is due and which cases are easily taken for one another.
 * Pure; {@code domefold.store} makes the headers from files and keeps them in an index.
 *
 * <p>Start at {@link domefold.records.RecordList}.
 */
package domefold.records;
