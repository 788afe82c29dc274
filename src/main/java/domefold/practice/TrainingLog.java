package domefold.practice;

import domefold.evidence.Table;
import domefold.outcome.Figures;
import domefold.outcome.Refusal;
import domefold.patient.Side;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * Progress as comma-separated text (RFC 4180: CR LF), and back. Every cell is a code, a number or a date, so none needs
 * quotes. The first column says of every line that it is practice; {@code session} counts the marked cases.
 */
public final class TrainingLog {
    private static final String HEADER = "kind,session,date,case,level,decision,side,warning,standing,weight,credit";
    private static final String KIND = "practice";
    private static final String END = "\r\n";
    private static final int DECIMALS = 6;

    private TrainingLog() {}

    public static String csv(Progress progress) {
        StringBuilder text = new StringBuilder(HEADER).append(END);
        int session = 0;
        for (Progress.Entry entry : progress.entries()) {
            session++;
            for (Progress.Line line : entry.lines()) {
                text.append(KIND).append(',').append(session).append(',').append(entry.date()).append(',')
                        .append(entry.number()).append(',').append(entry.level()).append(',')
                        .append(code(line.decision())).append(',')
                        .append(line.side().map(Side::key).orElse("")).append(',')
                        .append(line.code().orElse("")).append(',').append(code(line.standing())).append(',')
                        .append(Figures.of(line.weight(), 0, DECIMALS)).append(',')
                        .append(Figures.of(line.credit(), 0, DECIMALS)).append(END);
            }
        }
        return text.toString();
    }

    /**
     * The progress that such a table holds.
     *
     * @throws Refusal naming the line that is not one of a training log
     */
    public static Progress read(Table table) {
        if (!String.join(",", table.columns()).equals(HEADER)) {
            throw new Refusal("training-log", table.name(), table.name() + " is no training log: its header must be "
                    + HEADER);
        }
        Map<Integer, Progress.Entry> sessions = new TreeMap<>();
        for (Table.Row row : table.rows()) {
            try {
                add(sessions, row);
            } catch (IllegalArgumentException | DateTimeParseException wrong) {
                throw new Refusal("training-log", table.name() + " line " + row.line(), table.name() + " line "
                        + row.line() + " is not a line of a training log");
            }
        }
        return new Progress(List.copyOf(sessions.values()));
    }

    private static void add(Map<Integer, Progress.Entry> sessions, Table.Row row) {
        if (!row.text("kind").equals(KIND)) {
            throw new IllegalArgumentException(row.text("kind"));
        }
        Progress.Entry told = new Progress.Entry(LocalDate.parse(row.text("date")), Integer.parseInt(row.text("case")),
                Integer.parseInt(row.text("level")), List.of(line(row)));
        sessions.merge(Integer.valueOf(row.text("session")), told, TrainingLog::joined);
    }

    private static Progress.Entry joined(Progress.Entry one, Progress.Entry next) {
        if (!one.date().equals(next.date()) || one.number() != next.number() || one.level() != next.level()) {
            throw new IllegalArgumentException("two cases in one session");
        }
        List<Progress.Line> lines = new ArrayList<>(one.lines());
        lines.addAll(next.lines());
        return new Progress.Entry(one.date(), one.number(), one.level(), lines);
    }

    private static Progress.Line line(Table.Row row) {
        String side = row.text("side");
        String warning = row.text("warning");
        double weight = Double.parseDouble(row.text("weight"));
        double credit = Double.parseDouble(row.text("credit"));
        if (!(weight >= 0 && Double.isFinite(weight) && credit >= 0 && credit <= 1)) {
            throw new IllegalArgumentException("a weight from 0 and a credit from 0 to 1");
        }
        return new Progress.Line(Decision.valueOf(name(row.text("decision"))),
                side.isEmpty() ? Optional.empty() : Optional.of(Side.valueOf(name(side))),
                warning.isEmpty() ? Optional.empty() : Optional.of(warning),
                Standing.valueOf(name(row.text("standing"))), weight, credit);
    }

    private static String code(Enum<?> value) {
        return value.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    private static String name(String code) {
        return code.toUpperCase(Locale.ROOT).replace('-', '_');
    }
}
