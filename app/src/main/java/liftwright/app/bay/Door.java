package liftwright.app.bay;

import com.sun.net.httpserver.HttpExchange;
import com.sun.net.httpserver.HttpHandler;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.Semaphore;
import liftwright.app.bay.FaultException.Kind;

/** Takes every request: judged, read, routed, answered; and whatever happens becomes a reply. */
final class Door implements HttpHandler {

    static final String API = "/api/";

    private final Gate gate;
    private final Entry entry;
    private final Map<String, Route> routes;
    private final Bay bay;
    private final Deadlines deadlines;
    private final Limits limits;
    private final Rate rate;
    private final Rate knocks;
    private final Semaphore requests;
    private final Semaphore streams;
    private final Set<LinesToReader> open = ConcurrentHashMap.newKeySet();
    private volatile boolean stopping;

    Door(
            Gate gate,
            Entry entry,
            Map<String, Route> routes,
            Bay bay,
            Deadlines deadlines,
            Limits limits) {
        this.gate = gate;
        this.entry = entry;
        this.routes = routes;
        this.bay = bay;
        this.deadlines = deadlines;
        this.limits = limits;
        rate = new Rate(limits.requestsPerSecond(), limits.requestsAtOnce(), System::nanoTime);
        knocks = new Rate(limits.knocksPerSecond(), limits.knocksAtOnce(), System::nanoTime);
        requests = new Semaphore(limits.requests());
        streams = new Semaphore(limits.streams());
    }

    @Override
    public void handle(HttpExchange exchange) throws IOException {
        SafeHeaders.put(exchange.getResponseHeaders());
        try {
            answer(exchange);
        } catch (FaultException e) {
            refuse(exchange, e);
        } catch (RuntimeException | StackOverflowError | OutOfMemoryError e) {
            bay.fault(e);
            refuse(
                    exchange,
                    new FaultException(
                            Kind.INTERNAL,
                            "A fault of the program, not of your rig. Nothing was changed by it."));
        } finally {
            exchange.close();
        }
    }

    private void answer(HttpExchange exchange) throws IOException {
        String path = exchange.getRequestURI().getRawPath();
        boolean api = path != null && path.startsWith(API);
        gate.judge(exchange, api);
        if (!rate.passes() || stopping) {
            throw tooMany();
        }
        if (!requests.tryAcquire()) {
            throw tooMany();
        }
        try {
            if (path != null && api) {
                call(exchange, path.substring(API.length()));
            } else {
                page(exchange, path == null ? "" : path);
            }
        } finally {
            requests.release();
        }
    }

    private void page(HttpExchange exchange, String path) throws IOException {
        method(exchange, "GET");
        var file =
                PageFiles.of(path)
                        .orElseThrow(() -> new FaultException(Kind.MISSING, "No such page."));
        if (file.lasting()) {
            exchange.getResponseHeaders()
                    .set("Cache-Control", "private, max-age=31536000, immutable");
        }
        send(exchange, 200, file.mediaType(), file.bytes());
    }

    private void call(HttpExchange exchange, String name) throws IOException {
        method(exchange, "POST");
        Gate.judgeType(exchange.getRequestHeaders());
        if (name.equals(Entry.ENTER) || name.equals(Entry.LINK)) {
            String shown = Gate.key(exchange.getRequestHeaders());
            boolean known = name.equals(Entry.LINK) && entry.mayLink(shown);
            if (!known && !knocks.passes()) {
                throw tooMany();
            }
            reply(exchange, entry.answer(name, shown, body(exchange, Route.SMALL)));
            return;
        }
        Session session =
                bay.keys()
                        .session(Gate.key(exchange.getRequestHeaders()))
                        .orElseThrow(() -> knocks.passes() ? Entry.noKey() : tooMany());
        Route route = routes.get(name);
        if (route == null) {
            throw new FaultException(Kind.MISSING, "Nothing answers to that.");
        }
        Json.Members body = body(exchange, route.mostBytes());
        reply(exchange, route.handler().answer(new Call(body, session)));
    }

