package liftwright.logbook.engine;

import java.io.ByteArrayOutputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.sql.ResultSet;
import java.sql.ResultSetMetaData;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.List;

/** Sends an answer in pieces, up to its limits. */
final class Sender {

    /** A piece goes out when it is this long, bytes. */
    private static final int PIECE = 1 << 18;

    /** Longest text of one value, characters. */
    private static final int LONGEST_TEXT = 100_000;

    /** Kinds of values on the wire. */
    static final int NONE = 0;

    static final int TRUTH = 1;
    static final int WHOLE = 2;
    static final int NUMBER = 3;
    static final int TEXT = 4;

    private final DataOutputStream out;
    private final int mostRows;
    private final int mostBytes;

    Sender(DataOutputStream out, int mostRows, int mostBytes) {
        this.out = out;
        this.mostRows = mostRows;
        this.mostBytes = mostBytes;
    }

    /** Of a statement that gives no rows: how many it wrote. */
    void count(long rows) throws IOException {
        head(List.of("count"));
        var piece = new ByteArrayOutputStream();
        whole(rows, new DataOutputStream(piece));
        flush(piece, Frame.Kind.ROWS);
        done(false);
    }

    void rows(ResultSet rows) throws SQLException, IOException {
        head(rows.getMetaData());
        int columns = rows.getMetaData().getColumnCount();
        var piece = new ByteArrayOutputStream();
        var body = new DataOutputStream(piece);
        int sent = 0;
        long bytes = 0;
        while (rows.next()) {
            if (sent == mostRows || bytes + piece.size() >= mostBytes) {
                bytes += flush(piece, Frame.Kind.ROWS);
                done(true);
                return;
            }
            for (int i = 1; i <= columns; i++) {
                value(rows.getObject(i), body);
            }
            sent++;
            if (piece.size() >= PIECE) {
                bytes += flush(piece, Frame.Kind.ROWS);
            }
        }
        flush(piece, Frame.Kind.ROWS);
        done(false);
    }

    /** Nothing is sent as no number, which no column of ours holds. */
    void numbers(ResultSet rows) throws SQLException, IOException {
        head(rows.getMetaData());
        int columns = rows.getMetaData().getColumnCount();
        var piece = new ByteArrayOutputStream();
        var body = new DataOutputStream(piece);
        int sent = 0;
        while (rows.next()) {
            if (sent++ == mostRows) {
                flush(piece, Frame.Kind.BLOCK);
                done(true);
                return;
            }
            for (int i = 1; i <= columns; i++) {
                double value = rows.getDouble(i);
                body.writeDouble(rows.wasNull() ? Double.NaN : value);
            }
            if (piece.size() >= PIECE) {
                flush(piece, Frame.Kind.BLOCK);
            }
        }
        flush(piece, Frame.Kind.BLOCK);
        done(false);
    }

    private static void value(Object value, DataOutputStream body) throws IOException {
        switch (value) {
            case null -> body.writeByte(NONE);
            case Boolean is -> {
                body.writeByte(TRUTH);
                body.writeBoolean(is);
            }
            case Byte n -> whole(n, body);
            case Short n -> whole(n, body);
            case Integer n -> whole(n, body);
            case Long n -> whole(n, body);
            case java.math.BigInteger n when n.bitLength() < 64 -> whole(n.longValue(), body);
            case java.math.BigInteger n -> number(n.doubleValue(), body);
            case BigDecimal n -> number(n.doubleValue(), body);
            case Float x -> number(x, body);
            case Double x -> number(x, body);
            default -> text(value.toString(), body);
        }
    }

    private static void whole(long n, DataOutputStream body) throws IOException {
        body.writeByte(WHOLE);
        body.writeLong(n);
    }

    private static void number(double x, DataOutputStream body) throws IOException {
        body.writeByte(NUMBER);
        body.writeDouble(x);
    }

    private static void text(String text, DataOutputStream body) throws IOException {
        body.writeByte(TEXT);
        String cut = text.length() > LONGEST_TEXT ? text.substring(0, LONGEST_TEXT) + "…" : text;
        byte[] bytes = cut.getBytes(StandardCharsets.UTF_8);
        body.writeInt(bytes.length);
        body.write(bytes);
    }

    private void head(ResultSetMetaData meta) throws SQLException, IOException {
        var names = new ArrayList<String>();
        for (int i = 1; i <= meta.getColumnCount(); i++) {
            names.add(meta.getColumnLabel(i));
        }
        head(names);
    }

    private void head(List<String> names) throws IOException {
        Frame.of(
                        Frame.Kind.HEAD,
                        body -> {
                            body.writeInt(names.size());
                            for (String name : names) {
                                Frame.writeText(body, name);
                            }
                        })
                .write(out);
    }

    private int flush(ByteArrayOutputStream piece, Frame.Kind kind) throws IOException {
        int size = piece.size();
        if (size > 0) {
            new Frame(kind, piece.toByteArray()).write(out);
            piece.reset();
        }
        return size;
    }

    private void done(boolean cut) throws IOException {
        Frame.of(Frame.Kind.DONE, body -> body.writeBoolean(cut)).write(out);
    }
}
