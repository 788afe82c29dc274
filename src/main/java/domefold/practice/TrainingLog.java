package domefold.practice;

import domefold.outcome.Figures;
import java.util.Locale;

/**
 * Progress as comma-separated text (RFC 4180: CR LF). Every cell is a code, a number or a date, so none needs quotes. Its
 * first column says of every line that it is practice.
 */
public final class TrainingLog {
    private static final String HEADER = "kind,date,case,level,decision,side,warning,standing,weight,credit";
    private static final String END = "\r\n";
    private static final int DECIMALS = 2;

    private TrainingLog() {}

    public static String csv(Progress progress) {
        StringBuilder text = new StringBuilder(HEADER).append(END);
        for (Progress.Entry entry : progress.entries()) {
            for (Progress.Line line : entry.lines()) {
                text.append("practice,").append(entry.date()).append(',').append(entry.number()).append(',')
                        .append(entry.level()).append(',').append(code(line.decision())).append(',')
                        .append(line.side().map(side -> side.key()).orElse("")).append(',')
                        .append(line.code().orElse("")).append(',').append(code(line.standing())).append(',')
                        .append(Figures.of(line.weight(), 0, DECIMALS)).append(',')
                        .append(Figures.of(line.credit(), 0, DECIMALS)).append(END);
            }
        }
        return text.toString();
    }

    private static String code(Enum<?> value) {
        return value.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
