package domefold.build;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.objectweb.asm.ClassReader;
import org.objectweb.asm.ClassWriter;
import org.objectweb.asm.Handle;
import org.objectweb.asm.Opcodes;
import org.objectweb.asm.Type;
import org.objectweb.asm.commons.GeneratorAdapter;
import org.objectweb.asm.commons.Method;
import org.objectweb.asm.tree.AbstractInsnNode;
import org.objectweb.asm.tree.ClassNode;
import org.objectweb.asm.tree.InvokeDynamicInsnNode;
import org.objectweb.asm.tree.MethodInsnNode;
import org.objectweb.asm.tree.MethodNode;

/**
 * Gives every lambda and method reference of compiled classes a class in a file of its own, as an anonymous class has one. Java
 * makes such a class when the lambda is first met, at every start anew; a program that lives for a sixth of a second spends a
 * good part of its life on that. Run by the build over target/classes, before tests and jar, so that both see what is shipped.
 *
 * <p>A call site {@code invokedynamic sam(held) -> Face} becomes {@code Host$$LambdaN.of(held)}; the new class keeps what is held,
 * stands in the nest of its host, whose private lambda body it calls, and turns arguments and answer as Java's own would. Where
 * nothing is held there is one instance, as with Java's own.
 */
public final class PlainLambdas {
    static final String MARK = "$$Lambda";
    private static final String FACTORY = "java/lang/invoke/LambdaMetafactory";
    private static final String ONE = "ONE";
    private static final Type OBJECT = Type.getType(Object.class);
    private static final Method PLAIN_INIT = new Method("<init>", "()V");
    private static final Map<String, Type> UNBOXED = Map.of(
            "java/lang/Boolean", Type.BOOLEAN_TYPE, "java/lang/Character", Type.CHAR_TYPE, "java/lang/Byte", Type.BYTE_TYPE,
            "java/lang/Short", Type.SHORT_TYPE, "java/lang/Integer", Type.INT_TYPE, "java/lang/Long", Type.LONG_TYPE,
            "java/lang/Float", Type.FLOAT_TYPE, "java/lang/Double", Type.DOUBLE_TYPE);

    private final Path folder;
    private final Map<String, ClassNode> classes = new TreeMap<>();
    private final Map<String, byte[]> made = new TreeMap<>();
    private final Set<String> changed = new TreeSet<>();

    private PlainLambdas(Path folder) {
        this.folder = folder;
    }

    /** The folder of compiled classes is named by the one argument. */
    public static void main(String[] folders) throws IOException {
        over(Path.of(folders[0]));
    }

    /** Works on all classes under a folder; those that were done before stay as they are. The number of lambdas met. */
    static int over(Path folder) throws IOException {
        PlainLambdas work = new PlainLambdas(folder);
        work.read();
        work.forgetStale();
        for (ClassNode host : new ArrayList<>(work.classes.values())) {
            work.plain(host);
        }
        work.write();
        return work.made.size();
    }

    private void read() throws IOException {
        try (Stream<Path> files = Files.walk(folder)) {
            for (Path file : files.filter(path -> path.toString().endsWith(".class")).toList()) {
                ClassNode node = new ClassNode();
                new ClassReader(Files.readAllBytes(file)).accept(node, 0);
                classes.put(node.name, node);
            }
        }
    }

    /** A host after what it names, and a nest before its members, as their names sort: a build that is ended on the way can be done again. */
    private void write() throws IOException {
        for (Map.Entry<String, byte[]> one : made.entrySet()) {
            Files.write(file(one.getKey()), one.getValue());
        }
        for (String name : changed) {
            ClassWriter out = new ClassWriter(ClassWriter.COMPUTE_MAXS);
            classes.get(name).accept(out);
            Files.write(file(name), out.toByteArray());
        }
    }

    private Path file(String name) {
        return folder.resolve(name + ".class");
    }

