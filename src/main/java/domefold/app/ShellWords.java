package domefold.app;

import domefold.records.RecordHeader;
import domefold.store.Homes;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.jline.reader.Candidate;
import org.jline.reader.Completer;
import org.jline.reader.LineReader;
import org.jline.reader.ParsedLine;
import picocli.CommandLine;

/** What may be completed in the coordinator's shell: commands, case codes, options and their words. */
final class ShellWords implements Completer {
    private static final List<String> OWN = List.of("list", "calendar", "help", "leave");

    private final Homes homes;
    private final CommandLine records;
    private List<String> codes;

    ShellWords(Homes homes) {
        this.homes = homes;
        ByteArrayOutputStream nowhere = new ByteArrayOutputStream();
        this.records = Commands.branch(new Domefold(new Console(nowhere, nowhere, Map.of(), Path.of(""), Clock.systemUTC(), false,
                StandardCharsets.UTF_8), FacesHere.of()), "records").getSubcommands().get("records");
    }

    boolean isCommand(String word) {
        return records.getSubcommands().containsKey(word) || word.startsWith("-");
    }

    /** The codes are read anew: another workstation may have saved since. */
    void forget() {
        codes = null;
    }

    @Override
    public void complete(LineReader reader, ParsedLine line, List<Candidate> candidates) {
        words(line.words(), line.wordIndex()).forEach(word -> candidates.add(new Candidate(word)));
    }

    /** What may stand at that place of the line. */
    Set<String> words(List<String> line, int index) {
        Set<String> found = new TreeSet<>();
        if (index == 0) {
            found.addAll(records.getSubcommands().keySet());
            found.addAll(OWN);
            found.addAll(codes());
            return found;
        }
        String command = line.get(0);
        String before = line.get(index - 1);
        CommandLine.Model.OptionSpec asked = records.getSubcommands().containsKey(command)
                ? records.getSubcommands().get(command).getCommandSpec().findOption(before) : null;
        if (asked != null && asked.completionCandidates() != null) {
            asked.completionCandidates().forEach(found::add);
        } else if (command.equals("mark") && index == 2) {
            found.addAll(List.of("ordered", "booked", "done"));
        } else {
            CommandLine of = records.getSubcommands().get(command);
            if (of != null) {
                of.getCommandSpec().options().forEach(option -> found.add(option.longestName()));
            }
            found.addAll(codes());
        }
        return found;
    }

    private List<String> codes() {
        if (codes == null) {
            codes = new ArrayList<>();
            try {
                new RecordRoom(homes).opened().list().all().stream().map(RecordHeader::id).forEach(codes::add);
            } catch (IOException nothingToComplete) {
                return codes;
            }
        }
        return codes;
    }
}
