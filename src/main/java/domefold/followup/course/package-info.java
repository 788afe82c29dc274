/**
 * The course of owning a device: silent rupture under a schedule and a way of testing, deflation, and what it costs.
 *
 * <p>Start at {@link domefold.followup.course.Ownership}, which puts one device's years together;
 * {@link domefold.followup.course.LifeCourse} holds the model of silent rupture with its assumptions.
 */
package domefold.followup.course;
