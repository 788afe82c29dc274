/**
 * The only room that knows a terminal: opens it, paints canvases onto it, reads keys, and leaves it as it was found.
 *
 * <p>Start at {@link domefold.terminal.FullScreen}. Roles become colours in {@link domefold.terminal.Palette} and nowhere
 * else.
 */
package domefold.terminal;
