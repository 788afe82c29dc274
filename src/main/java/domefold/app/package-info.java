/** Main, wiring and the commands; the only room that knows everyone. Start at {@link domefold.app.Main}. */
package domefold.app;
