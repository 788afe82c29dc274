package domefold.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import domefold.record.RecordStatus;
import domefold.sheet.SampleRecords;
import domefold.store.RecordStore;
import domefold.store.Workstation;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** What the completion script offers is what the program takes. */
class CompletionTest {
    private static final Pattern FUNCTION = Pattern.compile("(?s)function _picocli_(domefold\\w*)\\(\\) \\{\\n(.*?)\\n\\}");
    private static final Pattern OFFERED = Pattern.compile("local \\w+_args=\\((.*)\\) # (\\S+) values");

    @TempDir
    private static Path home;

    /** Words offered, by command and place. */
    record Offer(String command, String place, String word) {
        @Override
        public String toString() {
            return command + " " + place + " " + word;
        }

        /** A line that holds the word and all that the command wants beside it. */
        String[] line() {
            List<String> line = new ArrayList<>(List.of(command.split(" ")));
            line.addAll(switch (command) {
                case "plan" -> List.of("no-such-case.json");
                case "practise" -> List.of("--draw", "7", "--level", "1");
                case "shape" -> List.of("--half-width", "6.55", "--dome", "2.45", "--exponent", "1.5", "--fill", "0.9");
                case "schedule" -> List.of("US-2020", "--from", "2026-03-04", "--years", "20");
                case "survival", "catalogue check" -> List.of("no-such-table.csv");
                case "records show", "records export" -> List.of("K-2041");
                case "records order" -> List.of("--day", "2026-03-20");
                case "records amend" -> List.of("K-9", "--reason", "a slip");
                case "records mark" -> List.of("K-9", "--on", "2026-03-20");
                case "records implanted" -> List.of("K-9", "--fill", "290");
                case "records backup" -> List.of(home.resolve("backup-" + word + ".zip").toString());
                case "records restore" -> List.of("no-such-backup.zip");
                default -> List.of();
            });
            if (command.equals("schedule") && !place.equals("--fill")) {
                line.addAll(List.of("--fill", "gel"));
            } else if (command.equals("records mark") && !place.equals("WHAT")) {
                line.add("done");
            } else if (command.equals("records implanted") && !place.equals("--side")) {
                line.addAll(List.of("--side", "left"));
            }
            if (place.startsWith("--")) {
                line.add(place);
            }
            line.add(word);
            return line.toArray(String[]::new);
        }
    }

    @BeforeAll
    static void saveOne() throws IOException {
        new RecordStore(home.resolve("records"), false, new Workstation("test")).sign(
                SampleRecords.withStatus(RecordStatus.DRAFT, false), 0, "A. Surgeon", Cli.DAY.instant(), ConsultSaving::summary);
    }

    private static String script() {
        return Cli.run(home, "completion").out();
    }

    static Stream<Offer> offers() {
        List<Offer> offers = new ArrayList<>();
        for (Matcher function = FUNCTION.matcher(script()); function.find();) {
            String command = function.group(1).replaceFirst("^domefold_?", "").replace('_', ' ');
            for (Matcher offered = OFFERED.matcher(function.group(2)); offered.find();) {
                String place = offered.group(2).startsWith("--") ? offered.group(2) : "WHAT";
                Pattern.compile("\"([^\"]*)\"").matcher(offered.group(1)).results()
                        .forEach(word -> offers.add(new Offer(command, place, word.group(1))));
            }
        }
        return offers.stream();
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("offers")
    void aWordThatIsOfferedIsTaken(Offer offer) {
        Cli run = Cli.run(home, offer.line());
        assertFalse(run.exit() == Exit.WRONG_USAGE || run.exit() == Exit.DEFECT, run.err());
        assertFalse(run.err().contains("'" + offer.word() + "'"), run.err());
    }

    @ParameterizedTest(name = "{0} {1}")
    @CsvSource({"schedule,--fill,saline gel", "records find,--as,text json csv", "records due,--as,text json csv",
        "records order,--as,text json csv", "records show,--as,text json", "records implanted,--side,left right",
        "records export,--as,text pdf patient order ics fhir json", "records mark,WHAT,ordered booked done"})
    void whereThereIsAChoiceItIsOffered(String command, String place, String words) {
        assertEquals(List.of(words.split(" ")), offers().filter(offer -> offer.command().equals(command)
                && offer.place().equals(place)).map(Offer::word).toList());
    }
}
