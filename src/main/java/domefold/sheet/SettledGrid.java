package domefold.sheet;

import domefold.outcome.Numbers;
import domefold.patient.Side;
import domefold.plan.Candidate;
import domefold.plan.Verdict;
import domefold.record.ConsultRecord;
import domefold.record.Settlement;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.Function;

/** What was settled and what was allowed, LEFT beside RIGHT, always in that order and always in words. */
public final class SettledGrid {
    private static final List<String> HEADER = List.of("", Side.LEFT.name(), Side.RIGHT.name());
    private static final List<Integer> WEIGHTS = List.of(24, 45, 45);

    private SettledGrid() {}

    /** One row per thing settled. */
    public static Block.Grid of(ConsultRecord record) {
        if (record.left().isEmpty() && record.right().isEmpty()) {
            return new Block.Grid(HEADER, WEIGHTS, List.of(List.of("Device", "nothing settled", "nothing settled")));
        }
        List<List<String>> rows = new ArrayList<>();
        row(rows, record, "Device", settled -> settled.device().id() + ", " + DeviceWords.kind(settled.device()));
        row(rows, record, "Listed size", settled -> DeviceWords.exactMl(settled.device().nominalMl()));
        row(rows, record, "Fill", settled -> DeviceWords.exactMl(settled.fillMl()));
        row(rows, record, "Dimensions", settled -> DeviceWords.dimensions(settled.device()));
        row(rows, record, "Incision", SettledGrid::incision);
        row(rows, record, "Pocket", settled -> settled.pocket().map(pocket -> pocket.key()).orElse("not settled"));
        row(rows, record, "Fold", SettledGrid::fold);
        row(rows, record, "Have in the room", settled -> settled.neighbours().isEmpty() ? "no other size" : String.join("; ",
                settled.neighbours().stream().map(near -> near.id() + ", " + DeviceWords.exactMl(near.nominalMl())).toList()));
        row(rows, record, "Verdict", settled -> settled.verdict().map(Verdict::key).orElse("none"));
        row(rows, record, "Margins", settled -> orNone(settled.margins()));
        row(rows, record, "Reasons", settled -> orNone(settled.reasons()));
        row(rows, record, "Surgeon's reason", settled -> settled.whyOutside().orElse(Numbers.NONE));
        return new Block.Grid(HEADER, WEIGHTS, rows);
    }

    /** What the saved plan allowed. */
    public static Block.Grid limits(Map<Side, Limits> limits) {
        List<List<String>> rows = new ArrayList<>();
        limit(rows, limits, "Width ceiling", side -> side.widthCeilingCm().isPresent()
                ? Numbers.cm(side.widthCeilingCm().getAsDouble()) : "not known");
        limit(rows, limits, "Starting volume", side -> side.startingVolumeMl().isPresent()
                ? Numbers.ml(side.startingVolumeMl().getAsDouble()) : "not known");
        limit(rows, limits, "Volume band", side -> side.volumeBandMl().map(Numbers::ml).orElse("not known"));
        return new Block.Grid(HEADER, WEIGHTS, rows);
    }

    private static void row(List<List<String>> rows, ConsultRecord record, String name, Function<Settlement, String> words) {
        rows.add(List.of(name, record.left().map(words).orElse("nothing settled"),
                record.right().map(words).orElse("nothing settled")));
    }

    private static void limit(List<List<String>> rows, Map<Side, Limits> limits, String name, Function<Limits, String> words) {
        rows.add(List.of(name, words.apply(limits.getOrDefault(Side.LEFT, Limits.UNKNOWN)),
                words.apply(limits.getOrDefault(Side.RIGHT, Limits.UNKNOWN))));
    }

    private static String incision(Settlement settled) {
        String route = settled.route().map(found -> found.key()).orElse("route not settled");
        if (settled.openingCm().isPresent()) {
            route += ", " + Numbers.cm(settled.openingCm().getAsDouble()) + " settled";
        }
        if (settled.incision().isEmpty()) {
            return route + "; no published opening";
        }
        Candidate.Incision cut = settled.incision().get();
        String typical = cut.typicalCm().isPresent() ? ", typically " + Numbers.cm(cut.typicalCm().getAsDouble()) : "";
        return route + (settled.openingCm().isPresent() ? "; the device needs " : ", ") + Numbers.cm(new domefold.outcome.Band(cut.lowCm(), cut.highCm())) + typical + ", by "
                + cut.device();
    }

    private static String fold(Settlement settled) {
        Settlement.Fold fold = settled.fold();
        String target = fold.targetCm().isPresent() ? "; nipple to new fold " + Numbers.cm(fold.targetCm().getAsDouble())
                + " on stretch" : "";
        return fold.plan() + target;
    }

    private static String orNone(List<String> words) {
        return words.isEmpty() ? Numbers.NONE : String.join("; ", words);
    }
}
