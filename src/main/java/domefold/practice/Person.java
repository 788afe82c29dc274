package domefold.practice;

import domefold.patient.Breast;
import domefold.patient.Case;
import domefold.patient.HealthQuestion;
import domefold.patient.Measure;
import domefold.patient.ReadBy;
import domefold.patient.Reading;
import domefold.patient.Readings;
import domefold.patient.Setting;
import domefold.patient.Side;
import domefold.patient.Wishes;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;

/** A drawn woman before she has a number: what would be read, asked and seen. */
record Person(
        Readings patient,
        Readings chest,
        Breast left,
        Breast right,
        Map<HealthQuestion, Boolean> history,
        Wishes wishes,
        List<Sighting> sightings) {
    /** Practice has no calendar: every invented consult bears this day. */
    private static final LocalDate DAY = LocalDate.of(2026, 1, 5);

    Breast side(Side side) {
        return side == Side.LEFT ? left : right;
    }

    /** A reading of one side, which every drawn woman has. */
    double value(Side side, Measure measure) {
        return side(side).readings().value(measure).orElseThrow();
    }

    double value(Measure measure) {
        return (measure.of() == Measure.Of.PATIENT ? patient : chest).value(measure).orElseThrow();
    }

    /** Left less right. */
    double difference(Measure measure) {
        return value(Side.LEFT, measure) - value(Side.RIGHT, measure);
    }

    double mean(Measure measure) {
        return (value(Side.LEFT, measure) + value(Side.RIGHT, measure)) / 2;
    }

    Person withPatient(Measure measure, Reading reading) {
        return new Person(patient.with(measure, reading), chest, left, right, history, wishes, sightings);
    }

    Person with(Side side, Measure measure, Reading reading) {
        return with(side, new Breast(side(side).readings().with(measure, reading), side(side).ptosis()));
    }

    Person with(Side side, Breast changed) {
        return new Person(patient, chest, side == Side.LEFT ? changed : left, side == Side.RIGHT ? changed : right,
                history, wishes, sightings);
    }

    Person with(Map<HealthQuestion, Boolean> changed) {
        return new Person(patient, chest, left, right, changed, wishes, sightings);
    }

    Person with(Wishes changed) {
        return new Person(patient, chest, left, right, history, changed, sightings);
    }

    Person with(List<Sighting> changed) {
        return new Person(patient, chest, left, right, history, wishes, changed);
    }

    Case toCase(String code) {
        return new Case(code, DAY, ReadBy.HAND, patient, chest, left, right, history, wishes, Setting.OPEN);
    }
}
