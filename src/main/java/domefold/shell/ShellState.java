package domefold.shell;

/**
 * A liquid-filled shell lying on a flat table.
 *
 * @param kind slack, full, pressurised, or beyond what the shell can hold
 * @param fillRatio volume over the volume at which it is just full without stretch
 * @param volumeMl liquid in it
 * @param fullVolumeMl volume at which it is just full, without stretch
 * @param capacityMl most it can hold without stretch
 * @param apexHeadCm head at the apex: negative while the top is slack (then the depth of the liquid's surface below the
 *     undeformed apex), 0 when just full
 * @param baseHeadCm head at the table
 * @param widthCm widest width as it lies
 * @param heightCm height of the liquid as it lies
 * @param contactWidthCm width of the part that rests on the table
 * @param slackFraction share of the shell's area that is slack on top
 * @param bandFraction share of the shell's area that lies in the crimped rim
 * @param crimp excess area folded into the slack top and the rim together, as a share of the shell's area; it has a
 *     least value near full and grows to both sides
 * @param maxHoopExcess greatest share of hoop length gathered in folds, at the seam
 * @param closureDefect remaining defect of the meridian's length, as a share of it
 */
public record ShellState(
        Kind kind,
        double fillRatio,
        double volumeMl,
        double fullVolumeMl,
        double capacityMl,
        double apexHeadCm,
        double baseHeadCm,
        double widthCm,
        double heightCm,
        double contactWidthCm,
        double slackFraction,
        double bandFraction,
        double crimp,
        double maxHoopExcess,
        double closureDefect) {

    /** Where the filling stands. */
    public enum Kind {
        SLACK("slack"),
        FULL("full"),
        PRESSURISED("pressurised"),
        /** More than the shell can hold: an answer, with every shape number absent (NaN). */
        BEYOND_CAPACITY("beyond-capacity");

        private final String key;

        Kind(String key) {
            this.key = key;
        }

        public String key() {
            return key;
        }
    }

    /** True when the shape numbers exist. */
    public boolean hasShape() {
        return kind != Kind.BEYOND_CAPACITY;
    }

    /** Pressure at the apex in cm of the filler's head: 0 while the top is slack. */
    public double apexPressureHeadCm() {
        return Math.max(0, apexHeadCm);
    }

    static ShellState beyond(double volumeMl, double fullMl, double capacityMl) {
        double none = Double.NaN;
        return new ShellState(Kind.BEYOND_CAPACITY, volumeMl / fullMl, volumeMl, fullMl, capacityMl, none, none, none,
                none, none, none, none, none, none, none);
    }
}
