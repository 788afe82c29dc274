package domefold.evidence;

import java.util.Map;

/**
 * Everything published or assumed that the program rests on, as read at start.
 *
 * @param constants the single numbers the formulas use
 * @param tables the tables under {@code shared/evidence}, by name
 */
public record Evidence(Constants constants, Map<String, Table> tables) {
    public Evidence {
        tables = Map.copyOf(tables);
    }

    /**
     * The table of that name.
     *
     * @throws IllegalArgumentException if there is none
     */
    public Table table(String name) {
        Table table = tables.get(name);
        if (table == null) {
            throw new IllegalArgumentException("no table " + name);
        }
        return table;
    }

    public Evidence with(Constants changed) {
        return new Evidence(changed, tables);
    }
}
