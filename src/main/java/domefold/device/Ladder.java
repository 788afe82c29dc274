package domefold.device;

import domefold.evidence.Constants;
import domefold.outcome.Band;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * The rule by which the shipped device list is invented: sizes on a ladder of equal shapes.
 * <pre>
 *   τ = τ0 · (V / V0)^d          V   nominal volume, mL          τ0  projection to width of the class at V0
 *   D = (4 V / (π τ k))^(1/3)    D   base width, cm              V0  LIST-DRIFT-AT, mL;  d  LIST-DRIFT
 *   P = τ D                      P   projection, cm              k   LIST-FORM, volume over the cylinder's
 * </pre>
 * Widths and projections are rounded to the millimetre, as labels are. Every constant is {@code assumed}: the list stands
 * for no device that can be bought.
 */
public final class Ladder {
    private static final double FINE_TO_ML = 360;
    private static final double MIDDLE_TO_ML = 480;
    private static final double WIDE_TO_ML = 600;
    private static final List<Profile> TEXTURED_GEL = List.of(Profile.MODERATE_PLUS, Profile.FULL);
    private static final List<Profile> TEXTURED_SALINE = List.of(Profile.MODERATE_PLUS);
    private static final double TEXTURED_STEP_ML = 50;

    private Ladder() {}

    /** Width and projection before rounding. */
    public record Shape(double widthCm, double projectionCm) {}

    /** The exact shape of one size. */
    public static Shape shape(Profile profile, double volumeMl, Constants constants) {
        double atOwnVolume = constants.value("LIST-TAU-" + profile.name().replace('_', '-'));
        double tau = atOwnVolume * Math.pow(volumeMl / constants.value("LIST-DRIFT-AT"), constants.value("LIST-DRIFT"));
        double widthCm = Math.cbrt(4 * volumeMl / (Math.PI * tau * constants.value("LIST-FORM")));
        return new Shape(widthCm, tau * widthCm);
    }

    /** Every device of the invented list, in its order: fill, surface, profile, volume. */
    public static List<Device> devices(Constants constants) {
        List<Device> all = new ArrayList<>();
        for (Fill fill : List.of(Fill.GEL, Fill.SALINE)) {
            for (Profile profile : Profile.values()) {
                for (double volumeMl : smoothVolumesMl(fill, profile, constants)) {
                    all.add(device(fill, Surface.SMOOTH, profile, volumeMl, constants));
                }
            }
            for (Profile profile : fill == Fill.GEL ? TEXTURED_GEL : TEXTURED_SALINE) {
                for (double ml = constants.value("LIST-TEXTURED-FROM"); ml <= constants.value("LIST-TEXTURED-TO");
                        ml += TEXTURED_STEP_ML) {
                    all.add(device(fill, Surface.TEXTURED, profile, ml, constants));
                }
            }
        }
        return List.copyOf(all);
    }

    /** Sizes of a smooth ladder: closer steps where most devices are used, gel closer than saline, which is adjustable. */
    static List<Double> smoothVolumesMl(Fill fill, Profile profile, Constants constants) {
        List<Double> volumes = new ArrayList<>();
        double least = smallestMl(profile, constants);
        double most = largestMl(profile, constants);
        for (double ml = constants.value("LIST-SMALLEST"); ml <= most; ml += stepMl(fill, ml)) {
            if (ml >= least) {
                volumes.add(ml);
            }
        }
        return volumes;
    }

    private static double stepMl(Fill fill, double volumeMl) {
        if (volumeMl < FINE_TO_ML) {
            return fill == Fill.GEL ? 30 : 40;
        }
        if (volumeMl < MIDDLE_TO_ML) {
            return fill == Fill.GEL ? 40 : 60;
        }
        return volumeMl < WIDE_TO_ML ? 60 : 100;
    }

    private static double smallestMl(Profile profile, Constants constants) {
        return switch (profile) {
            case FULL -> constants.value("LIST-FROM-FULL");
            case EXTRA_FULL -> constants.value("LIST-FROM-EXTRA-FULL");
            default -> constants.value("LIST-SMALLEST");
        };
    }

    private static double largestMl(Profile profile, Constants constants) {
        return switch (profile) {
            case LOW -> constants.value("LIST-CAP-LOW");
            case MODERATE -> constants.value("LIST-CAP-MODERATE");
            default -> constants.value("LIST-LARGEST");
        };
    }

    private static Device device(Fill fill, Surface surface, Profile profile, double volumeMl, Constants constants) {
        Shape shape = shape(profile, volumeMl, constants);
        double widthCm = toMillimetre(shape.widthCm());
        String reference = String.join("-", fill.key(), surface.key(), profile.key(),
                String.format(Locale.ROOT, "%.0f", volumeMl));
        return new Device(reference, "invented " + fill.key(), fill, surface, profile, volumeMl,
                fill == Fill.SALINE ? Optional.of(labelFillMl(volumeMl, constants)) : Optional.empty(), widthCm, widthCm,
                toMillimetre(shape.projectionCm()));
    }

    /** From nominal to a tenth above it, at least LIST-FILL-LEAST and at most LIST-FILL-MOST above, to the next 5 mL. */
    static Band labelFillMl(double nominalMl, Constants constants) {
        double aboveMl = nominalMl * constants.value("LIST-FILL-SHARE") / 100;
        double boundedMl = Math.max(constants.value("LIST-FILL-LEAST"), Math.min(aboveMl, constants.value("LIST-FILL-MOST")));
        return new Band(nominalMl, nominalMl + Math.rint(boundedMl / 5) * 5);
    }

    private static double toMillimetre(double lengthCm) {
        return BigDecimal.valueOf(lengthCm).setScale(1, RoundingMode.HALF_UP).doubleValue();
    }

    /** The list as the file that ships: the same bytes every time. */
    public static String file(Constants constants) {
        StringBuilder out = new StringBuilder();
        out.append("# name: invented ladder\n");
        out.append("# date: 2026-11-25\n");
        out.append("# note: Invented by a stated geometric rule; no device here can be bought. Replace it by the practice's own"
                + " list before clinical use.\n");
        out.append("# source: our own ladder rule (constants LIST-*, assumed): width from volume, projection to width and one"
                + " form factor. Label fill ranges of saline follow general teaching (FIL-03, from memory, unconfirmed).\n");
        out.append(String.join(",", CatalogueSheet.COLUMNS)).append('\n');
        for (Device device : devices(constants)) {
            out.append(row(device)).append('\n');
        }
        return out.toString();
    }

    private static String row(Device device) {
        String fills = device.labelFillMl().map(band -> ml(band.low()) + "," + ml(band.high())).orElse(",");
        return String.join(",", device.line(), device.fill().key(), device.surface().key(), device.profile().key(),
                ml(device.nominalMl()), fills, cm(device.widthCm()), cm(device.heightCm()), cm(device.projectionCm()),
                device.id());
    }

    private static String ml(double volumeMl) {
        return String.format(Locale.ROOT, "%.0f", volumeMl);
    }

    private static String cm(double lengthCm) {
        return String.format(Locale.ROOT, "%.1f", lengthCm);
    }
}
