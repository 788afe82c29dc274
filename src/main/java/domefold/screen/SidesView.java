package domefold.screen;

import domefold.canvas.Canvas;
import domefold.canvas.MarginBar;
import domefold.canvas.Role;
import domefold.choose.NaturalDifference;
import domefold.engine.CrossChecks;
import domefold.engine.ReadingError;
import domefold.evidence.Constants;
import domefold.outcome.Figures;
import domefold.outcome.Note;
import domefold.outcome.Numbers;
import domefold.patient.Case;
import domefold.patient.Measure;
import domefold.patient.Reading;
import domefold.patient.Side;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What differs between the two sides, and whether it is more than reading error; what it asks of the devices. */
final class SidesView {
    private static final int LABEL = 26;
    private static final int VALUES = 18;
    private static final double REACH_SDS = 4;

    private SidesView() {}

    static void draw(Canvas canvas, int column, int row, int width, int height, ConsultScreen screen) {
        Case of = screen.interview().dossier().patientCase();
        Constants constants = screen.interview().guide().evidence().constants();
        canvas.text(column, row, "Two sides", Role.TITLE);
        canvas.textWithin(column + 11, row, width - 11, "left less right, in error SDs of a difference", Role.FAINT);
        List<Measure> both = both(of);
        List<String> words = new ArrayList<>();
        for (Note note : NaturalDifference.of(of, constants).notes()) {
            words.addAll(canvas.wrap(note.text(), width));
        }
        int room = Math.max(1, height - 2 - words.size());
        int at = row + 1;
        int shown = both.size() > room ? room - 1 : both.size();
        for (Measure measure : ordered(both, of, constants).subList(0, shown)) {
            line(canvas, column, at++, width, measure, of, constants);
        }
        if (shown < both.size()) {
            canvas.textWithin(column, at++, width, Numbers.count(both.size() - shown, "more reading", "more readings")
                    + ", none further apart, in a taller window", Role.FAINT);
        }
        at++;
        for (String text : words) {
            if (at < row + height) {
                canvas.text(column, at++, text, Role.BODY);
            }
        }
    }

    private static List<Measure> both(Case of) {
        List<Measure> both = new ArrayList<>();
        for (Measure measure : Measure.values()) {
            if (measure.of() == Measure.Of.SIDE && of.left().readings().has(measure) && of.right().readings().has(measure)) {
                both.add(measure);
            }
        }
        return both;
    }

    /** The widest apart, in error SDs, first. */
    private static List<Measure> ordered(List<Measure> measures, Case of, Constants constants) {
        return measures.stream().sorted(java.util.Comparator.comparingDouble(
                (Measure measure) -> -Math.abs(sds(measure, of, constants).orElse(0.0)))).toList();
    }

    private static Optional<Double> sds(Measure measure, Case of, Constants constants) {
        Reading left = of.side(Side.LEFT).readings().get(measure).orElseThrow();
        Reading right = of.side(Side.RIGHT).readings().get(measure).orElseThrow();
        double sd = Math.hypot(ReadingError.sd(measure, left, constants), ReadingError.sd(measure, right, constants));
        return sd > 0 ? Optional.of((left.value() - right.value()) / sd) : Optional.empty();
    }

    private static void line(Canvas canvas, int column, int row, int width, Measure measure, Case of, Constants constants) {
        Reading left = of.left().readings().get(measure).orElseThrow();
        Reading right = of.right().readings().get(measure).orElseThrow();
        boolean apart = CrossChecks.sidesApart(measure, left, right, constants);
        canvas.textWithin(column, row, LABEL - 1, measure.words(), apart ? Role.CAUTION : Role.LABEL);
        int decimals = measure.unit().equals("cm") ? 1 : 0;
        canvas.textWithin(column + LABEL, row, VALUES - 1, Figures.of(left.value(), decimals, 2) + " and "
                + Figures.of(right.value(), decimals, 2) + " " + measure.unit(), apart ? Role.CAUTION : Role.BODY);
        Optional<Double> sds = sds(measure, of, constants);
        int bar = Math.min(17, width - LABEL - VALUES - 12);
        if (sds.isPresent() && bar >= 7) {
            MarginBar.draw(canvas, column + LABEL + VALUES, row, bar, sds.get(), REACH_SDS, apart ? Role.CAUTION : Role.DRAWING);
        }
        int after = column + LABEL + VALUES + Math.max(0, bar) + 1;
        canvas.textWithin(after, row, width - (after - column), sds.isEmpty() ? "no error known"
                : apart ? "read again" : "", apart ? Role.CAUTION : Role.FAINT);
    }
}