    private static void method(HttpExchange exchange, String known) {
        if (!exchange.getRequestMethod().equals(known)) {
            exchange.getResponseHeaders().set("Allow", known);
            throw new FaultException(Kind.METHOD, "This is asked with " + known + ".");
        }
    }

    private Json.Members body(HttpExchange exchange, int most) throws IOException {
        String told = Gate.only(exchange.getRequestHeaders(), "Content-Length").orElse("0");
        if (!told.matches("[0-9]{1,9}") || Integer.parseInt(told) > most) {
            throw tooLarge(exchange);
        }
        byte[] bytes =
                deadlines.within(
                        limits.bodyTime(), () -> exchange.getRequestBody().readNBytes(most + 1));
        if (bytes.length > most) {
            throw tooLarge(exchange);
        }
        return JsonReader.read(bytes);
    }

    private void reply(HttpExchange exchange, Reply reply) throws IOException {
        switch (reply) {
            case Reply.Document(String text) -> json(exchange, 200, text);
            case Reply.Attachment file -> {
                exchange.getResponseHeaders()
                        .set("Content-Disposition", "attachment; filename=\"" + file.name() + "\"");
                send(exchange, 200, file.mediaType(), file.bytes());
            }
            case Reply.Stream stream -> stream(exchange, stream);
        }
    }

    private void stream(HttpExchange exchange, Reply.Stream stream) throws IOException {
        if (!streams.tryAcquire()) {
            throw tooMany();
        }
        try {
            exchange.getResponseHeaders().set("Content-Type", "application/x-ndjson");
            exchange.sendResponseHeaders(200, 0);
            exchange.getResponseBody().flush(); // a reader learns now that it began
            var lines =
                    new LinesToReader(
                            exchange.getResponseBody(),
                            deadlines,
                            limits.replyTime(),
                            stream.heartbeat());
            open.add(lines);
            Thread.ofVirtual().name("heartbeat").start(() -> lines.beat(limits.heartbeat()));
            try {
                if (stopping) {
                    lines.leave();
                }
                stream.teller().accept(lines);
            } catch (Lines.GoneException e) {
                return; // nobody is there to be told
            } catch (RuntimeException | StackOverflowError | OutOfMemoryError e) {
                bay.fault(e); // the status is gone out already: the stream just ends
            } finally {
                open.remove(lines);
                lines.leave();
            }
        } finally {
            streams.release();
        }
    }

    /** Ends every stream; takes nothing more. */
    void stop() {
        stopping = true;
        open.forEach(LinesToReader::leave);
    }

    /** Whether a stream is still being told. */
    boolean busy() {
        return requests.availablePermits() < limits.requests();
    }

    private void refuse(HttpExchange exchange, FaultException fault) throws IOException {
        if (exchange.getResponseCode() < 0) { // else it is too late for words
            json(exchange, fault.kind().status(), fault.json());
        }
    }

    private void json(HttpExchange exchange, int status, String text) throws IOException {
        send(
                exchange,
                status,
                "application/json; charset=utf-8",
                text.getBytes(StandardCharsets.UTF_8));
    }

    private void send(HttpExchange exchange, int status, String mediaType, byte[] bytes)
            throws IOException {
        exchange.getResponseHeaders().set("Content-Type", mediaType);
        boolean bare = bytes.length == 0 || exchange.getRequestMethod().equals("HEAD");
        deadlines.within(
                limits.replyTime(),
                () -> {
                    exchange.sendResponseHeaders(status, bare ? -1 : bytes.length);
                    if (!bare) {
                        exchange.getResponseBody().write(bytes);
                        exchange.getResponseBody().close(); // sent before what came is drained
                    }
                    return true;
                });
    }

    private static FaultException tooLarge(HttpExchange exchange) {
        exchange.getResponseHeaders().set("Connection", "close"); // the rest is not read
        return new FaultException(Kind.TOO_LARGE, "More was sent than this ever reads.");
    }

    private static FaultException tooMany() {
        return new FaultException(Kind.TOO_MANY, "Too much is asked at once; try again shortly.");
    }
}
