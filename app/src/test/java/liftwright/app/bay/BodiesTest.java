package liftwright.app.bay;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.net.Socket;
import java.net.SocketException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import liftwright.testkit.Seeded;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What a body may be: JSON of a bounded size, sent in a bounded time. */
class BodiesTest {

    @TempDir private Path folder;

    static Stream<String> noObjects() {
        return Stream.of(
                "",
                " ",
                "x",
                "null",
                "1",
                "\"text\"",
                "[]",
                "[{}]",
                "{",
                "}",
                "{}}",
                "{}{}",
                "{} x",
                "{,}",
                "{\"a\"}",
                "{\"a\":}",
                "{\"a\":1,}",
                "{\"a\":1 \"b\":2}",
                "{a:1}",
                "{'a':1}",
                "{\"a\":'x'}",
                "{\"a\":NaN}",
                "{\"a\":Infinity}",
                "{\"a\":-Infinity}",
                "{\"a\":+1}",
                "{\"a\":01}",
                "{\"a\":.5}",
                "{\"a\":1.}",
                "{\"a\":0x1}",
                "{\"a\":1e999}",
                "{\"a\":-1e999}",
                "{\"a\":" + "1".repeat(41) + "}",
                "{\"a\":[1,]}",
                "{\"a\":tru}",
                "{\"a\":True}",
                "{\"a\":undefined}",
                "{\"a\":1,\"a\":2}",
                "{\"a\":1,\"\\u0061\":2}",
                "{\"a\":\"\n\"}",
                "{\"a\":\"\\x\"}",
                "{\"a\":\"\\ud800\"}",
                "{\"\\udc00\":1}",
                "{\"a\":\"x}",
                "{/*c*/}",
                "{}//c",
                "\ufeff{}",
                "{\"" + "n".repeat(201) + "\":1}",
                "{\"a\":" + "[".repeat(32) + "]".repeat(32) + "}",
                "{\"a\":" + "[".repeat(100_000),
                "{\"a\":[" + "1,".repeat(50_000) + "1]}");
    }

    @ParameterizedTest
    @MethodSource("noObjects")
    void whatIsNoObjectIsRefused(String text) {
        assertThatThrownBy(() -> read(text))
                .isInstanceOfSatisfying(
                        FaultException.class,
                        e -> assertThat(e.kind()).isEqualTo(FaultException.Kind.BAD_REQUEST));
    }

    @Test
    void otherCodingsAreRefused() {
        for (byte[] bytes :
                List.of(
                        "{}".getBytes(StandardCharsets.UTF_16BE),
                        "{}".getBytes(StandardCharsets.UTF_16LE),
                        "{\"a\":\"ü\"}".getBytes(StandardCharsets.ISO_8859_1),
                        new byte[] {'{', '"', (byte) 0xC0, (byte) 0xAF, '"', ':', '1', '}'})) {
            assertThatThrownBy(() -> JsonReader.read(bytes)).isInstanceOf(FaultException.class);
        }
    }

    @Test
    void whatIsAnObjectIsReadAsItStands() {
        var read =
                read(
                        " {\"t\":\"ü\\u00fc\\n\\ud83d\\ude00\",\"n\":-1.5e-3,\"w\":7,\"y\":true,\"z\":null,"
                                + "\"l\":[\"a\",{\"b\":[]}],\"o\":{\"k\":\"v\"}}\n");
        assertThat(read.text("t")).isEqualTo("üü\n😀");
        assertThat(read.number("n")).isEqualTo(-0.0015);
        assertThat(read.whole("w")).isEqualTo(7);
        assertThat(read.truth("y")).isTrue();
        assertThat(read.optional("z")).isEmpty();
        assertThat(read.items("l"))
                .containsExactly(
                        new Json.Text("a"),
                        new Json.Members(Map.of("b", new Json.Items(List.of()))));
        assertThat(read.members("o").text("k")).isEqualTo("v");
        String deepest = "{\"a\":" + "[".repeat(31) + "]".repeat(31) + "}";
        assertThat(read(deepest).items("a")).hasSize(1);
    }

    @Test
    void aMemberOfAnotherKindIsNamed() {
        var read = read("{\"t\":\"x\",\"n\":1.5,\"neg\":-1,\"big\":3e9,\"l\":[1],\"z\":null}");
        var wrong = new ArrayList<Runnable>();
        wrong.add(() -> read.text("n"));
        wrong.add(() -> read.text("gone"));
        wrong.add(() -> read.text("z"));
        wrong.add(() -> read.number("t"));
        wrong.add(() -> read.whole("n"));
        wrong.add(() -> read.whole("neg"));
        wrong.add(() -> read.whole("big"));
        wrong.add(() -> read.truth("n"));
        wrong.add(() -> read.items("t"));
        wrong.add(() -> read.texts("l"));
        wrong.add(() -> read.members("l"));
        wrong.add(() -> read.optionalText("n"));
        for (Runnable each : wrong) {
            assertThatThrownBy(each::run)
                    .isInstanceOf(FaultException.class)
                    .message()
                    .contains("The member ");
        }
    }

