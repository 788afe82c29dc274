package domefold.plan;

import domefold.basics.Lists;
import domefold.device.Catalogue;
import domefold.device.Fill;
import domefold.engine.AsymmetryClass;
import domefold.engine.CrossChecks;
import domefold.engine.Finding;
import domefold.engine.Gate;
import domefold.engine.History;
import domefold.engine.LabelAge;
import domefold.evidence.Constants;
import domefold.evidence.Evidence;
import domefold.outcome.Figures;
import domefold.outcome.Note;
import domefold.outcome.Working;
import domefold.patient.Case;
import domefold.patient.Measure;
import domefold.patient.Readings;
import domefold.patient.Side;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.TreeSet;

/** Remarks about the case as a whole, in a fixed order. */
final class PlanNotes {
    private PlanNotes() {}

    static List<Note> of(CaseRules rules, Catalogue catalogue, SideLimits left, SideLimits right, Evidence evidence) {
        Case of = rules.of();
        List<Note> notes = new ArrayList<>(rules.blocked());
        age(rules, evidence.constants(), notes);
        notes.addAll(History.cautions(of.history(), evidence));
        notes.addAll(History.notAsked(of.history()));
        for (Readings readings : List.of(of.patient(), of.chest())) {
            readings.byMeasure().forEach((measure, reading) ->
                    Gate.check(measure, reading.value(), evidence).note().ifPresent(notes::add));
        }
        notes.addAll(Lists.map(CrossChecks.of(of, evidence), Finding::note));
        naturalVolumes(of, evidence.constants(), notes);
        if (of.setting().surveillance().isEmpty()) {
            notes.add(new Note("schedule-not-chosen", "no imaging schedule is chosen, so no exams are counted"));
        }
        if (catalogue.invented()) {
            notes.add(new Note("invented-catalogue", "the device list is invented; replace it with the practice's own before"
                    + " clinical use"));
        }
        memory(left, right, notes);
        return notes;
    }

    private static void age(CaseRules rules, Constants constants, List<Note> notes) {
        if (rules.of().patient().value(Measure.AGE).isEmpty()) {
            notes.add(new Note("age-not-given", "the age is not given, so the label ages were not checked"));
            return;
        }
        Note gel = rules.belowLabel().get(Fill.GEL);
        Note saline = rules.belowLabel().get(Fill.SALINE);
        if (gel != null) {
            notes.add(new Note("age-below-label", gel.text() + (saline == null ? "; saline, from "
                    + Figures.of(LabelAge.rule(Fill.SALINE, constants).value(), 0, 1) + ", may be offered" : "")));
        }
        if (saline != null) {
            notes.add(saline);
        }
    }

    /** Natural volumes of both sides, by the same method only: absolute volumes of different methods do not mix. */
    private static void naturalVolumes(Case of, Constants constants, List<Note> notes) {
        OptionalDouble left = of.left().readings().value(Measure.BREAST_VOLUME);
        OptionalDouble right = of.right().readings().value(Measure.BREAST_VOLUME);
        String method = "as entered";
        if (left.isEmpty() || right.isEmpty()) {
            left = Comparisons.formulaMl(of.side(Side.LEFT).readings(), constants);
            right = Comparisons.formulaMl(of.side(Side.RIGHT).readings(), constants);
            method = "by formula";
        }
        if (left.isEmpty() || right.isEmpty()) {
            return;
        }
        AsymmetryClass kind = AsymmetryClass.of(left.getAsDouble(), right.getAsDouble(), constants);
        if (kind != AsymmetryClass.SAME) {
            notes.add(new Note("sides-differ", "natural volume " + Figures.ml(left.getAsDouble()) + " mL left and "
                    + Figures.ml(right.getAsDouble()) + " mL right (" + method + ") differ by "
                    + Figures.ml(Math.abs(left.getAsDouble() - right.getAsDouble())) + " mL: " + kind.words()
                    + " (" + constants.get("ASY-12").status().words() + ")"));
        }
    }

    private static void memory(SideLimits left, SideLimits right, List<Note> notes) {
        TreeSet<String> ids = new TreeSet<>();
        for (SideLimits limits : List.of(left, right)) {
            for (Working line : limits.working()) {
                if (line.status().isMemory() && !line.quantity().contains("comparison")) {
                    ids.add(line.source().split(":", 2)[0]);
                }
            }
        }
        if (!ids.isEmpty()) {
            notes.add(new Note("memory-value-used", "values from memory, not confirmed in a paper, stand behind this plan: "
                    + String.join(", ", ids) + "; each can be changed in the settings"));
        }
    }
}