    private void plain(ClassNode host) throws IOException {
        int count = 0;
        for (MethodNode method : host.methods) {
            for (AbstractInsnNode at : method.instructions.toArray()) {
                if (at instanceof InvokeDynamicInsnNode call && call.bsm.getOwner().equals(FACTORY)) {
                    if (!call.bsm.getName().equals("metafactory")) {
                        throw new IOException(host.name + "." + method.name + " holds a lambda of more than one type; give it a class by hand");
                    }
                    String name = host.name + MARK + ++count;
                    made.put(name, new Made(name, nest(host).name, call).bytes());
                    method.instructions.set(at, new MethodInsnNode(Opcodes.INVOKESTATIC, name, "of", call.desc, false));
                    changed.add(host.name);
                    join(nest(host), name);
                }
            }
        }
    }

    private ClassNode nest(ClassNode host) {
        return host.nestHostClass == null ? host : classes.get(host.nestHostClass);
    }

    private void join(ClassNode nest, String name) {
        if (nest.nestMembers == null) {
            nest.nestMembers = new ArrayList<>();
        }
        if (!nest.nestMembers.contains(name)) {
            nest.nestMembers.add(name);
        }
        changed.add(nest.name);
    }

    /**
     * What was made in an earlier build and no nest knows any more: its host was compiled anew, perhaps without a lambda, or is gone.
     * Left where it lies it would be shipped, and a build would differ from one that begins with nothing.
     */
    private void forgetStale() throws IOException {
        for (String name : classes.keySet().stream().filter(name -> name.contains(MARK)).toList()) {
            ClassNode nest = classes.get(classes.get(name).nestHostClass);
            if (nest == null || nest.nestMembers == null || !nest.nestMembers.contains(name)) {
                Files.delete(file(name));
                classes.remove(name);
            }
        }
    }

    /** The class made for one call site. */
    private static final class Made {
        private final ClassWriter out = new ClassWriter(ClassWriter.COMPUTE_MAXS);
        private final Type self;
        private final String nest;
        private final InvokeDynamicInsnNode call;
        private final Type face;
        private final Type[] held;
        private final Method init;

        Made(String name, String nest, InvokeDynamicInsnNode call) {
            this.self = Type.getObjectType(name);
            this.nest = nest;
            this.call = call;
            this.face = Type.getReturnType(call.desc);
            this.held = Type.getArgumentTypes(call.desc);
            this.init = new Method("<init>", Type.VOID_TYPE, held);
        }

        byte[] bytes() {
            out.visit(Opcodes.V17, Opcodes.ACC_FINAL | Opcodes.ACC_SUPER | Opcodes.ACC_SYNTHETIC, self.getInternalName(), null,
                    OBJECT.getInternalName(), new String[] {face.getInternalName()});
            out.visitNestHost(nest);
            for (int i = 0; i < held.length; i++) {
                out.visitField(Opcodes.ACC_PRIVATE | Opcodes.ACC_FINAL, field(i), held[i].getDescriptor(), null, null);
            }
            init();
            if (held.length == 0) {
                one();
            }
            of();
            answer();
            out.visitEnd();
            return out.toByteArray();
        }

        private static String field(int place) {
            return "held" + place;
        }

        private GeneratorAdapter method(int access, Method method) {
            GeneratorAdapter code = new GeneratorAdapter(access, method, null, null, out);
            code.visitCode();
            return code;
        }

        private static void end(GeneratorAdapter code) {
            code.returnValue();
            code.endMethod();
        }

        private void init() {
            GeneratorAdapter code = method(Opcodes.ACC_PRIVATE, init);
            code.loadThis();
            code.invokeConstructor(OBJECT, PLAIN_INIT);
            for (int i = 0; i < held.length; i++) {
                code.loadThis();
                code.loadArg(i);
                code.putField(self, field(i), held[i]);
            }
            end(code);
        }

