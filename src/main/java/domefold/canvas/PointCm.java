package domefold.canvas;

/** A point of a drawing: {@code xCm} to the right, {@code yCm} upwards. */
public record PointCm(double xCm, double yCm) {
    boolean isFinite() {
        return Double.isFinite(xCm) && Double.isFinite(yCm);
    }
}
