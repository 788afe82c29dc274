package domefold.app;

import java.nio.file.Path;
import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code domefold consult}. */
@Command(name = "consult", description = "Leads a consult, empty or from a case file.",
        footer = {"", "Example: domefold consult demo-data/ordinary.json"})
final class ConsultCommand implements Runner {
    private final Domefold root;

    @Parameters(arity = "0..1", paramLabel = "CASE.json", description = "The case to start from.")
    private Path file;

    @Option(names = "--line", description = "Line by line instead of full screen; by itself where there is no full screen.")
    private boolean line;

    ConsultCommand(Domefold root) {
        this.root = root;
    }

    @Override
    public int run() throws Exception {
        Optional<Path> from = Optional.ofNullable(file).map(root.console()::path);
        return root.faces().consult(root.console(), () -> root.bench(null), from, line);
    }
}
