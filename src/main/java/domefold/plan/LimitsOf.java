package domefold.plan;

import domefold.engine.EnvelopeFlags;
import domefold.engine.ErrorDraws;
import domefold.engine.Exact;
import domefold.engine.Gate;
import domefold.engine.LiftAdvice;
import domefold.engine.PocketAdvice;
import domefold.engine.PtosisGrade;
import domefold.engine.SecondReading;
import domefold.engine.WidthCeiling;
import domefold.evidence.Constants;
import domefold.evidence.Evidence;
import domefold.outcome.Band;
import domefold.outcome.Figures;
import domefold.outcome.Note;
import domefold.outcome.Working;
import domefold.patient.Breast;
import domefold.patient.Case;
import domefold.patient.Measure;
import domefold.patient.Readings;
import domefold.patient.Route;
import domefold.patient.Side;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

/** What one side allows: the rules one after the other, each adding its result, its notes and its working. */
final class LimitsOf {
    private final Side side;
    private final Breast breast;
    private final Readings readings;
    private final SideNumbers numbers;
    private final Evidence evidence;
    private final Constants constants;
    private final List<Note> notes = new ArrayList<>();
    private final Set<String> incomplete = new LinkedHashSet<>();
    private final List<Working> working = new ArrayList<>();

    private LimitsOf(Case of, Side side, Evidence evidence) {
        this.side = side;
        this.evidence = evidence;
        constants = evidence.constants();
        breast = of.side(side);
        readings = breast.readings();
        numbers = new SideNumbers(readings, constants);
    }

    static SideContext of(Case of, Side side, Evidence evidence, VerdictRule rule, ErrorDraws errors) {
        return new LimitsOf(of, side, evidence).context(of, rule, errors);
    }

    private SideContext context(Case of, VerdictRule rule, ErrorDraws errors) {
        remarksOnReadings();
        boolean hasBase = need(Measure.BASE_WIDTH);
        Optional<DrawnSide> drawn = hasBase ? Optional.of(new DrawnSide(numbers, rule, errors)) : Optional.empty();
        OptionalDouble ceiling = hasBase ? OptionalDouble.of(ceiling()) : OptionalDouble.empty();
        OptionalDouble ceilingSd = hasBase && numbers.hasPinches() ? OptionalDouble.of(WidthCeiling.sdCm(
                numbers.sd[SideNumbers.BASE], numbers.sd[SideNumbers.MEDIAL], numbers.sd[SideNumbers.LATERAL],
                constants)) : OptionalDouble.empty();
        VolumeLimits volume = hasBase
                ? VolumeLimits.of(numbers, drawn.orElseThrow(), constants) : VolumeLimits.NONE;
        add(volume.notes(), volume.incomplete(), volume.working());
        FoldLimits fold = hasBase ? FoldLimits.of(numbers, volume.startingMl(), constants) : FoldLimits.NONE;
        add(fold.notes(), fold.incomplete(), fold.working());
        PocketAdvice pocket = pocket(of);
        flags(of);
        working.addAll(Comparisons.of(of, breast, volume.startingMl(), evidence));
        SideLimits limits = new SideLimits(side, ceiling, ceilingSd, volume.startingMl(), volume.bandMl(),
                fold.targetCm(), fold.loweringCm(), fold.methods(), pocket.pocket(), notes,
                List.copyOf(incomplete), working);
        return new SideContext(breast, numbers, drawn, volume.bandMl(), limits);
    }

    private void add(List<Note> more, List<String> missing, List<Working> lines) {
        notes.addAll(more);
        incomplete.addAll(missing);
        working.addAll(lines);
    }

    /** True if the reading is there; otherwise its field is listed. */
    private boolean need(Measure measure) {
        if (!readings.has(measure)) {
            incomplete.add(measure.field());
        }
        return readings.has(measure);
    }

    private void remarksOnReadings() {
        readings.byMeasure().forEach((measure, reading) -> {
            Gate.check(measure, reading.value(), evidence).note().ifPresent(notes::add);
            SecondReading.advise(measure, reading, constants).ifPresent(notes::add);
        });
    }

    private double ceiling() {
        double base = numbers.value[SideNumbers.BASE];
        boolean pinches = need(Measure.MEDIAL_PINCH) & need(Measure.LATERAL_PINCH);
        if (pinches) {
            working.add(WidthCeiling.working(base, numbers.value[SideNumbers.MEDIAL],
                    numbers.value[SideNumbers.LATERAL], constants));
        } else {
            Band band = WidthCeiling.ruleOfThumbCm(base, constants);
            working.add(WidthCeiling.workingWithoutPinches(base, constants));
            notes.add(new Note("width-rule-of-thumb", "without both edge pinches the width ceiling is a rule of thumb, "
                    + Figures.cm(band.low()) + " to " + Figures.cm(band.high()) + " cm; the narrower end is used"));
        }
        return Exact.clean(numbers.ceilingCm());
    }

    private PocketAdvice pocket(Case of) {
        need(Measure.UPPER_PINCH);
        need(Measure.FOLD_PINCH);
        PocketAdvice advice = PocketAdvice.of(readings.value(Measure.UPPER_PINCH), readings.value(Measure.FOLD_PINCH),
                of.setting().pocket(), constants);
        notes.addAll(advice.notes());
        working.addAll(advice.working());
        return advice;
    }

    private void flags(Case of) {
        notes.addAll(LiftAdvice.of(breast, constants));
        notes.addAll(EnvelopeFlags.of(readings, constants));
        breast.ptosis().ifPresent(grade -> working.add(
                PtosisGrade.rule(grade, evidence).working("ptosis", PtosisGrade.words(grade))));
        if (of.setting().route().filter(route -> route == Route.PERIAREOLAR).isPresent()) {
            need(Measure.AREOLA);
        }
    }
}
