package domefold.canvas;

/**
 * A line of years with a fixed step for each, exams on it under the densest and the sparsest reading of a schedule, and a
 * hatch where the data end. Four rows: densest, sparsest, the line, its numbers.
 *
 * @param years length of the line
 * @param cellsPerYear cells for one year
 * @param dataYears last year with data behind it; the line beyond is hatched
 */
public record YearLine(int years, int cellsPerYear, double dataYears) {
    public static final int ROWS = 4;
    private static final int NUMBERED = 5;
    private static final int MOST_YEARS = 100;

    /** The widest step at which that many years fit, at least one cell. */
    public static YearLine fitting(int width, int years, double dataYears) {
        int most = Math.max(1, Math.min(MOST_YEARS, years));
        return new YearLine(most, Math.max(1, (width - 2) / most), dataYears);
    }

    /** Cells it takes. */
    public int width() {
        return years * cellsPerYear + 2;
    }

    /** Draws the exams of the two readings, in years from the operation, and the line. */
    public void draw(Canvas canvas, int column, int row, double[] densestYears, double[] sparsestYears) {
        exams(canvas, column, row, densestYears, Role.DRAWING);
        exams(canvas, column, row + 1, sparsestYears, Role.DRAWING);
        line(canvas, column, row + 2);
    }

    /** The line and its numbers alone, two rows. */
    public void line(Canvas canvas, int column, int row) {
        Glyphs glyphs = canvas.glyphs();
        for (int cell = 0; cell <= years * cellsPerYear; cell++) {
            double year = (double) cell / cellsPerYear;
            boolean whole = cell % cellsPerYear == 0;
            boolean numbered = whole && cell / cellsPerYear % NUMBERED == 0;
            char glyph = year > dataYears ? glyphs.shade() : numbered ? cross(glyphs) : glyphs.horizontal();
            canvas.put(column + cell, row, glyph, Role.FAINT);
            if (numbered) {
                String number = Integer.toString(cell / cellsPerYear);
                canvas.text(column + cell - (number.length() - 1) / 2, row + 1, number, Role.FAINT);
            }
        }
    }

    /** Cell of a year, counted from the start of the line. */
    public int cell(double year) {
        return (int) Math.round(year * cellsPerYear);
    }

    private void exams(Canvas canvas, int column, int row, double[] atYears, Role role) {
        for (double year : atYears) {
            if (year >= 0 && year <= years) {
                canvas.put(column + cell(year), row, canvas.glyphs().bullet(), role);
            }
        }
    }

    private static char cross(Glyphs glyphs) {
        return glyphs.unicode() ? '┬' : '+';
    }
}
