package domefold.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import domefold.outcome.Refusal;
import domefold.practice.PatientDraw;
import domefold.practice.PracticeCase;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class TutorCasesTest {
    @TempDir
    Path folder;

    private void write(String name, int number) throws IOException {
        CaseFile.write(folder.resolve(name), PatientDraw.of(number, 2, EvidenceFiles.shipped()).of());
    }

    @Test
    void casesComeInTheOrderOfTheirNamesWithTheirStory() throws IOException {
        write("b.json", 8);
        write("a.json", 7);
        Files.writeString(folder.resolve("a.txt"), "An invented teacher,\nfifty.\n\nShe wants to be asked.\n");
        Files.writeString(folder.resolve("notes.md"), "not a case");
        List<PracticeCase> cases = TutorCases.read(folder, CaseRules.FORM_ONLY);
        assertEquals(List.of("P2-000007", "P2-000008"), cases.stream().map(one -> one.of().code()).toList());
        assertEquals(List.of(900_001, 900_002), cases.stream().map(PracticeCase::number).toList());
        assertEquals("An invented teacher, fifty.", cases.get(0).history());
        assertEquals("She wants to be asked.", cases.get(0).wish());
        assertTrue(cases.get(1).history().startsWith("She is "), cases.get(1).history());
        assertTrue(cases.get(1).wish().contains(" mL"), cases.get(1).wish());
    }

    @Test
    void aFolderWithoutCasesOrWithHalfACaseIsRefused() throws IOException {
        assertEquals("no-cases", assertThrows(Refusal.class, () -> TutorCases.read(folder, CaseRules.FORM_ONLY)).code());
        CaseFile.write(folder.resolve("empty.json"), domefold.patient.Case.empty("x-1", java.time.LocalDate.of(2026, 3, 4)));
        Refusal refusal = assertThrows(Refusal.class, () -> TutorCases.read(folder, CaseRules.FORM_ONLY));
        assertEquals("missing-field", refusal.code());
        assertTrue(refusal.getMessage().contains("empty.json"), refusal.getMessage());
    }
}
