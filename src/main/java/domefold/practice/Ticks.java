package domefold.practice;

import domefold.patient.ReadBy;
import domefold.patient.Reading;

/** Readings on the grid of the instrument, so that a tenth is a tenth and a difference is what it was drawn as. */
final class Ticks {
    private Ticks() {}

    /** The reading nearest to {@code value} on a grid of tenths. */
    static Reading tenths(double value) {
        return ofTenths(Math.round(value * 10));
    }

    static Reading ofTenths(long tenths) {
        return hand(tenths / 10.0);
    }

    /** The reading nearest to {@code value} on a grid of {@code step} whole units. */
    static Reading whole(double value, int step) {
        return hand(Math.round(value / step) * (double) step);
    }

    static Reading hand(double value) {
        return new Reading(value, typed(value), ReadBy.HAND, 1);
    }

    /** As a person would write it: no decimals where there are none. */
    static String typed(double value) {
        return value == Math.rint(value) ? Long.toString((long) value) : Double.toString(value);
    }
}
