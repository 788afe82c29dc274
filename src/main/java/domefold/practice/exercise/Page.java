package domefold.practice.exercise;

import domefold.patient.Measure;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;

/** The pages of an exercise, in order. */
public enum Page {
    HISTORY("History", List.of()),
    FRAME("Frame", List.copyOf(EnumSet.of(Measure.AGE, Measure.HEIGHT, Measure.WEIGHT, Measure.THORACIC_PERIMETER,
            Measure.BUST, Measure.INTERMAMMARY, Measure.INTER_NIPPLE, Measure.STERNAL_NOTCH_TO_NIPPLE,
            Measure.NIPPLE_TO_MIDLINE, Measure.BASE_WIDTH, Measure.BREAST_HEIGHT, Measure.AREOLA))),
    COVER("Cover", List.copyOf(EnumSet.of(Measure.SKIN_STRETCH, Measure.UPPER_PINCH, Measure.FOLD_PINCH,
            Measure.MEDIAL_PINCH, Measure.LATERAL_PINCH, Measure.PARENCHYMAL_FILL))),
    FOLD("Fold", List.copyOf(EnumSet.of(Measure.NIPPLE_TO_FOLD, Measure.NIPPLE_TO_FOLD_STRETCHED,
            Measure.AREOLA_TO_FOLD_STRETCHED, Measure.UPPER_SPAN, Measure.VERTICAL_SURFACE, Measure.VERTICAL_BASE))),
    SIDES("Sides", List.copyOf(EnumSet.of(Measure.BREAST_VOLUME, Measure.BREAST_PROJECTION, Measure.MEDIAL_RADIUS,
            Measure.LATERAL_RADIUS, Measure.INFERIOR_RADIUS))),
    PLAN("Your plan", List.of()),
    MARKING("Marking", List.of());

    private final String title;
    private final List<Measure> measures;

    Page(String title, List<Measure> measures) {
        this.title = title;
        this.measures = measures;
    }

    public String title() {
        return title;
    }

    /** The readings taken on this page; ptosis is looked at with the fold. */
    public List<Measure> measures() {
        return measures;
    }

    /** True where readings are taken. */
    public boolean reads() {
        return !measures.isEmpty();
    }

    static Set<Page> reading() {
        return EnumSet.range(FRAME, SIDES);
    }
}
