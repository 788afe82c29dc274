package domefold.report;

/** The sentences that go with every print. */
public final class Statements {
    /** What the program is not. */
    public static final String SUPPORTS = "Domefold supports a licensed surgeon's judgement and replaces none of it; "
            + "device labelling and local rules come before anything printed here.";

    /** While the shipped device list is in use. */
    public static final String INVENTED_LIST = "The device list is invented by a stated geometric rule; replace it with the "
            + "practice's own list before clinical use.";

    /** On everything made from an invented patient. */
    public static final String PRACTICE = "PRACTICE: this patient is invented; nothing here may be ordered or filed.";

    private Statements() {}
}
