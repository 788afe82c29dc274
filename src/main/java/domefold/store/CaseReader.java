package domefold.store;

import domefold.basics.Lists;
import domefold.device.Surface;
import domefold.outcome.Refusal;
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
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

/** The fields of {@code domefold-case/1}. */
final class CaseReader {
    /** Exceptions to "once, by the case's own method", by field name. */
    static final String TAKES = "takes";
    static final String READ_BY = "readBy";
    static final int LONGEST_CODE = 40;
    static final int MOST_TAKES = 99;
    /** Further ahead than any follow-up published; engineering gate, not published. */
    static final int FURTHEST_HORIZON_YEARS = 80;
    /** Twice the largest device made; engineering gate, not published. */
    static final double LARGEST_WISH_ML = 2000;

    private final boolean whole;

    private CaseReader(boolean whole) {
        this.whole = whole;
    }

    /**
     * The case by its form alone.
     *
     * @param whole whether age and both base widths must be there
     */
    static Case read(Fields fields, boolean whole) {
        return new CaseReader(whole).caseOf(fields);
    }

    /**
     * Refuses a case that was read from these fields and names a schedule there is not.
     *
     * @param schedules known schedule ids, empty accepts any
     */
    static void checkSchedule(Fields fields, Set<String> schedules) {
        fields.object("setting").ifPresent(setting -> known(setting, schedules));
    }

    private Case caseOf(Fields top) {
        FormatLine.require(top, CaseFile.FORMAT, "a case");
        top.only("format", "case", "date", "readBy", "patient", "wishes", "setting", "chest", "left", "right");
        String code = code(top);
        LocalDate date = top.needDate("date");
        ReadBy readBy = top.word("readBy", ReadBy.values(), ReadBy::key).orElse(ReadBy.HAND);
        Fields patient = top.needObject("patient");
        patient.only(patientFields());
        Map<HealthQuestion, Boolean> history = new EnumMap<>(HealthQuestion.class);
        for (HealthQuestion question : HealthQuestion.values()) {
            patient.bool(question.field()).ifPresent(answer -> history.put(question, answer));
        }
        Readings hers = readings(patient, Measure.Of.PATIENT, readBy);
        if (whole && !hers.has(Measure.AGE)) {
            throw patient.refusal("missing-field", Measure.AGE.field(), "is missing; the age is needed, in whole years");
        }
        Readings chest = top.object("chest").map(fields -> {
            fields.only(names(Measure.Of.CHEST));
            return readings(fields, Measure.Of.CHEST, readBy);
        }).orElse(Readings.NONE);
        return new Case(code, date, readBy, hers, chest, breast(top, Side.LEFT, readBy), breast(top, Side.RIGHT, readBy),
                history, top.object("wishes").map(this::wishes).orElse(Wishes.NONE),
                top.object("setting").map(CaseReader::setting).orElse(Setting.OPEN));
    }

    private String code(Fields top) {
        String code = top.needText("case");
        if (code.isBlank() || !code.equals(code.strip()) || !code.equals(Shown.plain(code))
                || code.codePointCount(0, code.length()) > LONGEST_CODE) {
            throw top.refusal("bad-case-code", "case", "is " + Shown.quoted(code) + "; it should be a case code of 1 to "
                    + LONGEST_CODE + " characters without line breaks and without blanks at its ends");
        }
        return code;
    }

    private Breast breast(Fields top, Side side, ReadBy readBy) {
        if (!whole && !top.has(side.key())) {
            return Breast.UNSEEN;
        }
        Fields fields = top.needObject(side.key());
        List<String> known = names(Measure.Of.SIDE);
        known.add("ptosis");
        fields.only(known);
        Readings readings = readings(fields, Measure.Of.SIDE, readBy);
        if (whole && !readings.has(Measure.BASE_WIDTH)) {
            throw fields.refusal("missing-field", Measure.BASE_WIDTH.field(),
                    "is missing; the base width of each side is needed, in cm");
        }
        return new Breast(readings, fields.word("ptosis", Ptosis.values(), Ptosis::key));
    }

