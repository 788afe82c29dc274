/**
 * The devices that exist, as values: rows of a device list, the list itself and what can be wrong with one.
 *
 * <p>Start at {@link domefold.device.Catalogue}. The list that ships is invented by a stated geometric rule.
 */
package domefold.device;
