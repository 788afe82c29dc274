package domefold.canvas;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import domefold.Approved;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.function.Consumer;
import org.junit.jupiter.api.Test;

/** Each drawing as a picture a person approved, in both sets of characters, and in areas it does not fit. */
class DrawingTest {
    private static final Scale WIDTHS = new Scale(8, 16, 49);

    @Test
    void lengthsOnOneScale() {
        approve("ruler-length", 70, 9, canvas -> {
            Ruler left = new Ruler(WIDTHS, 1, List.of("8 cm", "16 cm"), List.of(
                    new Ruler.Span(8.6, 12.4, "base 12.4 cm", Role.BODY), new Ruler.Shade(10.4, 11.6, "", Role.FAINT),
                    new Ruler.Tick(11, "ceiling 11.0 ± 0.6 cm", Role.TIGHT)));
            left.draw(canvas, 2, 0);
            Ruler right = new Ruler(WIDTHS, 1, List.of("8 cm", "16 cm"), List.of(
                    new Ruler.Span(6, 11, "", Role.BODY), new Ruler.Tick(17, "too wide", Role.OUTSIDE)));
            right.draw(canvas, 2, 3);
            Histogram.draw(canvas, 2, 6, WIDTHS, new double[] {10, 10, 10.2, 10.2, 10.2, 10.5, 11, 20, Double.NaN},
                    Role.DRAWING);
            left.drawScale(canvas, 2, 7);
        });
    }

    @Test
    void volumesOnOneScale() {
        approve("ruler-volume", 60, 3, canvas -> new Ruler(new Scale(150, 550, 41), 50, List.of("150 mL", "550 mL"),
                List.of(new Ruler.Shade(265, 330, "265–330 mL", Role.FITS), new Ruler.Tick(400, "wish 400 mL",
                        Role.ANSWER))).draw(canvas, 1, 0));
    }

    @Test
    void marginsAroundZero() {
        approve("margin-bar", 40, 7, canvas -> {
            double[] marginsCm = {0.2, -0.3, 0, 1.4, -2, 0.06, Double.NaN};
            for (int i = 0; i < marginsCm.length; i++) {
                MarginBar.draw(canvas, 0, i, 21, marginsCm[i], 1, Role.FITS);
                canvas.text(23, i, domefold.outcome.Numbers.marginCm(marginsCm[i]), Role.BODY);
            }
        });
    }

    @Test
    void theFoldOnATape() {
        approve("tape", 44, 12, canvas -> {
            Scale scale = new Scale(0, 11, 12);
            new Tape(scale, 2, List.of(new Tape.Mark(8, "target 8.0 cm", Role.DRAWING),
                    new Tape.Mark(6.4, "now 6.4 cm", Role.BODY))).draw(canvas, 0, 0, 22);
            new Tape(scale, 2, List.of(new Tape.Mark(6.4, "now 6.4 cm", Role.BODY),
                    new Tape.Mark(6.3, "target 6.3 cm, and why", Role.DRAWING))).draw(canvas, 22, 0, 20);
        });
    }

    @Test
    void aTableWithItsPointsAligned() {
        approve("table", 60, 14, canvas -> {
            table().draw(canvas, 0, 0, 60, 5, TextTable.View.WHOLE);
            table().draw(canvas, 0, 5, 30, 4, new TextTable.View(1, 2, 2));
            table().draw(canvas, 0, 10, 14, 4, new TextTable.View(0, 0, 1));
        });
    }

    @Test
    void theChosenRowIsMarkedAcrossTheTable() {
        Canvas canvas = new Canvas(60, 5, Glyphs.UNICODE);
        table().draw(canvas, 0, 0, 60, 5, new TextTable.View(0, 1, 1));
        for (int column = 0; column < 60; column++) {
            assertEquals(Role.SELECTED, canvas.roleAt(column, 2));
            assertTrue(canvas.roleAt(column, 3) != Role.SELECTED);
        }
    }

    @Test
    void thingsSideBySideScrollTogether() {
        approve("columns", 70, 12, canvas -> {
            columns().draw(canvas, 0, 0, 70, 6, 0);
            columns().draw(canvas, 0, 7, 50, 5, 2);
        });
    }

    @Test
    void asManyColumnsAsFitAreCountedBesideTheRowNames() {
        Canvas canvas = new Canvas(80, 5, Glyphs.UNICODE);
        assertEquals(2, columns().howManyFit(canvas, 80, 30));
        assertEquals(1, columns().howManyFit(canvas, 74, 30));
        assertEquals(2, columns().howManyFit(canvas, 75, 30));
        assertEquals(1, columns().howManyFit(canvas, 5, 30));
    }

