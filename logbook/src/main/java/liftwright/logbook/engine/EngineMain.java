package liftwright.logbook.engine;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.BufferedInputStream;
import java.io.BufferedOutputStream;
import java.io.DataInputStream;
import java.io.DataOutputStream;
import java.io.FileDescriptor;
import java.io.FileInputStream;
import java.io.FileOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.PrintStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.SQLException;
import java.util.Optional;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.LinkedBlockingQueue;

/**
 * The engine's process. It speaks on its standard streams and nowhere else, and ends with whoever
 * started it: when its input ends, or when that process is gone. Arguments: process id of the
 * parent, scratch folder, number of folders, the folders, then single files.
 */
public final class EngineMain {

    private static volatile Path scratch = Path.of("");

    private EngineMain() {}

    public static void main(String[] args) throws IOException {
        scratch = Path.of(args[1]);
        endWith(Long.parseLong(args[0]));
        var in =
                new DataInputStream(
                        new BufferedInputStream(new FileInputStream(FileDescriptor.in)));
        var out =
                new DataOutputStream(
                        new BufferedOutputStream(
                                new FileOutputStream(FileDescriptor.out), 1 << 16));
        // Whatever the library prints must not come between messages.
        System.setOut(new PrintStream(OutputStream.nullOutputStream(), true, UTF_8));
        try (var work = Statements.locked(Confines.of(args), out)) {
            forgetLibrary();
            Frame.of(Frame.Kind.READY, _ -> {}).write(out);
            serve(in, work);
        } catch (SQLException e) {
            EngineErrors.frame(e).write(out);
        } finally {
            end(0);
        }
    }

    /** The parent's end is also the end of a statement that runs. */
    private static void endWith(long parent) {
        Optional<ProcessHandle> handle = ProcessHandle.of(parent);
        if (handle.isEmpty()) {
            end(1);
        }
        var _ = handle.orElseThrow().onExit().thenRun(() -> end(1));
    }

    /** The library was unpacked into the temporary folder; once loaded it need not lie there. */
    private static void forgetLibrary() throws IOException {
        Path temporary = Path.of(System.getProperty("java.io.tmpdir"));
        try (var files = Files.list(temporary)) {
            for (Path file : files.filter(f -> f.toString().contains("libduckdb")).toList()) {
                try {
                    Files.deleteIfExists(file);
                } catch (IOException e) {
                    file.toFile().deleteOnExit(); // in use there: the parent deletes the folder
                }
            }
        }
    }

    private static void serve(DataInputStream in, Statements work) throws IOException {
        BlockingQueue<Frame> asked = new LinkedBlockingQueue<>();
        Thread.ofPlatform().daemon().name("listener").start(() -> listen(in, asked, work));
        try {
            while (true) {
                work.answer(asked.take());
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    private static void listen(DataInputStream in, BlockingQueue<Frame> asked, Statements work) {
        try {
            while (true) {
                Frame frame = Frame.read(in);
                if (frame.kind() == Frame.Kind.STOP) {
                    work.stop();
                } else {
                    asked.add(frame);
                }
            }
        } catch (IOException e) {
            end(0);
        }
    }

    /** At once, in the middle of a statement too; what it laid down goes with it. */
    private static void end(int status) {
        try (var files = Files.list(scratch)) {
            for (Path file : files.toList()) {
                Files.deleteIfExists(file);
            }
            Files.deleteIfExists(scratch);
        } catch (IOException e) {
            scratch.toFile().deleteOnExit(); // the parent, if there is one, deletes it too
        } finally {
            Runtime.getRuntime().halt(status);
        }
    }
}
