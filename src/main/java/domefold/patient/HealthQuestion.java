package domefold.patient;

/** The health questions that gate. Absent from the history means "not asked", which is not "no". */
public enum HealthQuestion {
    NICOTINE("nicotine", "nicotine"),
    PREGNANT_OR_NURSING("pregnantOrNursing", "pregnant or nursing"),
    ACTIVE_INFECTION("activeInfection", "active infection"),
    UNTREATED_BREAST_DISEASE("untreatedBreastDisease", "untreated breast disease"),
    CHEST_IRRADIATION("chestIrradiation", "chest irradiation"),
    EARLIER_BREAST_SURGERY("earlierBreastSurgery", "earlier breast surgery");

    private final String field;
    private final String words;

    HealthQuestion(String field, String words) {
        this.field = field;
        this.words = words;
    }

    public String field() {
        return field;
    }

    public String words() {
        return words;
    }
}
