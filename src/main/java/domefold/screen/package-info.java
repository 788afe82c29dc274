/**
 * The screens of the full-screen face: immutable values that answer a key and draw themselves onto a canvas.
 *
 * <p>Start at {@link domefold.screen.Screen}. No terminal, no file, no clock: what a screen wants done it returns as an
 * {@link domefold.screen.Effect}, and the shell does it.
 */
package domefold.screen;
