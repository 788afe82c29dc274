/** Whole sessions: the built program in a real terminal, from the first key to the files it leaves. Start at {@link domefold.sessions.Consulting}. */
package domefold.sessions;
