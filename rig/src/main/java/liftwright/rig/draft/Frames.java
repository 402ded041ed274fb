package liftwright.rig.draft;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.DataInputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.zip.CRC32C;
import liftwright.rig.Change;
import liftwright.rig.RigPath;

/**
 * Entries of a journal as bytes: each is its length, a checksum (CRC-32C) and its content, so that
 * one that was only half written is seen.
 */
final class Frames {

    private static final int HEAD = 8;
    private static final int LONGEST = 64 << 20;

    private Frames() {}

    static byte[] frame(Entry entry) {
        var content = new ByteArrayOutputStream();
        try (var out = new DataOutputStream(content)) {
            write(entry, out);
        } catch (IOException e) {
            throw new UncheckedIOException("memory does not fail", e);
        }
        byte[] bytes = content.toByteArray();
        return ByteBuffer.allocate(HEAD + bytes.length)
                .putInt(bytes.length)
                .putInt(checksum(bytes, 0, bytes.length))
                .put(bytes)
                .array();
    }

    /**
     * What could be read of a journal.
     *
     * @param entries as far as they are whole
     * @param end offset behind the last of them
     */
    record Read(List<Entry> entries, int end) {
        Read {
            entries = List.copyOf(entries);
        }
    }

    /** Reads entries from {@code from} on, up to the first that is not whole. */
    static Read read(byte[] bytes, int from) {
        var entries = new ArrayList<Entry>();
        int at = from;
        while (bytes.length - at >= HEAD) {
            var head = ByteBuffer.wrap(bytes, at, HEAD);
            int length = head.getInt();
            int checksum = head.getInt();
            if (length <= 0
                    || length > LONGEST
                    || length > bytes.length - at - HEAD
                    || checksum(bytes, at + HEAD, length) != checksum) {
                break;
            }
            try (var in = new DataInputStream(new ByteArrayInputStream(bytes, at + HEAD, length))) {
                entries.add(entry(in));
            } catch (IOException e) {
                break; // whole, and yet nothing of ours: the caller sees that more follows
            }
            at += HEAD + length;
        }
        return new Read(entries, at);
    }

    private static int checksum(byte[] bytes, int from, int length) {
        var sum = new CRC32C();
        sum.update(bytes, from, length);
        return (int) sum.getValue();
    }

    private static void write(Entry entry, DataOutputStream out) throws IOException {
        switch (entry) {
            case Entry.Start(var disk, var toText, var undo, var redo, var unsaved) -> {
                out.writeByte('B');
                bytes(disk, out);
                patch(toText, out);
                steps(undo, out);
                steps(redo, out);
                out.writeInt(unsaved.size());
                for (var mark : unsaved) {
                    out.writeInt(mark.place());
                    out.writeBoolean(mark.back());
                    how(mark.how(), out);
                }
            }
            case Entry.Edit(var label, var how, var text) -> {
                out.writeByte('E');
                text(label, out);
                how(how, out);
                patch(text, out);
            }
            case Entry.Undo(var label, var text) -> {
                out.writeByte('U');
                text(label, out);
                patch(text, out);
            }
            case Entry.Redo(var label, var text) -> {
                out.writeByte('R');
                text(label, out);
                patch(text, out);
            }
            case Entry.Taken(var label, var disk, var text) -> {
                out.writeByte('T');
                text(label, out);
                patch(disk, out);
                patch(text, out);
            }
            case Entry.Seen(var disk) -> {
                out.writeByte('S');
                patch(disk, out);
            }
        }
    }

    private static Entry entry(DataInputStream in) throws IOException {
        byte kind = in.readByte();
        return switch (kind) {
            case 'B' -> new Entry.Start(bytes(in), patch(in), steps(in), steps(in), marks(in));
            case 'E' -> new Entry.Edit(text(in), how(in), patch(in));
            case 'U' -> new Entry.Undo(text(in), patch(in));
            case 'R' -> new Entry.Redo(text(in), patch(in));
            case 'T' -> new Entry.Taken(text(in), patch(in), patch(in));
            case 'S' -> new Entry.Seen(patch(in));
            default -> throw new IOException("no entry begins with " + kind);
        };
    }

