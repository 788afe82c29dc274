package domefold.store;

import domefold.patient.Breast;
import domefold.patient.Case;
import domefold.patient.HealthQuestion;
import domefold.patient.Measure;
import domefold.patient.Pocket;
import domefold.patient.Ptosis;
import domefold.patient.ReadBy;
import domefold.patient.Reading;
import domefold.patient.Readings;
import domefold.patient.Route;
import domefold.patient.Setting;
import domefold.patient.Side;
import domefold.patient.Wishes;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;

/** A case as {@code domefold-case/1}. What was not taken is left out. */
final class CaseWriter {
    private static final String JSON_NUMBER = "-?(0|[1-9][0-9]*)(\\.[0-9]+)?([eE][-+]?[0-9]+)?";

    private final JsonOut out;
    private final ReadBy usual;

    private CaseWriter(JsonOut out, ReadBy usual) {
        this.out = out;
        this.usual = usual;
    }

    /** Its fields, inside an object that is open. */
    static void fields(JsonOut out, Case written) {
        new CaseWriter(out, written.readBy()).fields(written);
    }

    private void fields(Case written) {
        out.text("format", CaseFile.FORMAT).text("case", written.code()).text("date", written.date().toString())
                .text("readBy", written.readBy().key());
        out.object("patient", () -> {
            readings(written.patient());
            for (HealthQuestion question : HealthQuestion.values()) {
                Boolean answer = written.history().get(question);
                if (answer != null) {
                    out.bool(question.field(), answer);
                }
            }
        });
        out.object("wishes", () -> wishes(written.wishes()));
        out.object("setting", () -> setting(out, written.setting()));
        out.object("chest", () -> readings(written.chest()));
        for (Side side : Side.values()) {
            out.object(side.key(), () -> breast(written.side(side)));
        }
    }

    private void breast(Breast breast) {
        readings(breast.readings());
        out.text("ptosis", breast.ptosis().map(Ptosis::key));
    }

    private void readings(Readings readings) {
        readings.byMeasure().forEach((measure, reading) -> out.raw(measure.field(), number(reading)));
        exceptions(readings, CaseReader.TAKES, reading -> reading.takes() != 1,
                (measure, reading) -> out.number(measure.field(), reading.takes()));
        exceptions(readings, CaseReader.READ_BY, reading -> reading.readBy() != usual,
                (measure, reading) -> out.text(measure.field(), reading.readBy().key()));
    }

    private void exceptions(Readings readings, String name, Predicate<Reading> which,
            java.util.function.BiConsumer<Measure, Reading> writer) {
        List<Map.Entry<Measure, Reading>> found =
                readings.byMeasure().entrySet().stream().filter(entry -> which.test(entry.getValue())).toList();
        if (!found.isEmpty()) {
            out.object(name, () -> found.forEach(entry -> writer.accept(entry.getKey(), entry.getValue())));
        }
    }

    /** As typed where that is a JSON number of the same value (12.50 stays 12.50), else the value. */
    private static String number(Reading reading) {
        String typed = reading.typed();
        return typed.matches(JSON_NUMBER) && Double.parseDouble(typed) == reading.value() ? typed
                : JsonOut.digits(reading.value());
    }

    private void wishes(Wishes wishes) {
        out.text("upperPole", wishes.upperPole().map(Wishes.UpperPole::key));
        out.number("sizeWishMl", wishes.sizeWishMl());
        if (!wishes.weights().isEmpty()) {
            out.object("weights", () -> wishes.weights().forEach((matter, weight) -> out.number(matter.field(), weight)));
        }
    }

    static void setting(JsonOut out, Setting setting) {
        out.text("surveillance", setting.surveillance()).text("route", setting.route().map(Route::key));
        setting.funnel().ifPresent(funnel -> out.bool("funnel", funnel));
        out.text("pocket", setting.pocket().map(Pocket::key));
        setting.horizonYears().ifPresent(years -> out.number("horizonYears", years));
        if (!setting.surfaces().isEmpty()) {
            out.texts("surfaces", setting.surfaces().stream().sorted().map(domefold.device.Surface::key).toList());
        }
    }
}
