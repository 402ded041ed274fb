package liftwright.logbook.engine;

import java.io.BufferedInputStream;
import java.io.BufferedOutputStream;
import java.io.DataInputStream;
import java.io.DataOutputStream;
import java.io.File;
import java.io.IOException;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.ArrayBlockingQueue;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.TimeUnit;
import java.util.stream.Collectors;
import liftwright.logbook.engine.EngineException.Kind;

/** The engine's process as its parent sees it. It never waits longer than it is told to. */
final class Child {

    /** Java's own part of the memory. */
    private static final String HEAP = "-Xmx96m";

    private final Process process;
    private final DataOutputStream out;

    /** What it said and nobody took yet; empty once, when it says no more. */
    private final BlockingQueue<Optional<Frame>> said = new ArrayBlockingQueue<>(64);

    private final Thread listener;

    private Child(Process process) {
        this.process = process;
        this.out = new DataOutputStream(new BufferedOutputStream(process.getOutputStream()));
        var in = new DataInputStream(new BufferedInputStream(process.getInputStream(), 1 << 16));
        this.listener = Thread.ofPlatform().daemon().name("engine").start(() -> listen(in));
    }

    /** Of this process, for one that runs in another folder. */
    private static String absoluteClassPath() {
        return Arrays.stream(System.getProperty("java.class.path").split(File.pathSeparator))
                .map(entry -> Path.of(entry).toAbsolutePath().toString())
                .collect(Collectors.joining(File.pathSeparator));
    }

    static Child start(Confines confines) throws IOException {
        var command = new ArrayList<String>();
        command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
        command.addAll(
                List.of(
                        HEAP,
                        "-Xms16m",
                        "-Xss1m",
                        "-XX:+UseSerialGC",
                        "-XX:TieredStopAtLevel=1",
                        "-XX:MaxMetaspaceSize=64m",
                        "-XX:-CreateCoredumpOnCrash",
                        "-XX:ErrorFile=" + Path.of(confines.scratch(), "crash.txt"),
                        "-Djava.io.tmpdir=" + confines.scratch(),
                        "--enable-native-access=ALL-UNNAMED",
                        "-cp",
                        absoluteClassPath(),
                        EngineMain.class.getName(),
                        Long.toString(ProcessHandle.current().pid())));
        command.addAll(confines.arguments());
        var builder = new ProcessBuilder(command);
        // Nothing of the user's surroundings is the engine's business; Windows needs these two.
        builder.environment().keySet().retainAll(List.of("SystemRoot", "TEMP"));
        builder.directory(new File(confines.scratch()));
        builder.redirectError(ProcessBuilder.Redirect.DISCARD);
        return new Child(builder.start());
    }

    private void listen(DataInputStream in) {
        try {
            try {
                while (true) {
                    said.put(Optional.of(Frame.read(in)));
                }
            } catch (IOException e) {
                process.destroyForcibly();
                said.put(Optional.empty());
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt(); // nobody listens any more
        }
    }

    synchronized void say(Frame frame) throws EngineException {
        try {
            frame.write(out);
        } catch (IOException e) {
            throw died();
        }
    }

    /**
     * What it says next.
     *
     * @throws EngineException when it says nothing in time, or is dead; then it is dead after
     */
    Frame next(Duration within) throws EngineException {
        try {
            Optional<Frame> frame = said.poll(within.toMillis(), TimeUnit.MILLISECONDS);
            if (frame == null) {
                kill();
                throw new EngineException(
                        Kind.TOO_LONG, "The engine gave no answer in time and was ended.");
            }
            if (frame.isEmpty()) {
                kill();
                throw died();
            }
            return frame.get();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            kill();
            throw new EngineException(Kind.STOPPED, "It was stopped.");
        }
    }

    static EngineException died() {
        return new EngineException(
                Kind.DIED, "The engine's process has ended. What was asked may need too much.");
    }

    boolean isAlive() {
        return process.isAlive();
    }

    long pid() {
        return process.pid();
    }

    /** At once; waits a little, since what it wrote shall be at rest. */
    void kill() {
        process.destroyForcibly();
        listener.interrupt();
        try {
            process.waitFor(5, TimeUnit.SECONDS);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }
}
