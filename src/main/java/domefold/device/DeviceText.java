package domefold.device;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Locale;

/** Numbers of a device list in words. */
final class DeviceText {
    private DeviceText() {}

    /** A volume to the millilitre. */
    static String ml(double volumeMl) {
        return String.format(Locale.ROOT, "%.0f mL", volumeMl);
    }

    /** A number as it would be written in the list, at most three decimals. */
    static String number(double value) {
        BigDecimal rounded = BigDecimal.valueOf(value).setScale(3, RoundingMode.HALF_UP).stripTrailingZeros();
        return rounded.scale() < 0 ? rounded.setScale(0).toPlainString() : rounded.toPlainString();
    }

    static String ratio(double ratio) {
        return String.format(Locale.ROOT, "%.2f", ratio);
    }
}
