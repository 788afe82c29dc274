package domefold.build;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.net.URL;
import java.net.URLClassLoader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import javax.tools.ToolProvider;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Lambdas of every shape answer the same before and after they were given classes of their own. */
class PlainLambdasTest {
    private static final String SHAPES = """
            import java.util.*;
            import java.util.function.*;

            public class Shapes {
                private final int own = 7;
                private double half(Integer of) { return of / 2.0; }
                private static long twice(int of) { return 2L * of; }
                static class Inner {
                    private String word = "in";
                    Supplier<String> says() { return () -> word + new Shapes().own; }
                }
                interface Three { Object of(long a, Double b, String c); }
                interface Named { default Supplier<String> name() { return () -> "named " + hidden(); } private String hidden() { return "x"; } }
                interface Text extends Function<String, String> {}
                record Pair(int left, double right) {}
                static <T> T self(T of) { return of; }
                static String rest(String... words) { return String.join("+", words); }
                static class Deeper extends Shapes { Supplier<String> up() { return () -> super.toString().substring(0, 6); } }
                public String toString() { return "Shapes" + own; }

                public static String all() {
                    List<Object> out = new ArrayList<>();
                    long big = 1L << 40; double part = 0.25; char letter = 'c'; boolean yes = true; byte small = 3; short s = 4; float f = 1.5f;
                    Supplier<String> many = () -> big + " " + part + letter + yes + small + s + f;
                    out.add(many.get());
                    Shapes shapes = new Shapes();
                    ToDoubleFunction<Integer> bound = shapes::half;
                    out.add(bound.applyAsDouble(5));
                    BiFunction<Shapes, Integer, Double> unbound = Shapes::half;
                    out.add(unbound.apply(shapes, 9));
                    IntToLongFunction still = Shapes::twice;
                    out.add(still.applyAsLong(4));
                    Function<Integer, Long> boxing = Shapes::twice;
                    out.add(boxing.apply(6));
                    IntToDoubleFunction widening = Shapes::twice;
                    out.add(widening.applyAsDouble(8));
                    ToLongFunction<Integer> unboxedAndWidened = Integer::intValue;
                    out.add(unboxedAndWidened.applyAsLong(11));
                    DoubleUnaryOperator wide = Math::sqrt;
                    out.add(wide.applyAsDouble(2));
                    ToDoubleFunction<Integer> fromBox = Shapes::self;
                    out.add(fromBox.applyAsDouble(3));
                    BiFunction<Integer, Double, Pair> maker = Pair::new;
                    out.add(maker.apply(1, 2.0).equals(new Pair(1, 2.0)));
                    Function<Integer, int[]> array = int[]::new;
                    out.add(array.apply(3).length);
                    Supplier<List<String>> list = ArrayList::new;
                    out.add(list.get());
                    Consumer<String> dropped = out::add;
                    dropped.accept("dropped");
                    IntConsumer droppedLong = Shapes::twice;
                    droppedLong.accept(1);
                    ToIntFunction<List<String>> size = List::size;
                    out.add(size.applyAsInt(List.of("a", "b")));
                    Three three = (a, b, c) -> a + b + c;
                    out.add(three.of(1, 2.0, "c"));
                    out.add(new Inner().says().get());
                    out.add(new Named() {}.name().get());
                    out.add(new Deeper().up().get());
                    Text text = String::strip;
                    out.add(text.apply("  t "));
                    Function<String, Object> up = Shapes::rest;
                    out.add(up.apply("r"));
                    Runnable nested = () -> { Runnable deep = () -> out.add("deep" + big); deep.run(); };
                    nested.run();
                    Predicate<String> empty = String::isEmpty;
                    out.add(empty.negate().test(""));
                    Comparator<Pair> by = (a, b) -> Double.compare(a.right(), b.right());
                    out.add(by.compare(new Pair(1, 2), new Pair(2, 1)));
                    Supplier<Supplier<Integer>> chain = () -> () -> shapes.own;
                    out.add(chain.get().get());
                    Supplier<?> same = again(); out.add(same == again());
                    return out.toString();
                }
                private static Supplier<Object> again() { return () -> 1; }
            }
            """;

