package domefold.shell;

/**
 * Sizes of equal shape: with projection to width tau and form factor k,
 * <pre>
 *   D = (4 V / (pi tau k))^(1/3),  P = tau D
 * </pre>
 * A rule, nobody's list. Volume in mL, lengths in cm, nothing rounded.
 */
public record SizeLadder(double widthCm, double projectionCm) {
    public static SizeLadder of(double projectionToWidth, double formFactor, double volumeMl) {
        double width = Math.cbrt(4 * volumeMl / (Math.PI * projectionToWidth * formFactor));
        return new SizeLadder(width, projectionToWidth * width);
    }
}
