package domefold.choose;

import domefold.patient.Side;
import domefold.plan.Candidate;
import domefold.plan.SideFit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;

/** What becomes of one device between two plans. */
final class PinnedRows {
    private static final double PERCENT = 100;
    private static final String NONE = "–";
    private static final String ABSENT = "not offered";

    private final String id;
    private final Optional<Candidate> before;
    private final Optional<Candidate> after;
    private final List<Difference.Row> rows = new ArrayList<>();

    private PinnedRows(String id, Placed before, Placed after) {
        this.id = id;
        this.before = Difference.find(before.plan(), id);
        this.after = Difference.find(after.plan(), id);
    }

    static List<Difference.Row> of(String id, Placed before, Placed after) {
        PinnedRows pinned = new PinnedRows(id, before, after);
        for (Side side : Side.values()) {
            pinned.side(side);
        }
        pinned.figure("opening", 1, "cm", PinnedRows::openingCm);
        pinned.words("exams", PinnedRows::exams);
        pinned.figure("ripple rank", 2, "", c -> c.ripple().map(r -> OptionalDouble.of(r.index())).orElse(OptionalDouble.empty()));
        pinned.rows.add(Difference.words(id, "place in her order",
                pinned.before.isPresent() ? before.place(id) : ABSENT, pinned.after.isPresent() ? after.place(id) : ABSENT));
        return pinned.rows;
    }

    private void side(Side side) {
        String name = side.name() + " ";
        words(name + "verdict", candidate -> candidate.side(side).verdict().key());
        signed(name + "width margin", 1, "cm", side, SideFit::widthMarginCm);
        signed(name + "volume margin", 0, "mL", side, SideFit::volumeMarginMl);
        figure(name + "fold lowering", 1, "cm", candidate -> candidate.side(side).foldLoweringCm());
        figure(name + "draws in which it fits", 0, "%", candidate -> percent(candidate.side(side).fitShare()));
    }

    private void words(String label, Function<Candidate, String> words) {
        rows.add(Difference.words(id, label, before.map(words).orElse(ABSENT), after.map(words).orElse(ABSENT)));
    }

    private void figure(String label, int decimals, String unit, Function<Candidate, OptionalDouble> value) {
        rows.add(TwoFigures.of(value(before, value), value(after, value), decimals, unit).row(id, label));
    }

    private void signed(String label, int decimals, String unit, Side side, Function<SideFit, OptionalDouble> margin) {
        Function<Candidate, OptionalDouble> value = candidate -> margin.apply(candidate.side(side));
        rows.add(TwoFigures.signed(value(before, value), value(after, value), decimals, unit).row(id, label));
    }

    private static OptionalDouble value(Optional<Candidate> candidate, Function<Candidate, OptionalDouble> value) {
        return candidate.map(value).orElse(OptionalDouble.empty());
    }

    private static OptionalDouble percent(OptionalDouble share) {
        return share.isPresent() ? OptionalDouble.of(PERCENT * share.getAsDouble()) : share;
    }

    private static OptionalDouble openingCm(Candidate candidate) {
        return candidate.incision().map(i -> OptionalDouble.of(i.typicalCm().orElse((i.lowCm() + i.highCm()) / 2)))
                .orElse(OptionalDouble.empty());
    }

    private static String exams(Candidate candidate) {
        return candidate.followUp().map(f -> (f.examsLow() == f.examsHigh() ? "" + f.examsLow()
                : f.examsLow() + "–" + f.examsHigh()) + " to year " + f.horizonYears() + " (" + f.schedule() + ")").orElse(NONE);
    }
}
