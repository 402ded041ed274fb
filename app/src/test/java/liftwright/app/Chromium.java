package liftwright.app;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.WebSocket;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Base64;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionStage;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/**
 * A real browser without a window, spoken to in its own protocol over a local socket: nothing but
 * the browser has to be installed.
 */
final class Chromium implements AutoCloseable {

    private static final JsonMapper JSON = JsonMapper.builder().build();
    private static final long PATIENCE_S = 120;

    private final Process process;
    private final WebSocket socket;
    private final Map<Integer, CompletableFuture<JsonNode>> waiting;
    private final AtomicInteger last = new AtomicInteger();
    private final String session;

    private Chromium(
            Process process, WebSocket socket, Map<Integer, CompletableFuture<JsonNode>> waiting) {
        this.process = process;
        this.socket = socket;
        this.waiting = waiting;
        String target =
                send("", "Target.createTarget", Map.of("url", "about:blank"))
                        .get("targetId")
                        .stringValue();
        session =
                send("", "Target.attachToTarget", Map.of("targetId", target, "flatten", true))
                        .get("sessionId")
                        .stringValue();
        call("Page.enable", Map.of());
    }

    /** Where one is installed; LIFTWRIGHT_CHROMIUM names one in an unusual place. */
    static Optional<Path> installed() {
        return Stream.concat(
                        Stream.ofNullable(System.getenv("LIFTWRIGHT_CHROMIUM")),
                        Stream.of("/usr/bin/chromium", "/usr/bin/chromium-browser"))
                .map(Path::of)
                .filter(Files::isExecutable)
                .findFirst();
    }

    /**
     * @param folder for its profile
     */
    static Chromium start(Path browser, Path folder) throws IOException {
        Process process =
                new ProcessBuilder(
                                browser.toString(),
                                "--headless=new",
                                "--no-sandbox", // it would not start as root otherwise
                                "--disable-gpu",
                                "--disable-dev-shm-usage",
                                "--no-first-run",
                                "--hide-scrollbars",
                                "--remote-debugging-port=0",
                                "--user-data-dir=" + folder,
                                "about:blank")
                        .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                        .start();
        // Not closed: what it says later must go somewhere, or it would wait.
        BufferedReader said = process.errorReader(StandardCharsets.UTF_8);
        String address = "";
        String line = said.readLine();
        while (line != null && address.isEmpty()) {
            if (line.startsWith("DevTools listening on ")) {
                address = line.substring("DevTools listening on ".length());
            } else {
                line = said.readLine();
            }
        }
        if (address.isEmpty()) {
            process.destroy();
            throw new IOException("the browser does not start");
        }
        Thread.ofVirtual().start(() -> said.lines().forEach(_ -> {}));
        Map<Integer, CompletableFuture<JsonNode>> waiting = new ConcurrentHashMap<>();
        WebSocket socket =
                HttpClient.newHttpClient()
                        .newWebSocketBuilder()
                        .buildAsync(URI.create(address), new Listener(waiting))
                        .join();
        return new Chromium(process, socket, waiting);
    }

    private static final class Listener implements WebSocket.Listener {
        private final Map<Integer, CompletableFuture<JsonNode>> waiting;
        private final StringBuilder text = new StringBuilder();

        Listener(Map<Integer, CompletableFuture<JsonNode>> waiting) {
            this.waiting = waiting;
        }

        @Override
        public @Nullable CompletionStage<?> onText(
                WebSocket socket, CharSequence data, boolean isLast) {
            text.append(data);
            if (isLast) {
                JsonNode message = JSON.readTree(text.toString());
                text.setLength(0);
                CompletableFuture<JsonNode> answer =
                        message.has("id") ? waiting.remove(message.get("id").intValue()) : null;
                if (answer != null) {
                    answer.complete(message);
                }
            }
            socket.request(1);
            return null;
        }
    }

    private JsonNode call(String method, Map<String, ?> parameters) {
        return send(session, method, parameters);
    }

    private JsonNode send(String to, String method, Map<String, ?> parameters) {
        int id = last.incrementAndGet();
        CompletableFuture<JsonNode> answer = new CompletableFuture<>();
        waiting.put(id, answer);
        Map<String, Object> message = new java.util.HashMap<>();
        message.put("id", id);
        message.put("method", method);
        message.put("params", parameters);
        if (!to.isEmpty()) {
            message.put("sessionId", to);
        }
        socket.sendText(JSON.writeValueAsString(message), true).join();
        JsonNode got = answer.orTimeout(PATIENCE_S, TimeUnit.SECONDS).join();
        if (got.has("error")) {
            throw new IllegalStateException(method + ": " + got.get("error"));
        }
        return got.get("result");
    }

    /** Opens a file and waits until it is laid out. */
    void open(Path file) {
        call("Page.navigate", Map.of("url", file.toUri().toString()));
        String ready = "document.readyState === 'complete' && location.protocol === 'file:'";
        long until = System.nanoTime() + TimeUnit.SECONDS.toNanos(PATIENCE_S);
        while (!evaluate(ready).booleanValue()) {
            if (System.nanoTime() > until) {
                throw new IllegalStateException("the page is never ready");
            }
            Thread.onSpinWait();
        }
    }

    /** The value of an expression, awaited if it is a promise. */
    JsonNode evaluate(String expression) {
        JsonNode got =
                call(
                        "Runtime.evaluate",
                        Map.of(
                                "expression",
                                expression,
                                "awaitPromise",
                                true,
                                "returnByValue",
                                true));
        if (got.has("exceptionDetails")) {
            throw new IllegalStateException(got.get("exceptionDetails").toString());
        }
        JsonNode value = got.get("result").get("value");
        return value == null ? JSON.nullNode() : value;
    }

    /** Size of the window in CSS pixels. */
    void size(int width, int height) {
        call(
                "Emulation.setDeviceMetricsOverride",
                Map.of("width", width, "height", height, "deviceScaleFactor", 1, "mobile", false));
    }

    /**
     * @param media screen or print
     * @param scheme light or dark
     */
    void media(String media, String scheme) {
        call(
                "Emulation.setEmulatedMedia",
                Map.of(
                        "media",
                        media,
                        "features",
                        List.of(Map.of("name", "prefers-color-scheme", "value", scheme))));
    }

    /** The page on paper, its size as given, inches. */
    byte[] pdf(double widthIn, double heightIn) {
        JsonNode got =
                call(
                        "Page.printToPDF",
                        Map.of(
                                "paperWidth",
                                widthIn,
                                "paperHeight",
                                heightIn,
                                "printBackground",
                                false,
                                "preferCSSPageSize",
                                false));
        return Base64.getDecoder().decode(got.get("data").stringValue());
    }

    @Override
    public void close() {
        socket.abort();
        process.destroy();
        try {
            if (!process.waitFor(10, TimeUnit.SECONDS)) {
                process.destroyForcibly().waitFor(10, TimeUnit.SECONDS);
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
        try {
            process.getErrorStream().close();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
