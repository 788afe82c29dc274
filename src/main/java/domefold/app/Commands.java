package domefold.app;

import java.util.List;
import picocli.CommandLine;

/**
 * The tree of commands. A command is described when it is built, which costs a start more than the command itself may, so a
 * command line that plainly names one gets a tree with that branch alone.
 */
final class Commands {
    private static final int COLUMNS = 80;
    private static final List<String> ALL = List.of("consult", "plan", "practise", "records", "catalogue", "evidence", "shape",
            "schedule", "survival", "completion");

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
        for (String name : chosen(ALL, 0, words)) {
            CommandLine command = new CommandLine(command(name, root));
            for (String leaf : chosen(leaves(name), 1, words)) {
                command.addSubcommand(leaf, name.equals("records") ? RecordsCommand.leaf(leaf, root) : CatalogueCommand.leaf(leaf, root));
            }
            line.addSubcommand(name, command);
        }
        line.setUsageHelpWidth(COLUMNS);
        line.setUsageHelpAutoWidth(false);
        line.setExpandAtFiles(false);
        line.setOverwrittenOptionsAllowed(false);
        return line;
    }

    private static List<String> chosen(List<String> all, int place, String... words) {
        return place < words.length && all.contains(words[place]) ? List.of(words[place]) : all;
    }

    private static Object command(String name, Domefold root) {
        return switch (name) {
            case "consult" -> new ConsultCommand(root);
            case "plan" -> new PlanCommand(root).described();
            case "practise" -> new PractiseCommand(root);
            case "records" -> new RecordsCommand(root);
            case "catalogue" -> new CatalogueCommand(root);
            case "evidence" -> new EvidenceCommand(root);
            case "shape" -> new ShapeCommand(root);
            case "schedule" -> new ScheduleCommand(root);
            case "survival" -> new SurvivalCommand(root);
            case "completion" -> new CompletionCommand(root);
            default -> throw new IllegalArgumentException("no command " + name);
        };
    }

    private static List<String> leaves(String name) {
        return switch (name) {
            case "records" -> RecordsCommand.LEAVES;
            case "catalogue" -> CatalogueCommand.LEAVES;
            default -> List.of();
        };
    }
}
