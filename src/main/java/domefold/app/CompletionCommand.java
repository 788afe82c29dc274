package domefold.app;

import picocli.AutoComplete;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** {@code domefold completion}. */
@Command(name = "completion", description = "Prints a completion script for bash and zsh.",
        footer = {"", "Example: domefold completion > ~/.domefold-completion.bash"})
final class CompletionCommand implements Runner {
    private final Domefold root;

    @Spec
    private CommandSpec spec;

    CompletionCommand(Domefold root) {
        this.root = root;
    }

    @Override
    public int run() {
        CommandLine whole = spec.parent().commandLine();
        root.console().text(AutoComplete.bash("domefold", whole));
        return Exit.DONE;
    }
}