    private static List<String> patientFields() {
        List<String> known = names(Measure.Of.PATIENT);
        for (HealthQuestion question : HealthQuestion.values()) {
            known.add(question.field());
        }
        return known;
    }

    private static List<String> names(Measure.Of of) {
        List<String> names = new ArrayList<>();
        for (Measure measure : Measure.values()) {
            if (measure.of() == of) {
                names.add(measure.field());
            }
        }
        names.add(TAKES);
        names.add(READ_BY);
        return names;
    }

    private static Readings readings(Fields fields, Measure.Of of, ReadBy usual) {
        Optional<Fields> takes = fields.object(TAKES);
        Optional<Fields> readBy = fields.object(READ_BY);
        Map<Measure, Reading> readings = new EnumMap<>(Measure.class);
        List<String> read = new ArrayList<>();
        for (Measure measure : Measure.values()) {
            Optional<Json.Num> number = measure.of() != of ? Optional.empty()
                    : fields.number(measure.field(), "a number of " + measure.unit());
            if (number.isEmpty()) {
                continue;
            }
            if (number.get().value() < 0) {
                throw fields.refusal("out-of-range", measure.field(), "is " + number.get().kind()
                        + "; it should be a number of " + measure.unit() + " that is not below 0");
            }
            read.add(measure.field());
            int times = takes.isEmpty() ? 1 : takes.get().integer(measure.field(), 1, MOST_TAKES).orElse(1);
            ReadBy by = readBy.flatMap(how -> how.word(measure.field(), ReadBy.values(), ReadBy::key)).orElse(usual);
            readings.put(measure, new Reading(number.get().value(), number.get().typed(), by, times));
        }
        takes.ifPresent(exceptions -> exceptions.only(read));
        readBy.ifPresent(exceptions -> exceptions.only(read));
        return new Readings(readings);
    }

    private Wishes wishes(Fields fields) {
        fields.only("upperPole", "sizeWishMl", "weights");
        OptionalDouble size = fields.number("sizeWishMl");
        if (size.isPresent() && !(size.getAsDouble() > 0 && size.getAsDouble() <= LARGEST_WISH_ML)) {
            throw fields.refusal("out-of-range", "sizeWishMl", "is not a volume of a device; it should be a number of mL above 0 and"
                    + " not above " + (int) LARGEST_WISH_ML);
        }
        Map<Wishes.Matter, Integer> weights = new EnumMap<>(Wishes.Matter.class);
        fields.object("weights").ifPresent(inside -> {
            inside.only(Lists.map(List.of(Wishes.Matter.values()), Wishes.Matter::field));
            for (Wishes.Matter matter : Wishes.Matter.values()) {
                inside.integer(matter.field(), 0, Wishes.HIGHEST_WEIGHT).ifPresent(weight -> weights.put(matter, weight));
            }
        });
        return new Wishes(fields.word("upperPole", Wishes.UpperPole.values(), Wishes.UpperPole::key), size, weights);
    }

    /** The setting alone, as it stands in a case and among the defaults of the settings. */
    static Setting setting(Fields fields, Set<String> schedules) {
        Setting read = setting(fields);
        known(fields, schedules);
        return read;
    }

    private static Setting setting(Fields fields) {
        fields.only("surveillance", "route", "funnel", "pocket", "horizonYears", "surfaces");
        return new Setting(fields.text("surveillance"), fields.word("route", Route.values(), Route::key), fields.bool("funnel"),
                fields.word("pocket", Pocket.values(), Pocket::key),
                fields.integer("horizonYears", 1, FURTHEST_HORIZON_YEARS),
                new LinkedHashSet<>(fields.words("surfaces", Surface.values(), Surface::key)));
    }

    private static void known(Fields setting, Set<String> schedules) {
        Optional<String> id = setting.text("surveillance");
        if (id.isPresent() && !schedules.isEmpty() && !schedules.contains(id.get())) {
            throw setting.refusal("unknown-schedule", "surveillance", "is " + Shown.quoted(id.get()) + ", which is no imaging schedule"
                    + " here; " + NearestName.of(id.get(), schedules).map(near -> "the nearest one is \"" + near + "\"")
                            .orElse("there are " + String.join(", ", schedules)));
        }
    }
}
