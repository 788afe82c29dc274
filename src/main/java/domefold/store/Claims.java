package domefold.store;

import domefold.outcome.Refusal;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.time.Duration;
import java.time.Instant;
import java.util.Optional;
import java.util.UUID;

/**
 * Who has a record open, as a courtesy between workstations: nothing is lost without it, since no save replaces another,
 * but two people learn of each other before they both type.
 */
public final class Claims {
    static final String NAME = ".claim";
    /** A claim is refreshed every half minute; one this old was left by a crash. Engineering gate, not published. */
    static final Duration STALE = Duration.ofMinutes(5);
    private static final int LARGEST_BYTES = 1 << 16;

    private final Path folder;
    private final Workstation workstation;
    private final String session;

    /**
     * @param folder the records folder
     * @param session names this run, so that two windows on one machine are two
     */
    public Claims(Path folder, Workstation workstation, UUID session) {
        this.folder = folder;
        this.workstation = workstation;
        this.session = session.toString();
    }

    /**
     * A claim.
     *
     * @param workstation the machine
     * @param session the run
     * @param who the author, possibly empty
     * @param since when it was opened
     * @param refreshedAt the last sign of life
     */
    public record Claim(String workstation, String session, String who, Instant since, Instant refreshedAt) {
        public boolean isStale(Instant now) {
            return refreshedAt.plus(STALE).isBefore(now);
        }
    }

    /**
     * Claims the record.
     *
     * @return empty once it is claimed, else who has it
     */
    public Optional<Claim> take(String id, String who, Instant now) throws IOException {
        Path home = folder.resolve(RecordPlaces.folderName(id));
        AtomicFile.folder(home);
        try {
            AtomicFile.create(home.resolve(NAME), bytes(new Claim(workstation.name(), session, who, now, now)));
            return Optional.empty();
        } catch (FileAlreadyExistsException taken) {
            Optional<Claim> holder = holder(id);
            return holder.filter(claim -> !claim.session().equals(session));
        }
    }

    /**
     * Takes a stale claim over, and writes that down.
     *
     * @throws Refusal if it is not stale, or somebody else took it over first
     */
    public void takeOver(String id, String who, Instant now) throws IOException {
        Optional<Claim> holder = holder(id);
        if (holder.isPresent() && !holder.get().isStale(now)) {
            throw new Refusal("claim-not-stale", id, "case " + Shown.plain(id) + " is open at " + Shown.plain(holder.get().workstation())
                    + " since " + holder.get().since() + "; it can be taken over five minutes after its last sign of life");
        }
        Path claim = folder.resolve(RecordPlaces.folderName(id)).resolve(NAME);
        Path former = claim.resolveSibling(NAME + "-" + UUID.randomUUID());
        try {
            Files.move(claim, former, StandardCopyOption.ATOMIC_MOVE);
            Files.delete(former);
        } catch (NoSuchFileException released) {
            // Given back or taken over meanwhile; taking it tells which.
        }
        Optional<Claim> other = take(id, who, now);
        if (other.isPresent()) {
            throw new Refusal("claim-taken", id, "case " + Shown.plain(id) + " was taken over by " + Shown.plain(other.get().workstation())
                    + " meanwhile");
        }
        new AuditLog(folder.resolve(RecordPlaces.AUDIT), workstation).append(new AuditLog.Happened(now, who, "claim-taken-over", id,
                "", "", ""));
    }

    /** Says that it is still open here; does nothing where it no longer is. */
    public void refresh(String id, Instant now) throws IOException {
        Optional<Claim> mine = holder(id).filter(claim -> claim.session().equals(session));
        if (mine.isPresent()) {
            Claim claim = mine.get();
            AtomicFile.replace(folder.resolve(RecordPlaces.folderName(id)).resolve(NAME),
                    new String(bytes(new Claim(claim.workstation(), session, claim.who(), claim.since(), now)), StandardCharsets.UTF_8));
        }
    }

    /** Gives it back, if it is held here. */
    public void release(String id) throws IOException {
        if (holder(id).filter(claim -> claim.session().equals(session)).isPresent()) {
            Files.deleteIfExists(folder.resolve(RecordPlaces.folderName(id)).resolve(NAME));
        }
    }

    /** Who has it; empty where nobody has, or where the claim is unreadable and counts as stale. */
    public Optional<Claim> holder(String id) throws IOException {
        Path file = folder.resolve(RecordPlaces.folderName(id)).resolve(NAME);
        try {
            byte[] bytes = InputFile.bytes(file, "a claim", LARGEST_BYTES);
            Fields fields = new Fields(JsonText.object(InputFile.utf8(bytes, NAME), NAME), NAME, later -> {});
            return Optional.of(new Claim(fields.needText("workstation"), fields.needText("session"), fields.needText("who"),
                    fields.needInstant("since"), fields.needInstant("refreshedAt")));
        } catch (Refusal noneOrUnreadable) {
            return Optional.empty();
        }
    }

    private static byte[] bytes(Claim claim) {
        JsonOut out = new JsonOut();
        out.object(() -> out.text("format", "domefold-claim/1").text("workstation", claim.workstation())
                .text("session", claim.session()).text("who", claim.who()).text("since", claim.since().toString())
                .text("refreshedAt", claim.refreshedAt().toString()));
        return out.text().getBytes(StandardCharsets.UTF_8);
    }
}
