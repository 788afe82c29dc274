package domefold.patient;

/** Where the incision lies. */
public enum Route {
    INFRAMAMMARY("inframammary"),
    PERIAREOLAR("periareolar"),
    TRANSAXILLARY("transaxillary");

    private final String key;

    Route(String key) {
        this.key = key;
    }

    public String key() {
        return key;
    }
}
