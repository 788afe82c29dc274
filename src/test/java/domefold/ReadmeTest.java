package domefold;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** The screens in the README are the approved ones; {@code -Dapproved.update=true} puts them in. */
class ReadmeTest {
    private static final Pattern BLOCK = Pattern.compile("<!-- screen: ([a-z0-9-]+) -->\\n```\\n(.*?)```", Pattern.DOTALL);

    @Test
    void showsTheScreensAsTheyAre() throws IOException {
        Path readme = Path.of("README.md");
        String text = Files.readString(readme);
        assertTrue(BLOCK.matcher(text).find(), "the README shows screens");
        String current = BLOCK.matcher(text).replaceAll(ReadmeTest::current);
        if (Boolean.getBoolean("approved.update")) {
            Files.writeString(readme, current);
            return;
        }
        assertEquals(current, text);
    }

    private static String current(MatchResult block) {
        try {
            String picture = Files.readString(Path.of("src/test/resources/approved", block.group(1) + ".txt"));
            return java.util.regex.Matcher.quoteReplacement("<!-- screen: " + block.group(1) + " -->\n```\n" + picture + "```");
        } catch (IOException missing) {
            throw new java.io.UncheckedIOException(missing);
        }
    }
}