    private static void steps(List<Step> steps, DataOutputStream out) throws IOException {
        out.writeInt(steps.size());
        for (var step : steps) {
            text(step.label(), out);
            how(step.how(), out);
            patch(step.patch(), out);
        }
    }

    private static List<Step> steps(DataInputStream in) throws IOException {
        int size = in.readInt();
        var steps = new ArrayList<Step>();
        for (int i = 0; i < size; i++) {
            steps.add(new Step(text(in), how(in), patch(in)));
        }
        return steps;
    }

    private static List<Entry.Mark> marks(DataInputStream in) throws IOException {
        int size = in.readInt();
        var marks = new ArrayList<Entry.Mark>();
        for (int i = 0; i < size; i++) {
            marks.add(new Entry.Mark(in.readInt(), in.readBoolean(), how(in)));
        }
        return marks;
    }

    private static void how(How how, DataOutputStream out) throws IOException {
        switch (how) {
            case How.Typed _ -> out.writeInt(-1);
            case How.Made(var changes) -> {
                out.writeInt(changes.size());
                for (var change : changes) {
                    change(change, out);
                }
            }
        }
    }

    private static How how(DataInputStream in) throws IOException {
        int size = in.readInt();
        if (size < 0) {
            return new How.Typed();
        }
        var changes = new ArrayList<Change>();
        for (int i = 0; i < size; i++) {
            changes.add(change(in));
        }
        return new How.Made(changes);
    }

    private static void change(Change change, DataOutputStream out) throws IOException {
        switch (change) {
            case Change.Set(var at, var value) -> words(out, 's', at, value);
            case Change.Add(var at, var key, var value) -> words(out, 'a', at, key, value);
            case Change.Remove(var at) -> words(out, 'r', at);
            case Change.Replace(var at, var value) -> words(out, 'p', at, value);
            case Change.Move(var at, var index) -> {
                words(out, 'm', at);
                out.writeInt(index);
            }
        }
    }

    private static void words(DataOutputStream out, char kind, RigPath at, String... words)
            throws IOException {
        out.writeByte(kind);
        text(at.toString(), out);
        for (String word : words) {
            text(word, out);
        }
    }

    private static Change change(DataInputStream in) throws IOException {
        byte kind = in.readByte();
        var at = RigPath.parse(text(in));
        return switch (kind) {
            case 's' -> new Change.Set(at, text(in));
            case 'a' -> new Change.Add(at, text(in), text(in));
            case 'r' -> new Change.Remove(at);
            case 'p' -> new Change.Replace(at, text(in));
            case 'm' -> new Change.Move(at, in.readInt());
            default -> throw new IOException("no change begins with " + kind);
        };
    }

    private static void patch(Patch patch, DataOutputStream out) throws IOException {
        out.writeInt(patch.from());
        bytes(patch.removed(), out);
        bytes(patch.inserted(), out);
    }

    private static Patch patch(DataInputStream in) throws IOException {
        return new Patch(in.readInt(), bytes(in), bytes(in));
    }

    private static void text(String text, DataOutputStream out) throws IOException {
        bytes(text.getBytes(StandardCharsets.UTF_8), out);
    }

    private static String text(DataInputStream in) throws IOException {
        return new String(bytes(in), StandardCharsets.UTF_8);
    }

    private static void bytes(byte[] bytes, DataOutputStream out) throws IOException {
        out.writeInt(bytes.length);
        out.write(bytes);
    }

    private static byte[] bytes(DataInputStream in) throws IOException {
        int length = in.readInt();
        if (length < 0 || length > in.available()) {
            throw new IOException("a length that cannot be");
        }
        return in.readNBytes(length);
    }
}
