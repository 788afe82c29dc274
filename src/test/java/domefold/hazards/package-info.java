/** The controls against the hazards of docs/hazards.md that no other test proves. Start at {@link domefold.hazards.HazardsTest}. */
package domefold.hazards;
