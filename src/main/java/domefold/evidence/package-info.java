/**
 * Where numbers come from: constants with their source and status, and the tables they were read from.
 *
 * <p>Start at {@link domefold.evidence.Constants}. Nothing here opens a file; {@code domefold.store} reads the tables
 * and hands them over as values.
 */
package domefold.evidence;
