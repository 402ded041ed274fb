package liftwright.app.job;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.zip.CRC32C;
import liftwright.app.flights.NotKeptException;
import liftwright.numerics.Kept;
import liftwright.rig.file.Disk;
import liftwright.rig.file.GrowingFile;
import liftwright.rig.file.RigFiles;

/**
 * A file of finished parts, added to as each is finished: its length, a checksum (CRC-32C) and its
 * numbers. A part that was only half written when a program died is seen, and taken off; all before
 * it stand. The first line says what the parts are of: those of anything else are let go, and that
 * is told.
 */
public final class KeptParts implements Kept, AutoCloseable {

    /** A rig of many fans keeps some ten million bytes; what is beyond is made again. */
    private static final int MOST = 1 << 27;

    private static final String FIRST = "liftwright parts: 1 ";
    private static final int HEAD = 2 * Integer.BYTES;
    private static final int NAME = 3 * Integer.BYTES;

    /** What a machine that loses its power loses at most. */
    private static final long PAUSE_NS = 1_000_000_000L;

    private record Name(int batch, int parts, int part) {}

    private final GrowingFile file;
    private final Map<Name, double[]> before;
    private final boolean anew;
    private int batches;
    private long end;
    private long forcedNs = System.nanoTime();
    private Optional<String> fault = Optional.empty();

    private KeptParts(GrowingFile file, long end, Map<Name, double[]> before, boolean anew) {
        this.file = file;
        this.end = end;
        this.before = before;
        this.anew = anew;
    }

    /**
     * Opens a file; makes it where it is missing.
     *
     * @param of a digest of all that the parts depend on
     * @throws NotKeptException where the disk does not let it
     */
    public static KeptParts open(Path path, String of, Disk disk) {
        try {
            return opened(path, (FIRST + of + "\n").getBytes(StandardCharsets.UTF_8), disk);
        } catch (IOException e) {
            throw new NotKeptException("What is finished cannot be kept: " + e.getMessage());
        }
    }

    private static KeptParts opened(Path path, byte[] first, Disk disk) throws IOException {
        byte[] bytes =
                Files.isRegularFile(path, LinkOption.NOFOLLOW_LINKS)
                        ? RigFiles.read(path, MOST)
                        : new byte[0];
        boolean ours =
                bytes.length >= first.length
                        && Arrays.equals(bytes, 0, first.length, first, 0, first.length);
        Map<Name, double[]> before = new HashMap<>();
        int end = ours ? read(bytes, first.length, before) : 0;
        GrowingFile file = GrowingFile.open(path, end, disk);
        try {
            if (!ours) {
                file.add(first);
                file.force();
                end = first.length;
            }
            boolean others = !ours && new String(bytes, StandardCharsets.UTF_8).contains("\n");
            return new KeptParts(file, end, before, others);
        } catch (IOException e) {
            file.close();
            throw e;
        }
    }

    /** Reads parts up to the first that is not whole; the offset behind the last. */
    private static int read(byte[] bytes, int from, Map<Name, double[]> into) {
        int at = from;
        while (bytes.length - at >= HEAD) {
            ByteBuffer head = ByteBuffer.wrap(bytes, at, HEAD);
            int length = head.getInt();
            int sum = head.getInt();
            if (length < NAME
                    || length > bytes.length - at - HEAD
                    || sum != checksum(bytes, at + HEAD, length)) {
                break;
            }
            ByteBuffer content = ByteBuffer.wrap(bytes, at + HEAD, length);
            var name = new Name(content.getInt(), content.getInt(), content.getInt());
            double[] numbers = new double[(length - NAME) / Double.BYTES];
            content.asDoubleBuffer().get(numbers);
            into.put(name, numbers);
            at += HEAD + length;
        }
        return at;
    }

    private static int checksum(byte[] bytes, int from, int length) {
        var sum = new CRC32C();
        sum.update(bytes, from, length);
        return (int) sum.getValue();
    }

    @Override
    public synchronized Batch batch(int parts) {
        int batch = batches++;
        return new Batch() {
            @Override
            public Optional<double[]> of(int part) {
                return Optional.ofNullable(before.get(new Name(batch, parts, part)));
            }

            @Override
            public void keep(int part, double[] numbers) {
                add(new Name(batch, parts, part), numbers);
            }
        };
    }

    private synchronized void add(Name name, double[] numbers) {
        int length = NAME + Double.BYTES * numbers.length;
        if (fault.isPresent() || end + HEAD + length > MOST) {
            return; // half a part may stand at the end; what would follow could not be read
        }
        ByteBuffer frame = ByteBuffer.allocate(HEAD + length);
        frame.position(HEAD);
        frame.putInt(name.batch()).putInt(name.parts()).putInt(name.part());
        frame.asDoubleBuffer().put(numbers);
        frame.putInt(0, length).putInt(Integer.BYTES, checksum(frame.array(), HEAD, length));
        try {
            file.add(frame.array());
            end += frame.capacity();
            long now = System.nanoTime();
            if (now - forcedNs > PAUSE_NS) {
                forcedNs = now;
                file.force();
            }
        } catch (IOException e) {
            fault = Optional.of(String.valueOf(e.getMessage()));
        }
    }

    /** What its reader should know; empty where it is as it should be. */
    public synchronized String told() {
        if (fault.isPresent()) {
            return "Not all that is finished could be kept: " + fault.get();
        }
        return anew
                ? "Begun anew: what was kept was of another rig or another version of the program."
                : "";
    }

    @Override
    public void close() {
        try {
            file.close();
        } catch (IOException e) {
            throw new NotKeptException("What is finished cannot be kept: " + e.getMessage());
        }
    }
}
