package domefold.plan;

import domefold.basics.Lists;
import domefold.outcome.Note;
import java.util.Set;

/** The reasons of a verdict by what they rest on. Any other reason is a refusal: label, route or contraindication. */
final class ReasonCodes {
    static final Set<String> BY_VOLUME =
            Set.of("volume-above-band", "volume-below-band", "fold-lowering", "fold-lowering-large");
    private static final Set<String> BY_WIDTH = Set.of("width-over-base", "base-widened", "width-narrow");
    private static final Set<String> NOT_JUDGED = Set.of("reading-missing", "fold-not-judged");

    private ReasonCodes() {}

    /** True where no reading could make it anything but outside. */
    static boolean refused(SideFit fit) {
        return Lists.any(Lists.map(fit.reasons(), Note::code),
                code -> !BY_VOLUME.contains(code) && !BY_WIDTH.contains(code) && !NOT_JUDGED.contains(code));
    }

    /** True where something was not judged, so that the verdict is never better than tight. */
    static boolean notJudged(SideFit fit) {
        return Lists.any(fit.reasons(), reason -> NOT_JUDGED.contains(reason.code()));
    }

    /** The verdict as far as it rests on neither volume nor fold. */
    static Verdict apartFromVolume(SideFit fit) {
        if (refused(fit)) {
            return Verdict.OUTSIDE;
        }
        Verdict verdict = Verdict.FITS;
        for (Note reason : fit.reasons()) {
            if (!BY_VOLUME.contains(reason.code())) {
                verdict = verdict.and(reason.code().equals("width-over-base") ? Verdict.OUTSIDE : Verdict.TIGHT);
            }
        }
        return verdict;
    }
}
