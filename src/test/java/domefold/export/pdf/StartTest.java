package domefold.export.pdf;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;

class StartTest {
    /** The virtual machine itself says which classes it loads. */
    @Test
    void theProgramStartsWithoutThePdfLibraryAndWithoutAwt() throws IOException {
        Process process = new ProcessBuilder(Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-Xlog:class+load:stdout", "-cp", System.getProperty("java.class.path"), "domefold.app.Main", "--version")
                .redirectErrorStream(true).start();
        String loaded = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        assertTrue(loaded.contains("domefold.app.Main"), loaded);
        assertEquals(List.of(), loaded.lines().filter(line -> line.contains("org.apache.pdfbox") || line.contains(" java.awt."))
                .filter(line -> !line.contains("surefire")).toList());
    }
}
