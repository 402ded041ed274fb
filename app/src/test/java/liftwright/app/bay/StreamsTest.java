package liftwright.app.bay;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.net.Socket;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;

/** Streams of lines: they come at once, they beat, they end on both sides. */
@Timeout(60)
class StreamsTest {

    @TempDir private Path folder;

    @Test
    void eachLineComesWhenItIsTold() throws Exception {
        var next = new LinkedBlockingQueue<String>();
        var route =
                Route.of(
                        "told",
                        call ->
                                Reply.lines(
                                        lines -> {
                                            for (String l = take(next);
                                                    !l.equals("end");
                                                    l = take(next)) {
                                                lines.tell(l);
                                            }
                                        }));
        UnaryOperator<Limits> still =
                l -> Allowing.times(l, l.bodyTime(), l.replyTime(), Duration.ofHours(1));
        try (var bay = OpenBay.at(folder, still, route);
                Socket socket = ask(bay, bay.key(), "told", "{}")) {
            InputStream in = started(socket);
            for (String line : List.of("{\"n\":1}", "{\"n\":2}")) {
                next.add(line);
                assertThat(Raw.chunk(in)).isEqualTo(line + "\n");
            }
            next.add("end");
            assertThat(Raw.chunk(in)).as("the end").isEmpty();
        }
    }

    @Test
    void aStreamWithNothingToTellBeats() throws Exception {
        try (var bay = OpenBay.at(folder, StreamsTest::quick);
                Socket socket = ask(bay, bay.key(), "watch", "{\"rig\":\"rig.yaml\"}")) {
            InputStream in = started(socket);
            for (int i = 0; i < 4; i++) {
                assertThat(Raw.chunk(in)).isEqualTo("{}\n");
            }
        }
    }

    @Test
    void workStopsWhenTheReaderLeaves() throws Exception {
        var gone = new CountDownLatch(2);
        var route =
                Route.of(
                        "work",
                        call ->
                                Reply.lines(
                                        lines -> {
                                            lines.onGone(gone::countDown);
                                            while (!lines.gone()) {
                                                Thread.onSpinWait();
                                            }
                                            gone.countDown();
                                        }));
        try (var bay = OpenBay.at(folder, StreamsTest::quick, route)) {
            try (Socket socket = ask(bay, bay.key(), "work", "{}")) {
                started(socket);
            }
            assertThat(gone.await(30, TimeUnit.SECONDS)).isTrue();
        }
    }

    @Test
    void aReaderWhoDoesNotReadIsLeft() throws Exception {
        var gone = new CountDownLatch(1);
        String large = "\"" + "x".repeat(1 << 20) + "\"";
        var route =
                Route.of(
                        "flood",
                        call ->
                                Reply.lines(
                                        lines -> {
                                            lines.onGone(gone::countDown);
                                            while (true) {
                                                lines.tell(large);
                                            }
                                        }));
        try (var bay = OpenBay.at(folder, StreamsTest::quick, route);
                Socket socket = ask(bay, bay.key(), "flood", "{}")) {
            assertThat(gone.await(30, TimeUnit.SECONDS)).isTrue();
            assertThat(socket.isConnected()).isTrue();
            assertThat(bay.faults()).isEmpty();
        }
    }

    @Test
    void linesOfSeveralThreadsStayWhole() throws Exception {
        var route =
                Route.of(
                        "many",
                        call ->
                                Reply.lines(
                                        lines -> {
                                            var threads = new ArrayList<Thread>();
                                            for (char c = 'a'; c < 'e'; c++) {
                                                String line =
                                                        "\""
                                                                + Character.toString(c).repeat(3000)
                                                                + "\"";
                                                threads.add(
                                                        Thread.ofVirtual()
                                                                .start(
                                                                        () -> {
                                                                            for (int i = 0;
                                                                                    i < 50;
                                                                                    i++) {
                                                                                lines.tell(line);
                                                                            }
                                                                        }));
                                            }
                                            threads.forEach(StreamsTest::join);
                                        }));
        try (var bay = OpenBay.at(folder, route)) {
            List<String> lines = bay.raw().post("many", "{}", bay.key()).body().lines().toList();
            assertThat(lines)
                    .hasSize(200)
                    .allMatch(l -> l.matches("\"(a{3000}|b{3000}|c{3000}|d{3000})\""));
        }
    }

    @Test
    void soManyStreamsAndNoMore() throws Exception {
        UnaryOperator<Limits> two = l -> Allowing.atOnce(quick(l), 48, 2);
        try (var bay = OpenBay.at(folder, two)) {
            String key = bay.key();
            String watch = "{\"rig\":\"rig.yaml\"}";
            try (Socket one = ask(bay, key, "watch", watch);
                    Socket other = ask(bay, key, "watch", watch)) {
                started(one);
                started(other);
                Raw.Answer third = bay.raw().post("watch", watch, key);
                assertThat(third.status()).isEqualTo(429);
                assertThat(third.body()).contains("\"fault\":\"too many\"");
                assertThat(bay.raw().post("folder", "{}", key).status()).isEqualTo(200);
            }
            while (true) { // until both were noticed to be gone
                try (Socket again = ask(bay, key, "watch", watch)) {
                    if (Raw.line(again.getInputStream()).contains(" 200 ")) {
                        return;
                    }
                }
            }
        }
    }

