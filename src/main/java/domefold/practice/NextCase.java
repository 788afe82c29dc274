package domefold.practice;

import domefold.evidence.Constants;
import domefold.evidence.Evidence;
import domefold.patient.Case;
import domefold.patient.Measure;
import domefold.patient.Side;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.DoublePredicate;
import java.util.stream.IntStream;

/**
 * The case to work on next.
 *
 * @param number its number
 * @param level its level
 * @param towards the weak spot it was chosen for, empty where none is known
 * @param why in words
 */
public record NextCase(int number, int level, Optional<Decision> towards, String why) {
    private static final int LOOK_AHEAD = 200;
    private static final double NARROW_AREOLA_CM = 3.5;
    private static final double SHORT_FOLD_CM = 7.5;
    private static final double WIDE_PINCHES_CM = 3;

    /** The same progress always gives the same next case. */
    public static NextCase after(Progress progress, Evidence evidence) {
        return after(progress, PatientDraw.from(evidence), evidence.constants());
    }

    static NextCase after(Progress progress, PatientDraw patients, Constants constants) {
        int level = level(progress, constants);
        List<Integer> ahead = ahead(level, progress.numbers(level));
        Optional<Decision> weakest = progress.weakSpots(constants).stream().findFirst();
        List<String> missed = progress.missedWarnings(constants);
        if (weakest.isPresent()) {
            for (int number : ahead) {
                if (exercises(weakest.get(), patients.of(number, level), missed, constants)) {
                    return new NextCase(number, level, weakest, "level " + level + ", chosen for practice in: "
                            + weakest.get().words());
                }
            }
        }
        return new NextCase(ahead.get(0), level, Optional.empty(), "level " + level + ", the next in the row");
    }

    /** The next numbers of that level that were not worked on. */
    private static List<Integer> ahead(int level, Set<Integer> done) {
        return IntStream.iterate(1, number -> number + 1)
                .filter(number -> PatientDraw.levelOf(number) == level && !done.contains(number))
                .limit(LOOK_AHEAD).boxed().toList();
    }

    /** Up after PRA-NEXT-CASES in a row at a level with a mean from PRA-NEXT-UP, down below PRA-NEXT-DOWN. */
    static int level(Progress progress, Constants constants) {
        if (progress.entries().isEmpty()) {
            return PracticeCase.LOWEST_LEVEL;
        }
        int wanted = (int) constants.value("PRA-NEXT-CASES");
        List<Progress.Entry> last = progress.last(wanted).entries();
        int level = last.get(last.size() - 1).level();
        if (last.size() < wanted || last.stream().anyMatch(entry -> entry.level() != level)) {
            return level;
        }
        double mean = last.stream().mapToDouble(entry -> entry.score().percent()).average().orElseThrow();
        if (mean >= constants.value("PRA-NEXT-UP")) {
            return Math.min(PracticeCase.HIGHEST_LEVEL, level + 1);
        }
        return mean < constants.value("PRA-NEXT-DOWN") ? Math.max(PracticeCase.LOWEST_LEVEL, level - 1) : level;
    }

    /** Whether a case asks more than the ordinary of that kind of decision. */
    private static boolean exercises(Decision spot, PracticeCase practice, List<String> missed, Constants constants) {
        Case of = practice.of();
        return switch (spot) {
            case WARNING, PROCEED -> practice.traps().isEmpty() || missed.isEmpty()
                    || practice.traps().stream().anyMatch(trap -> missed.contains(trap.code()));
            case WIDTH_CEILING -> either(of, Measure.MEDIAL_PINCH, medial -> medial >= WIDE_PINCHES_CM / 2)
                    || either(of, Measure.LATERAL_PINCH, lateral -> lateral >= WIDE_PINCHES_CM * 2 / 3);
            case VOLUME -> either(of, Measure.SKIN_STRETCH, cm -> cm < constants.value("ADJ-01-LIMIT")
                    || cm > constants.value("ADJ-03-LIMIT"))
                    || either(of, Measure.PARENCHYMAL_FILL, share -> share < constants.value("ADJ-06-LIMIT")
                    || share > constants.value("ADJ-07-LIMIT"));
            case POCKET -> either(of, Measure.UPPER_PINCH, cm -> cm < constants.value("POC-01"))
                    || either(of, Measure.FOLD_PINCH, cm -> cm < constants.value("POC-03"));
            case FOLD -> either(of, Measure.NIPPLE_TO_FOLD_STRETCHED, cm -> cm < SHORT_FOLD_CM);
            case ROUTE, INCISION -> either(of, Measure.AREOLA, cm -> cm < NARROW_AREOLA_CM);
            case DEVICE, FILL, PROFILE -> practice.traps().contains(Trap.AGE_BELOW_LABEL)
                    || practice.sightings().stream().anyMatch(seen -> seen.kind() == Kind.VOLUME);
            case FOLLOW_UP, REASON -> true;
        };
    }

    private static boolean either(Case of, Measure measure, DoublePredicate test) {
        for (Side side : Side.values()) {
            if (test.test(of.side(side).readings().value(measure).orElseThrow())) {
                return true;
            }
        }
        return false;
    }
}
