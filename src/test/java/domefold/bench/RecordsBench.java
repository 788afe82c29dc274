package domefold.bench;

import domefold.record.ConsultRecord;
import domefold.record.RecordStatus;
import domefold.records.RecordList;
import domefold.records.RecordQuery;
import domefold.sheet.SampleRecords;
import domefold.store.RecordFile;
import domefold.store.RecordIndex;
import domefold.store.RecordStore;
import domefold.store.Workstation;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * Many saved records: opening the list from a warm index (aim: under 300 ms for 100,000), finding (under 50 ms), making the
 * index again (no slower than a third of plainly reading the files), and a save down to the disk (under 50 ms); beside them
 * {@code grep -rl} over the same folder. Files are as the store writes them, with the page cache warm.
 *
 * <p>Arguments: how many records (100,000), how many kilobytes each (12; one that holds a plan over the whole shipped list
 * has 1,100, of which an index reads the beginning), a folder to make them in (a temporary one).
 */
public final class RecordsBench {
    private static final int MANY = 100_000;
    private static final int SIZE_KB = 12;
    private static final int REPEATS = 7;
    private static final Instant AT = Instant.parse("2026-03-04T10:15:30Z");

    private RecordsBench() {}

    /** Something to be timed. */
    private interface Task {
        Object run() throws IOException;
    }

    public static void main(String[] args) throws IOException {
        int many = args.length > 0 ? Integer.parseInt(args[0]) : MANY;
        int sizeKb = args.length > 1 ? Integer.parseInt(args[1]) : SIZE_KB;
        Path folder = Files.createTempDirectory(args.length > 2 ? Path.of(args[2]) : Path.of(System.getProperty("java.io.tmpdir")),
                "domefold-bench");
        try {
            measure(many, sizeKb, folder);
        } finally {
            remove(folder);
        }
    }

    private static void measure(int many, int sizeKb, Path folder) throws IOException {
        Path records = folder.resolve("records");
        long bytes = make(many, sizeKb, records);
        System.out.printf(Locale.ROOT, "%d records of %.1f kB, %d cores, Java %s%n", many, bytes / 1000.0 / many,
                Runtime.getRuntime().availableProcessors(), System.getProperty("java.version"));
        RecordIndex index = new RecordIndex(records, folder.resolve("cache"));
        time("reading files whose names are known", 3, () -> read(records, many));
        double readMs = time("finding and reading the files", 3, () -> walk(records));
        double rebuildMs = time("making the index from the files", 3, index::rebuild);
        System.out.printf(Locale.ROOT, "%-44s %9.2f%n", "index against finding and reading (at most 3)", rebuildMs / readMs);
        time("opening the list, index warm", REPEATS, index::open);
        RecordList list = index.open().list();
        String code = code(many / 2);
        time("find a code", REPEATS, () -> one(list, code));
        time("find by device, fill and month", REPEATS, () -> list.find(RecordQuery.of("device:GEL-M-290 fill:gel 2026-03")));
        time("find by words", REPEATS, () -> list.find(RecordQuery.of("signed gel us-2020")));
        saves(records);
        time("opening the list after those saves", REPEATS, index::open);
        time("grep -rl for the code", 1, () -> grep(records, code));
    }

    private static Object one(RecordList list, String code) {
        int found = list.find(RecordQuery.of(code)).size();
        if (found != 1) {
            throw new IllegalStateException(found + " records answer to " + code);
        }
        return found;
    }

    private static void saves(Path records) throws IOException {
        RecordStore store = new RecordStore(records, false, new Workstation("bench"));
        int[] next = {0};
        time("a save, down to the disk", 3 * REPEATS, () -> {
            ConsultRecord draft = named("S-" + next[0]++);
            return store.saveDraft(draft, 0, loaded -> "summary of " + loaded.record().id() + "\n");
        });
    }

    private static ConsultRecord named(String id) {
        ConsultRecord sample = SampleRecords.withStatus(RecordStatus.DRAFT, false);
        String json = new String(RecordFile.bytes(sample), StandardCharsets.UTF_8).replace(sample.id(), id);
        return RecordFile.read(json.getBytes(StandardCharsets.UTF_8), id).record();
    }

    /** Writes that many signed records of at least that size and returns how many bytes they take. */
    static long make(int many, int sizeKb, Path records) throws IOException {
        ConsultRecord sample = SampleRecords.signed();
        String bare = new String(RecordFile.bytes(sample), StandardCharsets.UTF_8);
        String filling = "x".repeat(Math.max(0, 1000 * sizeKb - bare.length()));
        String json = bare.replaceFirst("\"candidates\":\\s*\\[\\]", "\"candidates\": [\"" + filling + "\"]");
        Files.createDirectories(records);
        return IntStream.range(0, many).parallel().mapToLong(number -> {
            String text = json.replace(sample.id(), code(number)).replace("\"2026-03-04\"",
                    "\"" + LocalDate.of(2020, 1, 1).plusDays(number % 2400) + "\"");
            byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
            try {
                Path home = Files.createDirectory(records.resolve(code(number)));
                Files.write(home.resolve("v1.json"), bytes);
            } catch (IOException failure) {
                throw new java.io.UncheckedIOException(failure);
            }
            return bytes.length;
        }).sum();
    }

    /** The case code of a record made. */
    static String code(int number) {
        return String.format(Locale.ROOT, "K-%06d", number);
    }

    private static long read(Path records, int many) {
        return IntStream.range(0, many).parallel().mapToLong(number -> {
            try {
                return Files.readAllBytes(records.resolve(code(number)).resolve("v1.json")).length;
            } catch (IOException failure) {
                throw new java.io.UncheckedIOException(failure);
            }
        }).sum();
    }

    /** As an index has to go about it: what is in each folder, then each file. */
    private static long walk(Path records) throws IOException {
        List<Path> folders;
        try (Stream<Path> all = Files.list(records)) {
            folders = all.filter(Files::isDirectory).toList();
        }
        return folders.parallelStream().mapToLong(folder -> {
            try (Stream<Path> files = Files.list(folder)) {
                long sum = 0;
                for (Path file : files.toList()) {
                    sum += Files.readAllBytes(file).length;
                }
                return sum;
            } catch (IOException failure) {
                throw new java.io.UncheckedIOException(failure);
            }
        }).sum();
    }

    private static Object grep(Path records, String code) throws IOException {
        Process process = new ProcessBuilder("grep", "-rl", code, records.toString()).redirectErrorStream(true).start();
        return new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    }

    /** Prints the middle of several runs and their spread; gives the middle, in milliseconds. */
    private static double time(String what, int repeats, Task task) throws IOException {
        List<Object> kept = new ArrayList<>();
        double[] ms = new double[repeats];
        for (int i = 0; i < repeats; i++) {
            long start = System.nanoTime();
            kept.add(task.run());
            ms[i] = (System.nanoTime() - start) / 1e6;
        }
        Arrays.sort(ms);
        System.out.printf(Locale.ROOT, "%-44s %9.2f ms  (%.2f to %.2f, %d runs)%n", what, ms[repeats / 2], ms[0], ms[repeats - 1],
                kept.size());
        return ms[repeats / 2];
    }

    static void remove(Path folder) throws IOException {
        try (Stream<Path> all = Files.walk(folder)) {
            for (Path path : all.sorted(Comparator.reverseOrder()).toList()) {
                Files.delete(path);
            }
        }
    }
}
