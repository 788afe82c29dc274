/**
 * What leaves the house: calendars, lists, PDF and the bundle for another system, each made from the saved record and the
 * sheets of {@code domefold.sheet}. Everything here turns a value into bytes; nothing here writes a file.
 *
 * <p>Start at {@link domefold.export.Exports}. PDFBox and Jackson are used nowhere else but here and in
 * {@code domefold.store}, and PDFBox is not loaded before a PDF is asked for.
 */
package domefold.export;
