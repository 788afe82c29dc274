package domefold.engine;

import domefold.evidence.Constants;
import domefold.outcome.Figures;
import domefold.outcome.Working;

/**
 * Height class of the device by chest perimeter over notch to nipple.
 *
 * <pre>
 *   Y = P / N      P  chest perimeter at the fold, cm     N  sternal notch to nipple, cm
 *   Y &lt; HGT-01 tall;  Y &gt; HGT-03 low;  between, ends included, medium
 * </pre>
 *
 * Source: Martin del Yerro, Vegas and others 2013. Classified unrounded.
 */
public final class ImplantHeightRatio {
    private ImplantHeightRatio() {}

    /** The three height classes. */
    public enum HeightClass {
        TALL("tall"),
        MEDIUM("medium"),
        LOW("low");

        private final String words;

        HeightClass(String words) {
            this.words = words;
        }

        public String words() {
            return words;
        }
    }

    public static double ratio(double chestPerimeterCm, double notchToNippleCm) {
        return chestPerimeterCm / notchToNippleCm;
    }

    public static HeightClass of(double chestPerimeterCm, double notchToNippleCm, Constants constants) {
        double ratio = ratio(chestPerimeterCm, notchToNippleCm);
        if (Exact.below(ratio, constants.value("HGT-01"))) {
            return HeightClass.TALL;
        }
        return Exact.above(ratio, constants.value("HGT-03")) ? HeightClass.LOW : HeightClass.MEDIUM;
    }

    public static Working working(double chestPerimeterCm, double notchToNippleCm, Constants constants) {
        return Working.by(constants.get("HGT-01"), "device height class", Figures.cm(chestPerimeterCm) + " / "
                + Figures.cm(notchToNippleCm) + ": "
                + of(chestPerimeterCm, notchToNippleCm, constants).words(), ratio(chestPerimeterCm, notchToNippleCm),
                "ratio");
    }
}
