/**
 * Published rates as they are put before a patient: per 100 women, by a stated year, both framings, cohort and status
 * beside each, disagreements left standing.
 *
 * <p>Start at {@link domefold.followup.shown.RiskTable}. Rows come from the outcomes, effects and rare-harms tables; what
 * keeps a row out is a sentence in {@link domefold.followup.shown.Comparability}.
 */
package domefold.followup.shown;