    /** Whatever is done to good JSON, it reads or it is refused. */
    @Test
    void noBytesMakeAnotherError() {
        byte[] good =
                "{\"rig\":\"rig.yaml\",\"changes\":[{\"at\":\"fans/2\",\"value\":1e3,\"x\":[null,true]}]}"
                        .getBytes(StandardCharsets.UTF_8);
        int[] counts = new int[2];
        Seeded.check(
                3000,
                random -> {
                    byte[] bytes = good.clone();
                    for (int i = random.nextInt(4); i >= 0; i--) {
                        bytes[random.nextInt(bytes.length)] = (byte) random.nextInt(256);
                    }
                    try {
                        counts[0] += JsonReader.read(bytes).values().isEmpty() ? 0 : 1;
                    } catch (FaultException e) {
                        counts[1]++;
                    }
                });
        assertThat(counts[0]).isPositive();
        assertThat(counts[1]).isPositive();
    }

    @Test
    void aRequestSaysWhatWasWrong() throws IOException {
        try (var bay = OpenBay.at(folder)) {
            String key = bay.key();
            for (String body : List.of("{", "[]", "", "{\"rig\":1}", "{\"a\":1,\"a\":1}")) {
                Raw.Answer answer = bay.raw().post("watch", body, key);
                assertThat(answer.status()).as(body).isEqualTo(400);
                assertThat(answer.body()).contains("\"fault\":\"bad request\"", "\"sentence\":");
            }
            assertThat(bay.faults()).isEmpty();
        }
    }

    @Test
    void aBodyUpToItsLimitIsReadAndNoFurther() throws IOException {
        var echo = new Route("echo", 1000, call -> Reply.json(j -> j.object(() -> {})));
        try (var bay = OpenBay.at(folder, echo)) {
            String key = bay.key();
            String fits = "{\"a\":\"" + "x".repeat(1000 - 8) + "\"}";
            assertThat(bay.raw().post("echo", fits, key).status()).isEqualTo(200);
            Raw.Answer more = bay.raw().post("echo", fits + " ", key);
            assertThat(more.status()).isEqualTo(413);
            assertThat(more.body()).contains("\"fault\":\"too large\"");
            try (Socket socket = bay.raw().connect()) { // its size is not told
                String chunks = "3e8\r\n" + fits + "\r\n5\r\n     \r\n0\r\n\r\n"; // 1000 and 5
                Raw.send(
                        socket,
                        "POST /api/echo HTTP/1.1",
                        List.of(
                                bay.raw().host(),
                                "Content-Type: application/json",
                                "Transfer-Encoding: chunked",
                                key),
                        chunks.getBytes(StandardCharsets.US_ASCII));
                assertThat(Raw.answer(socket.getInputStream()).status()).isEqualTo(413);
            }
        }
    }

    @Test
    void aBodyWhoseSizeIsNotToldIsCutAtTheLimit() throws IOException {
        try (var bay = OpenBay.at(folder)) {
            String key = bay.key();
            try (Socket socket = bay.raw().connect()) {
                Raw.send(
                        socket,
                        "POST /api/folder HTTP/1.1",
                        List.of(
                                bay.raw().host(),
                                "Content-Type: application/json",
                                "Transfer-Encoding: chunked",
                                key),
                        new byte[0]);
                String chunk = "1000\r\n" + " ".repeat(4096) + "\r\n";
                byte[] bytes = chunk.getBytes(StandardCharsets.US_ASCII);
                boolean shut = false;
                for (int i = 0; i < 20_000 && !shut; i++) {
                    try {
                        socket.getOutputStream().write(bytes);
                    } catch (SocketException e) {
                        shut = true;
                    }
                }
                assertThat(shut).as("80 MB were taken").isTrue();
            }
            assertThat(bay.raw().post("folder", "{}", key).status()).isEqualTo(200);
        }
    }

    @Test
    void aSizeThatIsToldAndTooLargeIsRefusedBeforeTheBodyComes() throws IOException {
        try (var bay = OpenBay.at(folder)) {
            String key = bay.key();
            for (String size :
                    List.of("262145", "999999999", "9999999999", "9223372036854775807")) {
                try (Socket socket = bay.raw().connect()) {
                    Raw.send(
                            socket,
                            "POST /api/folder HTTP/1.1",
                            List.of(
                                    bay.raw().host(),
                                    "Content-Type: application/json",
                                    "Content-Length: " + size,
                                    key),
                            new byte[0]);
                    assertThat(Raw.answer(socket.getInputStream()).status())
                            .as(size)
                            .isEqualTo(413);
                }
            }
        }
    }

    @Test
    void aBodyThatDoesNotComeIsNotWaitedFor() throws IOException {
        try (var bay =
                OpenBay.at(
                        folder,
                        l ->
                                Allowing.times(
                                        l, Duration.ofMillis(300), l.replyTime(), l.heartbeat()))) {
            String key = bay.key();
            try (Socket socket = bay.raw().connect()) {
                Raw.send(
                        socket,
                        "POST /api/folder HTTP/1.1",
                        List.of(
                                bay.raw().host(),
                                "Content-Type: application/json",
                                "Content-Length: 100",
                                key),
                        "{\"a\":".getBytes(StandardCharsets.US_ASCII));
                assertThat(readToEnd(socket)).as("cut without an answer").isEmpty();
            }
            assertThat(bay.raw().post("folder", "{}", key).status()).isEqualTo(200);
            assertThat(bay.faults()).isEmpty();
        }
    }

    private static String readToEnd(Socket socket) throws IOException {
        try {
            return new String(socket.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        } catch (SocketException e) {
            return ""; // cut harder
        }
    }

    private static Json.Members read(String text) {
        return JsonReader.read(text.getBytes(StandardCharsets.UTF_8));
    }
}
