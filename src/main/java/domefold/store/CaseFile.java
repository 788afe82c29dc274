package domefold.store;

import domefold.outcome.Refusal;
import domefold.patient.Case;
import java.io.IOException;
import java.nio.file.Path;

/** Case files, {@code domefold-case/1}; the schema is {@code shared/schema/case-1.json}. */
public final class CaseFile {
    public static final String FORMAT = "domefold-case/1";
    /** A case with every field is under 4 kB. */
    static final int LARGEST_BYTES = 1 << 20;

    private CaseFile() {}

    /**
     * A case that has the form of one, not yet held against anything outside its file: that needs the tables, and the file can be
     * read while they are.
     */
    public static final class Opened {
        private final String name;
        private final Fields fields;
        private final Case read;

        private Opened(byte[] bytes, String name) {
            this.name = name;
            this.fields = new Fields(JsonText.object(InputFile.utf8(bytes, name), name), name, null);
            this.read = CaseReader.read(fields, true);
        }

        /**
         * The case.
         *
         * @throws Refusal if it names a schedule there is not or has a reading that no body has
         */
        public Case heldAgainst(CaseRules rules) {
            CaseReader.checkSchedule(fields, rules.schedules());
            try {
                rules.gate().accept(read);
            } catch (Refusal gate) {
                throw new Refusal(gate.code(), gate.where(), name + ", line " + fields.lineOf(gate.where()) + ": " + gate.getMessage());
            }
            return read;
        }
    }

    /**
     * The form of that file.
     *
     * @throws Refusal if it is not a whole case
     * @throws StoreFailure if the system will not give it
     */
    public static Opened open(Path file) throws IOException {
        return new Opened(InputFile.bytes(file, "a case", LARGEST_BYTES), Shown.path(file));
    }

    /**
     * The case in that file.
     *
     * @throws Refusal if it is not a whole and plausible case
     * @throws StoreFailure if the system will not give it
     */
    public static Case read(Path file, CaseRules rules) throws IOException {
        return open(file).heldAgainst(rules);
    }

    /**
     * The case in those bytes.
     *
     * @param name what to call them in a refusal
     */
    public static Case read(byte[] bytes, String name, CaseRules rules) {
        return new Opened(bytes, name).heldAgainst(rules);
    }

    /** The case as text; reading it gives the same case. */
    public static String write(Case written) {
        JsonOut out = new JsonOut();
        out.object(() -> CaseWriter.fields(out, written));
        return out.text();
    }

    /** Writes it, replacing a file of that name. */
    public static void write(Path file, Case written) throws IOException {
        AtomicFile.replace(file, write(written));
    }
}
