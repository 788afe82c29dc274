package domefold.practice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import domefold.device.Catalogue;
import domefold.device.Device;
import domefold.outcome.Note;
import domefold.patient.Case;
import domefold.patient.Pocket;
import domefold.patient.Route;
import domefold.patient.Setting;
import domefold.patient.Side;
import domefold.plan.Candidate;
import domefold.plan.Plan;
import domefold.plan.PlanOptions;
import domefold.plan.Planner;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Every code that the engine's sources can give is met by some practice case within 5,000 numbers. */
class EveryReasonPropertyTest {
    private static final int NUMBERS = 5000;
    /** Codes do not depend on how many error draws the bands rest on. */
    private static final PlanOptions FEW_DRAWS = new PlanOptions(PlanOptions.DEFAULT.widthSchool(), 64, 1);
    /** All that stands before the first comma of a note: one code, or several to choose from. */
    private static final Pattern NOTE = Pattern.compile("new Note\\(([^,]*),");
    private static final Pattern CODE = Pattern.compile("\"([a-z]+(?:-[a-z]+)*)\"");

    /** A drawn case holds every reading and every answer, so what asks for one never comes up. */
    private static final Set<String> FOR_MISSING = Set.of("age-not-given", "fold-not-judged", "history-not-asked",
            "reading-missing", "volume-incomplete", "width-rule-of-thumb");
    /** A drawn case is possible, so what refuses one never comes up; the reading drill has those. */
    private static final Set<String> FOR_IMPOSSIBLE = Set.of("bases-wider-than-chest", "bmi-out-of-range",
            "height-weight-exchanged", "not-a-number", "out-of-range", "stretched-below-resting");

    @Test
    void everyCodeIsMet() throws IOException {
        Set<String> wanted = codes();
        assertTrue(wanted.size() > 40, "the sources give " + wanted);
        wanted.removeAll(FOR_MISSING);
        wanted.removeAll(FOR_IMPOSSIBLE);
        PatientDraw patients = PatientDraw.from(Drawn.EVIDENCE);
        Catalogue few = few();
        for (int number = 1; number <= NUMBERS && !wanted.isEmpty(); number++) {
            Case of = settings(patients.of(number).of(), number);
            wanted.removeAll(met(Planner.plan(of, few, Drawn.EVIDENCE, FEW_DRAWS)));
        }
        assertEquals(Set.of(), wanted, "not met within " + NUMBERS + " practice cases");
    }

    private static Set<String> codes() throws IOException {
        Set<String> codes = new TreeSet<>();
        for (String room : List.of("engine", "plan")) {
            try (Stream<Path> files = Files.walk(Path.of("src/main/java/domefold", room))) {
                for (Path file : files.filter(one -> one.toString().endsWith(".java")).toList()) {
                    String text = Files.readString(file);
                    NOTE.matcher(text).results().flatMap(note -> CODE.matcher(note.group(1)).results())
                            .forEach(code -> codes.add(code.group(1)));
                }
            }
        }
        return codes;
    }

    /** Every route, and a pocket of the fellow's, in turn: some reasons answer to what she chooses. */
    private static Case settings(Case of, int number) {
        Route route = Route.values()[number % Route.values().length];
        Optional<Pocket> pocket = number % 4 == 0 ? Optional.of(Pocket.SUBGLANDULAR) : Optional.empty();
        return of.withSetting(new Setting(number % 2 == 0 ? Optional.of("US-2020") : Optional.empty(),
                Optional.of(route), Optional.of(number % 2 == 0), pocket, OptionalInt.empty(), Set.of()));
    }

    /** Every twelfth device of the list. */
    private static Catalogue few() {
        List<Device> devices = new ArrayList<>();
        for (int i = 0; i < Fellows.LIST.devices().size(); i += 12) {
            devices.add(Fellows.LIST.devices().get(i));
        }
        return Fellows.with(devices);
    }

    private static Set<String> met(Plan plan) {
        Set<String> met = new TreeSet<>();
        add(met, plan.blocked());
        add(met, plan.notes());
        for (Side side : Side.values()) {
            add(met, plan.side(side).notes());
            for (Candidate candidate : plan.candidates()) {
                add(met, candidate.side(side).reasons());
                add(met, candidate.side(side).notes());
            }
        }
        return met;
    }

    private static void add(Set<String> met, List<Note> notes) {
        notes.forEach(note -> met.add(note.code()));
    }
}
