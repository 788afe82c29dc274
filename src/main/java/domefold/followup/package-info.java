/**
 * What owning a device asks for, for decades: exams, failure and how it shows, outcomes, cost.
 *
 * <p>Start at {@link domefold.followup.FollowUps}, which the planner calls per device. The parts have rooms of their own:
 * {@code schedule} (exam years and dates), {@code survival} (curves from published or own follow-up), {@code course}
 * (silent rupture under a schedule, cost) and {@code shown} (published rates as they are put before a patient).
 */
package domefold.followup;
