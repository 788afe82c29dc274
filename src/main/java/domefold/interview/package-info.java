/**
 * The consult as a conversation: which question comes next, what an answer means, what is remarked at once.
 *
 * <p>Start at {@link domefold.interview.Interview}. It is a value: every answer gives a new one, and undo is the one
 * before. The full screen and the line face both drive it; neither knows a formula and it knows neither.
 */
package domefold.interview;
