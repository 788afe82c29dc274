package domefold.shell;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Form factors against closed forms and against the 64-digit gamma table of commons-numbers-gamma 1.2 (Maxima). */
class SuperellipseReferenceTest {
    @ParameterizedTest
    @CsvSource({"2,2,0.6666666666666667", "2,1,0.5", "1,1,0.3333333333333333", "2.5,2.5,0.7500283645",
        "3,3,0.8061330508", "2.2,1.8,0.6615396072"})
    void formFactorsAreThoseOfKnownBodies(double m, double n, double k) {
        assertEquals(k, Superellipse.formFactor(m, n), 1e-10);
    }

    @ParameterizedTest
    @CsvSource({"2,2,0.1111111111,0.0934574352", "2,1.5,0.16,0.1076943747", "2.5,2.5,0.0726841065,0.0622348344",
        "2.2,1.8,0.1221986404,0.0883652597"})
    void slopesOfTheFormFactorAreTheTabulatedOnes(double m, double n, double byN, double byM) {
        assertEquals(byN, Superellipse.formFactorByN(m, n), 1e-10);
        assertEquals(byM, Superellipse.formFactorByM(m, n), 1e-10);
    }

    @Test
    void formFactorsAgreeWithAGammaTableOfSixtyFourDigits() throws IOException {
        Map<Integer, Double> gamma = gammaOfEighths();
        int seen = 0;
        for (int i = 1; i <= 16; i++) {
            for (int j = 1; j <= 16; j++) {
                double top = of(gamma, 8 + i) * of(gamma, 8 + j);
                double k = top / of(gamma, 8 + i + j);
                assertEquals(k, Superellipse.formFactor(16.0 / j, 8.0 / i), 1e-13);
                seen++;
            }
        }
        assertEquals(256, seen);
    }

    @Test
    void aFlatterDomeOfEqualVolumeIsWiderByTheStatedSlope() {
        double before = SizeLadder.of(0.3, 0.66, 300).widthCm();
        double projection = 4 * 300 / (Math.PI * before * before * 0.66);
        double wider = before + 1e-5;
        double then = 4 * 300 / (Math.PI * wider * wider * 0.66);
        assertEquals(Superellipse.projectionByWidth(before, projection), (then - projection) / 1e-5, 1e-5);
        assertTrue(then < projection);
    }

    @Test
    void exponentAndFormFactorUndoEachOther() {
        assertEquals(1.9, Superellipse.exponentOf(Superellipse.formFactor(1.9)), 1e-12);
        assertEquals(0.66, Superellipse.formFactorOf(12, 4, Math.PI * 36 * 4 * 0.66), 1e-12);
        assertEquals(Superellipse.formFactor(2, 1.7), Superellipse.formFactor(1.7), 1e-13);
    }

    private static double of(Map<Integer, Double> gamma, int eighths) {
        if (eighths % 8 != 0) {
            return gamma.get(eighths);
        }
        double product = 1;
        for (int i = 2; i < eighths / 8; i++) {
            product *= i;
        }
        return product;
    }

    private static Map<Integer, Double> gammaOfEighths() throws IOException {
        Map<Integer, Double> table = new HashMap<>();
        try (BufferedReader in = new BufferedReader(new InputStreamReader(SuperellipseReferenceTest.class
                .getResourceAsStream("/org/apache/commons/numbers/gamma/gamma_0_20_data.csv"), StandardCharsets.UTF_8))) {
            for (String line = in.readLine(); line != null; line = in.readLine()) {
                String[] cells = line.split(",");
                if (!line.startsWith("#") && cells.length == 3) {
                    double x = 8 * Double.parseDouble(cells[0].strip());
                    table.put((int) Math.round(x), Double.parseDouble(cells[1].strip()));
                }
            }
        }
        return table;
    }
}
