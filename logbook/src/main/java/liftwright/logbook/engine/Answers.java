package liftwright.logbook.engine;

import java.io.DataInputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import liftwright.logbook.engine.EngineException.Kind;

/** What the child answers to one message. */
record Answers(Child child, Duration patience) {

    private Frame next() throws EngineException {
        return child.next(patience);
    }

    static EngineException error(Frame frame) {
        if (frame.kind() != Frame.Kind.ERROR) {
            return Child.died();
        }
        try (DataInputStream in = frame.open()) {
            return new EngineException(Kind.valueOf(Frame.readText(in)), Frame.readText(in));
        } catch (IOException e) {
            return Child.died();
        }
    }

    private List<String> head() throws EngineException {
        Frame frame = next();
        if (frame.kind() != Frame.Kind.HEAD) {
            throw error(frame);
        }
        try (DataInputStream in = frame.open()) {
            int n = in.readInt();
            var names = new ArrayList<String>();
            for (int i = 0; i < n; i++) {
                names.add(Frame.readText(in));
            }
            return names;
        } catch (IOException e) {
            throw Child.died();
        }
    }

    Rows rows() throws EngineException {
        List<String> columns = head();
        var rows = new ArrayList<List<Value>>();
        while (true) {
            Frame frame = next();
            try (DataInputStream in = frame.open()) {
                switch (frame.kind()) {
                    case ROWS -> {
                        while (in.available() > 0) {
                            rows.add(row(in, columns.size()));
                        }
                    }
                    case DONE -> {
                        return new Rows(columns, rows, in.readBoolean());
                    }
                    default -> throw error(frame);
                }
            } catch (EngineException e) {
                throw e;
            } catch (IOException e) {
                throw Child.died();
            }
        }
    }

    private static List<Value> row(DataInputStream in, int columns) throws IOException {
        var row = new ArrayList<Value>(columns);
        for (int i = 0; i < columns; i++) {
            row.add(
                    switch (in.readUnsignedByte()) {
                        case Sender.TRUTH -> new Value.Truth(in.readBoolean());
                        case Sender.WHOLE -> new Value.Whole(in.readLong());
                        case Sender.NUMBER -> new Value.Real(in.readDouble());
                        case Sender.TEXT -> new Value.Text(Frame.readText(in));
                        default -> new Value.None();
                    });
        }
        return row;
    }

    double[][] numbers() throws EngineException {
        int columns = head().size();
        var blocks = new ArrayList<byte[]>();
        long bytes = 0;
        while (true) {
            Frame frame = next();
            switch (frame.kind()) {
                case BLOCK -> {
                    blocks.add(frame.body());
                    bytes += frame.body().length;
                }
                case DONE -> {
                    return columns(blocks, columns, Math.toIntExact(bytes / 8));
                }
                default -> throw error(frame);
            }
        }
    }

    private static double[][] columns(List<byte[]> blocks, int columns, int values) {
        if (columns == 0) {
            return new double[0][];
        }
        var all = new double[columns][values / columns];
        int at = 0;
        for (byte[] block : blocks) {
            var in = ByteBuffer.wrap(block);
            while (in.hasRemaining()) {
                all[at % columns][at / columns] = in.getDouble();
                at++;
            }
        }
        return all;
    }
}
