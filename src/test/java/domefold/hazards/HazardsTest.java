package domefold.hazards;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.lang.annotation.Annotation;
import java.net.URISyntaxException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.platform.commons.annotation.Testable;

/** docs/hazards.md names for every hazard the tests that prove its controls; here each of them is looked for. */
class HazardsTest {
    private static final Path PAGE = Path.of("docs/hazards.md");
    private static final Pattern NAMED = Pattern.compile("`(\\w+Test)\\.(\\w+)`");
    private static final Pattern HEADING = Pattern.compile("## (H\\d+) .*");

    private static Map<String, List<String>> testsByHazard() throws IOException {
        Map<String, List<String>> tests = new TreeMap<>();
        String hazard = "";
        for (String line : Files.readAllLines(PAGE)) {
            Matcher heading = HEADING.matcher(line);
            if (heading.matches()) {
                hazard = heading.group(1);
                tests.put(hazard, new ArrayList<>());
            }
            Matcher named = NAMED.matcher(line);
            while (named.find()) {
                tests.get(hazard).add(named.group(1) + "." + named.group(2));
            }
        }
        return tests;
    }

    @Test
    void everyHazardNamesATestAndEveryTestNamedIsThere() throws Exception {
        Map<String, List<String>> tests = testsByHazard();
        assertEquals(13, tests.size(), tests.keySet().toString());
        tests.forEach((hazard, names) -> assertTrue(!names.isEmpty(), hazard + " names no test"));
        Map<String, Class<?>> classes = testClasses();
        List<String> missing = new ArrayList<>();
        for (List<String> names : tests.values()) {
            for (String name : names) {
                Class<?> type = classes.get(name.substring(0, name.indexOf('.')));
                String method = name.substring(name.indexOf('.') + 1);
                if (type == null || Arrays.stream(type.getDeclaredMethods()).noneMatch(each -> each.getName().equals(method)
                        && isTest(each.getAnnotations()))) {
                    missing.add(name);
                }
            }
        }
        assertEquals(List.of(), missing);
    }

    private static boolean isTest(Annotation[] annotations) {
        return Arrays.stream(annotations).anyMatch(annotation -> annotation.annotationType().isAnnotationPresent(Testable.class)
                || Arrays.stream(annotation.annotationType().getAnnotations())
                        .anyMatch(above -> above.annotationType().isAnnotationPresent(Testable.class)));
    }

    private static Map<String, Class<?>> testClasses() throws IOException, URISyntaxException, ClassNotFoundException {
        Path classes = Path.of(HazardsTest.class.getProtectionDomain().getCodeSource().getLocation().toURI());
        Map<String, Class<?>> found = new HashMap<>();
        try (Stream<Path> files = Files.walk(classes)) {
            for (Path file : files.filter(path -> path.toString().endsWith("Test.class")).toList()) {
                String name = classes.relativize(file).toString().replace(file.getFileSystem().getSeparator(), ".");
                Class<?> type = Class.forName(name.substring(0, name.length() - ".class".length()), false,
                        HazardsTest.class.getClassLoader());
                found.put(type.getSimpleName(), type);
            }
        }
        return found;
    }
}
