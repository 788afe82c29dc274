package domefold.store;

import java.net.URLDecoder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Instant;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import java.util.OptionalInt;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Names of files and folders of records: {@code ID/v1.json} and up for frozen versions, {@code ID/draft-1.json} and up
 * for the states of a draft, {@code ID/event-….json} for what happened later. Text summaries end in {@code .txt}.
 */
final class RecordPlaces {
    /** Folders that are no record; no id is ever written with a leading full stop. */
    static final String AUDIT = ".audit";
    static final String ASIDE = ".aside";

    private static final Pattern VERSION = Pattern.compile("v([1-9][0-9]{0,5})\\.json");
    private static final Pattern DRAFT = Pattern.compile("draft-([1-9][0-9]{0,5})\\.json");
    private static final DateTimeFormatter STAMP = DateTimeFormatter.ofPattern("yyyyMMdd'T'HHmmss.SSS'Z'", Locale.ROOT);

    private RecordPlaces() {}

    /** The folder name of an id: letters, digits, dash and underscore as they are, every other byte as {@code %XX}. */
    static String folderName(String id) {
        StringBuilder out = new StringBuilder();
        for (byte b : id.getBytes(StandardCharsets.UTF_8)) {
            if (b >= 'a' && b <= 'z' || b >= 'A' && b <= 'Z' || b >= '0' && b <= '9' || b == '-' || b == '_') {
                out.append((char) b);
            } else {
                out.append(String.format(Locale.ROOT, "%%%02X", b & 0xff));
            }
        }
        return out.toString();
    }

    /** The id that a folder name stands for. */
    static String id(String folderName) {
        try {
            return URLDecoder.decode(folderName.replace("+", "%2B"), StandardCharsets.UTF_8);
        } catch (IllegalArgumentException foreign) {
            return folderName;
        }
    }

    static String version(int number) {
        return "v" + number + ".json";
    }

    static String draft(int revision) {
        return "draft-" + revision + ".json";
    }

    static String summary(String jsonName) {
        return jsonName.substring(0, jsonName.length() - ".json".length()) + ".txt";
    }

    static String event(Workstation workstation, Instant at, int number) {
        return "event-" + STAMP.format(at.atOffset(ZoneOffset.UTC)) + "-" + workstation.name() + "-" + number + ".json";
    }

    static String conflict(String jsonName, Workstation workstation, Instant at, int number) {
        return "conflict-" + STAMP.format(at.atOffset(ZoneOffset.UTC)) + "-" + workstation.name() + "-" + number + "-" + jsonName;
    }

    static boolean isEvent(String name) {
        return name.startsWith("event-") && name.endsWith(".json");
    }

    static boolean isConflict(String name) {
        return name.startsWith("conflict-") && name.endsWith(".json");
    }

    static OptionalInt versionOf(Path file) {
        return number(VERSION, file);
    }

    static OptionalInt draftOf(Path file) {
        return number(DRAFT, file);
    }

    private static OptionalInt number(Pattern pattern, Path file) {
        Matcher matcher = pattern.matcher(file.getFileName().toString());
        return matcher.matches() ? OptionalInt.of(Integer.parseInt(matcher.group(1))) : OptionalInt.empty();
    }
}
