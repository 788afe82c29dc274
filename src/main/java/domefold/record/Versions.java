package domefold.record;

/**
 * What the plan was computed with, enough to compute it again.
 *
 * @param engine version of this program
 * @param catalogueName name of the device list
 * @param catalogueDate its date as it states it, empty if it states none
 * @param catalogueSha256 digest of its exact bytes
 * @param catalogueInvented true for the list that ships with the program
 * @param tablesSha256 digest over every evidence table
 */
public record Versions(
        String engine,
        String catalogueName,
        String catalogueDate,
        String catalogueSha256,
        boolean catalogueInvented,
        String tablesSha256) {}
