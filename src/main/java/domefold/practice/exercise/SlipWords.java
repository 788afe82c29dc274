package domefold.practice.exercise;

import domefold.outcome.Refusal;
import domefold.patient.Measure;
import domefold.patient.Side;
import domefold.practice.ReadingSlip;
import domefold.practice.Slipped;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;

/** What a fellow types in the drill: {@code swapped, mm left base width, stretched right}, or {@code none}. */
public final class SlipWords {
    private static final String WHERE = "drill";
    /** What can be written, one way each. */
    public static final List<String> WAYS = List.of(
            "swapped: left and right are swapped",
            "mm left base width: that reading is in mm, where cm are asked",
            "height weight: height and weight are exchanged",
            "stretched left: stretched is shorter than resting on that side",
            "scan right: that side was scanned, the other read by hand",
            "none: nothing is wrong");

    private SlipWords() {}

    /**
     * The slips named.
     *
     * @throws Refusal for words that name no slip, or none at a place
     */
    public static Set<Slipped> read(String typed) {
        String line = typed.strip().toLowerCase(Locale.ROOT);
        Set<Slipped> named = new LinkedHashSet<>();
        if (List.of("none", "nothing").contains(line)) {
            return named;
        }
        for (String part : line.split("\\s*[,;]\\s*")) {
            if (!part.isBlank()) {
                named.add(one(part.strip()));
            }
        }
        if (named.isEmpty()) {
            throw new Refusal("no-slip", WHERE, "write which readings are wrong, or `none`");
        }
        return named;
    }

    private static Slipped one(String part) {
        if (part.contains("swap")) {
            return Slipped.whole(ReadingSlip.SIDES_SWAPPED);
        }
        if (part.matches("(.*\\s)?(mm|millimet\\w*)(\\s.*)?")) {
            return Slipped.in(side(part), measure(part.replaceAll("\\b(mm|millimet\\w*|left|right|in|for|cm)\\b", " ").strip()),
                    ReadingSlip.MILLIMETRES);
        }
        if (part.contains("height") || part.contains("weight")) {
            return Slipped.whole(ReadingSlip.HEIGHT_WEIGHT_EXCHANGED);
        }
        if (part.contains("stretch") || part.contains("resting")) {
            return Slipped.on(side(part), ReadingSlip.STRETCHED_SHORTER);
        }
        if (part.contains("scan")) {
            return Slipped.on(side(part), ReadingSlip.SCAN_MIXED);
        }
        throw new Refusal("unknown-slip", WHERE, "'" + part + "' names no slip; ? shows how each is written");
    }

    private static Side side(String part) {
        boolean left = part.contains("left");
        if (left == part.contains("right")) {
            throw new Refusal("which-side", WHERE, "on which side? for example `" + part + (left ? "" : " left") + "`");
        }
        return left ? Side.LEFT : Side.RIGHT;
    }

    private static Measure measure(String words) {
        List<Measure> found = new ArrayList<>();
        for (Measure measure : Measure.values()) {
            if (measure.of() == Measure.Of.SIDE && measure.unit().equals("cm")) {
                if (measure.words().equals(words)) {
                    return measure;
                }
                if (!words.isEmpty() && List.of(words.split("\\s+")).stream().allMatch(measure.words()::contains)) {
                    found.add(measure);
                }
            }
        }
        if (found.size() != 1) {
            throw new Refusal("which-reading", WHERE, Optional.of(found).filter(all -> all.size() > 1)
                    .map(all -> "'" + words + "' could be: " + String.join("; ", all.stream().map(Measure::words).toList()))
                    .orElse("which reading is in mm? for example `mm left base width`"));
        }
        return found.get(0);
    }
}
