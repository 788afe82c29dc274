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
     * The case in that file.
     *
     * @throws Refusal if it is not a whole and plausible case
     * @throws StoreFailure if the system will not give it
     */
    public static Case read(Path file, CaseRules rules) throws IOException {
        return read(InputFile.bytes(file, "a case", LARGEST_BYTES), Shown.path(file), rules);
    }

    /**
     * The case in those bytes.
     *
     * @param name what to call them in a refusal
     */
    public static Case read(byte[] bytes, String name, CaseRules rules) {
        Fields fields = new Fields(JsonText.object(InputFile.utf8(bytes, name), name), name, null);
        Case read = CaseReader.read(fields, rules.schedules(), true);
        try {
            rules.gate().accept(read);
        } catch (Refusal gate) {
            throw new Refusal(gate.code(), gate.where(), name + ", line " + fields.lineOf(gate.where()) + ": " + gate.getMessage());
        }
        return read;
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
