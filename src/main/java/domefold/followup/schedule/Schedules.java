package domefold.followup.schedule;

import domefold.basics.Lists;
import domefold.device.Fill;
import domefold.evidence.Evidence;
import domefold.evidence.Status;
import domefold.evidence.Table;
import domefold.outcome.Refusal;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** All schedules of the surveillance table, superseded ones included, in table order. */
public final class Schedules {
    private static final List<String> CYCLE = List.of("first_year_low", "first_year_high", "interval_low", "interval_high");

    private final Map<String, Schedule> byId;

    private Schedules(Map<String, Schedule> byId) {
        this.byId = byId;
    }

    public static Schedules of(Evidence evidence) {
        Map<String, Schedule> map = new LinkedHashMap<>();
        for (Table.Row row : evidence.table("surveillance").rows()) {
            Schedule schedule = schedule(row);
            if (map.putIfAbsent(schedule.id(), schedule) != null) {
                throw new IllegalArgumentException("schedule " + schedule.id() + " occurs twice");
            }
        }
        return new Schedules(map);
    }

    public List<Schedule> all() {
        return List.copyOf(byId.values());
    }

    public List<String> ids() {
        return List.copyOf(byId.keySet());
    }

    public Optional<Schedule> find(String id) {
        return Optional.ofNullable(byId.get(id));
    }

    /**
     * The schedule with that id.
     *
     * @param where the place the id was typed, for the refusal
     * @throws Refusal naming every known id if there is none
     */
    public Schedule get(String id, String where) {
        return find(id).orElseThrow(() -> new Refusal("unknown-schedule", where,
                "there is no schedule '" + id + "'; known are " + String.join(", ", ids())));
    }

    private static Schedule schedule(Table.Row row) {
        String action = row.text("symptomatic_action");
        return new Schedule(row.text("schedule_id"), row.text("jurisdiction"), row.text("issuer"), row.text("version"),
                fills(row.text("fill")), row.text("fill"), row.text("asymptomatic_rule"), cycle(row),
                fixed(row.text("fixed_years")), row.text("modality"), action.equals("-") ? "" : action,
                row.text("version").toLowerCase(Locale.ROOT).contains("superseded"), row.text("source"),
                Status.of(row.text("status")), row.text("note"));
    }

    private static Set<Fill> fills(String words) {
        if (words.equals("all")) {
            return EnumSet.allOf(Fill.class);
        }
        for (Fill fill : Fill.values()) {
            if (words.startsWith(fill.key())) {
                return EnumSet.of(fill);
            }
        }
        throw new IllegalArgumentException("a schedule for the unknown fill '" + words + "'");
    }

    /** A row with an interval and no first year (a yearly clinical check, say) gives no imaging years. */
    private static Optional<Schedule.Cycle> cycle(Table.Row row) {
        if (Lists.any(CYCLE, column -> row.text(column).isEmpty())) {
            return Optional.empty();
        }
        return Optional.of(new Schedule.Cycle(years(row, "first_year_low"), years(row, "first_year_high"),
                years(row, "interval_low"), years(row, "interval_high")));
    }

    private static int years(Table.Row row, String column) {
        return Integer.parseInt(row.text(column));
    }

    private static List<Integer> fixed(String cell) {
        return cell.isEmpty() ? List.of() : Lists.map(List.of(cell.split("\\|")), Integer::valueOf);
    }
}
