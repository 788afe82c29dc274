package domefold.bench;

/** What a start of Java costs that does nothing but say so. */
public final class EmptyMain {
    private EmptyMain() {}

    public static void main(String[] arguments) {
        System.out.println("nothing to do");
        System.out.flush();
    }
}
