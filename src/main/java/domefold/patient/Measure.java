package domefold.patient;

import domefold.basics.Lists;
import java.util.List;

/**
 * Every reading a consult can hold: its name in a case file (which ends in the unit), its name for people, its unit, and
 * its row in {@code shared/evidence/measurements.csv}, which holds gates, error and how it is taken.
 */
public enum Measure {
    AGE("ageYears", "age", "years", "age", Of.PATIENT),
    HEIGHT("heightCm", "height", "cm", "height", Of.PATIENT),
    WEIGHT("weightKg", "weight", "kg", "weight", Of.PATIENT),
    THORACIC_PERIMETER("thoracicPerimeterCm", "chest perimeter at the fold", "cm", "chest_fold", Of.PATIENT),
    BUST("bustCm", "bust circumference", "cm", "bust", Of.PATIENT),

    INTER_NIPPLE("interNippleCm", "nipple to nipple", "cm", "n_n", Of.CHEST),
    INTERMAMMARY("intermammaryCm", "gap between the breasts", "cm", "imd", Of.CHEST),

    STERNAL_NOTCH_TO_NIPPLE("sternalNotchToNippleCm", "sternal notch to nipple", "cm", "sn_n", Of.SIDE),
    NIPPLE_TO_MIDLINE("nippleToMidlineCm", "nipple to midline", "cm", "n_m", Of.SIDE),
    NIPPLE_TO_FOLD("nippleToFoldCm", "nipple to fold at rest", "cm", "n_imf_rest", Of.SIDE),
    NIPPLE_TO_FOLD_STRETCHED("nippleToFoldStretchedCm", "nipple to fold, stretched", "cm", "n_imf_stretched", Of.SIDE),
    BASE_WIDTH("baseWidthCm", "base width", "cm", "bw", Of.SIDE),
    BREAST_HEIGHT("breastHeightCm", "breast height", "cm", "bh", Of.SIDE),
    AREOLA("areolaCm", "areola diameter", "cm", "areola_d", Of.SIDE),
    SKIN_STRETCH("skinStretchCm", "skin stretch", "cm", "apss", Of.SIDE),
    UPPER_PINCH("upperPinchCm", "upper pole pinch", "cm", "pinch_upper", Of.SIDE),
    FOLD_PINCH("foldPinchCm", "fold pinch", "cm", "pinch_fold", Of.SIDE),
    MEDIAL_PINCH("medialPinchCm", "medial pinch", "cm", "pinch_medial", Of.SIDE),
    LATERAL_PINCH("lateralPinchCm", "lateral pinch", "cm", "pinch_lateral", Of.SIDE),
    PARENCHYMAL_FILL("parenchymalFillPercent", "parenchymal fill", "%", "fill_share", Of.SIDE),
    BREAST_VOLUME("breastVolumeMl", "breast volume", "mL", "breast_volume", Of.SIDE),

    // Optional readings that a published rule needs; see docs/decisions for why the case format carries them.
    AREOLA_TO_FOLD_STRETCHED("areolaToFoldStretchedCm", "areola to fold, stretched", "cm", "a_imf_stretched", Of.SIDE),
    UPPER_SPAN("upperSpanCm", "upper border to nipple", "cm", "span_upper", Of.SIDE),
    VERTICAL_SURFACE("verticalSurfaceCm", "vertical surface distance", "cm", "vsd", Of.SIDE),
    VERTICAL_BASE("verticalBaseCm", "vertical base distance", "cm", "vbd", Of.SIDE),
    BREAST_PROJECTION("breastProjectionCm", "breast projection", "cm", "mp", Of.SIDE),
    MEDIAL_RADIUS("medialRadiusCm", "medial breast radius", "cm", "mr", Of.SIDE),
    LATERAL_RADIUS("lateralRadiusCm", "lateral breast radius", "cm", "lr", Of.SIDE),
    INFERIOR_RADIUS("inferiorRadiusCm", "inferior breast radius", "cm", "ir", Of.SIDE);

    /** Whose reading it is: the whole patient's, the chest's, or one breast's. */
    public enum Of {
        PATIENT,
        CHEST,
        SIDE
    }

    private final String field;
    private final String words;
    private final String unit;
    private final String evidenceId;
    private final Of of;

    Measure(String field, String words, String unit, String evidenceId, Of of) {
        this.field = field;
        this.words = words;
        this.unit = unit;
        this.evidenceId = evidenceId;
        this.of = of;
    }

    /** The field name in a case file, for example {@code baseWidthCm}. */
    public String field() {
        return field;
    }

    /** How a person reads the measure of that field; a field that is no measure's stays as it is. */
    public static String wordsOf(String field) {
        return Lists.first(List.of(values()), measure -> measure.field().equals(field))
                .map(Measure::words).orElse(field);
    }

    /** The name a person reads, lower case, for example "base width". */
    public String words() {
        return words;
    }

    public String unit() {
        return unit;
    }

    /** The {@code id} of its row in {@code measurements.csv}. */
    public String evidenceId() {
        return evidenceId;
    }

    public Of of() {
        return of;
    }
}
