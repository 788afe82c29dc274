package domefold.shell;

import domefold.device.Device;
import domefold.device.Fill;
import domefold.evidence.Constants;
import domefold.outcome.Band;
import domefold.outcome.Figures;
import domefold.outcome.Note;
import java.util.ArrayList;
import java.util.List;

/** What is published about filling a saline device below or above its label (rows FIL-*). */
public final class FillNotes {
    private FillNotes() {}

    /** Notes on that volume in that device; none inside the label range or for gel. */
    public static List<Note> of(Device device, double volumeMl, Constants constants) {
        List<Note> notes = new ArrayList<>();
        if (device.fill() != Fill.SALINE || device.labelFillMl().isEmpty()) {
            return notes;
        }
        Band label = device.labelFillMl().get();
        if (volumeMl < label.low()) {
            notes.add(new Note("fill-below-label", Figures.ml(volumeMl) + " mL is "
                    + Figures.of(shareOfMinimumPercent(label, volumeMl), 1, 1) + " % of the label minimum of "
                    + Figures.ml(label.low()) + " mL: underfilling wrinkles the shell and wears it at the folds; deflated"
                    + " devices had been filled to " + percent(constants, "FIL-01-DEFLATED") + " % of the minimum, intact"
                    + " ones to " + percent(constants, "FIL-01-INTACT") + " % (Lantieri 1997)"));
        }
        if (volumeMl > label.high()) {
            notes.add(new Note("fill-above-label", Figures.ml(volumeMl) + " mL is "
                    + Figures.ml(volumeMl - label.high()) + " mL above the label maximum of "
                    + Figures.ml(label.high()) + " mL, outside the labelling: scalloped edge, firmness, narrower base (FIL-05,"
                    + " from memory, unconfirmed); deflation "
                    + Figures.of(overDeflationPercent(constants), 2, 2) + " % when overfilled by 10 to 13 % against "
                    + Figures.of(withinDeflationPercent(constants), 2, 2) + " % within range, the overfilled followed for"
                    + " less time (Eisenberg 2021)"));
        }
        return notes;
    }

    /** A volume as a percentage of the label minimum. */
    public static double shareOfMinimumPercent(Band labelMl, double volumeMl) {
        return 100 * volumeMl / labelMl.low();
    }

    /** Share of devices filled within range that deflated. */
    public static double withinDeflationPercent(Constants constants) {
        return 100 * constants.value("FIL-04-WITHIN-FAILED") / constants.value("FIL-04-WITHIN");
    }

    /** Share of devices overfilled by 10 to 13 % that deflated. */
    public static double overDeflationPercent(Constants constants) {
        return 100 * constants.value("FIL-04-OVER-FAILED") / constants.value("FIL-04-OVER");
    }

    /** How much fuller intact devices had been than deflated ones, in points of the label minimum. */
    public static double intactLessDeflatedPoints(Constants constants) {
        return constants.value("FIL-01-INTACT") - constants.value("FIL-01-DEFLATED");
    }

    private static String percent(Constants constants, String id) {
        return Figures.of(constants.value(id), 1, 1);
    }
}
