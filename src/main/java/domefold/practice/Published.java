package domefold.practice;

import domefold.evidence.Evidence;
import domefold.evidence.Table;

/** Single published values, by the row they stand in. */
final class Published {
    /** Young women without children: the nearest published cohort to those who ask for augmentation. */
    static final String YOUNG = "Saudi nulliparous, 20-25 y, BMI 20-25";

    static final String HOSPITAL = "Chinese women seen for breast disease";
    static final String TEACHING = "most women in augmentation teaching";
    static final String SENEGAL = "Senegalese women";

    private Published() {}

    /**
     * A cell of {@code populations.csv}.
     *
     * @throws IllegalArgumentException if there is no such row or the cell is empty
     */
    static double population(Evidence evidence, String measureId, String population, String column) {
        for (Table.Row row : evidence.table("populations").rows()) {
            if (row.text("measure_id").equals(measureId) && row.text("population").equals(population)) {
                return row.number(column).orElseThrow(
                        () -> new IllegalArgumentException(measureId + " of " + population + " has no " + column));
            }
        }
        throw new IllegalArgumentException("no population row for " + measureId + " of " + population);
    }

    /** The result of a row of {@code sizing-rules.csv} as a number: a share in per cent, a volume in mL. */
    static double share(Evidence evidence, String ruleId) {
        for (Table.Row row : evidence.table("sizing-rules").rows()) {
            if (row.text("rule_id").equals(ruleId)) {
                return row.number("result").orElseThrow();
            }
        }
        throw new IllegalArgumentException("no rule " + ruleId);
    }
}
