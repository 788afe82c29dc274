package domefold.shell;

import domefold.device.Device;
import domefold.device.Fill;
import domefold.device.Profile;
import domefold.device.Surface;
import domefold.evidence.Constants;
import domefold.evidence.Evidence;
import domefold.outcome.Band;
import domefold.store.EvidenceFiles;
import java.util.Optional;

/** Invented devices and the shipped evidence, for the tests of this package. */
final class Rows {
    static final Evidence EVIDENCE = EvidenceFiles.shipped();
    static final Constants CONSTANTS = EVIDENCE.constants();

    private Rows() {}

    static Device saline(double tau, double nominalMl) {
        SizeLadder size = SizeLadder.of(tau, 0.66, nominalMl);
        return device(Fill.SALINE, nominalMl, size.widthCm(), size.projectionCm());
    }

    static Device gel(double tau, double nominalMl) {
        SizeLadder size = SizeLadder.of(tau, 0.66, nominalMl);
        return device(Fill.GEL, nominalMl, size.widthCm(), size.projectionCm());
    }

    static Device device(Fill fill, double nominalMl, double widthCm, double projectionCm) {
        Optional<Band> label = fill == Fill.SALINE ? Optional.of(new Band(nominalMl, 1.1 * nominalMl)) : Optional.empty();
        return new Device("row", "invented", fill, Surface.SMOOTH, Profile.MODERATE_PLUS, nominalMl, label, widthCm, widthCm,
                projectionCm);
    }
}
