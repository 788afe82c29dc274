package domefold.screen;

import domefold.canvas.PointCm;
import domefold.device.Device;
import domefold.device.Fill;
import domefold.evidence.Constants;
import domefold.interview.Interview;
import domefold.outcome.Figures;
import domefold.outcome.Note;
import domefold.outcome.Numbers;
import domefold.patient.Measure;
import domefold.patient.Pocket;
import domefold.patient.Side;
import domefold.plan.Plan;
import domefold.shell.DeviceShell;
import domefold.shell.FillNotes;
import domefold.shell.Firmness;
import domefold.shell.RippleRank;
import domefold.shell.ShellState;
import domefold.shell.Silhouette;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A pinned device at the fill in hand: what the shell becomes, as values and as an outline.
 *
 * @param device the device
 * @param fillMl the fill in hand; the nominal volume of gel
 * @param outline side view at that fill
 * @param widthCm width at that fill; NaN beyond what the shell can hold
 * @param firmness in words and head, empty where no shell fits the row
 * @param ripple rank on the side that ripples more, empty where cover is unknown
 * @param notes what the label and the literature say of that fill
 */
record Turned(Device device, double fillMl, List<PointCm> outline, double widthCm, Optional<Firmness> firmness,
        Optional<RippleRank> ripple, List<Note> notes) {

    static Turned of(Device device, OptionalDouble turnedTo, Interview interview) {
        Constants constants = interview.guide().evidence().constants();
        double fillMl = device.fill() == Fill.SALINE ? turnedTo.orElse(device.nominalMl()) : device.nominalMl();
        Optional<DeviceShell> shell = device.fill() == Fill.SALINE ? DeviceShell.of(device, constants) : Optional.empty();
        Optional<ShellState> state = shell.map(s -> s.at(fillMl));
        boolean shaped = state.isPresent() && state.get().hasShape();
        Silhouette side = shaped ? Silhouette.upright(shell.get(), fillMl) : Silhouette.listed(device);
        double widthCm = shell.isEmpty() ? device.widthCm() : shaped ? shell.get().widthAtCm(fillMl) : Double.NaN;
        return new Turned(device, fillMl, SilhouetteCell.points(side), widthCm,
                state.filter(ShellState::hasShape).map(s -> Firmness.of(s, constants)), ripple(device, fillMl, interview),
                device.fill() == Fill.SALINE ? FillNotes.of(device, fillMl, constants) : List.of());
    }

    private static Optional<RippleRank> ripple(Device device, double fillMl, Interview interview) {
        Optional<RippleRank> worst = Optional.empty();
        Optional<Plan> plan = interview.plan();
        for (Side side : Side.values()) {
            OptionalDouble pinch = interview.dossier().patientCase().side(side).readings().value(Measure.UPPER_PINCH);
            Optional<RippleRank> rank = plan.flatMap(p -> p.side(side).pocket()).map(Pocket::underMuscle)
                    .flatMap(under -> RippleRank.of(device, fillMl, pinch, under, interview.guide().evidence().constants()));
            if (rank.isEmpty()) {
                return Optional.empty();
            }
            if (worst.isEmpty() || rank.get().index() > worst.get().index()) {
                worst = rank;
            }
        }
        return worst;
    }

    /** How far the fill in hand is from nominal, for example "fill 300 mL, +20 over nominal". */
    String words() {
        if (device.labelFillMl().isEmpty()) {
            return Numbers.ml(device.nominalMl()) + ", comes filled";
        }
        String label = ", label fill " + Numbers.ml(device.labelFillMl().get());
        double over = fillMl - device.nominalMl();
        return Numbers.ml(fillMl) + (over == 0 ? "" : " (nominal " + Figures.ml(device.nominalMl()) + ")") + label;
    }
}
