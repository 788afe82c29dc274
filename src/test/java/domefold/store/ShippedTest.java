package domefold.store;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;

class ShippedTest {
    @Test
    void whatIsCarriedIsTheFileOfTheProject() throws Exception {
        for (String name : new String[] {"shared/evidence/outcomes.csv", "shared/catalogue/invented.csv"}) {
            assertArrayEquals(Files.readAllBytes(Path.of(name)), Shipped.bytes(name).orElseThrow(), name);
        }
        assertTrue(Shipped.bytes("shared/evidence/none.csv").isEmpty());
    }

    /** The build takes it; a plan names it. */
    @Test
    void theDigestBesideTheListIsThatOfTheList() throws Exception {
        byte[] list = Files.readAllBytes(Path.of("shared/catalogue/invented.csv"));
        byte[] beside = Shipped.bytes("shared/catalogue/invented.csv.sha256").orElseThrow();
        assertEquals(Digest.sha256(list), new String(beside, StandardCharsets.US_ASCII).strip());
        assertEquals(Digest.sha256(list), CatalogueFile.invented().sha256());
    }
}
