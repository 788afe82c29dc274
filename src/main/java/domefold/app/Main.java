package domefold.app;

/** The program. */
public final class Main {
    private Main() {}

    public static void main(String[] args) {
        Leaving.announce();
        HeadStart.begin(args);
        System.exit(CommandShell.run(args, Console.ofProcess()));
    }
}
