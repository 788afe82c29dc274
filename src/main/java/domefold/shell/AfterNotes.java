package domefold.shell;

import domefold.evidence.Constant;
import domefold.evidence.Constants;
import domefold.outcome.Band;
import domefold.outcome.Figures;
import domefold.outcome.Note;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/** What to say beside the breast after, with where each figure comes from and what speaks against it. */
public final class AfterNotes {
    private AfterNotes() {}

    /**
     * @param deviceProjectionCm listed projection of the device
     * @param gapAfterCm gap between the breasts after, where both sides are known
     */
    public static List<Note> of(
            BreastAfter after, double deviceProjectionCm, OptionalDouble gapAfterCm, Constants constants) {
        List<Note> notes = new ArrayList<>();
        notes.add(gain(after, deviceProjectionCm, constants));
        notes.add(upperShare(after.upperPercentBand(), constants));
        Constant realised = constants.get("RES-01");
        notes.add(new Note("after-volume", "one series found " + Figures.of(realised.value(), 1, 1)
                + " % of the device's volume in the breast afterwards (" + told(realised)
                + "); its own subgroups say 97 to 101 %"));
        gapAfterCm.ifPresent(gap -> notes.add(gap(gap, constants)));
        return notes;
    }

    private static Note gain(BreastAfter after, double deviceProjectionCm, Constants constants) {
        Band band = BreastAfter.projectionGainCm(deviceProjectionCm, constants);
        return new Note("after-projection", "forward by " + Figures.of(band.low(), 1, 1) + " to "
                + Figures.of(band.high(), 1, 1) + " cm, " + Figures.of(constants.value("RES-02-LOW"), 0, 0) + " to "
                + Figures.of(constants.value("RES-02-HIGH"), 0, 0) + " % of the device's projection ("
                + told(constants.get("RES-02-LOW")) + "); the volume-conserving sketch says "
                + Figures.of(after.gainCm(), 1, 1) + " cm and is for ranking only");
    }

    private static Note upperShare(Band percent, Constants constants) {
        Constant preferred = constants.get("POL-01");
        Constant augmented = constants.get("POL-03");
        return new Note("after-upper-share", "about " + Figures.of(percent.low(), 0, 0) + " to "
                + Figures.of(percent.high(), 0, 0) + " % of the side profile above the nipple (assumed model); preferred in"
                + " surveys " + Figures.of(preferred.value(), 0, 0) + " % (" + told(preferred)
                + "), found in satisfied augmented women about " + Figures.of(augmented.value(), 0, 0) + " % ("
                + told(augmented) + "), measured differently");
    }

    private static Note gap(double gapCm, Constants constants) {
        Constant low = constants.get("POL-06-LOW");
        return new Note("after-gap", "gap between the breasts about " + Figures.of(gapCm, 1, 1) + " cm afterwards; "
                + Figures.cm(low.value()) + " to " + Figures.cm(constants.value("POL-06-HIGH")) + " cm is preferred ("
                + told(low) + ")");
    }

    private static String told(Constant constant) {
        return constant.source() + ", " + constant.status().words();
    }
}
