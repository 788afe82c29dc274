package domefold.line;

import domefold.outcome.Refusal;
import domefold.practice.ReadingDrill;
import domefold.practice.Sighting;
import domefold.practice.exercise.Logbook;
import domefold.practice.exercise.SlipWords;
import domefold.practice.exercise.Taken;
import domefold.screen.PracticeDesk;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A reading drill line by line.
 *
 * @param drill the readings, with slips planted or none
 * @param answered what came of the answer; empty before it
 */
record LineDrill(ReadingDrill drill, Optional<ReadingDrill.Answered> answered) {
    /** The lowest drill not done yet. */
    static LineDrill next(PracticeDesk desk) {
        return new LineDrill(ReadingDrill.of(desk.log().nextDrill(), desk.desk().guide().evidence()), Optional.empty());
    }

    /** The readings, and what the eye saw before the tape. */
    List<String> shown() {
        List<String> lines = new ArrayList<>(List.of("Reading drill " + drill.number() + ". Which of these readings are wrong?",
                drill.sightings().isEmpty() ? "Nothing stood out to the eye." : "Seen before the tape: "
                        + String.join(" ", drill.sightings().stream().map(Sighting::text).toList())));
        Taken.all(drill.shown()).forEach(taken -> lines.add("  " + taken.sentence()));
        return lines;
    }

    /** How slips are written. */
    List<String> help() {
        List<String> lines = new ArrayList<>(List.of(
                "Up to three slips may be planted, or none. Write each at its place, commas between:"));
        SlipWords.WAYS.forEach(way -> lines.add("  " + way));
        return lines;
    }

    /** What is asked now. */
    String asked() {
        return answered.isPresent() ? "Enter draws the next drill, `back` returns to your case."
                : "Which are wrong? (slips with commas between, or `none`; ? shows how each is written, `back` returns to your case)";
    }

    /**
     * The drill with that answer.
     *
     * @throws Refusal for words that name no slip
     */
    LineDrill said(String words, PracticeDesk desk) {
        return new LineDrill(drill, Optional.of(drill.check(SlipWords.read(words), desk.desk().guide().evidence())));
    }

    /** What came of the answer, as it is kept. */
    Logbook.Drilled kept(PracticeDesk desk) {
        ReadingDrill.Answered check = answered.orElseThrow();
        return new Logbook.Drilled(desk.desk().today(), drill.number(), check.found().size(), check.missed().size(),
                check.unfounded().size());
    }

    /** What came of the answer, in words. */
    List<String> checked() {
        ReadingDrill.Answered check = answered.orElseThrow();
        List<String> lines = new ArrayList<>(List.of(!check.allRight() ? "Not all right."
                : check.found().isEmpty() ? "Right: nothing is wrong here." : "All right."));
        check.found().forEach(slip -> lines.add("  found: " + slip.text()));
        check.missed().forEach(text -> lines.add("  missed: " + text));
        check.unfounded().forEach(slip -> lines.add("  not so: " + slip.text()));
        return lines;
    }
}
