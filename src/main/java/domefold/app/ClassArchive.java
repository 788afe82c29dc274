package domefold.app;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.jar.JarFile;

/**
 * Loads what a start needs, so that the JVM can archive it when this ends: every class of this program and of the terminal
 * libraries, then one plan for what the JDK brings. Run once when the program is built; see {@code scripts/lib.sh}.
 */
final class ClassArchive {
    private static final List<String> LIBRARIES = List.of("domefold", "lanterna", "jline", "picocli", "fastcsv");

    private ClassArchive() {}

    /** @param args the command line of an ordinary run */
    public static void main(String[] args) throws IOException {
        int loaded = 0;
        for (Path jar : jars(LIBRARIES)) {
            for (String name : classes(jar)) {
                loaded += load(name) ? 1 : 0;
            }
        }
        System.err.println(loaded + " classes loaded");
        System.exit(CommandShell.run(args, Console.ofProcess()));
    }

    /** The program's own jar and those of its libraries whose file name holds one of these words. */
    static List<Path> jars(List<String> words) throws IOException {
        Path own = Path.of(ClassArchive.class.getProtectionDomain().getCodeSource().getLocation().getPath());
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
            return file.stream().map(entry -> entry.getName())
                    .filter(name -> name.endsWith(".class") && !name.startsWith("META-INF") && !name.contains("module-info"))
                    .filter(name -> !name.contains("/gui2/") && !name.contains("/swing/"))
                    .map(name -> name.substring(0, name.length() - ".class".length()).replace('/', '.')).toList();
        }
    }

    private static boolean load(String name) {
        try {
            Class.forName(name, false, ClassArchive.class.getClassLoader());
            return true;
        } catch (LinkageError | ClassNotFoundException needsWhatIsNotHere) {
            return false;
        }
    }
}
