package domefold.app;

import picocli.AutoComplete;
import picocli.CommandLine.Command;

/** {@code domefold completion}. */
@Command(name = "completion", description = "Prints a completion script for bash and zsh.",
        footer = {"", "Example: domefold completion > ~/.domefold-completion.bash"})
final class CompletionCommand implements Runner {
    private final Domefold root;

    CompletionCommand(Domefold root) {
        this.root = root;
    }

    @Override
    public int run() {
        root.console().text(AutoComplete.bash("domefold", Commands.whole(root)));
        return Exit.DONE;
    }
}
