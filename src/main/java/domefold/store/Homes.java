package domefold.store;

import domefold.outcome.Refusal;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;

/**
 * Where things live: under one folder of the user's choice, else by the XDG Base Directory Specification 0.8, whose
 * variables count only when they hold an absolute path.
 *
 * @param data records
 * @param config settings
 * @param state journals of unfinished consults, and the log
 * @param cache what can be rebuilt
 */
public record Homes(Path data, Path config, Path state, Path cache) {
    public static final String VARIABLE = "DOMEFOLD_HOME";
    private static final String NAME = "domefold";

    /**
     * @param option the value of {@code --home}; blank counts as absent
     * @param environment variables
     * @param userHome the user's home folder
     * @param current what a relative {@code --home} is relative to
     * @throws Refusal if the variable names a path that is not absolute: it would mean another folder from each place
     */
    public static Homes of(Optional<String> option, Map<String, String> environment, Path userHome, Path current) {
        Optional<String> asked = option.filter(text -> !text.isBlank());
        if (asked.isPresent()) {
            return under(current.toAbsolutePath().resolve(path(asked.get(), "--home")).normalize());
        }
        String variable = environment.getOrDefault(VARIABLE, "");
        if (!variable.isBlank()) {
            Path home = path(variable, VARIABLE);
            if (!home.isAbsolute()) {
                throw new Refusal("home-not-absolute", VARIABLE, VARIABLE + " is " + Shown.quoted(variable)
                        + "; it should be an absolute path, so that it means the same folder from everywhere");
            }
            return under(home.normalize());
        }
        return new Homes(xdg(environment, "XDG_DATA_HOME", userHome.resolve(".local/share")),
                xdg(environment, "XDG_CONFIG_HOME", userHome.resolve(".config")),
                xdg(environment, "XDG_STATE_HOME", userHome.resolve(".local/state")),
                xdg(environment, "XDG_CACHE_HOME", userHome.resolve(".cache")));
    }

    private static Homes under(Path home) {
        return new Homes(home, home, home, home.resolve("cache"));
    }

    private static Path xdg(Map<String, String> environment, String variable, Path otherwise) {
        String value = environment.getOrDefault(variable, "");
        return (value.startsWith("/") ? path(value, variable) : otherwise).resolve(NAME);
    }

    private static Path path(String text, String from) {
        try {
            return Path.of(text);
        } catch (java.nio.file.InvalidPathException wrong) {
            throw new Refusal("bad-path", from, from + " is " + Shown.quoted(text) + ", which is no path");
        }
    }

    public Path records() {
        return data.resolve("records");
    }

    /** Records of invented patients live apart. */
    public Path practice() {
        return data.resolve("practice");
    }

    public Path settings() {
        return config.resolve("settings.json");
    }

    public Path journals() {
        return state.resolve("journal");
    }

    public Path log() {
        return state.resolve("log");
    }
}
