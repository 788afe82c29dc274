package domefold.record;

import java.time.Instant;
import java.util.Optional;

/**
 * Who wrote this version and when.
 *
 * @param author the name or initials the clinician gave, possibly empty in a draft
 * @param createdAt when the consult began
 * @param savedAt when this version was saved
 * @param signedAt when it was signed, empty in a draft
 */
public record Authorship(String author, Instant createdAt, Instant savedAt, Optional<Instant> signedAt) {}
