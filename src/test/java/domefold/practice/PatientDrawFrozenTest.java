package domefold.practice;

import static org.junit.jupiter.api.Assertions.assertEquals;

import domefold.patient.Case;
import domefold.patient.Side;
import java.util.Map;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Our own frozen patients: a number handed to a class of fellows must stay the same patient. */
class PatientDrawFrozenTest {
    @ParameterizedTest(name = "case {0} of level {1}")
    @CsvSource(delimiter = '|', textBlock = """
            1|1|P1-000001 30 162 54 70 82 / 18.6 9 6 8 12.1 11.7 4.5 3.8 2.3 0.9 1.4 3 40 285 5.8 none / 18.8 9.3 5.7 7.6 11.9 11.6 4.3 3.6 2.4 0.8 1.5 2.9 35 250 5.4 none
            2|2|P2-000002 35 169 65 75 85 / 21 9.6 6.4 7.8 13.2 13.3 4.5 3.2 2.4 0.8 1 2.3 20 145 5.6 none / 21.1 9.9 6.3 7.7 14 13 5.3 3.2 2.4 0.8 1 2.2 25 280 5.1 none
            3|3|P3-000003 24 158 44 64 76 / 20.6 11 5.5 6.6 12.6 12 3.1 3.7 1.7 0.5 0.6 1.4 45 275 5.1 none / 19.1 10.3 7 8.2 12.3 11.7 3.3 3.3 1.7 0.4 0.7 1.6 40 240 6.5 none
            2041|3|P3-002041 17 159 55 76 89 / 20.6 9.9 6.2 7.4 12.4 11.7 3.3 2.1 2.5 0.6 0.6 1.8 60 345 5.8 none / 20.1 10.2 6.7 7.9 12.4 12.1 4.2 2.3 2.4 0.7 0.6 1.7 55 340 5.8 none
            """)
    void aNumberIsOnePatientForEver(int number, int level, String readings) {
        assertEquals(readings, line(PatientDraw.of(number, level, Drawn.EVIDENCE).of()));
    }

    @Test
    void thousandPatientsAreTheSameToTheLastReading() {
        PatientDraw draw = PatientDraw.from(Drawn.EVIDENCE);
        int digest = 1;
        for (int number = 1; number <= 1000; number++) {
            PracticeCase patient = draw.of(number);
            digest = 31 * digest + line(patient.of()).hashCode();
            digest = 31 * digest + patient.history().hashCode();
            digest = 31 * digest + patient.wish().hashCode();
        }
        assertEquals(719815250, digest);
    }

    private static String line(Case of) {
        return of.code() + " " + values(of.patient().byMeasure()) + " / " + values(of.left().readings().byMeasure())
                + " " + of.left().ptosis().orElseThrow().key() + " / "
                + values(of.side(Side.RIGHT).readings().byMeasure()) + " " + of.right().ptosis().orElseThrow().key();
    }

    private static String values(Map<?, domefold.patient.Reading> readings) {
        return readings.values().stream().map(domefold.patient.Reading::typed).collect(Collectors.joining(" "));
    }
}
