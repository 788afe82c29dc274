package domefold.engine;

import domefold.evidence.Constants;
import domefold.outcome.Figures;
import domefold.outcome.Note;
import domefold.patient.Breast;
import domefold.patient.Measure;
import domefold.patient.Ptosis;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/**
 * Whether a lift is to be discussed: grade II or III (PTO-06), the published discriminant (PTO-09), or a long lower pole
 * with a low nipple (PTO-08). One note, {@code lift-to-discuss}, with every reason in it.
 */
public final class LiftAdvice {
    private LiftAdvice() {}

    public static List<Note> of(Breast breast, Constants constants) {
        List<String> reasons = new ArrayList<>();
        breast.ptosis().filter(PtosisGrade::wantsLift).ifPresent(grade -> reasons.add(PtosisGrade.words(grade)));
        OptionalDouble surface = breast.readings().value(Measure.VERTICAL_SURFACE);
        OptionalDouble base = breast.readings().value(Measure.VERTICAL_BASE);
        if (surface.isPresent() && base.isPresent()
                && PtosisDiscriminant.ptotic(surface.getAsDouble(), base.getAsDouble(), constants)) {
            reasons.add("the vertical surface distance " + Figures.cm(surface.getAsDouble()) + " cm is above the limit "
                    + Figures.cm(PtosisDiscriminant.limitCm(base.getAsDouble(), constants)) + " cm");
        }
        OptionalDouble stretched = breast.readings().value(Measure.NIPPLE_TO_FOLD_STRETCHED);
        boolean lowNipple = breast.ptosis().filter(grade -> grade == Ptosis.GRADE_I).isPresent();
        if (lowNipple && stretched.isPresent() && Exact.above(stretched.getAsDouble(), constants.value("PTO-08"))) {
            reasons.add("the stretched nipple to fold " + Figures.cm(stretched.getAsDouble()) + " cm is above "
                    + Figures.cm(constants.value("PTO-08")) + " cm with a low nipple");
        }
        return reasons.isEmpty() ? List.of()
                : List.of(new Note("lift-to-discuss", "discuss a lift: " + String.join("; ", reasons)));
    }
}
