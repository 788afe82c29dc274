/**
 * The coordinator's screens: the list of records with its filter, and what is due in a month.
 *
 * <p>Start at {@link domefold.screen.records.RecordsScreen}.
 */
package domefold.screen.records;
