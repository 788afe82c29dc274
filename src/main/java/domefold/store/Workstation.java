package domefold.store;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;

/**
 * The machine that saves; it names the audit log. Two machines of one name share a log, which is safe on one file system
 * and only courteous on a network share.
 *
 * @param name letters, digits and dashes
 */
public record Workstation(String name) {
    private static final int LONGEST = 40;

    public Workstation {
        String plain = name.replaceAll("[^A-Za-z0-9-]+", "-").replaceAll("^-+|-+$", "");
        name = plain.isEmpty() ? "workstation" : plain.substring(0, Math.min(LONGEST, plain.length()));
    }

    /** This machine by its host name, without asking the network. */
    public static Workstation here(Map<String, String> environment) {
        for (String variable : new String[] {"COMPUTERNAME", "HOSTNAME"}) {
            if (!environment.getOrDefault(variable, "").isBlank()) {
                return new Workstation(environment.get(variable));
            }
        }
        try {
            return new Workstation(Files.readString(Path.of("/etc/hostname")).strip());
        } catch (IOException noSuchFile) {
            return new Workstation("");
        }
    }
}
