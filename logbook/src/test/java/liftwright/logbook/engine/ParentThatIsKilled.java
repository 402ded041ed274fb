package liftwright.logbook.engine;

import java.io.IOException;
import java.nio.file.Path;

/** Starts an engine, tells its process id, and waits for an answer that never comes. */
final class ParentThatIsKilled {

    private ParentThatIsKilled() {}

    public static void main(String[] args) throws IOException {
        try (var engine = Engine.start(Path.of(args[0]))) {
            System.out.println(engine.pid());
            engine.ask(args[1], Limits.OF_A_QUESTION);
        }
    }
}
