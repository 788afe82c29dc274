package domefold.app;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.jar.JarEntry;
import java.util.jar.JarFile;

/** Copies the licence and notice texts that the libraries carry into a folder, one file each; see {@code scripts/package}. */
final class Licences {
    private Licences() {}

    /** @param args the folder */
    public static void main(String[] args) throws IOException {
        Path folder = Path.of(args[0]);
        Files.createDirectories(folder);
        List<String> without = new ArrayList<>();
        for (Path jar : ClassArchive.jars(List.of(""))) {
            if (copied(jar, folder) == 0) {
                without.add(jar.getFileName().toString());
            }
        }
        Files.writeString(folder.resolve("README.txt"), "Licences and notices as the libraries carry them.\n"
                + "Without a text of their own inside: " + String.join(", ", without) + ".\n"
                + "README.md beside this says which licence each is under.\n");
    }

    private static int copied(Path jar, Path folder) throws IOException {
        int copied = 0;
        try (JarFile file = new JarFile(jar.toFile())) {
            for (JarEntry entry : file.stream().toList()) {
                String name = entry.getName().toUpperCase(Locale.ROOT);
                if (!entry.isDirectory() && (name.contains("LICENSE") || name.contains("NOTICE") || name.contains("COPYING"))) {
                    String to = jar.getFileName().toString().replace(".jar", "") + "-" + entry.getName().replace('/', '-');
                    Files.write(folder.resolve(to), file.getInputStream(entry).readAllBytes());
                    copied++;
                }
            }
        }
        return copied;
    }
}
