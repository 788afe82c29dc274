package domefold.followup.survival;

import domefold.evidence.Table;
import domefold.outcome.Band;
import domefold.outcome.Refusal;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

/** Follow-up as a table: {@code lower,upper} for individual times or {@code year,percent[,lo,hi]} for published shares. */
public final class SurvivalTable {
    private static final Set<String> TIMES = Set.of("lower", "upper");
    private static final Set<String> POINTS = Set.of("year", "percent", "lo", "hi");

    private SurvivalTable() {}

    /**
     * The fit to a table.
     *
     * @throws Refusal naming the line and what would be right
     */
    public static SurvivalAnswer answer(Table table) {
        Set<String> columns = new HashSet<>(table.columns());
        if (columns.equals(TIMES) && table.columns().size() == TIMES.size()) {
            return SurvivalAnswer.ofTimes(table.rows().stream().map(SurvivalTable::lifetime).toList());
        }
        boolean points = columns.containsAll(Set.of("year", "percent")) && POINTS.containsAll(columns)
                && columns.contains("lo") == columns.contains("hi") && table.columns().size() == columns.size();
        if (!points) {
            throw new Refusal("survival-columns", "line 1", "the columns are " + String.join(",", table.columns())
                    + "; right would be lower,upper or year,percent or year,percent,lo,hi and no other, since a further column "
                    + "may mean groups that must not be fitted together");
        }
        return SurvivalAnswer.ofPoints(points(table, columns.contains("lo")));
    }

    private static Lifetime lifetime(Table.Row row) {
        double lower = number(row, "lower").orElseThrow(() -> refused(row, "lower is empty; 0 means before the first look"));
        double upper = number(row, "upper").orElse(Double.POSITIVE_INFINITY);
        if (!(lower >= 0 && lower <= upper && upper > 0 && Double.isFinite(lower))) {
            throw refused(row, "right would be 0 <= lower <= upper, upper above 0");
        }
        if (lower == 0 && Double.isInfinite(upper)) {
            throw refused(row, "lower 0 with an empty upper was never looked at and says nothing");
        }
        return new Lifetime(lower, upper);
    }

    private static List<PointFit.Point> points(Table table, boolean intervals) {
        List<PointFit.Point> points = new ArrayList<>();
        double lastYear = 0;
        double lastPercent = 0;
        for (Table.Row row : table.rows()) {
            double year = number(row, "year").orElseThrow(() -> refused(row, "year is empty"));
            double percent = number(row, "percent").orElseThrow(() -> refused(row, "percent is empty"));
            if (!(percent > 0 && percent < 100)) {
                throw refused(row, "percent lies strictly between 0 and 100");
            }
            if (!(year > lastYear && percent >= lastPercent) || Double.isInfinite(year)) {
                throw refused(row, "years rise from line to line from above 0, and the share that has failed never falls");
            }
            points.add(new PointFit.Point(year, percent / 100, intervals ? interval(row, percent) : Optional.empty()));
            lastYear = year;
            lastPercent = percent;
        }
        if (points.size() < 2) {
            throw new Refusal("survival-rows", table.name(), "a curve needs points at two different years");
        }
        return points;
    }

    private static Optional<Band> interval(Table.Row row, double percent) {
        OptionalDouble lo = number(row, "lo");
        OptionalDouble hi = number(row, "hi");
        if (lo.isEmpty() && hi.isEmpty()) {
            return Optional.empty();
        }
        if (lo.isEmpty() || hi.isEmpty() || !(lo.getAsDouble() > 0 && lo.getAsDouble() < percent
                && percent < hi.getAsDouble() && hi.getAsDouble() < 100)) {
            throw refused(row, "an interval has both ends, 0 < lo < percent < hi < 100");
        }
        return Optional.of(new Band(lo.getAsDouble() / 100, hi.getAsDouble() / 100));
    }

    private static OptionalDouble number(Table.Row row, String column) {
        try {
            OptionalDouble value = row.number(column);
            if (value.isPresent() && Double.isNaN(value.getAsDouble())) {
                throw refused(row, column + " is not a number");
            }
            return value;
        } catch (NumberFormatException failure) {
            throw refused(row, column + " is '" + row.text(column) + "', which is not a number");
        }
    }

    private static Refusal refused(Table.Row row, String text) {
        return new Refusal("survival-row", "line " + row.line(), "line " + row.line() + ": " + text);
    }
}
