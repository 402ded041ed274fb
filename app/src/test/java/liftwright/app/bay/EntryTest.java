package liftwright.app.bay;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.Executors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Links, tokens and keys. */
class EntryTest {

    @TempDir private Path folder;

    @Test
    void aLinkCarriesItsTokenBehindTheHashAndIsGoodOnce() throws IOException {
        try (var bay = OpenBay.at(folder)) {
            String link = bay.server().link();
            assertThat(link)
                    .matches(
                            "http://127\\.0\\.0\\.1:" + bay.server().port() + "/#enter=[\\w-]{43}");
            String token = OpenBay.token(link);
            Raw.Answer first = bay.enter(token);
            assertThat(first.status()).isEqualTo(200);
            assertThat(first.text("key")).matches("[\\w-]{43}").isNotEqualTo(token);
            assertThat(first.headers()).doesNotContainKey("set-cookie");
            Raw.Answer again = bay.enter(token);
            assertThat(again.status()).isEqualTo(403);
            assertThat(again.body()).contains("\"fault\":\"key\"").contains("used already");
            assertThat(folder(bay, "Liftwright-Key: " + first.text("key"))).isEqualTo(200);
            assertThat(folder(bay, "Liftwright-Key: " + token))
                    .as("a token is no key")
                    .isEqualTo(403);
        }
    }

    @Test
    void anyOtherTextIsNoToken() throws IOException {
        try (var bay = OpenBay.at(folder)) {
            String token = bay.token();
            for (String wrong :
                    List.of(
                            "",
                            "x",
                            token + "=",
                            token.substring(1),
                            " " + token,
                            token.replace(token.charAt(0), token.charAt(0) == 'A' ? 'B' : 'A'))) {
                assertThat(bay.enter(wrong).status()).as(wrong).isEqualTo(403);
            }
            for (String body : List.of("{}", "{\"token\":1}", "{\"token\":null}", "[]")) {
                assertThat(bay.raw().post("enter", body).status()).as(body).isEqualTo(400);
            }
            assertThat(bay.enter(token).status()).as("still good").isEqualTo(200);
        }
    }

    @Test
    void manyAtOnceComeInOnceEach() throws Exception {
        var keys = new Keys();
        Callable<Integer> comeAndGo =
                () -> {
                    int in = 0;
                    for (int i = 0; i < 5000; i++) {
                        String token = keys.token(Optional.empty());
                        in += keys.enter(token).isPresent() ? 1 : 0;
                        in += keys.enter(token).isPresent() ? 1 : 0;
                    }
                    return in;
                };
        try (var threads = Executors.newFixedThreadPool(4)) {
            for (var in : threads.invokeAll(Collections.nCopies(4, comeAndGo))) {
                assertThat(in.get()).isEqualTo(5000);
            }
        }
    }

    @Test
    void whoIsInGetsAnotherLinkForAnotherTab() throws IOException {
        try (var bay = OpenBay.at(folder)) {
            Raw.Answer link = bay.raw().post("link", "{}", bay.key());
            assertThat(link.status()).isEqualTo(200);
            assertThat(bay.enter(OpenBay.token(link.text("url"))).status()).isEqualTo(200);
        }
    }

    @Test
    void aLinkForARigShowsThatRigFirst() throws IOException {
        Files.writeString(folder.resolve("other.yaml"), OpenBay.RIG);
        try (var bay = OpenBay.at(folder)) {
            Raw.Answer link = bay.raw().post("link", "{\"rig\":\"other.yaml\"}", bay.key());
            Raw.Answer entered = bay.enter(OpenBay.token(link.text("url")));
            String key = "Liftwright-Key: " + entered.text("key");
            assertThat(bay.raw().post("folder", "{}", key).text("open")).isEqualTo("other.yaml");
            assertThat(bay.raw().post("folder", "{}", bay.key()).text("open"))
                    .isEqualTo("rig.yaml");
            assertThat(bay.raw().post("link", "{\"rig\":\"../x.yaml\"}", key).status())
                    .isEqualTo(404);
        }
    }

    @Test
    void theOwnersSecretGetsALinkAndNothingElse() throws IOException {
        try (var bay = OpenBay.at(folder)) {
            String told = Files.readString(folder.resolve(".liftwright/door"));
            String secret = "Liftwright-Key: " + told.strip().split(" ", -1)[1];
            assertThat(bay.raw().post("link", "{}", secret).status()).isEqualTo(200);
            assertThat(folder(bay, secret)).isEqualTo(403);
        }
    }

    @Test
    void linksThatNobodyUsedDoNotPileUp() {
        var keys = new Keys();
        String first = keys.token(Optional.empty());
        for (int i = 0; i < 15; i++) {
            keys.token(Optional.empty());
        }
        String last = keys.token(Optional.empty());
        assertThat(keys.enter(first)).isEmpty();
        assertThat(keys.enter(last)).isPresent();
    }

    @Test
    void whoGuessesIsSlowedAndThoseInsideAreNot() throws IOException {
        try (var bay = OpenBay.at(folder, l -> Allowing.knocks(l, 1e-6, 5))) {
            String key = bay.key(); // the first knock
            for (int i = 0; i < 4; i++) {
                assertThat(bay.enter("guess").status()).isEqualTo(403);
            }
            Raw.Answer slowed = bay.enter("guess");
            assertThat(slowed.status()).isEqualTo(429);
            assertThat(slowed.body()).contains("\"fault\":\"too many\"");
            assertThat(folder(bay, "Liftwright-Key: guess")).isEqualTo(429);
            assertThat(folder(bay, key)).isEqualTo(200);
        }
    }

    private static int folder(OpenBay bay, String key) {
        return bay.raw().post("folder", "{}", key).status();
    }
}
