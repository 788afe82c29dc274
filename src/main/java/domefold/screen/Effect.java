package domefold.screen;

/** What a screen asks of the world. The set is closed; the shell carries out each. */
public sealed interface Effect {
    Effect NOTHING = new Nothing();
    Effect QUIT = new Quit();

    record Nothing() implements Effect {}

    record Quit() implements Effect {}

    /** Writes one line of the journal: an answer, or that the last one was taken back or given again. */
    record Journal(String caseCode, String what, String questionId, String typed) implements Effect {
        public static final String ANSWER = "answer";
        public static final String UNDO = "undo";
        public static final String REDO = "redo";
    }

    /** Several effects, one after the other; the outcome is that of the last, or of the first that failed. */
    record All(java.util.List<Effect> effects) implements Effect {
        public All {
            effects = java.util.List.copyOf(effects);
        }
    }

    /** Saves the consult as a draft, or signed by the author given. */
    record Save(domefold.interview.Interview interview, boolean sign, String author) implements Effect {}

    /** Opens a new consult, or the unfinished one of that journal. */
    record Open(java.util.Optional<String> journalId) implements Effect {}

    /** Leaves an unfinished consult aside for good; its journal is kept under another name. */
    record SetAside(String journalId) implements Effect {}

    /** Opens a part of the program by name: {@code practise}, {@code records}, {@code start}. */
    record Visit(String place) implements Effect {}

    /**
     * Asks for a record as text.
     *
     * @param what {@link #SUMMARY} or {@link #ORDER}
     */
    record ReadRecord(String id, String what) implements Effect {
        public static final String SUMMARY = "summary";
        public static final String ORDER = "order";
    }

    /** Writes a record into a file that is not there yet, in the format of that key. */
    record WriteRecord(String id, String format, String file) implements Effect {}

    /** Enters that something happened to a record. */
    record MarkRecord(String id, domefold.record.RecordEvent.Kind kind, java.time.LocalDate day) implements Effect {}

    /** Keeps a marked practice case. */
    record Practised(domefold.practice.Progress.Entry entry) implements Effect {}

    /** Keeps a reading drill. */
    record Drilled(domefold.practice.exercise.Logbook.Drilled drill) implements Effect {}

    /** What came of an effect. */
    sealed interface Outcome {
        Effect of();
    }

    /** It was done; {@code text} says what in one sentence. */
    record Done(Effect of, String text) implements Outcome {}

    /** It was done, and the list of records is this one now. */
    record Listed(Effect of, domefold.records.RecordList list, String text) implements Outcome {}

    /** Another screen takes over. */
    record Opened(Effect of, Screen screen) implements Outcome {}

    /** It could not be done; {@code text} says why in one sentence. Nothing is half done. */
    record Failed(Effect of, String text) implements Outcome {}
}
