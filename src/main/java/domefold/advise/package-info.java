/**
 * Everything the core knows about a case and a device list, in one call: the plan with openings, follow-up, ripple rank,
 * the breast after and pairs for two sides that differ.
 *
 * <p>Start at {@link domefold.advise.Advisor}.
 */
package domefold.advise;
