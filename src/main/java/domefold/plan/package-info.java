/**
 * The plan: what the tissues allow per side, and each device held against it, with reasons and working.
 *
 * <p>Start at {@link domefold.plan.Plan}. Printed as {@code domefold-plan/1}.
 */
package domefold.plan;
