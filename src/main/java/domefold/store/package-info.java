/**
 * Files: tables, cases, plans, records, journals and settings. The only room that knows JSON and CSV.
 *
 * <p>Start at {@link domefold.store.EvidenceFiles} for what is read at start, {@link domefold.store.CaseFile} for what
 * comes in, {@link domefold.store.RecordStore} for what stays, {@link domefold.store.AtomicFile} for how anything is
 * written. Strict reading is in {@code JsonText} (the form) and {@code Fields} (the names, types and ranges).
 */
package domefold.store;
