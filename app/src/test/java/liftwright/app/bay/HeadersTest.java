package liftwright.app.bay;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.Socket;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Every reply tells the browser what it may do with it, whatever the reply is. */
class HeadersTest {

    /** Written out once more, so that the code cannot lose one. */
    private static final Map<String, String> WANTED =
            Map.of(
                    "content-security-policy",
                    "default-src 'none'; script-src 'self'; style-src 'self'; img-src 'self' blob:;"
                            + " connect-src 'self'; font-src 'self'; base-uri 'none'; form-action"
                            + " 'none'; frame-ancestors 'none'",
                    "x-content-type-options",
                    "nosniff",
                    "x-frame-options",
                    "DENY",
                    "referrer-policy",
                    "no-referrer",
                    "cross-origin-opener-policy",
                    "same-origin",
                    "cross-origin-resource-policy",
                    "same-origin");

    @TempDir private Path folder;

    @Test
    void everyReplyCarriesThem() throws IOException {
        var broken =
                Route.of(
                        "broken",
                        call -> {
                            throw new IllegalStateException("broken on purpose");
                        });
        var kept =
                Route.of(
                        "kept",
                        call -> new Reply.Attachment("a.svg", "image/svg+xml", new byte[] {'<'}));
        var few = Route.of("few", call -> Reply.lines(lines -> lines.tell("{}")));
        try (var bay = OpenBay.at(folder, Allowing::manyKnocks, broken, kept, few)) {
            String key = bay.key();
            Raw raw = bay.raw();
            Map<String, Raw.Answer> replies = new LinkedHashMap<>();
            replies.put("200 page", raw.ask("GET", "/", "", raw.host()));
            replies.put("404 page", raw.ask("GET", "/nowhere", "", raw.host()));
            replies.put("421", raw.ask("GET", "/", "", "Host: evil.example"));
            replies.put("403 origin", raw.ask("GET", "/", "", raw.host(), "Origin: null"));
            replies.put("405", raw.ask("PUT", "/", "", raw.host()));
            replies.put("415", raw.ask("POST", "/api/folder", "{}", raw.host(), key));
            replies.put("200 api", raw.post("folder", "{}", key));
            replies.put("400", raw.post("folder", "{", key));
            replies.put("403 key", raw.post("folder", "{}"));
            replies.put("404 api", raw.post("nowhere", "{}", key));
            replies.put("413", raw.post("folder", " ".repeat(300_000) + "{}", key));
            replies.put("500", raw.post("broken", "{}", key));
            replies.put("200 file", raw.post("kept", "{}", key));
            replies.put("200 lines", raw.post("few", "{}", key));
            replies.forEach(
                    (what, reply) -> {
                        assertThat(what).startsWith(Integer.toString(reply.status()));
                        WANTED.forEach(
                                (name, value) ->
                                        assertThat(reply.headers().get(name))
                                                .as(what + " " + name)
                                                .containsExactly(value));
                        assertThat(reply.header("permissions-policy"))
                                .as(what)
                                .contains("camera=()", "microphone=()", "geolocation=()");
                        assertThat(reply.header("cache-control")).as(what).isEqualTo("no-store");
                        assertThat(reply.headers())
                                .as(what)
                                .doesNotContainKeys(
                                        "set-cookie", "access-control-allow-origin", "server");
                    });
            assertThat(replies.get("500").body())
                    .contains("\"fault\":\"internal\"")
                    .doesNotContain("broken on purpose", "Exception");
            assertThat(bay.faults())
                    .singleElement()
                    .hasToString("java.lang.IllegalStateException: broken on purpose");
            assertThat(replies.get("200 file").header("content-disposition"))
                    .isEqualTo("attachment; filename=\"a.svg\"");
            assertThat(replies.get("200 lines").header("content-type"))
                    .isEqualTo("application/x-ndjson");
        }
    }

    @Test
    void soDoesTheReplyToOneWhoAsksTooMuch() throws IOException {
        try (var bay = OpenBay.at(folder, l -> Allowing.rate(l, 1e-6, 3))) {
            Raw raw = bay.raw();
            for (int i = 0; i < 3; i++) {
                assertThat(raw.ask("GET", "/", "", raw.host()).status()).isEqualTo(200);
            }
            assertThat(raw.ask("GET", "/", "", "Host: evil.example").status())
                    .as("a stranger costs nothing")
                    .isEqualTo(421);
            Raw.Answer answer = raw.ask("GET", "/", "", raw.host());
            assertThat(answer.status()).isEqualTo(429);
            WANTED.forEach((name, value) -> assertThat(answer.header(name)).isEqualTo(value));
            assertThat(answer.body()).contains("\"fault\":\"too many\"");
        }
    }

    /** What is no request at all never reaches a route; Java's server says so in fixed words. */
    @Test
    void whatIsNoRequestIsNotRepeated() throws IOException {
        try (var bay = OpenBay.at(folder)) {
            for (String line :
                    List.of(
                            "<script>alert(1)</script>",
                            "GET",
                            "GET /<script> HTTP/1.1",
                            "GET /%zz HTTP/1.1",
                            "GET <script> HTTP/1.1",
                            "GET * HTTP/1.1")) {
                try (Socket socket = bay.raw().connect()) {
                    Raw.send(
                            socket,
                            line,
                            List.of(bay.raw().host(), "Connection: close"),
                            new byte[0]);
                    String all =
                            new String(
                                    socket.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
                    assertThat(all).as(line).doesNotContain("alert", "<script", "liftwright/page");
                }
            }
        }
    }
}
