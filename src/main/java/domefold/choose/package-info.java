/**
 * Choosing among devices that fit: criteria with stated ranges, an order by her weights, what is dominated and by what,
 * what one device gains and gives up against another, and pairs for two sides that differ.
 *
 * <p>Start at {@link domefold.choose.Order}. The order is never called best; ties are ties.
 */
package domefold.choose;
