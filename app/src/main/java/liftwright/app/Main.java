package liftwright.app;

/** The command line's door. */
public final class Main {

    private Main() {}

    /**
     * Runs one verb and ends the process with its exit code.
     *
     * @param args the verb and what it needs
     */
    public static void main(String[] args) {
        boolean help = args.length == 1 && args[0].equals("--help");
        if (args.length > 0 && !help) {
            System.err.println("unknown verb: " + args[0]);
        }
        System.err.println("usage: liftwright <verb> RIG");
        System.exit(help ? 0 : 2);
    }
}
