package domefold.device;

import java.util.OptionalDouble;

/**
 * What a dome of a given base and projection can hold. Solid geometry.
 * <pre>
 *   cylinder        (π/4)  W H P                     W, H  base width and height, cm
 *   half-ellipsoid  (π/6)  W H P                     P     projection, cm
 *   cone            (π/12) W H P
 *   cap             π P (3 (D/2)² + P²) / 6          D² = W H; only while P ≤ D/2
 * </pre>
 * A convex dome contains the cone from its rim to its apex and lies inside the cylinder, so both are bounds without
 * exception; the cap (GEO-01) and the half-ellipsoid (GEO-02) are the usual neighbourhood.
 */
public record DomeBounds(double coneMl, OptionalDouble capMl, double ellipsoidMl, double cylinderMl) {
    public static DomeBounds of(double widthCm, double heightCm, double projectionCm) {
        double block = widthCm * heightCm * projectionCm;
        double radiusSquared = widthCm * heightCm / 4;
        OptionalDouble cap = projectionCm * projectionCm <= radiusSquared
                ? OptionalDouble.of(Math.PI * projectionCm * (3 * radiusSquared + projectionCm * projectionCm) / 6)
                : OptionalDouble.empty();
        return new DomeBounds(Math.PI / 12 * block, cap, Math.PI / 6 * block, Math.PI / 4 * block);
    }
}
