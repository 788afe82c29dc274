package domefold.app;

import domefold.store.ProgramVersion;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine;

/** Takes the arguments apart, runs the command and turns whatever it threw into a sentence and an exit code. */
public final class CommandShell {
    private CommandShell() {}

    /** Runs one command line and returns its exit code; throws nothing. */
    public static int run(String[] args, Console console) {
        return run(args, console, FacesHere.of());
    }

    static int run(String[] args, Console console, Faces faces) {
        return run(args, console, new Domefold(console, faces));
    }

    /** Under a root whose home is settled already. */
    static int run(String[] args, Console console, Domefold root) {
        ErrorReport errors = new ErrorReport(console, asksForJson(args));
        try {
            if (args.length == 0 && console.terminal()) {
                // Nothing to take apart, and the start screen is up sooner without the parser's classes.
                return root.run();
            }
            Optional<Runner> plain = PlanCommand.plain(root, args);
            if (plain.isPresent()) {
                return plain.get().run();
            }
            CommandLine.ParseResult parsed = parsed(root, args);
            CommandLine asked = helpAsked(parsed);
            if (asked != null) {
                console.text(asked.getUsageMessage(CommandLine.Help.Ansi.OFF));
                return Exit.DONE;
            }
            if (parsed.isVersionHelpRequested()) {
                console.text("domefold " + ProgramVersion.text() + "\n");
                return Exit.DONE;
            }
            return command(parsed).run();
        } catch (CommandLine.ParameterException wrong) {
            return errors.wrongUsage(sentence(wrong));
        } catch (ReaderGone nobodyReads) {
            return Exit.DONE;
        } catch (Exception | StackOverflowError | OutOfMemoryError | LinkageError | AssertionError thrown) {
            return errors.of(thrown);
        }
    }

    /** By the branch that is named, and where that does not fit by the whole tree, whose suggestions know every command. */
    private static CommandLine.ParseResult parsed(Domefold root, String... args) {
        try {
            return Commands.branch(root, args).parseArgs(args);
        } catch (CommandLine.ParameterException wrong) {
            return Commands.whole(root).parseArgs(args);
        }
    }

    private static Runner command(CommandLine.ParseResult parsed) {
        CommandLine.ParseResult deepest = parsed;
        while (deepest.hasSubcommand()) {
            deepest = deepest.subcommand();
        }
        return (Runner) deepest.commandSpec().userObject();
    }

    private static CommandLine helpAsked(CommandLine.ParseResult parsed) {
        for (CommandLine.ParseResult part = parsed; ; part = part.subcommand()) {
            if (part.isUsageHelpRequested()) {
                return part.commandSpec().commandLine();
            }
            if (!part.hasSubcommand()) {
                return null;
            }
        }
    }

    private static String sentence(CommandLine.ParameterException wrong) {
        CommandLine.Model.CommandSpec at = wrong.getCommandLine().getCommandSpec();
        String see = "see '" + at.qualifiedName() + " --help'";
        if (wrong instanceof CommandLine.UnmatchedArgumentException unmatched) {
            String first = unmatched.getUnmatched().get(0);
            String what = first.startsWith("-") ? "there is no option '" + first + "'" : at.subcommands().isEmpty()
                    ? "'" + first + "' is one argument too many" : "there is no command '" + first + "'";
            List<String> near = unmatched.getSuggestions();
            return what + (near.isEmpty() ? "; " : "; did you mean " + String.join(" or ", near) + "? ") + see;
        }
        String message = wrong.getMessage().strip().replaceAll("\\s*\\R\\s*", "; ").replaceFirst("^Error: ", "");
        return message.replaceAll("[.]$", "") + "; " + see;
    }

    /** Known before the arguments are understood, so that a wrong one is reported as asked. */
    static boolean asksForJson(String[] args) {
        List<String> list = Arrays.asList(args);
        int at = list.indexOf("--as");
        return list.contains("--as=json") || at >= 0 && at + 1 < list.size() && list.get(at + 1).equals("json");
    }
}
