package domefold.evidence;

/** How far a number can be trusted, by how it came to us. Shown wherever the number is shown. */
public enum Status {
    /** Taken from the primary text itself. */
    READ("read", "read in the source"),
    /** Taken from a secondary account of the named source. */
    READ_SECONDARY("read-secondary", "read in a secondary account"),
    /** Recalled with high confidence; not confirmed in the paper. */
    MEMORY_HIGH("memory-high", "from memory, fairly sure"),
    /** Recalled with medium confidence; not confirmed in the paper. */
    MEMORY_MEDIUM("memory-medium", "from memory, unconfirmed"),
    /** Recalled with low confidence; never enters a computation. */
    MEMORY_LOW("memory-low", "from memory, not used"),
    /** Computed from values that are shown. */
    DERIVED("derived", "derived"),
    /** Common practice, no source. */
    PRACTICE("practice", "common practice, no source"),
    /** An engineering gate, not published. */
    PROPOSAL("proposal", "our own proposal, not published"),
    /** A model parameter that nobody measured here. */
    ASSUMED("assumed", "assumed, not measured"),
    /** Set by the surgeon in the settings; the original stays visible. */
    SURGEON("surgeon", "the surgeon's own value");

    private final String code;
    private final String words;

    Status(String code, String words) {
        this.code = code;
        this.words = words;
    }

    /** The code used in tables and saved records, for example {@code read-secondary}. */
    public String code() {
        return code;
    }

    /** The status as a person reads it, for example "from memory, unconfirmed". */
    public String words() {
        return words;
    }

    /** True for the three memory levels, which are never to look like read ones. */
    public boolean isMemory() {
        return this == MEMORY_HIGH || this == MEMORY_MEDIUM || this == MEMORY_LOW;
    }

    /**
     * The status with that code.
     *
     * @throws IllegalArgumentException for an unknown code
     */
    public static Status of(String code) {
        for (Status status : values()) {
            if (status.code.equals(code)) {
                return status;
            }
        }
        throw new IllegalArgumentException("unknown status '" + code + "'");
    }
}
