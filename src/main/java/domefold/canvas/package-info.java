/**
 * The grid of characters that screens draw onto, with roles instead of colours, and what is drawn on it: lengths
 * ({@link domefold.canvas.Ruler}, {@link domefold.canvas.Tape}, {@link domefold.canvas.MarginBar}), tables
 * ({@link domefold.canvas.TextTable}, {@link domefold.canvas.Columns}), shapes and curves
 * ({@link domefold.canvas.Silhouette}, {@link domefold.canvas.Plot}), years and people
 * ({@link domefold.canvas.YearLine}, {@link domefold.canvas.Hundred}).
 *
 * <p>Start at {@link domefold.canvas.Canvas}. Nothing here knows a terminal or a patient.
 */
package domefold.canvas;