    @TempDir
    Path folder;

    private String before;

    @BeforeEach
    void compiled() throws Exception {
        compile(SHAPES);
        before = answer();
    }

    @Test
    void theAnswersStayTheSame() throws Exception {
        assertTrue(PlainLambdas.over(folder) > 25);
        assertEquals(before, answer());
    }

    @Test
    void noCallSiteIsLeftToBeMadeAtRunTime() throws Exception {
        assertNotEquals(0, mentions(folder));
        PlainLambdas.over(folder);
        assertEquals(0, mentions(folder));
        assertEquals(0, PlainLambdas.over(folder));
    }

    @Test
    void whatIsCompiledAnewLeavesNothingOfTheOldOne() throws Exception {
        PlainLambdas.over(folder);
        compile("public class Shapes { public static String all() { Runnable one = () -> {}; one.run(); return \"small\"; } }");
        PlainLambdas.over(folder);
        assertEquals("small", answer());
        assertEquals(List.of("Shapes$$Lambda1.class"), names("Shapes$$Lambda"));
    }

    @Test
    void aHostWithoutLambdasAndOneThatIsGoneLeaveNothingEither() throws Exception {
        PlainLambdas.over(folder);
        compile("public class Shapes { public static String all() { return \"none\"; } }");
        for (String inner : List.of("Shapes$Inner.class", "Shapes$Named.class", "Shapes$Deeper.class")) {
            Files.delete(folder.resolve(inner));
        }
        PlainLambdas.over(folder);
        assertEquals("none", answer());
        assertEquals(List.of(), names("$$Lambda"));
        compile("public class Shapes { public static String all() { return \"\" + Gone.ONE.get(); } }"
                + " class Gone { static final java.util.function.Supplier<Integer> ONE = () -> 1; }");
        PlainLambdas.over(folder);
        assertEquals("1", answer());
        Files.delete(folder.resolve("Gone.class"));
        PlainLambdas.over(folder);
        assertEquals(List.of(), names("$$Lambda"));
    }

    @Test
    void aBuildEndedOnTheWayCanBeDoneAgain() throws Exception {
        List<String> hosts = names("Shapes");
        PlainLambdas.over(folder);
        byte[] nest = Files.readAllBytes(folder.resolve("Shapes.class"));
        List<String> made = names("$$Lambda");
        compile(SHAPES);
        Files.write(folder.resolve("Shapes.class"), nest);
        PlainLambdas.over(folder);
        assertEquals(before, answer());
        assertEquals(made, names("$$Lambda"));
        assertEquals(hosts, names("Shapes").stream().filter(name -> !name.contains("$$Lambda")).toList());
    }

    @Test
    void theProgramHoldsNoLambdaThatIsMadeAtRunTime() throws Exception {
        assertEquals(0, mentions(Path.of("target/classes")));
    }

    private void compile(String source) throws IOException {
        Path file = Files.writeString(folder.resolve("Shapes.java"), source);
        ByteArrayOutputStream said = new ByteArrayOutputStream();
        int fault = ToolProvider.getSystemJavaCompiler().run(null, said, said, "-d", folder.toString(), "-XDstringConcat=inline", file.toString());
        assertEquals(0, fault, said.toString(StandardCharsets.UTF_8));
    }

    private List<String> names(String part) throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.map(path -> path.getFileName().toString()).filter(name -> name.contains(part)).sorted().toList();
        }
    }

    private String answer() throws Exception {
        try (URLClassLoader loader = new URLClassLoader(new URL[] {folder.toUri().toURL()}, null)) {
            return (String) loader.loadClass("Shapes").getMethod("all").invoke(null);
        }
    }

    /** Class files that name the factory of lambdas; the attribute that lists inner classes names only its lookup. */
    private static long mentions(Path folder) throws IOException {
        try (Stream<Path> files = Files.walk(folder)) {
            long count = 0;
            for (Path file : files.filter(path -> path.toString().endsWith(".class")).toList()) {
                if (new String(Files.readAllBytes(file), StandardCharsets.ISO_8859_1).contains("java/lang/invoke/LambdaMetafactory")) {
                    count++;
                }
            }
            return count;
        }
    }
}
