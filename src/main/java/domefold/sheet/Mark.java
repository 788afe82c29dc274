package domefold.sheet;

import domefold.record.ConsultRecord;
import domefold.record.Versions;

/**
 * What ties a print to the exact file it came from.
 *
 * @param id case code
 * @param version which version of the record
 * @param status draft, signed, amended or entered in error, in words
 * @param sha256 digest of the record file's exact bytes
 * @param versions what the record was computed with
 */
public record Mark(String id, int version, String status, String sha256, Versions versions) {
    private static final int PREFIX = 12;

    public Mark {
        if (!sha256.matches("[0-9a-f]{64}")) {
            throw new IllegalArgumentException("a digest is 64 hex digits");
        }
    }

    /**
     * The mark of a record.
     *
     * @param sha256 digest of the file it was read from
     */
    public static Mark of(ConsultRecord record, String sha256) {
        return new Mark(record.id(), record.version(), record.status().words(), sha256, record.versions());
    }

    /** The start of the digest, enough to find the file by. */
    public String digestPrefix() {
        return sha256.substring(0, PREFIX);
    }

    /** One line for the foot of a page. */
    public String line() {
        return "case " + id + " · version " + version + " (" + status + ") · sha256 " + digestPrefix() + "…";
    }
}
