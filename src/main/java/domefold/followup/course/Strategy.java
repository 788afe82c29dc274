package domefold.followup.course;

/** How an exam of the schedule is done, and what follows an alarm. */
public enum Strategy {
    ULTRASOUND("ultrasound", "ultrasound alone: an alarm leads to an operation"),
    MRI("mri", "MRI alone: an alarm leads to an operation"),
    ULTRASOUND_THEN_MRI("ultrasound-then-mri", "ultrasound first: an alarm is confirmed by MRI before an operation");

    private final String key;
    private final String words;

    Strategy(String key, String words) {
        this.key = key;
        this.words = words;
    }

    public String key() {
        return key;
    }

    public String words() {
        return words;
    }
}
