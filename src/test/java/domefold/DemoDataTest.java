package domefold;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import domefold.patient.Case;
import domefold.store.CaseFile;
import domefold.store.CaseRules;
import domefold.store.EvidenceFiles;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class DemoDataTest {
    private static final Path FOLDER = Path.of("demo-data");

    static List<Path> cases() throws IOException {
        try (Stream<Path> files = Files.list(FOLDER)) {
            return files.filter(file -> file.toString().endsWith(".json")).sorted().toList();
        }
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("cases")
    void everyDemoCaseIsAcceptedAndSaysThatItIsOne(Path file) throws IOException {
        Case read = CaseFile.read(file, CaseRules.of(EvidenceFiles.shipped(), any -> {}));
        assertTrue(read.code().startsWith("DEMO-"), read.code());
        assertTrue(Files.readString(FOLDER.resolve("README.md")).contains("`" + file.getFileName() + "`"),
                file + " is not in the README");
    }

    @Test
    void thereAreEightAndNoTwoShareACode() throws IOException {
        List<String> codes = new java.util.ArrayList<>();
        for (Path file : cases()) {
            codes.add(CaseFile.read(file, CaseRules.FORM_ONLY).code());
        }
        assertEquals(8, codes.size());
        assertEquals(8, codes.stream().distinct().count());
    }
}
