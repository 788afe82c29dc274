package domefold.interview;

import domefold.device.Fill;
import domefold.device.Surface;
import domefold.evidence.Table;
import domefold.outcome.Numbers;
import domefold.outcome.Refusal;
import domefold.patient.Case;
import domefold.patient.Measure;
import domefold.patient.Pocket;
import domefold.patient.Ptosis;
import domefold.patient.Route;
import domefold.patient.Setting;
import domefold.patient.Side;
import domefold.patient.Wishes;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;

/** Every question of a consult, in the order asked. */
final class Questions {
    private static final int LONGEST_CODE = 32;
    private static final int LONGEST_HORIZON_YEARS = 60;
    private static final double LARGEST_WISH_ML = 1000;

    private Questions() {}

    static List<Question> all() {
        List<Question> all = new ArrayList<>();
        all.add(caseCode());
        all.add(new ReadingQuestion(Measure.AGE, Room.WHO, true));
        all.add(new ReadingQuestion(Measure.HEIGHT, Room.WHO, false));
        all.add(new ReadingQuestion(Measure.WEIGHT, Room.WHO, false));
        all.add(new HealthEntry());

        all.add(upperPole());
        all.add(sizeWish());
        all.add(new WeightsEntry());
        all.add(route());
        all.add(surfaces());
        all.add(funnel());
        all.add(schedule());
        all.add(horizon());

        all.add(new ReadingQuestion(Measure.THORACIC_PERIMETER, Room.FRAME, false));
        all.add(new ReadingQuestion(Measure.BUST, Room.FRAME, false));
        all.add(new ReadingQuestion(Measure.INTERMAMMARY, Room.FRAME, false));
        all.add(new ReadingQuestion(Measure.INTER_NIPPLE, Room.FRAME, false));
        all.add(side(Measure.STERNAL_NOTCH_TO_NIPPLE, Room.FRAME));
        all.add(side(Measure.NIPPLE_TO_MIDLINE, Room.FRAME));
        all.add(new SideQuestion(Measure.BASE_WIDTH, Room.FRAME, true, (dossier, guide) -> false));
        all.add(side(Measure.BREAST_HEIGHT, Room.FRAME));
        all.add(side(Measure.AREOLA, Room.FRAME));

        all.add(side(Measure.UPPER_PINCH, Room.COVER));
        all.add(side(Measure.FOLD_PINCH, Room.COVER));
        all.add(side(Measure.MEDIAL_PINCH, Room.COVER));
        all.add(side(Measure.LATERAL_PINCH, Room.COVER));
        all.add(side(Measure.SKIN_STRETCH, Room.COVER));
        all.add(side(Measure.PARENCHYMAL_FILL, Room.COVER));

        all.add(side(Measure.NIPPLE_TO_FOLD, Room.FOLD));
        all.add(side(Measure.NIPPLE_TO_FOLD_STRETCHED, Room.FOLD));
        all.add(new PtosisEntry());
        all.add(onlyWhen(Measure.AREOLA_TO_FOLD_STRETCHED, Questions::wantsMuscle));
        all.add(onlyWhen(Measure.VERTICAL_SURFACE, Questions::ptosisIsInDoubt));
        all.add(onlyWhen(Measure.VERTICAL_BASE, Questions::ptosisIsInDoubt));
        all.add(onlyWhen(Measure.UPPER_SPAN, patientCase -> false));

        all.add(new SideQuestion(Measure.BREAST_VOLUME, Room.SIDES, false, (dossier, guide) -> false));
        all.add(onlyWhen(Measure.BREAST_PROJECTION, patientCase -> false));
        all.add(onlyWhen(Measure.MEDIAL_RADIUS, patientCase -> false));
        all.add(onlyWhen(Measure.LATERAL_RADIUS, patientCase -> false));
        all.add(onlyWhen(Measure.INFERIOR_RADIUS, patientCase -> false));

        all.add(SettleQuestions.pins());
        all.add(pocket());
        all.addAll(SettleQuestions.all());
        return List.copyOf(all);
    }

    private static Question side(Measure measure, Room room) {
        return new SideQuestion(measure, room, false, (dossier, guide) -> false);
    }

    private static Question onlyWhen(Measure measure, java.util.function.Predicate<Case> useful) {
        Room room = measure.ordinal() >= Measure.BREAST_PROJECTION.ordinal() ? Room.SIDES : Room.FOLD;
        return new SideQuestion(measure, room, false, (dossier, guide) -> !useful.test(dossier.patientCase()));
    }

    /** Areola to fold sets the dual-plane type, so it is asked where the cover wants muscle. */
    private static boolean wantsMuscle(Case patientCase) {
        for (Side side : Side.values()) {
            OptionalDouble pinchCm = patientCase.side(side).readings().value(Measure.UPPER_PINCH);
            if (pinchCm.isPresent() && pinchCm.getAsDouble() < MUSCLE_PINCH_CM_FOR_ASKING) {
                return true;
            }
        }
        return false;
    }

