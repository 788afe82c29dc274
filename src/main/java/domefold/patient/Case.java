package domefold.patient;

import java.time.LocalDate;
import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;

/**
 * One case: everything that was asked and answered, nothing that was computed. The file format is
 * {@code domefold-case/1}, see {@code shared/schema}.
 *
 * @param code the case code; no name needed
 * @param date the day of the consult
 * @param readBy how the readings were taken unless a reading says otherwise
 * @param patient readings of the whole patient (age, height, weight, perimeters)
 * @param chest readings across both sides
 * @param left her left side
 * @param right her right side
 * @param history health questions answered; absent means "not asked"
 * @param wishes what she wishes
 * @param setting what the surgeon has chosen
 */
public record Case(
        String code,
        LocalDate date,
        ReadBy readBy,
        Readings patient,
        Readings chest,
        Breast left,
        Breast right,
        Map<HealthQuestion, Boolean> history,
        Wishes wishes,
        Setting setting) {

    public Case {
        Map<HealthQuestion, Boolean> copy = new EnumMap<>(HealthQuestion.class);
        copy.putAll(history);
        history = Collections.unmodifiableMap(copy);
    }

    /** A case with nothing taken yet. */
    public static Case empty(String code, LocalDate date) {
        return new Case(code, date, ReadBy.HAND, Readings.NONE, Readings.NONE, Breast.UNSEEN, Breast.UNSEEN, Map.of(),
                Wishes.NONE, Setting.OPEN);
    }

    public Breast side(Side side) {
        return side == Side.LEFT ? left : right;
    }

    /** The readings that a measure belongs to; {@code side} counts only for measures of a side. */
    public Readings readings(Measure measure, Side side) {
        return switch (measure.of()) {
            case PATIENT -> patient;
            case CHEST -> chest;
            case SIDE -> side(side).readings();
        };
    }

    public Case withPatient(Readings changed) {
        return new Case(code, date, readBy, changed, chest, left, right, history, wishes, setting);
    }

    public Case withChest(Readings changed) {
        return new Case(code, date, readBy, patient, changed, left, right, history, wishes, setting);
    }

    public Case withSide(Side side, Breast changed) {
        return new Case(code, date, readBy, patient, chest, side == Side.LEFT ? changed : left,
                side == Side.RIGHT ? changed : right, history, wishes, setting);
    }

    public Case withHistory(Map<HealthQuestion, Boolean> changed) {
        return new Case(code, date, readBy, patient, chest, left, right, changed, wishes, setting);
    }

    public Case withWishes(Wishes changed) {
        return new Case(code, date, readBy, patient, chest, left, right, history, changed, setting);
    }

    public Case withSetting(Setting changed) {
        return new Case(code, date, readBy, patient, chest, left, right, history, wishes, changed);
    }

    /** The same patient with left and right exchanged: whatever is planned must exchange with them. */
    public Case mirrored() {
        return new Case(code, date, readBy, patient, chest, right, left, history, wishes, setting);
    }
}
