package domefold.practice.exercise;

import domefold.outcome.Refusal;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Stream;

/** What can be warned of, in the words a fellow would use. */
public enum WarningWords {
    CONTRAINDICATION("something in her history forbids operating now", "contraindic", "pregnan", "nursing", "infect",
            "untreated", "disease", "pre-cancer", "precancer"),
    AGE_BELOW_LABEL("she is below the age on the label of the fill", "age", "label", "young", "minor"),
    LIFT_TO_DISCUSS("the ptosis is one for a lift", "lift", "ptosis", "ptotic", "mastopexy", "droop"),
    CONSTRICTED_BASE("the base is constricted", "constricted", "tuberous", "narrow base"),
    MIXED_READING_METHODS("readings by hand and by scan are mixed", "mixed", "scan", "methods"),
    WISH_OVER_BAND("the size wished is beyond what the tissues carry", "wish", "too big", "too large", "size wished"),
    IRRADIATION("the chest was irradiated", "irradiat", "radiation", "radiother"),
    DOUBLE_CONTOUR("risk of a double contour", "double"),
    NICOTINE("nicotine", "nicotine", "smok", "tobacco"),
    TIGHT_AND_SHORT("the envelope is tight and short", "tight and short", "tight short"),
    TIGHT_ENVELOPE("the envelope is tight", "tight envelope", "tight skin"),
    MUSCLE_COVER("thin cover above: the muscle is needed", "thin cover", "muscle cover", "thin upper", "upper pinch"),
    KEEP_MUSCLE_AT_FOLD("thin cover at the fold: keep the muscle there", "thin fold", "keep muscle", "muscle at fold",
            "fold pinch"),
    EARLIER_SURGERY("earlier breast surgery", "earlier", "surgery", "scar", "previous"),
    SIDES_DIFFER("the two sides differ", "sides differ", "asymmetr", "uneven"),
    VOLUME_OUTSIDE_TABLE("the base lies outside the volume table", "outside table", "outside the table"),
    VOLUMES_DIFFER("the natural volumes differ", "volumes differ", "volume differ"),
    SECOND_READING("a reading should be taken a second time", "second reading", "read again", "second", "remeasure");

    private final String words;
    private final List<String> keys;

    WarningWords(String words, String... keys) {
        this.words = words;
        this.keys = List.of(keys);
    }

    /** Its code in the marking. */
    public String code() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    public String words() {
        return words;
    }

    /** The words of that code; the code itself where there are none. */
    public static String of(String code) {
        return Stream.of(values()).filter(one -> one.code().equals(code)).map(WarningWords::words).findFirst().orElse(code);
    }

    /** Every one with its number, as {@code ?} shows them. */
    static List<String> numbered() {
        List<String> lines = new ArrayList<>();
        for (WarningWords one : values()) {
            lines.add((one.ordinal() + 1) + ". " + one.words + " (" + one.code() + ")");
        }
        return lines;
    }

    /**
     * The codes of what was typed: numbers, codes or words, parted by commas; {@code none} for nothing.
     *
     * @throws Refusal for words that mean no warning, or more than one
     */
    static Set<String> read(String typed, String where) {
        Set<String> codes = new LinkedHashSet<>();
        String line = typed.strip().toLowerCase(Locale.ROOT);
        if (List.of("none", "nothing", "no").contains(line)) {
            return codes;
        }
        String parted = line.matches("[\\d\\s,;]+") ? line.replaceAll("[\\s,;]+", ",") : line;
        for (String part : parted.split("\\s*[,;]\\s*")) {
            if (!part.isBlank()) {
                codes.add(one(part.strip(), where).code());
            }
        }
        if (codes.isEmpty()) {
            throw new Refusal("no-warning", where, "write what you would warn of, or `none`");
        }
        return codes;
    }

    private static WarningWords one(String part, String where) {
        if (part.matches("\\d{1,2}") && Integer.parseInt(part) >= 1 && Integer.parseInt(part) <= values().length) {
            return values()[Integer.parseInt(part) - 1];
        }
        List<WarningWords> found = Stream.of(values()).filter(one -> one.code().equals(part) || one.words.equals(part)).toList();
        if (found.isEmpty()) {
            found = Stream.of(values()).filter(one -> one.keys.stream().anyMatch(key -> (" " + part).contains(" " + key))).toList();
        }
        if (found.size() == 1) {
            return found.get(0);
        }
        throw new Refusal(found.isEmpty() ? "unknown-warning" : "ambiguous-warning", where, "'" + part + "' "
                + (found.isEmpty() ? "means none of the warnings; ? lists them with their numbers"
                        : "could be: " + String.join("; ", found.stream().map(one -> (one.ordinal() + 1) + " " + one.words).toList())));
    }
}
