package liftwright.app;

import java.io.FileDescriptor;
import java.io.FileOutputStream;

/** The command line's door. */
public final class Main {

    private Main() {}

    /**
     * Runs one verb and ends the process with its exit code.
     *
     * @param args the verb and what it needs
     */
    public static void main(String[] args) {
        var interrupt = new Interrupt();
        interrupt.listen();
        // Not System.out: it swallows the error when nobody reads any more.
        var program =
                new Program(
                        new FileOutputStream(FileDescriptor.out),
                        new FileOutputStream(FileDescriptor.err),
                        Surroundings.ofProcess(),
                        interrupt);
        Exit exit = Exit.FAULT; // also when not even the fault could be told
        try {
            exit = program.run(args);
        } finally {
            interrupt.ended(exit.code());
            System.exit(exit.code());
        }
    }
}
