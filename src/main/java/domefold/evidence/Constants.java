package domefold.evidence;

import java.util.Collection;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Every constant in use, by id. A value: overriding gives a new set.
 *
 * <p>A row whose note says DO NOT USE, or whose status is {@link Status#MEMORY_LOW}, is listed for the reader and
 * refused to every computation.
 */
public final class Constants {
    private final Map<String, Constant> byId;
    private final Set<String> refused = new HashSet<>();

    private Constants(Map<String, Constant> byId) {
        this.byId = byId;
        byId.forEach((id, constant) -> {
            if (!usable(constant)) {
                refused.add(id);
            }
        });
    }

    /**
     * A set of constants, in the order given.
     *
     * @throws IllegalArgumentException if an id occurs twice
     */
    public static Constants of(Collection<Constant> rows) {
        Map<String, Constant> map = new LinkedHashMap<>();
        for (Constant row : rows) {
            if (map.putIfAbsent(row.id(), row) != null) {
                throw new IllegalArgumentException("constant " + row.id() + " occurs twice");
            }
        }
        return new Constants(map);
    }

    /**
     * The constant with that id, for use in a computation.
     *
     * @throws IllegalArgumentException if there is none, or if it must not be used
     */
    public Constant get(String id) {
        Constant found = byId.get(id);
        if (found == null) {
            throw new IllegalArgumentException("no constant " + id);
        }
        if (refused.contains(id)) {
            throw new IllegalArgumentException("constant " + id + " is marked DO NOT USE");
        }
        return found;
    }

    /** The value of {@link #get}, in the constant's own unit. */
    public double value(String id) {
        return get(id).value();
    }

    public boolean has(String id) {
        return byId.containsKey(id);
    }

    /** All constants, the unusable ones included, in table order. */
    public List<Constant> all() {
        return List.copyOf(byId.values());
    }

    /** False for rows that are shown and never computed with. */
    public static boolean usable(Constant constant) {
        return constant.status() != Status.MEMORY_LOW && !constant.note().contains("DO NOT USE");
    }

    /**
     * These constants with one replaced by the surgeon's value.
     *
     * @throws IllegalArgumentException if there is no usable constant of that id
     */
    public Constants with(String id, Constant.Override change) {
        Map<String, Constant> map = new LinkedHashMap<>(byId);
        map.put(id, get(id).overriddenBy(change));
        return new Constants(map);
    }
}
