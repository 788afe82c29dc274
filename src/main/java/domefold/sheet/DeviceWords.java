package domefold.sheet;

import domefold.device.Device;
import domefold.outcome.Numbers;
import java.math.BigDecimal;

/** A device and its numbers in words, the same on every sheet. */
public final class DeviceWords {
    private DeviceWords() {}

    /** For example "Meridian round, gel, smooth, moderate". */
    public static String kind(Device device) {
        return device.line() + ", " + device.fill().key() + ", " + device.surface().key() + ", " + device.profile().key();
    }

    /** For example "11.0 cm wide, 11.0 cm high, 4.1 cm projection". */
    public static String dimensions(Device device) {
        return Numbers.cm(device.widthCm()) + " wide, " + Numbers.cm(device.heightCm()) + " high, "
                + Numbers.cm(device.projectionCm()) + " projection";
    }

    /** A volume exactly as it was entered, without a trailing nought: an order is not rounded. */
    public static String exactMl(double volumeMl) {
        BigDecimal exact = BigDecimal.valueOf(volumeMl).stripTrailingZeros();
        return (exact.scale() < 0 ? exact.setScale(0) : exact).toPlainString() + " mL";
    }
}