    /** Only decides whether a further reading is asked for; the plan's own threshold is a constant of the engine. */
    private static final double MUSCLE_PINCH_CM_FOR_ASKING = 2.0;

    private static boolean ptosisIsInDoubt(Case patientCase) {
        for (Side side : Side.values()) {
            Optional<Ptosis> grade = patientCase.side(side).ptosis();
            if (grade.isPresent() && (grade.get() == Ptosis.GRADE_I || grade.get() == Ptosis.GLANDULAR)) {
                return true;
            }
        }
        return false;
    }

    private static Question caseCode() {
        return new TextQuestion("case", Room.WHO, "Case code", "a code, no name", true,
                List.of("A code that your practice can trace; no name, no birth date.",
                        "Enter takes the code offered; its last digit is a check digit."),
                dossier -> Optional.of(dossier.patientCase().code()).filter(code -> !code.isBlank()),
                (dossier, guide) -> Optional.of(guide.offeredCode()).filter(code -> !code.isBlank() && dossier.patientCase().code().isBlank()),
                (typed, dossier, guide) -> {
                    String code = typed.strip();
                    if (!code.matches("[A-Za-z0-9][A-Za-z0-9._-]*") || code.length() > LONGEST_CODE) {
                        throw new Refusal("case-code", "case", "a case code is up to " + LONGEST_CODE
                                + " letters, digits, points and dashes, beginning with a letter or digit");
                    }
                    Case c = dossier.patientCase();
                    return Question.Taken.quietly(dossier.withCase(new Case(code, c.date(), c.readBy(), c.patient(),
                            c.chest(), c.left(), c.right(), c.history(), c.wishes(), c.setting())));
                });
    }

    private static Question upperPole() {
        return new ChoiceQuestion<>("upperPole", Room.WISH, "Upper pole: sloped, even or round",
                guide -> List.of(Wishes.UpperPole.values()), Wishes.UpperPole::key,
                pole -> switch (pole) {
                    case SLOPED -> "a straight or slightly hollow slope above the nipple";
                    case EVEN -> "neither hollow nor full";
                    case ROUND -> "full above the nipple";
                },
                dossier -> dossier.patientCase().wishes().upperPole(),
                (dossier, pole) -> {
                    Wishes w = dossier.patientCase().wishes();
                    return dossier.withCase(dossier.patientCase()
                            .withWishes(new Wishes(Optional.of(pole), w.sizeWishMl(), w.weights())));
                },
                (dossier, guide) -> false);
    }

    private static Question sizeWish() {
        return new TextQuestion("sizeWishMl", Room.WISH, "Size wished", "in mL of implant", false,
                List.of("Her words turned into millilitres of implant, for example after a try-on; `skip` where she has none.",
                        "It orders devices; the tissues limit them."),
                dossier -> dossier.patientCase().wishes().sizeWishMl().isPresent()
                        ? Optional.of(Numbers.ml(dossier.patientCase().wishes().sizeWishMl().getAsDouble()))
                        : Optional.empty(),
                (dossier, guide) -> Optional.empty(),
                (typed, dossier, guide) -> {
                    double ml = one(typed, "mL", "sizeWishMl");
                    if (!(ml >= 1 && ml <= LARGEST_WISH_ML)) {
                        throw new Refusal("size-wish", "sizeWishMl",
                                Numbers.ml(ml) + " is outside 1 to " + Numbers.ml(LARGEST_WISH_ML));
                    }
                    Wishes w = dossier.patientCase().wishes();
                    return Question.Taken.quietly(dossier.withCase(dossier.patientCase()
                            .withWishes(new Wishes(w.upperPole(), OptionalDouble.of(ml), w.weights()))));
                });
    }

    /** One number in that unit. */
    static double one(String typed, String unit, String questionId) {
        List<Typed.Piece> pieces = Typed.pieces(typed, "the answer", questionId, unit);
        if (pieces.size() != 1 || !pieces.get(0).word().isEmpty()) {
            throw new Refusal("one-value", questionId, "one value in " + unit + " is expected");
        }
        return pieces.get(0).value();
    }

    private static Question route() {
        return new ChoiceQuestion<>("route", Room.WISH, "Route: inframammary, periareolar or transaxillary",
                guide -> List.of(Route.values()), Route::key,
                route -> switch (route) {
                    case INFRAMAMMARY -> "in the fold; no limit by volume";
                    case PERIAREOLAR -> "at the lower edge of the areola; its arc limits the opening";
                    case TRANSAXILLARY -> "in the armpit; saline, or smaller gel where a funnel helps";
                },
                dossier -> dossier.patientCase().setting().route(),
                (dossier, route) -> set(dossier, s -> new Setting(s.surveillance(), Optional.of(route), s.funnel(),
                        s.pocket(), s.horizonYears(), s.surfaces())),
                (dossier, guide) -> false);
    }

