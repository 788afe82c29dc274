/**
 * Files: tables, cases, plans, records, journals and settings. The only room that knows JSON and CSV.
 *
 * <p>Start at {@link domefold.store.EvidenceFiles} for what is read at start.
 */
package domefold.store;
