package domefold.store;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.Instant;
import java.util.Optional;
import java.util.Set;

/**
 * A workstation's audit log: each line carries the hash of the one before, so that a changed or missing line shows. It is
 * evidence, not proof: who can write the whole file can write a whole new chain, which is why prints carry digests.
 */
final class AuditLog {
    static final String ENDING = ".jsonl";
    private static final int LONGEST_LINE_BYTES = 1 << 16;
    private static final int PATIENCE_MS = 20_000;
    private static final int PAUSE_MS = 2;

    private final Path file;

    AuditLog(Path folder, Workstation workstation) {
        this.file = folder.resolve(workstation.name() + ENDING);
    }

    /** What is to be written down; the chain adds the rest. */
    record Happened(Instant at, String who, String event, String id, String file, String sha256, String summarySha256) {}

    /** Returns once the line is on disk. */
    void append(Happened what) throws IOException {
        try {
            AtomicFile.folder(file.getParent());
            try (FileChannel channel = FileChannel.open(file, Set.of(StandardOpenOption.CREATE, StandardOpenOption.READ,
                    StandardOpenOption.WRITE), AtomicFile.ownerOnly(file, "rw-------"))) {
                try (FileLock lock = patiently(channel)) {
                    appendUnder(lock, channel, what);
                }
            }
        } catch (IOException failure) {
            throw StoreFailure.of("cannot write the audit log", file, failure);
        }
    }

    private FileLock patiently(FileChannel channel) throws IOException {
        for (int waited = 0; waited < PATIENCE_MS; waited += PAUSE_MS) {
            Optional<FileLock> lock = Journal.lock(channel);
            if (lock.isPresent()) {
                return lock.get();
            }
            try {
                Thread.sleep(PAUSE_MS);
            } catch (InterruptedException stop) {
                Thread.currentThread().interrupt();
                break;
            }
        }
        throw new StoreFailure("the audit log " + Shown.path(file) + " is held by another process; try again", null);
    }

    private void appendUnder(FileLock lock, FileChannel channel, Happened what) throws IOException {
        if (!lock.isValid()) {
            throw new IOException("the lock was lost");
        }
        long from = Math.max(0, channel.size() - LONGEST_LINE_BYTES);
        ByteBuffer tail = ByteBuffer.allocate((int) (channel.size() - from));
        while (tail.hasRemaining() && channel.read(tail, from + tail.position()) >= 0) {
            continue;
        }
        String text = new String(tail.array(), StandardCharsets.ISO_8859_1);
        int end = text.lastIndexOf('\n') + 1;
        if (end < text.length()) {
            setAside(text.substring(end), what.at());
            channel.truncate(from + end);
        }
        String last = end == 0 ? "" : text.substring(text.lastIndexOf('\n', end - 2) + 1, end - 1);
        AuditLine line = following(new String(last.getBytes(StandardCharsets.ISO_8859_1), StandardCharsets.UTF_8), what);
        channel.position(channel.size());
        ByteBuffer bytes = ByteBuffer.wrap(line.text().getBytes(StandardCharsets.UTF_8));
        while (bytes.hasRemaining()) {
            channel.write(bytes);
        }
        channel.force(true);
    }

    /** The next line; behind a line that was altered the chain starts anew, and verifying says where. */
    private static AuditLine following(String last, Happened what) {
        Optional<AuditLine> before = last.isEmpty() ? Optional.empty() : AuditLine.read(last);
        return new AuditLine(before.map(line -> line.seq() + 1).orElse(1), what.at(), what.who(), what.event(), what.id(),
                what.file(), what.sha256(), what.summarySha256(),
                before.map(AuditLine::hash).orElse(AuditLine.BEFORE_FIRST));
    }

    /** The end of a line that a crash cut off; it recorded nothing, and it is kept. */
    private void setAside(String torn, Instant at) throws IOException {
        AtomicFile.replace(file.resolveSibling(file.getFileName() + "-" + at.toEpochMilli() + Journal.TORN),
                torn.getBytes(StandardCharsets.ISO_8859_1));
    }
}
