package domefold.store;

import domefold.outcome.Refusal;
import domefold.patient.Case;
import domefold.patient.HealthQuestion;
import domefold.patient.Measure;
import domefold.practice.PracticeCase;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.NotDirectoryException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/**
 * A tutor's own practice cases: the case files of a folder, in the order of their names. Beside {@code NAME.json} a
 * {@code NAME.txt} may tell her history, and after an empty line her wish; without it both are told from the case.
 */
public final class TutorCases {
    /** Cases of a folder are numbered from here, so that a log tells them from drawn ones. */
    public static final int FIRST_NUMBER = 900_001;
    private static final int LARGEST_TEXT_BYTES = 1 << 16;
    private static final String ENDING = ".json";

    private TutorCases() {}

    /**
     * The cases of that folder, at least one.
     *
     * @throws Refusal if one is no case that can be practised on, or there is none
     */
    public static List<PracticeCase> read(Path folder, CaseRules rules) throws IOException {
        if (Files.exists(folder) && !Files.isDirectory(folder)) {
            throw new NotDirectoryException(folder + " is no folder");
        }
        List<Path> files;
        try (Stream<Path> all = Files.list(folder)) {
            files = all.filter(file -> file.getFileName().toString().endsWith(ENDING)).sorted().toList();
        }
        if (files.isEmpty()) {
            throw new Refusal("no-cases", folder.toString(), "there is no case file in " + folder + "; practice takes NAME.json files");
        }
        List<PracticeCase> cases = new ArrayList<>();
        for (Path file : files) {
            cases.add(read(file, FIRST_NUMBER + cases.size(), rules));
        }
        return cases;
    }

    private static PracticeCase read(Path file, int number, CaseRules rules) throws IOException {
        Case of = CaseFile.read(file, rules);
        String[] told = told(file);
        return new PracticeCase(number, PracticeCase.LOWEST_LEVEL, of, told.length > 0 ? told[0] : history(of),
                told.length > 1 ? told[1] : wish(of), List.of(), Set.of());
    }

    /** History and wish of the text beside it; empty where there is none. */
    private static String[] told(Path file) throws IOException {
        String name = file.getFileName().toString();
        Path text = file.resolveSibling(name.substring(0, name.length() - ENDING.length()) + ".txt");
        if (!Files.exists(text)) {
            return new String[0];
        }
        String whole = InputFile.utf8(InputFile.bytes(text, "the story", LARGEST_TEXT_BYTES), text.getFileName().toString()).strip();
        return Stream.of(whole.split("\\R\\s*\\R", 2)).map(part -> part.strip().replaceAll("\\s+", " "))
                .filter(part -> !part.isEmpty()).toArray(String[]::new);
    }

    private static String history(Case of) {
        List<String> yes = Stream.of(HealthQuestion.values()).filter(question -> of.history().getOrDefault(question, false))
                .map(HealthQuestion::words).toList();
        return "She is " + Math.round(of.patient().value(Measure.AGE).orElseThrow()) + ". In her history: "
                + (yes.isEmpty() ? "nothing that was asked for." : String.join(", ", yes) + ".");
    }

    private static String wish(Case of) {
        Optional<String> look = of.wishes().upperPole().map(upper -> "the upper breast " + upper.key());
        Optional<String> size = of.wishes().sizeWishMl().isPresent()
                ? Optional.of("about " + Math.round(of.wishes().sizeWishMl().getAsDouble()) + " mL") : Optional.empty();
        List<String> said = Stream.of(look, size).flatMap(Optional::stream).toList();
        return said.isEmpty() ? "She has named no wish." : "She wishes " + String.join(" and ", said) + ".";
    }
}
