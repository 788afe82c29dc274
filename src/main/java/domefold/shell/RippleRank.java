package domefold.shell;

import domefold.device.Device;
import domefold.device.Fill;
import domefold.evidence.Constants;
import domefold.outcome.Figures;
import domefold.outcome.Note;
import java.util.List;
import java.util.OptionalDouble;

/**
 * How a device ranks for visible ripples. For ranking only; every constant is assumed.
 * <pre>
 *   index = g (s + s0) / (1 + s0) exp(-c / c0)
 *   s   slack share of the upright dome at its fill ratio (rigid bag), s0 RIP-FLOOR
 *   c   cover, cm: RIP-PINCH-SHARE x upper pinch, plus RIP-MUSCLE-COVER under muscle; c0 RIP-COVER-LENGTH
 *   g   1 for saline, RIP-GEL-SHARE for gel
 * </pre>
 * Between 0 and 1 and never 0: every device ripples. Falls with fill up to full, with cover and under muscle.
 *
 * @param index for ranking
 * @param slackShare share of the dome that hangs slack
 * @param coverCm tissue over the upper device
 * @param text what it means, in words
 * @param notes the remedy where cover is thin, the rim where it is overfilled
 */
public record RippleRank(double index, double slackShare, double coverCm, String text, List<Note> notes) {
    public RippleRank {
        notes = List.copyOf(notes);
    }

    public static RippleRank of(
            Device device, double volumeMl, double upperPinchCm, boolean underMuscle, Constants constants) {
        return of(device, Upright.of(device, volumeMl, constants), upperPinchCm, underMuscle, constants);
    }

    /**
     * A device standing upright, whoever has it.
     *
     * @param fillRatio its volume by what its shell holds
     * @param slackShare share of the dome that hangs slack
     */
    public record Upright(double fillRatio, double slackShare) {
        public static Upright of(Device device, double volumeMl, Constants constants) {
            double fillRatio = DeviceShell.fillRatio(device, volumeMl, constants);
            return new Upright(fillRatio, RippleRank.slackShare(device, fillRatio));
        }
    }

    /** The rank of a device that was stood upright before. */
    public static RippleRank of(
            Device device, Upright upright, double upperPinchCm, boolean underMuscle, Constants constants) {
        double slack = upright.slackShare();
        double cover = coverCm(upperPinchCm, underMuscle, constants);
        double index = index(device.fill(), slack, cover, constants);
        String text = "ripple rank " + Figures.of(index, 3, 3) + " on a scale of 0 to 1, for comparing devices only: "
                + Figures.of(100 * slack, 0, 0) + " % of the dome slack when upright, " + Figures.cm(cover)
                + " cm of cover (assumed model); every device ripples";
        return new RippleRank(index, slack, cover, text,
                notes(upright.fillRatio(), upperPinchCm, underMuscle, constants));
    }

    static double index(Fill fill, double slackShare, double coverCm, Constants constants) {
        double floor = constants.value("RIP-FLOOR");
        double share = fill == Fill.GEL ? constants.value("RIP-GEL-SHARE") : 1;
        return share * (slackShare + floor) / (1 + floor) * Math.exp(-coverCm / constants.value("RIP-COVER-LENGTH"));
    }

    static double coverCm(double upperPinchCm, boolean underMuscle, Constants constants) {
        return constants.value("RIP-PINCH-SHARE") * upperPinchCm
                + (underMuscle ? constants.value("RIP-MUSCLE-COVER") : 0);
    }

    /** Slack share of the listed dome at that fill ratio; the dome's exponent is the one of its own form factor. */
    static double slackShare(Device device, double fillRatio) {
        double k = Superellipse.formFactorOf(device.widthCm(), device.projectionCm(), device.nominalMl());
        double n = Math.max(1.05, Math.min(3, Superellipse.exponentOf(Math.max(0.4, Math.min(0.8, k)))));
        return RigidBag.of(device.widthCm() / 2, device.projectionCm(), n, fillRatio).slackShare();
    }

    private static List<Note> notes(double fillRatio, double upperPinchCm, boolean underMuscle, Constants constants) {
        java.util.ArrayList<Note> notes = new java.util.ArrayList<>();
        double thin = constants.value("RIP-THIN");
        if (upperPinchCm < thin) {
            notes.add(new Note("ripple-thin-cover", "upper pinch " + Figures.cm(upperPinchCm) + " cm is below "
                    + Figures.cm(thin) + " cm: " + (underMuscle ? "" : "muscle over the upper device, ")
                    + "label fill and fat over the device are the remedies named for ripples; another filling under"
                    + " muscle is not supported by a difference in ripples (RIP-01, FIL-10)"));
        }
        if (fillRatio > 1) {
            notes.add(new Note("rim-crimped", "above full the top is taut and the rim is crimped more"
                    + " (scalloped edge, FIL-05, from memory, unconfirmed)"));
        }
        return notes;
    }

    /** The rank, empty where the cover was not taken. */
    public static java.util.Optional<RippleRank> of(
            Device device, double volumeMl, OptionalDouble upperPinchCm, boolean underMuscle, Constants constants) {
        return upperPinchCm.isEmpty() ? java.util.Optional.empty()
                : java.util.Optional.of(of(device, volumeMl, upperPinchCm.getAsDouble(), underMuscle, constants));
    }
}
