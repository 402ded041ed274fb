package liftwright.logbook.engine;

import java.io.DataInputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.Properties;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.concurrent.atomic.AtomicReference;
import org.jspecify.annotations.Nullable;

/** Runs statements in the engine's process, one after the other, and sends what comes of them. */
final class Statements implements AutoCloseable {

    private final Connection connection;
    private final Gate gate;
    private final DataOutputStream out;
    private final ScheduledExecutorService clock;
    private final AtomicReference<@Nullable Statement> running = new AtomicReference<>();
    private volatile boolean stopped;

    private Statements(Connection connection, DataOutputStream out) {
        this.connection = connection;
        this.gate = new Gate(connection);
        this.out = out;
        this.clock =
                Executors.newSingleThreadScheduledExecutor(
                        Thread.ofPlatform().daemon().name("clock").factory());
    }

    /** An engine that touches nothing but {@code confines}. */
    static Statements locked(Confines confines, DataOutputStream out) throws SQLException {
        var properties = new Properties();
        properties.setProperty("jdbc_stream_results", "true");
        Connection connection = DriverManager.getConnection("jdbc:duckdb:", properties);
        confines.close(connection);
        return new Statements(connection, out);
    }

    /** Stops what runs; nothing else. */
    void stop() {
        Statement statement = running.get();
        if (statement != null) {
            stopped = true;
            try {
                statement.cancel();
            } catch (SQLException e) {
                stopped = true; // it has just ended by itself, and its answer says how
            }
        }
    }

    /** Answers a message of the program. */
    void answer(Frame frame) throws IOException {
        DataInputStream in = frame.open();
        int mostRows = in.readInt();
        int mostBytes = in.readInt();
        int mostMs = in.readInt();
        String sql = Frame.readText(in);
        var late = new AtomicBoolean();
        Future<?> alarm =
                clock.schedule(
                        () -> {
                            late.set(true);
                            stop();
                        },
                        mostMs,
                        TimeUnit.MILLISECONDS);
        try {
            if (frame.kind() == Frame.Kind.ASK) {
                gate.check(sql);
            }
            run(frame.kind(), sql, new Sender(out, mostRows, mostBytes));
        } catch (SQLException e) {
            error(e, late.get()).write(out);
        } catch (EngineException e) {
            EngineErrors.frame(e.kind(), e.sentence()).write(out);
        } catch (OutOfMemoryError e) {
            EngineErrors.frame(
                            EngineException.Kind.TOO_LARGE,
                            "A single value of this answer is larger than the engine may hold.")
                    .write(out);
        } finally {
            alarm.cancel(false);
        }
    }

    /** What a stopped statement says of itself differs with the moment. */
    private Frame error(SQLException e, boolean late) {
        if (late) {
            return EngineErrors.frame(
                    EngineException.Kind.TOO_LONG,
                    "It took longer than it may and was stopped. Ask for less, or for one test.");
        }
        return stopped
                ? EngineErrors.frame(EngineException.Kind.STOPPED, "It was stopped.")
                : EngineErrors.frame(e);
    }

    private void run(Frame.Kind kind, String sql, Sender sender) throws SQLException, IOException {
        try (Statement statement = connection.createStatement()) {
            stopped = false;
            running.set(statement);
            if (!statement.execute(sql)) {
                sender.count(statement.getLargeUpdateCount());
                return;
            }
            try (var rows = statement.getResultSet()) {
                if (kind == Frame.Kind.NUMBERS) {
                    sender.numbers(rows);
                } else {
                    sender.rows(rows);
                }
            }
        } finally {
            running.set(null);
        }
    }

    @Override
    public void close() throws SQLException {
        clock.shutdownNow();
        connection.close();
    }
}
