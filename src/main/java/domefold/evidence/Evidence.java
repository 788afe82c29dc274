package domefold.evidence;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Function;

/**
 * Everything published or assumed that the program rests on: the single numbers the formulas use, and the tables under
 * {@code shared/evidence}, each taken apart when it is first asked for. To its users it is a value.
 */
public final class Evidence {
    private final Constants constants;
    private final List<String> names;
    private final Function<String, Table> reader;
    private final Map<String, Table> taken;
    private final Map<Class<?>, Object> made = new ConcurrentHashMap<>();

    private Evidence(Constants constants, List<String> names, Function<String, Table> reader, Map<String, Table> taken) {
        this.constants = constants;
        this.names = List.copyOf(names);
        this.reader = reader;
        this.taken = taken;
    }

    /**
     * @param names the tables there are
     * @param reader gives the table of a name; the same table each time
     */
    public static Evidence of(Constants constants, List<String> names, Function<String, Table> reader) {
        return new Evidence(constants, names, reader, new ConcurrentHashMap<>());
    }

    public Constants constants() {
        return constants;
    }

    /**
     * The table of that name.
     *
     * @throws IllegalArgumentException if there is none
     */
    public Table table(String name) {
        Table known = taken.get(name);
        if (known != null) {
            return known;
        }
        if (!names.contains(name)) {
            throw new IllegalArgumentException("no table " + name);
        }
        return taken.computeIfAbsent(name, reader);
    }

    /** What somebody makes of this evidence, made when it is first asked for and the same from then on. */
    public <T> T once(Class<T> kind, Function<Evidence, T> maker) {
        Object known = made.get(kind);
        if (known == null) {
            Object first = maker.apply(this);
            known = made.putIfAbsent(kind, first) == null ? first : made.get(kind);
        }
        return kind.cast(known);
    }

    /** All tables by name. */
    public Map<String, Table> tables() {
        Map<String, Table> all = new TreeMap<>();
        names.forEach(name -> all.put(name, table(name)));
        return all;
    }

    public Evidence with(Constants changed) {
        return new Evidence(changed, names, reader, taken);
    }
}
