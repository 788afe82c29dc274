package domefold.plan;

import domefold.basics.Lists;
import domefold.device.Device;
import domefold.engine.Exact;
import domefold.engine.FoldLowering;
import domefold.engine.RoutePermission;
import domefold.evidence.Constants;
import domefold.outcome.Band;
import domefold.outcome.Figures;
import domefold.outcome.Note;
import domefold.patient.Measure;
import domefold.patient.Side;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** One device against one side: verdict, reasons, notes, stability, and what would change it. */
final class FitOf {
    private static final double PERCENT = 100;

    private final SideContext side;
    private final VerdictRule rule;
    private final CaseRules caseRules;
    private final Constants constants;
    private final double coverShare;
    private final Optional<RankedSide> ranks;

    FitOf(SideContext side, VerdictRule rule, CaseRules caseRules, Constants constants, int devices) {
        this.side = side;
        this.rule = rule;
        this.caseRules = caseRules;
        this.constants = constants;
        coverShare = constants.value("FLD-ARC-COVER");
        ranks = side.drawn().map(drawn -> new RankedSide(side.numbers(), drawn, rule, coverShare, devices));
    }

    SideFit of(DeviceGeometry geometry, RoutePermission permission, Optional<Candidate.Incision> incision,
            Optional<Note> gap, Optional<Band> upperPole) {
        Device device = geometry.device();
        SideNumbers numbers = side.numbers();
        Side which = side.limits().side();
        List<Note> refusals = caseRules.refusals(device, which, permission, incision);
        List<Note> reasons = new ArrayList<>(refusals);
        List<Note> notes = new ArrayList<>();
        double cover = numbers.has(SideNumbers.FOLD_PINCH) ? coverShare * numbers.value[SideNumbers.FOLD_PINCH] : 0;
        double target = geometry.targetCm(cover);
        double lowering = FoldLowering.cm(target, numbers.value[SideNumbers.STRETCHED], constants);
        int bits = bits(device, lowering);
        Reasons words = new Reasons(side, device, rule, target, lowering);
        reasons.addAll(words.of(bits));
        missing(which, target).ifPresent(reasons::add);
        Verdict verdict = !refusals.isEmpty() ? Verdict.OUTSIDE
                : VerdictRule.verdict(bits).and(reasons.isEmpty() ? Verdict.FITS : Verdict.TIGHT);
        words.widthOverCeiling(bits).ifPresent(notes::add);
        fold(geometry, cover, lowering, bits, notes);
        gap.ifPresent(notes::add);
        if (permission.limited() && !permission.words().startsWith("limited by areola")) {
            notes.add(new Note("route-limited", "the " + caseRules.route().key() + " route for this device: "
                    + permission.words() + " (" + permission.source() + ", " + permission.status().words() + ")"));
        }
        Shares shares = shares(geometry, refusals, reasons);
        boolean known = side.band().isPresent();
        return new SideFit(verdict, reasons, notes, known ? OptionalDouble.of(Exact.clean(numbers.ceilingCm() - device.widthCm()))
                        : OptionalDouble.empty(),
                side.band().map(band -> OptionalDouble.of(Exact.clean(
                        Math.min(device.nominalMl() - band.low(), band.high() - device.nominalMl())))).orElse(OptionalDouble.empty()),
                optional(target), optional(lowering),
                known ? OptionalDouble.of(shares.notOutside()) : OptionalDouble.empty(),
                known ? OptionalDouble.of(shares.fits()) : OptionalDouble.empty(), shares.deciding(),
                Optional.of(new Band(Exact.clean(constants.value("RES-02-LOW") / PERCENT * device.projectionCm()),
                        Exact.clean(constants.value("RES-02-HIGH") / PERCENT * device.projectionCm()))),
                upperPole, new WouldChange(side, rule, constants).of(bits, device, lowering));
    }

    private int bits(Device device, double lowering) {
        if (side.band().isEmpty()) {
            return 0;
        }
        SideNumbers numbers = side.numbers();
        double base = numbers.value[SideNumbers.BASE];
        double ceiling = numbers.ceilingCm();
        return rule.bits(device.widthCm(), device.nominalMl(), base, ceiling, rule.widthLimitCm(base, ceiling),
                side.band().get().low(), side.band().get().high(), lowering);
    }

    /** A verdict that a reading is missing for is never better than tight. */
    private Optional<Note> missing(Side which, double target) {
        List<String> fields = new ArrayList<>();
        if (side.band().isEmpty()) {
            fields.add(Measure.BASE_WIDTH.words());
        }
        if (!side.numbers().has(SideNumbers.STRETCHED)) {
            fields.add(Measure.NIPPLE_TO_FOLD_STRETCHED.words());
        }
        if (caseRules.areolaMissing(which)) {
            fields.add(Measure.AREOLA.words());
        }
        if (fields.isEmpty() && !Double.isNaN(target)) {
            return Optional.empty();
        }
        return Optional.of(fields.isEmpty()
                ? new Note("fold-not-judged", "the listed volume goes into no dome of the listed size, so the fold can't be"
                        + " judged; check the device list")
                : new Note("reading-missing", "not taken, so not judged: " + String.join(", ", fields)));
    }

    private void fold(DeviceGeometry geometry, double cover, double lowering, int bits, List<Note> notes) {
        if (!geometry.inRows() && !Double.isNaN(geometry.arcCm())) {
            notes.add(new Note("fold-outside-rows", Figures.ml(geometry.device().nominalMl())
                    + " mL is outside the fold rows; the target is the arc of its dome, "
                    + Figures.cm(geometry.arcCm()) + " cm, plus " + Figures.cm(cover) + " cm of cover"));
        }
        double apart = Math.abs(geometry.rowsTargetCm() - geometry.arcCm() - cover);
        if (geometry.inRows() && Exact.above(apart, constants.value("FLD-DISAGREE"))) {
            notes.add(new Note("fold-methods-disagree", "volume rows say " + Figures.cm(geometry.rowsTargetCm())
                    + " cm, the arc of its dome with cover " + Figures.cm(geometry.arcCm() + cover)
                    + " cm; the rows are used"));
        }
        if (!Double.isNaN(lowering) && (bits & VerdictRule.LOWERING_LARGE) == 0) {
            FoldLowering.remark(lowering, constants).ifPresent(notes::add);
        }
    }

    private Shares shares(DeviceGeometry geometry, List<Note> refusals, List<Note> reasons) {
        if (side.band().isEmpty() || !refusals.isEmpty()) {
            return Shares.NEVER;
        }
        double ml = side.numbers().volumeMl();
        Band band = side.band().get();
        Shares shares = Shares.of(side, ranks.orElseThrow(), side.drawn().orElseThrow().draws, geometry,
                band.low() - ml, band.high() - ml);
        boolean judged = !Lists.any(reasons,
                reason -> reason.code().equals("reading-missing") || reason.code().equals("fold-not-judged"));
        return judged ? shares : new Shares(shares.notOutside(), 0, Optional.empty());
    }

    private static OptionalDouble optional(double value) {
        return Double.isNaN(value) ? OptionalDouble.empty() : OptionalDouble.of(Exact.clean(value));
    }
}
