package domefold.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import picocli.CommandLine;

class CommandLineTest {
    @TempDir
    private Path home;

    private Cli run(String line) {
        return Cli.run(home, line.isEmpty() ? new String[0] : line.split(" "));
    }

    static Stream<CommandLine> commands() {
        CommandLine root = Commands.whole(new Domefold(Cli.console(Path.of("unused"), new ByteArrayOutputStream(),
                new ByteArrayOutputStream(), StandardCharsets.UTF_8), FacesHere.of()));
        return below(root);
    }

    private static Stream<CommandLine> below(CommandLine line) {
        return Stream.concat(Stream.of(line), line.getSubcommands().values().stream().flatMap(CommandLineTest::below));
    }

    @ParameterizedTest
    @MethodSource("commands")
    void everyCommandHasHelpWithAnExampleInEightyColumns(CommandLine command) {
        String[] words = command.getCommandSpec().qualifiedName().split(" ");
        String[] args = Stream.concat(List.of(words).subList(1, words.length).stream(), Stream.of("--help"))
                .toArray(String[]::new);
        Cli help = Cli.run(home, args);
        assertEquals(Exit.DONE, help.exit());
        assertTrue(help.out().contains("Example: domefold"), help.out());
        assertEquals(List.of(), help.out().lines().filter(line -> line.length() > 80).toList());
        assertEquals("", help.err());
    }

    /** The branch that is read for a command line says and takes what the whole tree would. */
    @ParameterizedTest
    @MethodSource("commands")
    void aBranchIsTheWholeTreeWithTheOthersLeftOut(CommandLine command) {
        String[] names = command.getCommandSpec().qualifiedName().split(" ");
        String[] words = List.of(names).subList(1, names.length).toArray(new String[0]);
        CommandLine branch = Commands.branch(new Domefold(Cli.console(Path.of("unused"), new ByteArrayOutputStream(),
                new ByteArrayOutputStream(), StandardCharsets.UTF_8), FacesHere.of()), words);
        for (String word : words) {
            assertEquals(1, branch.getSubcommands().size(), word);
            branch = branch.getSubcommands().get(word);
        }
        assertEquals(command.getUsageMessage(CommandLine.Help.Ansi.OFF), branch.getUsageMessage(CommandLine.Help.Ansi.OFF));
    }

    @Test
    void saysItsVersionAndNothingElse() {
        Cli version = run("--version");
        assertEquals("domefold 0.1.0\n", version.out());
        assertEquals(Exit.DONE, version.exit());
    }

