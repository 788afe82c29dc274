package domefold.app;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;

class HeadStartTest {
    @Test
    void whatFailsAheadSaysNothingThere() throws InterruptedException {
        PrintStream before = System.err;
        ByteArrayOutputStream said = new ByteArrayOutputStream();
        System.setErr(new PrintStream(said, true, StandardCharsets.UTF_8));
        try {
            HeadStart.begin(() -> {
                throw new IllegalStateException("a table is missing");
            }).join();
        } finally {
            System.setErr(before);
        }
        assertEquals("", said.toString(StandardCharsets.UTF_8));
    }
}
