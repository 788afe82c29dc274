package domefold.app;

import domefold.outcome.Refusal;
import picocli.CommandLine.Option;

/** The option that says who enters something. */
final class By {
    @Option(names = "--by", paramLabel = "NAME", description = "Who enters it; otherwise the user of this machine.")
    private String name;

    String name(Console console) {
        String typed = name != null ? name : console.environment().getOrDefault("USER",
                console.environment().getOrDefault("USERNAME", System.getProperty("user.name", "")));
        if (typed.isBlank()) {
            throw new Refusal("nobody", "--by", "say who enters it: --by NAME");
        }
        return typed.strip();
    }
}
