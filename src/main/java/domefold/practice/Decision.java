package domefold.practice;

/** What the fellow decides and is marked on. The weights are constants {@code PRA-WEIGHT-...} and {@code PRA-FLAG-...}. */
public enum Decision {
    PROCEED("to operate or not"),
    WARNING("warning"),
    WIDTH_CEILING("width ceiling"),
    VOLUME("volume"),
    POCKET("pocket"),
    FOLD("fold"),
    DEVICE("device"),
    FILL("fill"),
    PROFILE("profile"),
    ROUTE("route"),
    INCISION("incision"),
    FOLLOW_UP("follow-up"),
    REASON("reason");

    private final String words;

    Decision(String words) {
        this.words = words;
    }

    public String words() {
        return words;
    }

    String weightId() {
        return "PRA-WEIGHT-" + name().replace('_', '-');
    }
}
