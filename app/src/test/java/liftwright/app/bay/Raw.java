package liftwright.app.bay;

import java.io.ByteArrayOutputStream;
import java.io.EOFException;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.net.InetAddress;
import java.net.Socket;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;

/** Speaks HTTP/1.1 by hand over a socket, so that it can speak it wrongly too. */
record Raw(int port) {

    private static final int PATIENCE_MS = 30_000;

    /**
     * What came back.
     *
     * @param headers by their names in small letters
     */
    record Answer(int status, Map<String, List<String>> headers, String body) {

        String header(String name) {
            return String.join(" | ", headers.getOrDefault(name, List.of()));
        }

        /** The value of a text in a flat JSON object. */
        String text(String name) {
            return body.replaceAll("(?s).*\"" + name + "\":\"([^\"]*)\".*", "$1");
        }
    }

    String host() {
        return "Host: 127.0.0.1:" + port;
    }

    /** A request with these header lines and no other. */
    Answer ask(String method, String path, String body, String... headers) {
        byte[] bytes = body.getBytes(StandardCharsets.UTF_8);
        var head = new ArrayList<>(List.of(headers));
        if (bytes.length > 0) {
            head.add("Content-Length: " + bytes.length);
        }
        try (Socket socket = connect()) {
            send(socket, method + " " + path + " HTTP/1.1", head, bytes);
            return answer(socket.getInputStream());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** As the page asks. */
    Answer post(String name, String body, String... headers) {
        var all = new ArrayList<>(List.of(host(), "Content-Type: application/json"));
        all.addAll(List.of(headers));
        return ask("POST", "/api/" + name, body, all.toArray(new String[0]));
    }

    Socket connect() throws IOException {
        var socket = new Socket(InetAddress.getByAddress(new byte[] {127, 0, 0, 1}), port);
        socket.setSoTimeout(PATIENCE_MS);
        return socket;
    }

    static void send(Socket socket, String line, List<String> headers, byte[] body)
            throws IOException {
        String head = line + "\r\n" + String.join("\r\n", headers) + "\r\n\r\n";
        var all = new ByteArrayOutputStream();
        all.writeBytes(head.getBytes(StandardCharsets.ISO_8859_1));
        all.writeBytes(body);
        socket.getOutputStream().write(all.toByteArray());
        socket.getOutputStream().flush();
    }

    static Answer answer(InputStream in) throws IOException {
        String status = line(in);
        Map<String, List<String>> headers = headers(in);
        String body;
        if (headers.containsKey("transfer-encoding")) {
            body = chunks(in);
        } else {
            int length =
                    Integer.parseInt(
                            headers.getOrDefault("content-length", List.of("0")).getFirst());
            body = new String(in.readNBytes(length), StandardCharsets.UTF_8);
        }
        return new Answer(Integer.parseInt(status.split(" ", -1)[1]), headers, body);
    }

    static Map<String, List<String>> headers(InputStream in) throws IOException {
        Map<String, List<String>> headers = new TreeMap<>();
        for (String line = line(in); !line.isEmpty(); line = line(in)) {
            int colon = line.indexOf(':');
            headers.computeIfAbsent(
                            line.substring(0, colon).toLowerCase(Locale.ROOT),
                            _ -> new ArrayList<>())
                    .add(line.substring(colon + 1).strip());
        }
        return headers;
    }

    private static String chunks(InputStream in) throws IOException {
        var body = new StringBuilder();
        for (String chunk = chunk(in); !chunk.isEmpty(); chunk = chunk(in)) {
            body.append(chunk);
        }
        return body.toString();
    }

    /** The next chunk of a body; empty for the last. */
    static String chunk(InputStream in) throws IOException {
        int size = Integer.parseInt(line(in), 16);
        String chunk = new String(in.readNBytes(size), StandardCharsets.UTF_8);
        line(in);
        return chunk;
    }

    static String line(InputStream in) throws IOException {
        var line = new StringBuilder();
        for (int c = in.read(); c != '\n'; c = in.read()) {
            if (c < 0) {
                throw new EOFException("cut off after: " + line);
            }
            line.append((char) c);
        }
        return line.toString().strip();
    }
}