    @Test
    void anOutlineAtEqualScale() {
        approve("silhouette", 60, 14, canvas -> {
            List<PointCm> dome = dome(11, 4.2);
            List<PointCm> flat = dome(12, 3.1);
            Silhouette scale = Silhouette.fitting(20, 12, canvas.glyphs(), List.of(turned(dome), turned(flat)));
            scale.draw(canvas, 0, 0, 20, 12, turned(dome), turned(flat), true);
            scale.drawLength(canvas, 0, 13, 2);
            Silhouette above = Silhouette.fitting(30, 8, canvas.glyphs(), List.of(dome));
            above.draw(canvas, 26, 0, 30, 8, dome, List.of(), false);
            above.drawLength(canvas, 26, 9, 5);
        });
    }

    @Test
    void aCircleIsAsWideAsHigh() {
        List<PointCm> circle = new ArrayList<>();
        for (int i = 0; i <= 90; i++) {
            circle.add(new PointCm(5 + 5 * Math.cos(i * Math.PI / 45), 5 + 5 * Math.sin(i * Math.PI / 45)));
        }
        for (Glyphs glyphs : List.of(Glyphs.UNICODE, Glyphs.ASCII)) {
            Canvas canvas = new Canvas(60, 20, glyphs);
            Silhouette.fitting(60, 20, glyphs, List.of(circle)).draw(canvas, 0, 0, 60, 20, circle, List.of(), false);
            int widest = 0;
            int rows = 0;
            for (int row = 0; row < 19; row++) {
                int inked = canvas.picture().lines().toList().get(row).length();
                widest = Math.max(widest, inked);
                rows += inked > 0 ? 1 : 0;
            }
            assertTrue(Math.abs(widest - 2 * (rows + 1)) <= 2, widest + " cells wide, " + rows + " rows high");
        }
    }

    @Test
    void aHundredPeople() {
        approve("hundred", 62, 10, canvas -> {
            Hundred.draw(canvas, 0, 0, 10, 9, 19, Role.DRAWING);
            Hundred.draw(canvas, 22, 0, 20, 0.4, 3, Role.DRAWING);
        });
    }

    @Test
    void aHundredPeopleAreAHundred() {
        Canvas canvas = new Canvas(40, 5, Glyphs.ASCII);
        Hundred.draw(canvas, 0, 0, 20, 9, 19, Role.DRAWING);
        String picture = canvas.picture();
        assertEquals(9, picture.chars().filter(c -> c == '#').count());
        assertEquals(10, picture.chars().filter(c -> c == '+').count());
        assertEquals(81, picture.chars().filter(c -> c == '.').count());
    }

    @Test
    void theSmallHundredIsTheSameHundredInItsOwnWidth() {
        Canvas canvas = new Canvas(Hundred.SMALL_WIDTH, Hundred.SMALL_ROWS, Glyphs.ASCII);
        Hundred.drawSmall(canvas, 0, 0, 9, 19, Role.DRAWING);
        assertEquals("##### ####+ +++++ ++++. .....\n" + "..... ..... ..... ..... .....\n".repeat(3), canvas.picture());
    }

    @Test
    void yearsAtAFixedStep() {
        approve("year-line", 66, 4, canvas -> YearLine.fitting(64, 20, 13).draw(canvas, 0, 0,
                new double[] {5, 7, 9, 11, 13, 15, 17, 19}, new double[] {6, 9, 12, 15, 18, 30}));
    }

    @Test
    void curvesWithAHatchBeyondTheData() {
        approve("plot", 50, 12, canvas -> {
            List<Plot.Point> one = new ArrayList<>();
            List<Plot.Point> other = new ArrayList<>();
            for (int year = 0; year <= 20; year++) {
                one.add(new Plot.Point(year, 30 * (1 - Math.exp(-0.08 * year))));
                other.add(new Plot.Point(year, 30 * (1 - Math.exp(-0.02 * year))));
            }
            new Plot(20, 30, 13).draw(canvas, 0, 0, 50, 12, one, other);
        });
    }

    @Test
    void noAreaIsTooSmallToDrawOn() {
        long seed = 20260304;
        Random random = new Random(seed);
        for (int i = 0; i < 400; i++) {
            int columns = random.nextInt(30);
            int rows = random.nextInt(12);
            Canvas canvas = new Canvas(columns, rows, i % 2 == 0 ? Glyphs.UNICODE : Glyphs.ASCII);
            int column = random.nextInt(12) - 6;
            int row = random.nextInt(12) - 6;
            int width = random.nextInt(40) - 2;
            int height = random.nextInt(15) - 2;
            double any = random.nextInt(8) == 0 ? Double.NaN : random.nextGaussian() * Math.pow(10, random.nextInt(12));
            drawEverything(canvas, column, row, width, height, any);
        }
    }

