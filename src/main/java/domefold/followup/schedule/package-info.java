/**
 * Imaging schedules as data: who asks for which exam, when, and what it means in calendar dates.
 *
 * <p>Start at {@link domefold.followup.schedule.Schedules}. The rows are those of the surveillance table; nothing about a
 * jurisdiction is written in code.
 */
package domefold.followup.schedule;
