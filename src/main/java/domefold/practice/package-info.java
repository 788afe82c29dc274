/**
 * Practice for the fellow: invented patients by number, marking of a plan with the working, a drill for readings, and
 * progress by kind of decision.
 *
 * <p>Start at {@link domefold.practice.PatientDraw}. Every patient here is invented and every value says so;
 * nothing of this room is a clinical record.
 */
package domefold.practice;