    private static void drawEverything(Canvas canvas, int column, int row, int width, int height, double any) {
        Scale scale = new Scale(0, any, width);
        new Ruler(scale, 0.5, List.of("a", "b"), List.of(new Ruler.Span(any, any + 1, "span", Role.BODY),
                new Ruler.Shade(-any, any, "shade", Role.BODY), new Ruler.Tick(any, "tick", Role.BODY)))
                .draw(canvas, column, row);
        Histogram.draw(canvas, column, row, scale, new double[] {any, 1, 2}, Role.BODY);
        MarginBar.draw(canvas, column, row, width, any, 1, Role.BODY);
        new Tape(new Scale(0, 10, height), 2, List.of(new Tape.Mark(any, "mark", Role.BODY))).draw(canvas, column, row,
                width);
        table().draw(canvas, column, row, width, height, new TextTable.View(height, width, row));
        columns().draw(canvas, column, row, width, height, column);
        List<PointCm> points = List.of(new PointCm(0, any), new PointCm(any, 3), new PointCm(1, 1));
        Silhouette fitting = Silhouette.fitting(width, height, canvas.glyphs(), List.of(points));
        fitting.draw(canvas, column, row, width, height, points, points, true);
        fitting.drawLength(canvas, column, row, 2);
        Hundred.draw(canvas, column, row, 10, any, 4, Role.BODY);
        YearLine.fitting(width, height, any).draw(canvas, column, row, new double[] {any, 3}, new double[0]);
        new Plot(20, any, 5).draw(canvas, column, row, width, height, List.of(new Plot.Point(any, any),
                new Plot.Point(3, 4)), List.of());
    }

    private static void approve(String name, int columns, int rows, Consumer<Canvas> drawing) {
        for (Glyphs glyphs : List.of(Glyphs.UNICODE, Glyphs.ASCII)) {
            Canvas canvas = new Canvas(columns, rows, glyphs);
            drawing.accept(canvas);
            if (!glyphs.unicode()) {
                assertTrue(canvas.picture().chars().allMatch(c -> c < 0x7f), canvas.picture());
            }
            Approved.check("drawing-" + name + (glyphs.unicode() ? "" : "-ascii"), canvas.picture());
        }
    }

    private static TextTable table() {
        return new TextTable(List.of(new TextTable.Heading("device", TextTable.Set.LEFT),
                new TextTable.Heading("volume", TextTable.Set.RIGHT), new TextTable.Heading("width", TextTable.Set.POINT),
                new TextTable.Heading("margin", TextTable.Set.POINT), new TextTable.Heading("verdict", TextTable.Set.LEFT)),
                List.of(row("G-290", "290 mL", "11.0 cm", "+0.2 cm", "fits"), row("S-1250-x", "1250 mL", "9 cm", "−12.3 cm",
                        "outside: width"), row("G-300", "300 mL", "–", "0.0 cm", "tight")));
    }

    private static List<TextTable.Cell> row(String... texts) {
        return java.util.Arrays.stream(texts).map(TextTable.Cell::of).toList();
    }

    private static Columns columns() {
        return new Columns(List.of(new Columns.Heading("G-290", Role.TITLE), new Columns.Heading("S-300", Role.TITLE)),
                List.of(Columns.Row.ofText("fill", row("gel", "saline, filled at the table to between 300 and 330 mL")),
                        Columns.Row.ofText("width", row("11.0 cm", "11.4 cm")),
                        new Columns.Row("margin LEFT", 2, List.of(
                                entry -> MarginBar.draw(entry, 0, 0, entry.columns(), 0.2, 1, Role.FITS),
                                entry -> MarginBar.draw(entry, 0, 1, entry.columns(), -0.2, 1, Role.OUTSIDE))),
                        Columns.Row.ofText("exams", row("5–8", "0"))));
    }

    private static List<PointCm> dome(double widthCm, double projectionCm) {
        List<PointCm> points = new ArrayList<>();
        for (int i = 0; i <= 60; i++) {
            double across = -1 + i / 30.0;
            points.add(new PointCm((across + 1) * widthCm / 2, projectionCm * Math.sqrt(Math.max(0, 1 - across * across))));
        }
        return points;
    }

    /** The dome seen from the side: height upwards, projection to the right. */
    private static List<PointCm> turned(List<PointCm> dome) {
        return dome.stream().map(point -> new PointCm(point.yCm(), point.xCm())).toList();
    }
}
