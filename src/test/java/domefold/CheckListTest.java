package domefold;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import domefold.evidence.Table;
import domefold.store.EvidenceFiles;
import java.io.IOException;
import java.lang.reflect.Method;
import java.net.URISyntaxException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Every row of checks.csv has a test that names it, and no test names a row that is not there. */
class CheckListTest {
    @Test
    void everyCheckOfTheTableHasATest() throws Exception {
        Set<String> named = named();
        List<String> untested = EvidenceFiles.resource("checks").rows().stream().map(row -> row.text("id"))
                .filter(id -> !named.contains(id)).toList();
        assertEquals(List.of(), untested);
    }

    @Test
    void noTestNamesACheckThatIsNotThere() throws Exception {
        Set<String> known = new TreeSet<>();
        for (Table.Row row : EvidenceFiles.resource("checks").rows()) {
            known.add(row.text("id"));
        }
        Set<String> unknown = new TreeSet<>(named());
        assertTrue(unknown.size() > 50, "the annotations were not found");
        unknown.removeAll(known);
        assertEquals(Set.of(), unknown);
    }

    private static Set<String> named() throws IOException, URISyntaxException, ClassNotFoundException {
        Path classes = Path.of(Check.class.getProtectionDomain().getCodeSource().getLocation().toURI());
        Set<String> ids = new TreeSet<>();
        try (Stream<Path> files = Files.walk(classes)) {
            for (Path file : files.filter(path -> path.toString().endsWith("Test.class")).sorted().toList()) {
                String name = classes.relativize(file).toString().replace(file.getFileSystem().getSeparator(), ".");
                Class<?> type = Class.forName(name.substring(0, name.length() - ".class".length()), false,
                        Check.class.getClassLoader());
                add(ids, type.getAnnotation(Check.class));
                for (Method method : type.getDeclaredMethods()) {
                    add(ids, method.getAnnotation(Check.class));
                }
            }
        }
        return ids;
    }

    private static void add(Set<String> ids, Check check) {
        if (check != null) {
            ids.addAll(Arrays.asList(check.value()));
        }
    }
}
