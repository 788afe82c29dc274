package domefold.store;

import domefold.records.RecordHeader;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.IntStream;
import java.util.zip.CRC32;

/**
 * The index on disk: a line with a checksum over the rest, a line that says what state of the folder it was made from and
 * holds the texts that records share, then one line per record. Anything odd
 * about it reads as "no index", because it can always be made again.
 */
final class IndexFile {
    private static final String FORMAT = "domefold-index/1";
    private static final int PIECES = 8;

    private IndexFile() {}

    /**
     * What state of a records folder an index stands for.
     *
     * @param folderChanged when names were last added to or taken from the folder, in milliseconds
     * @param audit how long each workstation's audit log was, in bytes
     * @param unreadable ids whose record could not be read
     */
    record Made(long folderChanged, Map<String, Long> audit, List<String> unreadable) {
        Made {
            audit = Map.copyOf(audit);
            unreadable = List.copyOf(unreadable);
        }
    }

    /** An index as read. */
    record Read(Made made, List<RecordHeader> headers) {}

    static Optional<Read> read(Path file) {
        try {
            byte[] bytes = Files.readAllBytes(file);
            int first = lineEnd(bytes, 0);
            int second = lineEnd(bytes, first);
            Fields sum = fields(bytes, 0, first);
            if (!sum.needText("format").equals(FORMAT) || sum.needNumber("crc32") != crc32(bytes, first)) {
                return Optional.empty();
            }
            Fields fields = fields(bytes, first, second);
            return Optional.of(new Read(made(fields), headers(bytes, second, fields.texts("texts"))));
        } catch (NoSuchFileException none) {
            return Optional.empty();
        } catch (IOException | RuntimeException odd) {
            return Optional.empty();
        }
    }

    static void write(Path file, Made made, Collection<RecordHeader> headers) throws IOException {
        ByteArrayOutputStream lines = new ByteArrayOutputStream(headers.size() * 100 + 1000);
        IndexLine writer = new IndexLine();
        for (RecordHeader header : headers) {
            lines.writeBytes(writer.bytes(header));
        }
        JsonOut second = new JsonOut(false);
        second.object(() -> {
            second.number("folderChanged", made.folderChanged());
            second.object("audit", () -> new TreeMap<>(made.audit()).forEach(second::number));
            second.texts("unreadable", made.unreadable()).texts("texts", writer.texts());
        });
        byte[] body = joined(line(second), lines.toByteArray());
        JsonOut first = new JsonOut(false);
        first.object(() -> first.text("format", FORMAT).number("crc32", crc32(body, 0)));
        byte[] whole = joined(line(first), body);
        AtomicFile.folder(file.toAbsolutePath().getParent());
        AtomicFile.replace(file, whole);
    }

    private static byte[] line(JsonOut json) {
        return (json.text().strip() + "\n").getBytes(StandardCharsets.UTF_8);
    }

    private static byte[] joined(byte[] head, byte[] body) {
        byte[] whole = Arrays.copyOf(head, head.length + body.length);
        System.arraycopy(body, 0, whole, head.length, body.length);
        return whole;
    }

    private static Fields fields(byte[] bytes, int from, int to) {
        String line = new String(bytes, from, to - from, StandardCharsets.UTF_8);
        return new Fields(JsonText.object(line, "index"), "index", later -> {});
    }

    private static Made made(Fields fields) {
        Map<String, Long> audit = new TreeMap<>();
        Fields sizes = fields.needObject("audit");
        sizes.names().forEach(name -> audit.put(name, (long) sizes.needNumber(name)));
        return new Made((long) fields.needNumber("folderChanged"), audit, fields.texts("unreadable"));
    }

    private static long crc32(byte[] bytes, int from) {
        CRC32 sum = new CRC32();
        sum.update(bytes, from, bytes.length - from);
        return sum.getValue();
    }

    /** In pieces of whole lines, side by side: an index of a hundred thousand lines is opened while somebody waits. */
    private static List<RecordHeader> headers(byte[] bytes, int from, List<String> texts) throws IOException {
        List<Integer> cuts = new ArrayList<>(List.of(from));
        for (int piece = 1; piece < PIECES; piece++) {
            int cut = lineEnd(bytes, from + (int) ((long) (bytes.length - from) * piece / PIECES));
            cuts.add(Math.max(cuts.get(cuts.size() - 1), cut));
        }
        cuts.add(bytes.length);
        List<List<RecordHeader>> pieces = IntStream.range(0, PIECES).parallel().mapToObj(piece -> {
            try {
                return new IndexLine(texts).read(bytes, cuts.get(piece), cuts.get(piece + 1));
            } catch (IOException damaged) {
                throw new IllegalStateException(damaged);
            }
        }).toList();
        List<RecordHeader> headers = new ArrayList<>();
        pieces.forEach(headers::addAll);
        return headers;
    }

    private static int lineEnd(byte[] bytes, int from) {
        int at = from;
        while (at < bytes.length && bytes[at] != '\n') {
            at++;
        }
        return Math.min(bytes.length, at + 1);
    }
}
