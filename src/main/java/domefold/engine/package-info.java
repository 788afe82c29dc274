/**
 * What the tissues allow: gates, reading error and one small class for each published rule.
 *
 * <p>Start at {@link domefold.engine.StartingVolume} for how a rule looks, and at {@link domefold.engine.Gate} for how
 * a reading is accepted. No clinical number stands in this code: each comes from
 * {@link domefold.evidence.Constants} or a table, with its source and status. {@code domefold.plan} puts the rules
 * together.
 */
package domefold.engine;
