package domefold.app;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.Function;
import picocli.CommandLine;

/**
 * The tree of commands. A command is read from its annotations when it is built, which costs a start more than the command
 * itself may, so a command line that plainly names one gets a tree with that branch alone.
 */
final class Commands {
    private static final int COLUMNS = 80;
    private static final Map<String, Function<Domefold, Object>> ALL = new LinkedHashMap<>();

    static {
        ALL.put("consult", ConsultCommand::new);
        ALL.put("plan", root -> new PlanCommand(root).described());
        ALL.put("practise", PractiseCommand::new);
        ALL.put("records", RecordsCommand::new);
        ALL.put("catalogue", CatalogueCommand::new);
        ALL.put("evidence", EvidenceCommand::new);
        ALL.put("shape", ShapeCommand::new);
        ALL.put("schedule", ScheduleCommand::new);
        ALL.put("survival", SurvivalCommand::new);
        ALL.put("completion", CompletionCommand::new);
    }

    private static final Map<String, Map<String, Function<Domefold, Object>>> BELOW =
            Map.of("records", RecordsCommand.BELOW, "catalogue", CatalogueCommand.BELOW);

    private Commands() {}

    /** Every command. */
    static CommandLine whole(Domefold root) {
        return tree(root);
    }

    /** The branch these words begin with; every command where they begin with none. */
    static CommandLine branch(Domefold root, String... words) {
        return tree(root, words);
    }

    private static CommandLine tree(Domefold root, String... words) {
        CommandLine line = new CommandLine(root.described());
        chosen(ALL, 0, words).forEach((name, command) -> {
            CommandLine below = new CommandLine(command.apply(root));
            chosen(BELOW.getOrDefault(name, Map.of()), 1, words).forEach((n, leaf) -> below.addSubcommand(n, leaf.apply(root)));
            line.addSubcommand(name, below);
        });
        line.setUsageHelpWidth(COLUMNS);
        line.setUsageHelpAutoWidth(false);
        line.setExpandAtFiles(false);
        line.setOverwrittenOptionsAllowed(false);
        return line;
    }

    private static Map<String, Function<Domefold, Object>> chosen(
            Map<String, Function<Domefold, Object>> all, int place, String... words) {
        return place < words.length && all.containsKey(words[place]) ? Map.of(words[place], all.get(words[place])) : all;
    }
}
