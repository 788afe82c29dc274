package domefold.app;

import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** A number as people type it: a point or a comma, no unit. */
final class DecimalConverter implements ITypeConverter<Double> {
    @Override
    public Double convert(String typed) {
        if (!typed.matches("-?[0-9]{1,12}([.,][0-9]{1,40})?")) {
            throw new TypeConversionException("'" + typed + "' is no number; write digits with a point, as 12.5, without a unit");
        }
        return Double.valueOf(typed.replace(',', '.'));
    }
}
