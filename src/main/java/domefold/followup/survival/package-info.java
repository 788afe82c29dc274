/**
 * Failure over time as two-parameter Weibull curves: from published points, or from individual times by maximum
 * likelihood.
 *
 * <p>Start at {@link domefold.followup.survival.SurvivalAnswer}. A curve knows the last time its data reach and marks
 * everything later; cohorts that count or look differently refuse to share a range.
 */
package domefold.followup.survival;
