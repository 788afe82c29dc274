package domefold.store;

import java.io.IOException;
import java.io.InputStream;
import java.util.Optional;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;

/**
 * What the program carries: tables, lists, its version. Started as one jar it looks into that jar itself; asking the class loader,
 * which asks the loaders above it and makes an address and a connection of each name, takes some ten times as long.
 */
final class Shipped {
    private Shipped() {}

    /** The bytes of {@code shared/evidence/topics.csv}, say; empty where the program was built without it. */
    static Optional<byte[]> bytes(String name) throws IOException {
        return Jar.OURS.isPresent() ? fromJar(Jar.OURS.get(), name) : fromClassPath(name);
    }

    private static Optional<byte[]> fromJar(ZipFile jar, String name) throws IOException {
        ZipEntry entry = jar.getEntry(name);
        if (entry == null) {
            return Optional.empty();
        }
        try (InputStream in = jar.getInputStream(entry)) {
            return Optional.of(in.readAllBytes());
        }
    }

    private static Optional<byte[]> fromClassPath(String name) throws IOException {
        try (InputStream in = Shipped.class.getResourceAsStream("/" + name)) {
            return in == null ? Optional.empty() : Optional.of(in.readAllBytes());
        }
    }

    /** Open as long as the process runs, as the class loader keeps it. */
    private static final class Jar {
        static final Optional<ZipFile> OURS = ours();

        private static Optional<ZipFile> ours() {
            String path = System.getProperty("java.class.path", "");
            if (!path.endsWith("domefold.jar")) {
                return Optional.empty();
            }
            try {
                return Optional.of(new ZipFile(path));
            } catch (IOException severalJarsOrNone) {
                return Optional.empty();
            }
        }
    }
}
