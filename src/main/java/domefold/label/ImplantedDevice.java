package domefold.label;

import domefold.patient.Side;
import java.time.LocalDate;
import java.util.Optional;

/**
 * What was put in on one side.
 *
 * @param side her left or right
 * @param reference the order code of the device put in, as in the device list
 * @param fillMl the final fill; the nominal volume for gel
 * @param label what its label says, empty where it was not scanned or typed
 * @param on the day of surgery
 */
public record ImplantedDevice(
        Side side, String reference, double fillMl, Optional<DeviceLabel> label, LocalDate on) {
    public ImplantedDevice {
        if (reference.isBlank() || !(fillMl > 0) || Double.isInfinite(fillMl)) {
            throw new IllegalArgumentException("an implanted device has a reference and a fill above 0 mL");
        }
    }
}
