/**
 * A saved consult as a value: inputs, plan, what was settled and why, what was discussed, who signed what when.
 *
 * <p>Start at {@link domefold.record.ConsultRecord}. Nothing here opens a file; {@code domefold.store} reads and writes
 * {@code domefold-record/1}, and every print and export is made from this value alone.
 */
package domefold.record;
