package domefold.followup.shown;

import domefold.device.Fill;
import domefold.device.Surface;
import domefold.evidence.Evidence;
import domefold.evidence.Status;
import domefold.evidence.Table;
import domefold.outcome.Band;
import domefold.outcome.Numbers;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;

/**
 * A very rare harm, on its own table with one denominator.
 *
 * @param per100000 people of 100 000; empty where no incidence can be estimated
 * @param bandPer100000 interval or range of the estimate
 * @param measureWords what the source prints, for rows without an incidence (counts of reports, ratios)
 */
public record RareHarm(
        String harm,
        String population,
        String surfaceWords,
        OptionalDouble per100000,
        Optional<Band> bandPer100000,
        String measureWords,
        String source,
        Status status,
        String note) {
    public static final int DENOMINATOR = 100_000;

    /** The rows that concern a device of that surface and fill. */
    public static List<RareHarm> forDevice(Surface surface, Fill fill, Evidence evidence) {
        return evidence.table("rare-harms").rows().stream().filter(row -> !row.text("harm").equals("market status"))
                .filter(row -> concerns(row.text("surface"), surface, fill)).map(RareHarm::of).toList();
    }

    /** Recalls and withdrawals, which gate the textured option. */
    public static List<RareHarm> marketStatus(Evidence evidence) {
        return evidence.table("rare-harms").rows().stream().filter(row -> row.text("harm").equals("market status"))
                .map(RareHarm::of).toList();
    }

    static RareHarm of(Table.Row row) {
        OptionalDouble lo = row.number("per_100000_lo");
        OptionalDouble hi = row.number("per_100000_hi");
        return new RareHarm(row.text("harm"), row.text("population"), row.text("surface"), row.number("per_100000"),
                lo.isPresent() && hi.isPresent() ? Optional.of(new Band(lo.getAsDouble(), hi.getAsDouble())) : Optional.empty(),
                (row.text("measure") + " " + row.text("value")).strip(), row.text("source"),
                Status.of(row.text("status")), row.text("note"));
    }

    /** Which surface words speak about a device; ratios between two textures are no incidence and concern textured only. */
    private static boolean concerns(String words, Surface surface, Fill fill) {
        if (words.equals(Fill.GEL.key())) {
            return fill == Fill.GEL;
        }
        if (words.startsWith("smooth")) {
            return surface == Surface.SMOOTH;
        }
        boolean textured = Stream.of("textured", "macro", "micro", "polyurethane").anyMatch(words::contains);
        return !textured || surface == Surface.TEXTURED;
    }

    /** True when there is an estimate that may stand on the common denominator. */
    public boolean estimated() {
        return per100000.isPresent() || bandPer100000.isPresent();
    }

    /** The estimate both ways round on the common denominator; for a count or a ratio, that none can be given. */
    public String words() {
        if (per100000.isPresent()) {
            double one = per100000.getAsDouble();
            return Framing.rare(new Band(one, one)) + bandPer100000.map(band -> " (interval " + Numbers.range(band, 0) + ")")
                    .orElse(" (no interval printed)");
        }
        return bandPer100000.map(band -> Framing.rare(band) + " (range)")
                .orElse(measureWords + ": no share of " + Numbers.count(DENOMINATOR) + " can be given");
    }

    /** One in so many, as so many of 100 000. */
    public static double per100000OneIn(double oneIn) {
        return DENOMINATOR / oneIn;
    }
}
