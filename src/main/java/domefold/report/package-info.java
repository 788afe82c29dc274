/**
 * Results as readable text, 80 columns wide: the plan, the consult, the device list, the evidence.
 *
 * <p>Start at {@link domefold.report.PlanText}. Values in, text out; nothing here opens a file or knows the day.
 */
package domefold.report;
