/**
 * What a computation gives back beside its value: notes, reasons, refusals and the working.
 *
 * <p>Start at {@link domefold.outcome.Note}. Codes are kebab-case and stable (saved records and tests use them);
 * sentences go to people and may be reworded.
 */
package domefold.outcome;
