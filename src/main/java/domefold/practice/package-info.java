/**
 * Practice for the fellow: invented patients by number, marking of a plan with the working, a drill for readings, and
 * progress by kind of decision. Every patient here is invented and every value says so; nothing of this room is a
 * clinical record.
 *
 * <p>A session: {@link domefold.practice.NextCase} names a number, {@link domefold.practice.PatientDraw} draws it, the
 * fellow fills a {@link domefold.practice.FellowPlan}, the engine plans {@code settingOn} of the case over the devices she
 * named, {@link domefold.practice.Marking} marks it, and {@link domefold.practice.Progress} keeps it;
 * {@link domefold.practice.TrainingLog} prints it. A tutor takes {@link domefold.practice.TutorSheet}; readings are
 * drilled by {@link domefold.practice.ReadingDrill}. Start at {@link domefold.practice.PatientDraw}.
 */
package domefold.practice;
