package domefold.app;

import domefold.device.Fill;
import domefold.followup.schedule.ScheduleAnswer;
import domefold.followup.schedule.Schedules;
import domefold.report.ScheduleText;
import domefold.store.AnswerJson;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.stream.Stream;
import picocli.CommandLine.Command;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.TypeConversionException;

@Command(name = "schedule", description = {"The exam dates that an imaging schedule asks for, earliest and latest.", ""},
        footer = {"", "Example: domefold schedule US-2020 --fill gel --from 2026-03-04 --years 20"})
final class ScheduleCommand implements Runner {
    private static final int MOST_YEARS = 100;
    private final Domefold root;

    @Parameters(paramLabel = "ID", description = "The schedule, for example US-2020.")
    private String id;

    @Option(names = "--fill", paramLabel = "saline|gel", required = true, converter = FillConverter.class,
            completionCandidates = FillWords.class, description = "What fills the device.")
    private Fill fill;

    @Option(names = "--from", paramLabel = "DATE", required = true, converter = DateConverter.class,
            description = "The day of the operation, as 2026-03-04.")
    private LocalDate from;

    @Option(names = "--years", paramLabel = "N", required = true, converter = YearsConverter.class,
            description = "How many years to look ahead.")
    private int years;

    @Mixin
    private As as;

    ScheduleCommand(Domefold root) {
        this.root = root;
    }

    @Override
    public int run() throws Exception {
        ScheduleAnswer answer = ScheduleAnswer.of(Schedules.of(root.evidence()), id, fill, from, years);
        if (as.json()) {
            root.console().json(AnswerJson.text(json(answer)));
        } else {
            root.console().text(ScheduleText.of(answer, fill, from, years));
        }
        return Exit.DONE;
    }

    private static Map<String, Object> json(ScheduleAnswer answer) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("format", "domefold-schedule/1");
        json.put("id", answer.id());
        json.put("source", answer.source());
        json.put("status", answer.status().code());
        json.put("superseded", answer.superseded());
        json.put("densest", answer.densest());
        json.put("sparsest", answer.sparsest());
        json.put("text", answer.text());
        json.put("symptom", answer.symptom());
        json.put("dateRule", answer.dateRule());
        return json;
    }

    /** What the completion script offers. */
    static final class FillWords implements Iterable<String> {
        @Override
        public Iterator<String> iterator() {
            return Stream.of(Fill.values()).map(Fill::key).iterator();
        }
    }

    static final class FillConverter implements ITypeConverter<Fill> {
        @Override
        public Fill convert(String typed) {
            for (Fill fill : Fill.values()) {
                if (fill.key().equals(typed)) {
                    return fill;
                }
            }
            throw new TypeConversionException("'" + typed + "' is not known; write saline or gel");
        }
    }

    static final class YearsConverter extends WholeConverter {
        YearsConverter() {
            super(1, MOST_YEARS);
        }
    }

    static final class DateConverter implements ITypeConverter<LocalDate> {
        @Override
        public LocalDate convert(String typed) {
            try {
                return LocalDate.parse(typed);
            } catch (DateTimeParseException wrong) {
                throw new TypeConversionException("'" + typed + "' is no date; write year, month and day as 2026-03-04");
            }
        }
    }
}
