package domefold.device;

import domefold.basics.Digits;
import domefold.basics.Lists;
import domefold.evidence.Constants;
import domefold.outcome.Band;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;

/** One line of a device list: its words, its numbers, its units and its geometry. */
final class RowCheck {
    private static final int MOST_DIGITS = 9;

    private final CatalogueSheet sheet;
    private final CatalogueSheet.Line line;
    private final Constants constants;
    private final List<CatalogueFinding> findings = new ArrayList<>();

    private RowCheck(CatalogueSheet sheet, CatalogueSheet.Line line, Constants constants) {
        this.sheet = sheet;
        this.line = line;
        this.constants = constants;
    }

    /** What a line gave: its device unless there is a fault, and the findings. */
    record Row(Optional<Device> device, List<CatalogueFinding> findings) {}

    static Row of(CatalogueSheet sheet, CatalogueSheet.Line line, Constants constants) {
        RowCheck check = new RowCheck(sheet, line, constants);
        Optional<Device> device = check.device();
        boolean faulty = Lists.any(check.findings, CatalogueFinding::isFault);
        return new Row(faulty ? Optional.empty() : device, List.copyOf(check.findings));
    }

    private Optional<Device> device() {
        if (line.cells().size() != sheet.header().cells().size()) {
            fault("cell-count", "has " + line.cells().size() + " cells where the header has "
                    + sheet.header().cells().size() + "; give one cell a column, empty where there is no value");
            return Optional.empty();
        }
        Optional<Fill> fill = word("fill", Fill.values(), Fill::key);
        Optional<Surface> surface = word("surface", Surface.values(), Surface::key);
        Optional<Profile> profile = word("profile", Profile.values(), Profile::key);
        String reference = cell("reference");
        if (reference.isEmpty()) {
            fault("no-reference", "has no reference; give the office's own order code");
        }
        OptionalDouble nominalMl = volume();
        OptionalDouble widthCm = length("width_cm", "LIST-WIDTH-LEAST", "LIST-WIDTH-MOST");
        OptionalDouble heightCm = length("height_cm", "LIST-WIDTH-LEAST", "LIST-WIDTH-MOST");
        OptionalDouble projectionCm = length("projection_cm", "LIST-PROJECTION-LEAST", "LIST-PROJECTION-MOST");
        Optional<Band> labelFillMl = fill.isPresent() && nominalMl.isPresent()
                ? labelFill(fill.get(), nominalMl.getAsDouble()) : Optional.empty();
        if (nominalMl.isEmpty() || widthCm.isEmpty() || heightCm.isEmpty() || projectionCm.isEmpty()) {
            return Optional.empty();
        }
        geometry(nominalMl.getAsDouble(), widthCm.getAsDouble(), heightCm.getAsDouble(), projectionCm.getAsDouble());
        if (fill.isEmpty() || surface.isEmpty() || profile.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(new Device(reference, cell("line"), fill.get(), surface.get(), profile.get(),
                nominalMl.getAsDouble(), labelFillMl, widthCm.getAsDouble(), heightCm.getAsDouble(),
                projectionCm.getAsDouble()));
    }

    private <T> Optional<T> word(String column, T[] values, Function<T, String> key) {
        String cell = cell(column);
        List<String> allowed = new ArrayList<>();
        for (T value : values) {
            if (key.apply(value).equals(cell)) {
                return Optional.of(value);
            }
            allowed.add(key.apply(value));
        }
        fault("unknown-" + column, (cell.isEmpty() ? "has no " + column : column + " is '" + cell + "'") + "; write "
                + String.join(", ", allowed.subList(0, allowed.size() - 1)) + " or " + allowed.get(allowed.size() - 1));
        return Optional.empty();
    }

    private OptionalDouble volume() {
        OptionalDouble ml = number("nominal_ml");
        if (ml.isPresent() && (ml.getAsDouble() < constants.value("LIST-VOLUME-LEAST")
                || ml.getAsDouble() > constants.value("LIST-VOLUME-MOST"))) {
            query("volume-unusual", "nominal_ml is " + DeviceText.ml(ml.getAsDouble()) + ", outside "
                    + DeviceText.ml(constants.value("LIST-VOLUME-LEAST")) + " to "
                    + DeviceText.ml(constants.value("LIST-VOLUME-MOST")) + "; check the number and its unit, mL");
        }
        return ml;
    }

    private OptionalDouble length(String column, String least, String most) {
        OptionalDouble found = number(column);
        if (found.isEmpty()) {
            return found;
        }
        double lengthCm = found.getAsDouble();
        if (lengthCm > constants.value(most)) {
            fault("unit-length", column + " is " + DeviceText.number(lengthCm) + ", more than "
                    + DeviceText.number(constants.value(most)) + " cm; if it is in millimetres, write "
                    + DeviceText.number(lengthCm / 10));
            return OptionalDouble.empty();
        }
        if (lengthCm < constants.value(least)) {
            query("length-unusual", column + " is " + DeviceText.number(lengthCm) + " cm, less than "
                    + DeviceText.number(constants.value(least)) + " cm; check the number and its unit, cm");
        }
        return found;
    }

    private Optional<Band> labelFill(Fill fill, double nominalMl) {
        boolean given = !cell("fill_min_ml").isEmpty() || !cell("fill_max_ml").isEmpty();
        if (fill == Fill.GEL) {
            if (given) {
                fault("gel-with-fill-range", "a gel device has no fill range; leave fill_min_ml and fill_max_ml empty");
            }
            return Optional.empty();
        }
        if (cell("fill_min_ml").isEmpty() || cell("fill_max_ml").isEmpty()) {
            fault("saline-without-fill-range", "a saline device needs fill_min_ml and fill_max_ml; take them from its label");
            return Optional.empty();
        }
        OptionalDouble low = number("fill_min_ml");
        OptionalDouble high = number("fill_max_ml");
        if (low.isEmpty() || high.isEmpty()) {
            return Optional.empty();
        }
        if (low.getAsDouble() > high.getAsDouble()) {
            fault("fill-range-reversed", "fill_min_ml " + DeviceText.ml(low.getAsDouble()) + " is more than fill_max_ml "
                    + DeviceText.ml(high.getAsDouble()));
            return Optional.empty();
        }
        Band band = new Band(low.getAsDouble(), high.getAsDouble());
        if (!band.includes(nominalMl)) {
            fault("fill-range-without-nominal", "the fill range " + DeviceText.ml(band.low()) + " to "
                    + DeviceText.ml(band.high()) + " leaves out the nominal " + DeviceText.ml(nominalMl));
        }
        return Optional.of(band);
    }

    private void geometry(double volumeMl, double widthCm, double heightCm, double projectionCm) {
        DomeBounds bounds = DomeBounds.of(widthCm, heightCm, projectionCm);
        if (volumeMl > bounds.cylinderMl()) {
            fault("geometry-above-cylinder", DeviceText.ml(volumeMl) + " cannot be held by " + shape(widthCm, heightCm, projectionCm) + ": a cylinder of"
                    + " that size holds " + DeviceText.ml(bounds.cylinderMl()) + "; check volume, width and projection");
        } else if (volumeMl < bounds.coneMl()) {
            fault("geometry-below-cone", DeviceText.ml(volumeMl) + " is too little for " + shape(widthCm, heightCm, projectionCm) + ": a cone of that size"
                    + " holds " + DeviceText.ml(bounds.coneMl()) + "; check volume, width and projection");
        } else {
            double ratio = volumeMl / (widthCm * heightCm * projectionCm);
            if (ratio < constants.value("LIST-RATIO-LOW") || ratio > constants.value("LIST-RATIO-HIGH")) {
                query("form-factor", "volume over width, height and projection is " + DeviceText.ratio(ratio)
                        + ", outside " + DeviceText.ratio(constants.value("LIST-RATIO-LOW")) + " to "
                        + DeviceText.ratio(constants.value("LIST-RATIO-HIGH")) + "; " + shape(widthCm, heightCm, projectionCm) + " usually holds about "
                        + DeviceText.ml(bounds.ellipsoidMl()));
            } else if (bounds.capMl().isPresent() && volumeMl < bounds.capMl().getAsDouble()) {
                query("below-cap", DeviceText.ml(volumeMl) + " is less than the spherical cap of " + shape(widthCm, heightCm, projectionCm) + ", "
                        + DeviceText.ml(bounds.capMl().getAsDouble()) + "; check volume, width and projection");
            }
        }
    }

    private static String shape(double widthCm, double heightCm, double projectionCm) {
        return DeviceText.number(widthCm) + " x " + DeviceText.number(heightCm) + " cm with projection "
                + DeviceText.number(projectionCm) + " cm";
    }

    private OptionalDouble number(String column) {
        String cell = cell(column);
        if (isSize(cell)) {
            return OptionalDouble.of(Double.parseDouble(cell));
        }
        String comma = cell.replace(',', '.');
        fault("bad-number", cell.isEmpty() ? "has no " + column + "; write a number"
                : column + " is '" + cell + "', which is no number above 0; write "
                        + (isSize(comma) ? comma : "digits with a point, without a unit"));
        return OptionalDouble.empty();
    }

    private static boolean isSize(String cell) {
        return Digits.isDecimal(cell, MOST_DIGITS) && Double.parseDouble(cell) > 0;
    }

    private String cell(String column) {
        return sheet.cell(line, column);
    }

    private void fault(String code, String text) {
        findings.add(CatalogueFinding.fault(line.number(), code, sentence(text)));
    }

    private void query(String code, String text) {
        findings.add(CatalogueFinding.query(line.number(), code, sentence(text)));
    }

    private String sentence(String text) {
        String reference = cell("reference");
        return String.format(Locale.ROOT, "line %d%s: %s", line.number(), reference.isEmpty() ? "" : " (" + reference + ")",
                text);
    }
}
