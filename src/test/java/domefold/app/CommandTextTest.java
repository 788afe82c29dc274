package domefold.app;

import static org.junit.jupiter.api.Assertions.assertEquals;

import domefold.Approved;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What the commands print, as approved texts. */
class CommandTextTest {
    @TempDir
    private Path home;

    @ParameterizedTest(name = "{0}")
    @CsvSource({"help, --help",
        "schedule, schedule US-2020 --fill gel --from 2024-02-29 --years 20",
        "schedule-json, schedule US-2020 --fill gel --from 2024-02-29 --years 20 --as json",
        "shape, shape --half-width 6.55 --dome 2.45 --exponent 1.5 --fill 0.9",
        "shape-beyond, shape --half-width 6.55 --dome 2.45 --exponent 1.5 --volume 500",
        "evidence-invented-list, evidence invented list fill"})
    void looksAsApproved(String name, String line) {
        Cli run = Cli.run(home, line.split(" "));
        assertEquals(Exit.DONE, run.exit(), run.err());
        Approved.check("command-" + name, run.out());
    }

    @Test
    void aCheckedListLooksAsApproved() throws IOException {
        Path list = home.resolve("list.csv");
        Files.writeString(list, String.join(",", domefold.device.CatalogueSheet.COLUMNS) + "\n"
                + "own,gel,smooth,moderate,300,,,126,126,3.6,a\nown,gel,smooth,moderate,400,,,12,12,4,b\n"
                + "own,saline,smooth,moderate,300,310,330,12.6,12.6,3.6,c\nown,gel,smooth,moderate,300,,,12.6,12.6,3.6,d\n");
        Approved.check("command-catalogue-check", Cli.run(home, "catalogue", "check", list.toString()).out()
                .replace(list.toString(), "list.csv"));
    }

    @Test
    void aFitLooksAsApproved() throws IOException {
        Path table = home.resolve("follow-up.csv");
        Files.writeString(table, "lower,upper\n3,\n0,2\n4,4\n5,7\n6,\n10,\n8.5,8.5\n");
        Approved.check("command-survival", Cli.run(home, "survival", table.toString()).out());
    }
}
