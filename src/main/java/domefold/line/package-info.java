/**
 * The consult line by line: the same interview as the full screen, with sentences and small tables instead of drawings.
 *
 * <p>Start at {@link domefold.line.LineConsult}. Values in, text out; nothing here reads a line or writes one.
 */
package domefold.line;