    @Test
    void aloneWithoutATerminalItPrintsItsHelpAndEndsWithTwo() {
        Cli alone = run("");
        assertEquals(Exit.WRONG_USAGE, alone.exit());
        assertTrue(alone.out().startsWith("Usage: domefold"), alone.out());
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource(delimiter = '|', value = {
        "plam | 2 | there is no command 'plam'",
        "evidence --loud | 2 | there is no option '--loud'",
        "catalogue list --as xml | 2 | 'xml' is not known; write text or json",
        "schedule US-2020 --fill gel --years 20 | 2 | Missing required option: '--from=DATE'",
        "schedule US-2020 --fill gel --from 2026-02-30 --years 20 | 2 | is no date",
        "schedule US-2020 --fill foam --from 2026-02-28 --years 20 | 2 | write saline or gel",
        "schedule US-2020 --fill gel --from 2026-02-28 --years 0 | 2 | '0' is not taken; write a whole number from 1 to 100",
        "schedule US-2020 --fill gel --from 2026-02-28 --years many | 2 | 'many' is not taken; write a whole number from 1 to 100",
        "schedule US-2020 --fill gel --from 2026-02-28 --years 2.5 | 2 | write a whole number from 1 to 100",
        "schedule NOWHERE-1 --fill gel --from 2026-02-28 --years 20 | 3 | there is no schedule 'NOWHERE-1'",
        "shape --half-width 6.55 --dome 2.45 --exponent 1.5 | 2 | --fill",
        "shape --half-width 6.55 --dome 2.45 --exponent 1.5 --fill 1 --volume 300 | 2 | mutually exclusive",
        "shape --half-width NaN --dome 2.45 --exponent 1.5 --fill 1 | 2 | 'NaN' is no number",
        "shape --half-width -6.55 --dome 2.45 --exponent 1.5 --fill 1 | 3 | half",
        "shape --half-width 6.55 --dome 2.45 --exponent 1.5 --fill 0.1 | 3 | half full",
        "catalogue check no-such-list.csv | 3 | there is no file",
        "catalogue check src | 3 | is a folder",
        "survival no-such-table.csv | 3 | there is no file",
        "survival shared/catalogue/invented.csv | 3 | right would be lower,upper",
        "survival | 2 | FILE.csv",
        "practise --level 4 --draw 7 | 2 | '4' is not taken; write a whole number from 1 to 3",
        "practise --level two | 2 | 'two' is not taken; write a whole number from 1 to 3",
        "practise --draw 0 | 2 | '0' is not taken; write a whole number from 1 to 2147483647",
        "practise --draw x | 2 | 'x' is not taken; write a whole number from 1 to 2147483647",
        "practise --draw 2147483648 | 2 | write a whole number from 1 to 2147483647",
        "practise --draw 99999999999 | 2 | write a whole number from 1 to 2147483647",
        "records show K-2041 --version-number x | 2 | write a whole number from 1 to 2147483647",
        "records show K-2041 --version-number 0 | 2 | write a whole number from 1 to 2147483647",
        "consult no-such-case.json | 3 | there is no file",
        "catalogue list --catalogue no-such-list.csv | 3 | there is no file"})
    void whatIsWrongIsSaidInOneSentenceOnStandardError(String line, int exit, String part) {
        Cli run = run(line);
        assertEquals(exit, run.exit(), run.err());
        assertTrue(run.err().contains(part), run.err());
        assertEquals(1, run.err().lines().count(), run.err());
        assertTrue(run.err().startsWith("domefold: "), run.err());
        assertEquals("", run.out());
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource(delimiter = '|', value = {
        "catalogue check no-such-list.csv --as json | 3 | no-such-file",
        "catalogue check --as=json src | 3 | directory",
        "schedule NOWHERE-1 --fill gel --from 2026-02-28 --years 20 --as json | 3 | unknown-schedule",
        "practise --as json | 2 | usage",
        "evidence --as json --loud | 2 | usage"})
    void withJsonTheErrorIsAnObjectOnStandardError(String line, int exit, String code) {
        Cli run = run(line);
        assertEquals(exit, run.exit());
        assertTrue(run.err().startsWith("{\"error\":{\"code\":\"" + code + "\",\"where\":\""), run.err());
        assertTrue(run.err().contains("\"text\":\""), run.err());
        assertEquals("", run.out());
    }

    @Test
    void aListOfAHundredMegabytesIsRefusedWithoutReadingIt() throws IOException {
        Path large = home.resolve("large.csv");
        try (RandomAccessFile file = new RandomAccessFile(large.toFile(), "rw")) {
            file.setLength(100L << 20);
        }
        Cli run = Cli.run(home, "catalogue", "check", large.toString());
        assertEquals(Exit.REFUSED, run.exit());
        assertTrue(run.err().contains("more than a device list can be"), run.err());
    }

    @Test
    void aListWithAFaultIsReportedInWholeAndEndsWithThree() throws IOException {
        Path file = home.resolve("list.csv");
        Files.writeString(file, String.join(",", domefold.device.CatalogueSheet.COLUMNS) + "\n"
                + "own,gel,smooth,moderate,300,,,126,126,3.6,a\nown,gel,smooth,moderate,300,,,12.6,12.6,3.6,b\n");
        Cli check = Cli.run(home, "catalogue", "check", file.toString());
        assertEquals(Exit.REFUSED, check.exit());
        assertTrue(check.out().contains("1 sound device, 2 faults, 0 queries."), check.out());
        assertTrue(check.err().contains("if it is in millimetres, write 12.6"), check.err());
        Cli list = Cli.run(home, "catalogue", "list", "--catalogue", file.toString());
        assertEquals(Exit.REFUSED, list.exit());
        assertEquals("", list.out());
    }

    @Test
    void theShippedListChecksClean() {
        Cli check = run("catalogue check shared/catalogue/invented.csv");
        assertEquals("shared/catalogue/invented.csv: 143 sound devices, 0 faults, 0 queries.\n", check.out());
        assertEquals(Exit.DONE, check.exit());
    }

    @Test
    void aFullDiskUnderStandardOutputIsTheWorldsFault() {
        ByteArrayOutputStream err = new ByteArrayOutputStream();
        int exit = CommandShell.run(new String[] {"catalogue", "list"},
                Cli.console(home, Cli.failing("No space left on device"), err, StandardCharsets.UTF_8));
        assertEquals(Exit.WORLD_FAILED, exit);
        assertEquals("domefold: No space left on device\n", err.toString(StandardCharsets.UTF_8));
    }

    @Test
    void aReaderThatWentAwayIsNoError() {
        ByteArrayOutputStream err = new ByteArrayOutputStream();
        int exit = CommandShell.run(new String[] {"catalogue", "list"},
                Cli.console(home, Cli.failing("Broken pipe"), err, StandardCharsets.UTF_8));
        assertEquals(Exit.DONE, exit);
        assertEquals("", err.toString(StandardCharsets.UTF_8));
    }

    @Test
    void aDefectOfOursIsOneSentenceWithTheDetailInAFile() throws IOException {
        ByteArrayOutputStream err = new ByteArrayOutputStream();
        Console console = Cli.console(home, Cli.failing("unused"), err, StandardCharsets.UTF_8);
        int exit = new ErrorReport(console, false).of(new IllegalStateException("the reason"));
        assertEquals(Exit.DEFECT, exit);
        String sentence = err.toString(StandardCharsets.UTF_8);
        assertEquals(1, sentence.lines().count());
        assertFalse(sentence.contains("IllegalState"), sentence);
        Path log = Path.of(sentence.substring(sentence.indexOf("is in ") + 6).strip());
        assertTrue(Files.readString(log).contains("IllegalStateException: the reason"));
    }

    @Test
    void aTerminalWithoutUtf8GetsAscii() {
        Cli run = Cli.run(home, StandardCharsets.US_ASCII, "schedule", "US-2020", "--fill", "gel", "--from", "2026-03-04",
                "--years", "20");
        assertTrue(run.out().chars().allMatch(c -> c < 128), run.out());
        assertTrue(run.out().contains("2031-03-04   2032-03-04"));
    }

    /** A number that the program prints is a number it takes: {@code 0.9500000000000001} has sixteen decimals. */
    @Test
    void aNumberWithEveryDigitOfADoubleIsTaken() {
        String shell = "shape --half-width 6.549999999999999822 --dome 2.4500000000000002 --exponent 1.5 --fill ";
        Cli run = run(shell + "0.9500000000000001 --as json");
        assertEquals(Exit.DONE, run.exit(), run.err());
        assertTrue(run.out().contains("\"state\" : \"slack\""), run.out());
    }

    @ParameterizedTest
    @ValueSource(strings = {"evidence", "catalogue list", "catalogue check shared/catalogue/invented.csv",
        "schedule US-2020 --fill gel --from 2026-03-04 --years 20",
        "shape --half-width 6.55 --dome 2.45 --exponent 1.5 --fill 0.9"})
    void everyTextStaysWithinEightyColumnsAndEveryJsonNamesItsFormat(String line) {
        Cli text = run(line);
        assertEquals(List.of(), text.out().lines().filter(one -> one.codePointCount(0, one.length()) > 80).toList());
        Cli json = run(line + " --as json");
        assertEquals(Exit.DONE, json.exit());
        assertTrue(json.out().startsWith("{\n  \"format\" : \"domefold-"), json.out());
    }

    @Test
    void theSameNumberDrawsTheSamePatientAndHerCaseIsOneThatPlanTakes() throws IOException {
        Cli drawn = run("practise --level 2 --draw 7 --as json");
        assertEquals(Exit.DONE, drawn.exit(), drawn.err());
        assertEquals(drawn.out(), run("practise --level 2 --draw 7 --as json").out());
        Path file = home.resolve("drawn.json");
        Files.writeString(file, new ObjectMapper().readTree(drawn.out()).get("case").toString());
        assertEquals(Exit.DONE, Cli.run(home, "plan", file.toString()).exit());
    }

    @Test
    void nothingInAFileCanSteerTheTerminal() throws IOException {
        Path file = home.resolve("list.csv");
        Files.writeString(file, "# name: red\u001b[31m\u202e\n" + String.join(",", domefold.device.CatalogueSheet.COLUMNS)
                + "\nown\u001b]0;x\u0007,gel,smooth,moderate,300,,,12.6,12.6,3.6,a\n");
        Cli list = Cli.run(home, "catalogue", "list", "--catalogue", file.toString());
        assertEquals(Exit.DONE, list.exit());
        assertTrue(list.out().chars().noneMatch(c -> c == 0x1b || c == 7 || c == 0x202e), list.out());
    }
}
