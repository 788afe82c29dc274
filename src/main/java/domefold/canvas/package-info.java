/**
 * The grid of characters that screens draw onto, with roles instead of colours; rulers, tables and silhouettes.
 *
 * <p>Start at {@link domefold.canvas.Canvas}. Nothing here knows a terminal or a patient.
 */
package domefold.canvas;
