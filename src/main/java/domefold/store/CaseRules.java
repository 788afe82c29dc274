package domefold.store;

import domefold.evidence.Evidence;
import domefold.evidence.Table;
import domefold.patient.Case;
import java.util.LinkedHashSet;
import java.util.Set;
import java.util.function.Consumer;

/**
 * What a case file is held against beside its form.
 *
 * @param schedules ids of the imaging schedules there are; empty accepts any
 * @param gate throws a {@link domefold.outcome.Refusal} for a reading that no body has
 */
public record CaseRules(Set<String> schedules, Consumer<Case> gate) {
    /** Form only: for cases inside records, which were accepted when they were saved. */
    public static final CaseRules FORM_ONLY = new CaseRules(Set.of(), any -> {});

    public CaseRules {
        schedules = java.util.Collections.unmodifiableSet(new LinkedHashSet<>(schedules));
    }

    public static CaseRules of(Evidence evidence, Consumer<Case> gate) {
        Set<String> ids = new LinkedHashSet<>();
        for (Table.Row row : evidence.table("surveillance").rows()) {
            ids.add(row.text("schedule_id"));
        }
        return new CaseRules(ids, gate);
    }
}
