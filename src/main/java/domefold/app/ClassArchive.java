package domefold.app;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.net.URI;
import java.net.URL;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.List;
import java.util.jar.JarFile;
import org.jline.nativ.OSInfo;

/**
 * Does in one process what a day's starts do, so that the JVM can list the classes they use: the plan of a case, a consult
 * line by line, a search among records, and on a terminal the start screen. Every other class of this program is loaded too, so
 * that there is an archive of all; the one of a plan alone is made of its part.
 * Run once when the program is built; see {@code scripts/lib.sh}.
 */
final class ClassArchive {
    private static final int LOOK_MS = 2000;
    private static final int LONGEST_MS = 60_000;

    private ClassArchive() {}

    /** @param args a case file for a plan and nothing else, or that and the folder for what the system's own calls are made through */
    public static void main(String[] args) throws IOException {
        endAfter(LONGEST_MS);
        Console here = Console.ofProcess();
        Console nowhere = new Console(OutputStream.nullOutputStream(), OutputStream.nullOutputStream(), here.environment(),
                here.folder(), here.clock(), false, StandardCharsets.UTF_8,
                new ByteArrayInputStream("summary\nleave\n".getBytes(StandardCharsets.UTF_8)));
        load(Main.class.getName());
        HeadStart.begin("plan", args[0], "--as", "json");
        CommandShell.run(new String[] {"plan", args[0], "--as", "json"}, nowhere);
        CommandShell.run(new String[] {"plan", args[0]}, nowhere);
        if (args.length == 1) {
            return;
        }
        terminalCalls(Path.of(args[1]));
        CommandShell.run(new String[] {"consult", args[0], "--line"}, nowhere);
        CommandShell.run(new String[] {"records", "find"}, nowhere);
        for (String name : classes(jars(List.of()).get(0))) {
            load(name);
        }
        if (here.terminal()) {
            endAfter(LOOK_MS);
            CommandShell.run(new String[0], here);
        }
        System.exit(Exit.DONE);
    }

    /** Takes the terminal library's native half out of its jar, which it would do at each start. */
    private static void terminalCalls(Path folder) throws IOException {
        String place = OSInfo.getNativeLibFolderPathForCurrentOS() + "/" + System.mapLibraryName("jlinenative");
        try (InputStream in = OSInfo.class.getResourceAsStream("/org/jline/nativ/" + place)) {
            if (in != null) {
                Path file = folder.resolve(place);
                Files.createDirectories(file.getParent());
                Files.copy(in, file, StandardCopyOption.REPLACE_EXISTING);
            }
        }
    }

    /** Nobody sits at the terminal of a build, so nobody can leave the start screen. */
    private static void endAfter(int milliseconds) {
        Thread ending = new Thread(() -> {
            try {
                Thread.sleep(milliseconds);
            } catch (InterruptedException sooner) {
                Thread.currentThread().interrupt();
            }
            System.exit(Exit.DONE);
        }, "end of the rehearsal");
        ending.setDaemon(true);
        ending.start();
    }

    /** Where a file lies whose address may spell blanks as {@code %20}. */
    static Path path(URL address) {
        return Path.of(URI.create(address.toString()));
    }

    /** The program's own jar and those of its libraries whose file name holds one of these words. */
    static List<Path> jars(List<String> words) throws IOException {
        Path own = path(ClassArchive.class.getProtectionDomain().getCodeSource().getLocation());
        List<Path> jars = new ArrayList<>(List.of(own));
        try (JarFile file = new JarFile(own.toFile())) {
            for (String entry : file.getManifest().getMainAttributes().getValue("Class-Path").split(" ")) {
                if (words.stream().anyMatch(entry::contains)) {
                    jars.add(own.resolveSibling(entry));
                }
            }
        }
        return jars;
    }

    private static List<String> classes(Path jar) throws IOException {
        try (JarFile file = new JarFile(jar.toFile())) {
            return file.stream().map(entry -> entry.getName()).filter(name -> name.endsWith(".class"))
                    .map(name -> name.substring(0, name.length() - ".class".length()).replace('/', '.')).toList();
        }
    }

    private static void load(String name) {
        try {
            Class.forName(name, false, ClassArchive.class.getClassLoader());
        } catch (LinkageError | ClassNotFoundException needsWhatIsNotHere) {
            // A class that cannot be loaded here is not archived; the program does not miss it.
        }
    }
}
