package liftwright.app.bay;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Who is let in by the head of a request, asked by hand over a socket. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class GateTest {

    private static final String JSON = "Content-Type: application/json";

    private OpenBay bay;
    private String key;

    @BeforeAll
    void open(@TempDir Path folder) throws IOException {
        bay = OpenBay.at(folder, Allowing::manyKnocks);
        key = bay.key();
    }

    @AfterAll
    void close() throws IOException {
        bay.close();
    }

    @ParameterizedTest
    @ValueSource(strings = {"127.0.0.1:PORT", "localhost:PORT"})
    void itsOwnHostIsLetIn(String host) {
        assertThat(get("/", "Host: " + own(host)).status()).isEqualTo(200);
        assertThat(folder("Host: " + own(host)).status()).isEqualTo(200);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "evil.example",
                "evil.example:PORT", // a name made to point here
                "127.0.0.1.evil.example:PORT",
                "localhost.evil.example:PORT",
                "127.0.0.1",
                "localhost",
                "127.0.0.1:1",
                "127.0.0.1:PORT0",
                "127.0.0.1:0PORT",
                "127.0.0.2:PORT",
                "127.1:PORT",
                "2130706433:PORT",
                "0.0.0.0:PORT",
                "[::1]:PORT",
                "localhost.:PORT",
                "user@127.0.0.1:PORT",
                "127.0.0.1:PORT, evil.example",
                "evil.example, 127.0.0.1:PORT",
                "",
            })
    void anyOtherHostIsTurnedAwayBeforeAnythingIsLookedUp(String host) {
        for (Raw.Answer answer :
                List.of(
                        get("/", "Host: " + own(host)),
                        get("/nowhere", "Host: " + own(host)),
                        folder("Host: " + own(host)))) {
            assertThat(answer.status()).isEqualTo(421);
            assertThat(answer.body()).contains("\"fault\":\"host\"").doesNotContain("Heron");
        }
    }

    @Test
    void noHostOrTwoAreNone() {
        assertThat(get("/").status()).isEqualTo(421);
        String host = bay.raw().host();
        assertThat(get("/", host, host).status()).isEqualTo(421);
        assertThat(get("/", host, "Host: evil.example").status()).isEqualTo(421);
        assertThat(get("http://evil.example/", host).status()).isEqualTo(421);
        assertThat(get("//evil.example/", host).status()).isEqualTo(421);
    }

    @Test
    void aPageOfOursIsLetIn() {
        String origin = "Origin: http://127.0.0.1:" + bay.server().port();
        assertThat(folder(bay.raw().host(), origin, "Sec-Fetch-Site: same-origin").status())
                .isEqualTo(200);
        assertThat(folder(bay.raw().host()).status()).as("no browser").isEqualTo(200);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "null",
                "http://evil.example",
                "https://127.0.0.1:PORT",
                "http://127.0.0.1:1",
                "http://127.0.0.1",
                "http://localhost:PORT", // another one than the host that was named
                "http://127.0.0.1:PORT.evil.example",
                "http://127.0.0.1:PORT/",
                "file://",
                "",
            })
    void anotherPageIsTurnedAwayAlsoWithAKey(String origin) {
        String line = "Origin: " + own(origin);
        for (Raw.Answer answer :
                List.of(
                        folder(bay.raw().host(), line),
                        get("/", bay.raw().host(), line),
                        bay.raw().post("enter", "{\"token\":\"x\"}", line))) {
            assertThat(answer.status()).isEqualTo(403);
            assertThat(answer.body()).contains("\"fault\":\"origin\"");
            assertThat(answer.headers()).doesNotContainKey("access-control-allow-origin");
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"cross-site", "same-site", "none", "", "Same-Origin"})
    void aBrowserThatSaysTheRequestIsForeignIsBelieved(String site) {
        Raw.Answer answer = folder(bay.raw().host(), "Sec-Fetch-Site: " + site);
        assertThat(answer.status()).isEqualTo(403);
        assertThat(answer.body()).contains("\"fault\":\"origin\"");
    }

    @Test
    void aLinkFromAnywhereShowsThePageButNoOtherPageLoadsItsParts() {
        String host = bay.raw().host();
        String foreign = "Sec-Fetch-Site: cross-site";
        String visit = "Sec-Fetch-Mode: navigate";
        assertThat(get("/", host, foreign, visit, "Sec-Fetch-Dest: document").status())
                .isEqualTo(200);
        assertThat(get("/", host, foreign, visit, "Sec-Fetch-Dest: iframe").status())
                .isEqualTo(403);
        assertThat(
                        get("/", host, foreign, "Sec-Fetch-Mode: no-cors", "Sec-Fetch-Dest: script")
                                .status())
                .isEqualTo(403);
        assertThat(get("/", host, "Sec-Fetch-Site: none").status()).as("typed").isEqualTo(200);
    }

    @ParameterizedTest
    @ValueSource(strings = {"GET", "PUT", "DELETE", "OPTIONS", "PATCH", "HEAD", "TRACE", "XYZ"})
    void onlyPostAsks(String method) {
        Raw.Answer answer = bay.raw().ask(method, "/api/folder", "", bay.raw().host(), JSON, key);
        assertThat(answer.status()).isEqualTo(405);
        assertThat(answer.header("allow")).isEqualTo("POST");
    }

    @ParameterizedTest
    @ValueSource(strings = {"POST", "PUT", "DELETE", "OPTIONS", "HEAD", "TRACE"})
    void onlyGetShows(String method) {
        Raw.Answer answer = bay.raw().ask(method, "/", "", bay.raw().host());
        assertThat(answer.status()).isEqualTo(405);
        assertThat(answer.header("allow")).isEqualTo("GET");
    }

    /** The three that a form of another page can send without being let, and some near misses. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "text/plain",
                "application/x-www-form-urlencoded",
                "multipart/form-data; boundary=x",
                "application/jsonx",
                "application/json; charset=utf-16",
                "text/plain; application/json",
                "",
            })
    void onlyJsonIsRead(String type) {
        Raw.Answer answer =
                bay.raw()
                        .ask(
                                "POST",
                                "/api/folder",
                                "{}",
                                bay.raw().host(),
                                "Content-Type: " + type,
                                key);
        assertThat(answer.status()).isEqualTo(415);
        assertThat(bay.raw().ask("POST", "/api/folder", "{}", bay.raw().host(), key).status())
                .isEqualTo(415);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "application/json",
                "application/json;charset=utf-8",
                "application/json; charset=UTF-8"
            })
    void jsonIsRead(String type) {
        assertThat(
                        bay.raw()
                                .ask(
                                        "POST",
                                        "/api/folder",
                                        "{}",
                                        bay.raw().host(),
                                        "Content-Type: " + type,
                                        key)
                                .status())
                .isEqualTo(200);
    }

    @Test
    void withoutTheKeyNothingIsToldNotEvenWhatThereIs() {
        String value = key.substring("Liftwright-Key: ".length());
        for (String shown :
                List.of(
                        "X: x",
                        "Liftwright-Key: ",
                        "Liftwright-Key: x",
                        key + "x",
                        key.substring(0, key.length() - 1),
                        key.toUpperCase(Locale.ROOT),
                        "Cookie: Liftwright-Key=" + value,
                        "Authorization: Bearer " + value)) {
            for (String name : List.of("folder", "watch", "nowhere", "link")) {
                Raw.Answer answer = bay.raw().post(name, "{}", shown);
                assertThat(answer.status()).as(name + " with " + shown).isEqualTo(403);
                assertThat(answer.body()).contains("\"fault\":\"key\"").doesNotContain("Heron");
            }
        }
        assertThat(bay.raw().post("folder", "{}", key, key).status()).as("twice").isEqualTo(403);
        assertThat(bay.raw().post("folder?key=" + value, "{}").status()).isEqualTo(403);
        assertThat(bay.raw().post("nowhere", "{}", key).status()).isEqualTo(404);
    }

    private Raw.Answer get(String path, String... headers) {
        return bay.raw().ask("GET", path, "", headers);
    }

    private Raw.Answer folder(String... headers) {
        var all = new ArrayList<>(List.of(headers));
        all.add(JSON);
        all.add(key);
        return bay.raw().ask("POST", "/api/folder", "{}", all.toArray(new String[0]));
    }

    private String own(String text) {
        return text.replace("PORT", Integer.toString(bay.server().port()));
    }
}
