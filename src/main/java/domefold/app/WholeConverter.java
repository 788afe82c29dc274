package domefold.app;

import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** A whole number as people type it; each option says from where to where. */
abstract class WholeConverter implements ITypeConverter<Integer> {
    private final int lowest;
    private final int highest;

    /** Neither may be below 0. */
    WholeConverter(int lowest, int highest) {
        this.lowest = lowest;
        this.highest = highest;
    }

    @Override
    public Integer convert(String typed) {
        // Ten digits hold the largest int and are far from filling a long.
        long number = typed.matches("[0-9]{1,10}") ? Long.parseLong(typed) : -1;
        if (number < lowest || number > highest) {
            throw new TypeConversionException("'" + typed + "' is not taken; write a whole number from " + lowest + " to "
                    + highest);
        }
        return (int) number;
    }
}