        private void one() {
            out.visitField(Opcodes.ACC_PRIVATE | Opcodes.ACC_STATIC | Opcodes.ACC_FINAL, ONE, self.getDescriptor(), null, null);
            GeneratorAdapter code = method(Opcodes.ACC_STATIC, new Method("<clinit>", "()V"));
            code.newInstance(self);
            code.dup();
            code.invokeConstructor(self, init);
            code.putStatic(self, ONE, self);
            end(code);
        }

        private void of() {
            GeneratorAdapter code = method(Opcodes.ACC_STATIC, new Method("of", call.desc));
            if (held.length == 0) {
                code.getStatic(self, ONE, self);
            } else {
                code.newInstance(self);
                code.dup();
                code.loadArgs();
                code.invokeConstructor(self, init);
            }
            end(code);
        }

        /** The one method of the face: what is held and what is given, handed to the body; its answer turned back. */
        private void answer() {
            Type asked = (Type) call.bsmArgs[0];
            Handle body = (Handle) call.bsmArgs[1];
            Type known = (Type) call.bsmArgs[2];
            Type owner = Type.getObjectType(body.getOwner());
            Method target = new Method(body.getName(), body.getDesc());
            boolean creates = body.getTag() == Opcodes.H_NEWINVOKESPECIAL;
            List<Type> wanted = new ArrayList<>();
            if (!creates && body.getTag() != Opcodes.H_INVOKESTATIC) {
                wanted.add(owner);
            }
            wanted.addAll(List.of(target.getArgumentTypes()));

            GeneratorAdapter code = method(Opcodes.ACC_PUBLIC, new Method(call.name, asked.getDescriptor()));
            if (creates) {
                code.newInstance(owner);
                code.dup();
            }
            for (int i = 0; i < held.length; i++) {
                code.loadThis();
                code.getField(self, field(i), held[i]);
            }
            Type[] given = asked.getArgumentTypes();
            for (int i = 0; i < given.length; i++) {
                code.loadArg(i);
                turn(code, given[i], known.getArgumentTypes()[i], wanted.get(held.length + i));
            }
            code.visitMethodInsn(opcode(body), body.getOwner(), body.getName(), body.getDesc(), body.isInterface());
            Type answered = creates ? owner : target.getReturnType();
            if (!asked.getReturnType().equals(Type.VOID_TYPE)) {
                turn(code, answered, answered, asked.getReturnType());
            } else if (answered.getSize() == 2) {
                code.pop2();
            } else if (answered.getSize() == 1) {
                code.pop();
            }
            end(code);
        }

        /** A private body of the host is called as any other: both stand in one nest. */
        private static int opcode(Handle body) {
            return switch (body.getTag()) {
                case Opcodes.H_INVOKESTATIC -> Opcodes.INVOKESTATIC;
                case Opcodes.H_NEWINVOKESPECIAL -> Opcodes.INVOKESPECIAL;
                default -> body.isInterface() ? Opcodes.INVOKEINTERFACE : Opcodes.INVOKEVIRTUAL;
            };
        }

        /** The value on the stack, of the type {@code from} and known to be a {@code known}, becomes a {@code to}. */
        private static void turn(GeneratorAdapter code, Type from, Type known, Type to) {
            if (isPrimitive(from) && isPrimitive(to)) {
                widen(code, from, to);
            } else if (isPrimitive(from)) {
                code.valueOf(from);
            } else if (isPrimitive(to)) {
                Type held = UNBOXED.getOrDefault(known.getSort() == Type.OBJECT ? known.getInternalName() : "", to);
                code.unbox(held);
                widen(code, held, to);
            } else if (!from.equals(to)) {
                code.checkCast(to);
            }
        }

        private static void widen(GeneratorAdapter code, Type from, Type to) {
            if (!from.equals(to)) {
                code.cast(from, to);
            }
        }

        private static boolean isPrimitive(Type type) {
            return type.getSort() < Type.ARRAY;
        }
    }
}
