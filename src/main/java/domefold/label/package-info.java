/**
 * What is printed on a device's own label: GS1 element strings and HIBC strings, read and checked, and the entry that says
 * what was put in, held against what was settled.
 *
 * <p>Start at {@link domefold.label.LabelReader}. Nothing here opens a file or asks for the date.
 */
package domefold.label;
