/**
 * What is handed on from a saved consult, as values: a sheet is a title, a mark and blocks, and says nothing about paper or
 * screen. Text, PDF and the screens all print the same sheet, so they cannot disagree.
 *
 * <p>Start at {@link domefold.sheet.Sheet}; {@link domefold.sheet.ClinicalSheet}, {@link domefold.sheet.PatientSheet} and
 * {@link domefold.sheet.OrderSheet} make them from a record.
 */
package domefold.sheet;
