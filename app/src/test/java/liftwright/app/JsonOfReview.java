package liftwright.app;

import java.nio.file.Path;

/** What the command line writes for machines. */
public final class JsonOfReview {

    private JsonOfReview() {}

    /**
     * @param question by its word
     * @param rig file or folder
     * @return the line that it writes, without its end
     */
    public static String of(String question, Path rig) {
        return new Shell(Shell.EXAMPLES)
                .run("review", question, rig.toString(), "--json")
                .out()
                .strip();
    }

    /** The rig file of an example. */
    public static Path example(String name) {
        return Shell.EXAMPLES.resolve(name).resolve("rig.yaml");
    }
}
