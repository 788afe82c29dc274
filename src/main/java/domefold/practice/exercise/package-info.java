/**
 * A practice case worked through: history and readings, the fellow's own plan one question a line, then the marking.
 *
 * <p>Start at {@link domefold.practice.exercise.Exercise}. It is a value like a consult, so that undo loses nothing and a
 * face only draws it.
 */
package domefold.practice.exercise;
