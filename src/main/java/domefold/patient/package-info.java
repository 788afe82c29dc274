/**
 * One patient's consult input as a value: readings per side, history, wishes and setting.
 *
 * <p>Start at {@link domefold.patient.Case}, then {@link domefold.patient.Measure}, which lists every reading with its
 * unit and the name it has in a case file. Absent means "not taken"; nothing here has a default for a clinical fact.
 */
package domefold.patient;