    @Test
    void oneTabTooManyIsToldThatItDoesNotWatch() throws Exception {
        try (var bay = OpenBay.at(folder)) {
            String key = bay.key();
            var open = new ArrayList<Socket>();
            try {
                for (int i = 0; i < Hub.MOST_WATCHERS; i++) {
                    Socket socket = ask(bay, key, "watch", "{\"rig\":\"rig.yaml\"}");
                    open.add(socket);
                    assertThat(Raw.chunk(started(socket))).isEqualTo("{}\n");
                }
                assertThat(bay.raw().post("watch", "{\"rig\":\"rig.yaml\"}", key).status())
                        .isEqualTo(429);
            } finally {
                for (Socket socket : open) {
                    socket.close();
                }
            }
        }
    }

    @Test
    void requestsBeyondThoseInWorkAreTurnedAway() throws Exception {
        var in = new CountDownLatch(1);
        var go = new CountDownLatch(1);
        var route =
                Route.of(
                        "slow",
                        call -> {
                            in.countDown();
                            await(go);
                            return Reply.json(j -> j.object(() -> {}));
                        });
        try (var bay = OpenBay.at(folder, l -> Allowing.atOnce(l, 1, 1), route)) {
            String key = bay.key();
            try (Socket socket = begun(bay, key, in)) {
                assertThat(bay.raw().post("folder", "{}", key).status()).isEqualTo(429);
                go.countDown();
                assertThat(Raw.answer(socket.getInputStream()).status()).isEqualTo(200);
            }
        }
    }

    /** Asked again where the request before it, answered already, still counts as in work. */
    private static Socket begun(OpenBay bay, String key, CountDownLatch in) throws Exception {
        for (int k = 0; k < 10; k++) {
            Socket socket = ask(bay, key, "slow", "{}");
            if (in.await(3, TimeUnit.SECONDS)) {
                return socket;
            }
            assertThat(Raw.answer(socket.getInputStream()).status()).isEqualTo(429);
            socket.close();
        }
        throw new AssertionError("turned away ten times");
    }

    @Test
    void whoWatchesARigIsToldOfThatRig() throws Exception {
        var hub = new Hub();
        var lines = new LinesHeard();
        Thread watching = Thread.ofVirtual().start(() -> hub.watch("a.yaml", lines));
        lines.await(JsonNode::isEmpty); // whoever hears this is watching
        hub.publish(new Hub.Changed("b.yaml", "r1", true));
        hub.publish(new Hub.Changed("a.yaml", "r2", false));
        lines.await(line -> line.has("revision"));
        lines.leave();
        watching.join();
        for (int i = 0; i < 100; i++) {
            hub.publish(new Hub.Changed("a.yaml", "r" + i, true)); // nobody is there: no harm
        }
        assertThat(lines.heard())
                .extracting(JsonNode::toString)
                .containsExactly("{}", "{\"revision\":\"r2\",\"saved\":false}");
    }

    @Test
    void aRateLetsSoManyThroughAndMoreWithTime() {
        var now = new long[1];
        var rate = new Rate(2, 3, () -> now[0]);
        assertThat(List.of(rate.passes(), rate.passes(), rate.passes(), rate.passes()))
                .containsExactly(true, true, true, false);
        now[0] += 499_000_000;
        assertThat(rate.passes()).isFalse();
        now[0] += 2_000_000;
        assertThat(rate.passes()).isTrue();
        assertThat(rate.passes()).isFalse();
        now[0] += 3600_000_000_000L;
        assertThat(List.of(rate.passes(), rate.passes(), rate.passes(), rate.passes()))
                .as("a long rest saves up no more")
                .containsExactly(true, true, true, false);
    }

    @Test
    void whatComesAfterTheReaderLeftIsRefused() {
        var out = new ByteArrayOutputStream();
        var deadlines = new Deadlines();
        var lines = new LinesToReader(out, deadlines, Duration.ofSeconds(5), "");
        lines.tell("{}");
        lines.leave();
        assertThatThrownBy(() -> lines.tell("{}")).isInstanceOf(Lines.GoneException.class);
        assertThat(out.toString(StandardCharsets.UTF_8)).isEqualTo("{}\n");
        var late = new CountDownLatch(1);
        lines.onGone(late::countDown);
        assertThat(late.getCount()).isZero();
        deadlines.stop();
    }

    private static Limits quick(Limits l) {
        return Allowing.times(l, l.bodyTime(), Duration.ofMillis(400), Duration.ofMillis(50));
    }

    static Socket ask(OpenBay bay, String key, String name, String body) throws IOException {
        Socket socket = bay.raw().connect();
        byte[] bytes = body.getBytes(StandardCharsets.UTF_8);
        Raw.send(
                socket,
                "POST /api/" + name + " HTTP/1.1",
                List.of(
                        bay.raw().host(),
                        "Content-Type: application/json",
                        "Content-Length: " + bytes.length,
                        key),
                bytes);
        return socket;
    }

    static InputStream started(Socket socket) throws IOException {
        InputStream in = socket.getInputStream();
        assertThat(Raw.line(in)).startsWith("HTTP/1.1 200");
        Raw.headers(in);
        return in;
    }

    private static String take(LinkedBlockingQueue<String> from) {
        try {
            return from.take();
        } catch (InterruptedException e) {
            throw new IllegalStateException(e);
        }
    }

    private static void await(CountDownLatch latch) {
        try {
            assertThat(latch.await(30, TimeUnit.SECONDS)).isTrue();
        } catch (InterruptedException e) {
            throw new IllegalStateException(e);
        }
    }

    private static void join(Thread thread) {
        try {
            thread.join();
        } catch (InterruptedException e) {
            throw new IllegalStateException(e);
        }
    }
}
