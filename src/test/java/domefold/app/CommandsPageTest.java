package domefold.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import picocli.CommandLine;

/** {@code docs/commands.md} is the help of every command; {@code -Dapproved.update=true} writes it anew. */
class CommandsPageTest {
    @Test
    void thePageIsTheHelpOfEveryCommand() throws IOException {
        StringBuilder page = new StringBuilder("# Commands\n\nWritten from the program's own help.\n");
        write(Commands.whole(new Domefold(Console.ofProcess(), FacesHere.of())), page);
        Path file = Path.of("docs/commands.md");
        if (Boolean.getBoolean("approved.update")) {
            Files.writeString(file, page.toString());
            return;
        }
        assertEquals(page.toString(), Files.readString(file), "docs/commands.md is stale; run with -Dapproved.update=true");
    }

    private static void write(CommandLine command, StringBuilder page) {
        String help = command.getUsageMessage(CommandLine.Help.Ansi.OFF);
        String name = command.getCommandSpec().qualifiedName();
        page.append("\n## ").append(name).append("\n\n```\n").append(help.stripTrailing()).append("\n```\n");
        assertTrue(help.contains("Example:") || !command.getSubcommands().isEmpty(), name + " shows an example");
        command.getSubcommands().values().stream().distinct().forEach(sub -> write(sub, page));
    }
}