    private static Question funnel() {
        return new ChoiceQuestion<>("funnel", Room.WISH, "Funnel for gel: yes or no",
                guide -> List.of(true, false), yes -> yes ? "yes" : "no",
                yes -> yes ? "gel passes a shorter opening" : "by hand",
                dossier -> dossier.patientCase().setting().funnel(),
                (dossier, yes) -> set(dossier, s -> new Setting(s.surveillance(), s.route(), Optional.of(yes),
                        s.pocket(), s.horizonYears(), s.surfaces())),
                (dossier, guide) -> guide.catalogue().devices().stream().noneMatch(d -> d.fill() == Fill.GEL));
    }

    private static Question surfaces() {
        return new ChoiceQuestion<>("surfaces", Room.WISH, "Surfaces offered: smooth, textured or both",
                guide -> List.of(Set.of(Surface.SMOOTH), Set.of(Surface.TEXTURED),
                        Set.of(Surface.SMOOTH, Surface.TEXTURED)),
                Questions::surfacesWord, set -> set.size() > 1 ? "every device is listed" : "only devices with that surface are listed",
                dossier -> Optional.of(dossier.patientCase().setting().surfaces()).filter(set -> !set.isEmpty()),
                (dossier, set) -> set(dossier, s -> new Setting(s.surveillance(), s.route(), s.funnel(), s.pocket(),
                        s.horizonYears(), set)),
                (dossier, guide) -> guide.catalogue().devices().stream().map(d -> d.surface()).distinct().count() < 2);
    }

    private static String surfacesWord(Set<Surface> set) {
        return set.size() > 1 ? "both" : set.iterator().next().key();
    }

    private static Question schedule() {
        return new ChoiceQuestion<>("surveillance", Room.WISH, "Imaging schedule",
                guide -> guide.evidence().table("surveillance").rows().stream().toList(),
                row -> row.text("schedule_id"),
                row -> row.text("issuer") + (row.text("version").equals("-") ? "" : ", " + row.text("version")) + ": "
                        + row.text("asymptomatic_rule"),
                dossier -> dossier.patientCase().setting().surveillance().map(Questions::rowOf),
                (dossier, row) -> set(dossier, s -> new Setting(Optional.of(row.text("schedule_id")), s.route(),
                        s.funnel(), s.pocket(), s.horizonYears(), s.surfaces())),
                (dossier, guide) -> false);
    }

    private static Table.Row rowOf(String scheduleId) {
        return new Table.Row(0, List.of("schedule_id"), List.of(scheduleId));
    }

    private static Question horizon() {
        return new TextQuestion("horizonYears", Room.WISH, "Horizon: follow-up counted to year", "a number of years", false,
                List.of("How far exams are counted and curves are drawn, for example 20 years."),
                dossier -> dossier.patientCase().setting().horizonYears().isPresent()
                        ? Optional.of(dossier.patientCase().setting().horizonYears().getAsInt()).map(years -> Numbers.count(years, "year", "years"))
                        : Optional.empty(),
                (dossier, guide) -> Optional.empty(),
                (typed, dossier, guide) -> {
                    double years = one(typed, "years", "horizonYears");
                    if (years != Math.rint(years) || years < 1 || years > LONGEST_HORIZON_YEARS) {
                        throw new Refusal("horizon", "horizonYears",
                                "a whole number of years from 1 to " + LONGEST_HORIZON_YEARS + " is expected");
                    }
                    return Question.Taken.quietly(set(dossier, s -> new Setting(s.surveillance(), s.route(),
                            s.funnel(), s.pocket(), OptionalInt.of((int) years), s.surfaces())));
                });
    }

    private static Question pocket() {
        return new ChoiceQuestion<>("pocket", Room.SETTLE, "Pocket: subglandular, subfascial, dual-plane or submuscular",
                guide -> List.of(Pocket.values()), Pocket::key,
                pocket -> pocket.underMuscle() ? "muscle over the upper device" : "over the muscle",
                dossier -> dossier.patientCase().setting().pocket(),
                (dossier, pocket) -> set(dossier, s -> new Setting(s.surveillance(), s.route(), s.funnel(),
                        Optional.of(pocket), s.horizonYears(), s.surfaces())),
                (dossier, guide) -> false);
    }

    private static Dossier set(Dossier dossier, java.util.function.UnaryOperator<Setting> change) {
        return dossier.withCase(dossier.patientCase().withSetting(change.apply(dossier.patientCase().setting())));
    }
}
