package liftwright.app.bay;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.net.ConnectException;
import java.net.InetAddress;
import java.net.NetworkInterface;
import java.net.Socket;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Optional;
import liftwright.app.bay.BayServer.Opened;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

/** From the lock to the clean end. */
@Timeout(60)
class LifeTest {

    @TempDir private Path folder;

    @Test
    void aSecondOpenGetsALinkOfTheFirst() throws IOException {
        Files.writeString(folder.resolve("other.yaml"), OpenBay.RIG);
        try (var bay = OpenBay.at(folder)) {
            Opened second = open(folder, Optional.of("other.yaml"));
            assertThat(second).isInstanceOf(Opened.Already.class);
            String link = ((Opened.Already) second).link();
            assertThat(link).startsWith("http://127.0.0.1:" + bay.server().port() + "/#enter=");
            Raw.Answer entered = bay.enter(OpenBay.token(link));
            assertThat(entered.status()).isEqualTo(200);
            String key = "Liftwright-Key: " + entered.text("key");
            assertThat(bay.raw().post("folder", "{}", key).text("open")).isEqualTo("other.yaml");
        }
    }

    /** Two servers shall not write the same files. */
    @Test
    void aFolderInsideAnOpenOneIsShownByThatOnesPage() throws IOException {
        Path inner = Files.createDirectories(folder.resolve("a/b"));
        Files.writeString(inner.resolve("inner.yaml"), OpenBay.RIG);
        try (var bay = OpenBay.at(folder)) {
            Opened second = open(inner, Optional.of("inner.yaml"));
            assertThat(second).isInstanceOf(Opened.Already.class);
            String token = OpenBay.token(((Opened.Already) second).link());
            String key = "Liftwright-Key: " + bay.enter(token).text("key");
            assertThat(bay.raw().post("folder", "{}", key).text("open"))
                    .isEqualTo("a/b/inner.yaml");
        }
        try (var now = OpenBay.at(inner)) {
            assertThat(now.server().port()).isPositive();
        }
    }

    @Test
    void theSameFolderByAnotherNameIsTheSame() throws IOException {
        Path link = folder.resolveSibling(folder.getFileName() + "-link");
        Files.createSymbolicLink(link, folder);
        try (var bay = OpenBay.at(folder)) {
            assertThat(bay.server().port()).isPositive();
            assertThat(open(link, Optional.empty())).isInstanceOf(Opened.Already.class);
        } finally {
            Files.delete(link);
        }
    }

    @Test
    void afterTheEndTheFolderIsFreeAndNothingListens() throws IOException {
        int port;
        try (var bay = OpenBay.at(folder)) {
            port = bay.server().port();
            assertThat(folder.resolve(".liftwright/door")).exists();
        }
        assertThat(folder.resolve(".liftwright/door")).doesNotExist();
        try (Socket socket = new Raw(port).connect()) {
            throw new AssertionError("something listens: " + socket);
        } catch (ConnectException e) {
            assertThat(e).isNotNull();
        }
        try (var again = OpenBay.at(folder)) {
            assertThat(again.key()).isNotBlank();
        }
        assertThat(folder.resolve("rig.yaml")).hasContent(OpenBay.RIG);
    }

    /** A tab that is still open, and what the browser keeps for the page, belong to an address. */
    @Test
    void theNextServerListensWhereTheLastOneDid(@TempDir Path other) throws IOException {
        int port;
        try (var bay = OpenBay.at(folder)) {
            port = bay.server().port();
        }
        try (var again = OpenBay.at(folder)) {
            assertThat(again.server().port()).isEqualTo(port);
            Path own = Files.createDirectory(other.resolve(".liftwright"));
            for (String remembered : new String[] {port + "\n", "80\n", "99999", "x", ""}) {
                Files.writeString(own.resolve("port"), remembered);
                try (var bay = OpenBay.at(other)) {
                    assertThat(bay.server().port()).isNotEqualTo(port).isGreaterThan(1023);
                }
            }
        }
    }

    @Test
    void aServerThatDiedLeavesNothingThatHinders() throws IOException {
        Path own = Files.createDirectory(folder.resolve(".liftwright"));
        Files.writeString(own.resolve("lock"), "");
        Files.writeString(own.resolve("door"), "1 " + "x".repeat(43) + "\n");
        Files.writeString(own.resolve("open.html"), "old");
        try (var bay = OpenBay.at(folder)) {
            assertThat(own.resolve("door")).content().startsWith(bay.server().port() + " ");
        }
    }

    @Test
    void whatIsSecretIsItsOwnersAlone() throws IOException {
        try (var bay = OpenBay.at(folder)) {
            Path own = folder.resolve(".liftwright");
            Path jump = BayServer.jump(folder, bay.server().link());
            assertThat(jump).content().contains("#enter=").doesNotContain("<script");
            assertThat(mode(own)).isEqualTo("rwx------");
            assertThat(mode(own.resolve("door"))).isEqualTo("rw-------");
            assertThat(mode(jump)).isEqualTo("rw-------");
            assertThat(own.resolve(".gitignore")).hasContent("*");
        }
        assertThat(folder.resolve(".liftwright/open.html")).doesNotExist();
    }

    @Test
    void itListensToThisMachineAlone() throws IOException {
        try (var bay = OpenBay.at(folder)) {
            for (var network : Collections.list(NetworkInterface.getNetworkInterfaces())) {
                for (InetAddress address : Collections.list(network.getInetAddresses())) {
                    if (!address.isLoopbackAddress()) {
                        assertThat(listens(address, bay.server().port()))
                                .as(address.toString())
                                .isFalse();
                    }
                }
            }
            assertThat(
                            listens(
                                    InetAddress.getByAddress(new byte[] {127, 0, 0, 2}),
                                    bay.server().port()))
                    .isFalse();
            assertThat(listens(InetAddress.getLoopbackAddress(), bay.server().port())).isTrue();
        }
    }

    @Test
    void aLinkInThePlaceOfItsOwnFolderIsNotFollowed(@TempDir Path elsewhere) throws IOException {
        Files.createSymbolicLink(folder.resolve(".liftwright"), elsewhere);
        assertThat(open(folder, Optional.empty())).isInstanceOf(Opened.Not.class);
        try (var files = Files.list(elsewhere)) {
            assertThat(files).isEmpty();
        }
    }

    @Test
    void neitherAreLinksInsideIt(@TempDir Path elsewhere) throws IOException {
        Path own = Files.createDirectory(folder.resolve(".liftwright"));
        Path victim = Files.writeString(elsewhere.resolve("victim"), "mine");
        Files.createSymbolicLink(own.resolve("lock"), victim);
        assertThat(open(folder, Optional.empty())).isInstanceOf(Opened.Not.class);
        Files.delete(own.resolve("lock"));
        Files.createSymbolicLink(own.resolve("door"), victim);
        try (var bay = OpenBay.at(folder)) {
            assertThat(bay.server().port()).isPositive();
        }
        assertThat(victim).hasContent("mine");
    }

    @Test
    void whatCannotBeOpenedIsSaid() throws IOException {
        assertThat(sentence(open(folder.resolve("nowhere"), Optional.empty()))).contains("nowhere");
        assertThat(sentence(open(folder, Optional.of("gone.yaml")))).contains("gone.yaml");
        Files.writeString(folder.resolve(".liftwright"), "in the way");
        assertThat(sentence(open(folder, Optional.empty()))).contains("in the way");
    }

    @Test
    void aPortThatIsTakenIsSaidAndTheFolderStaysFree(@TempDir Path other) throws IOException {
        try (var bay = OpenBay.at(folder)) {
            var opening =
                    new BayServer.Opening(
                            other, Optional.empty(), bay.server().port(), "9", e -> {});
            assertThat(sentence(BayServer.open(opening))).contains("is taken");
        }
        try (var free = OpenBay.at(other)) {
            assertThat(free.server().port()).isPositive();
        }
    }

    @Test
    void openStreamsAreEndedCleanly() throws IOException {
        try (var bay = OpenBay.at(folder);
                Socket socket =
                        StreamsTest.ask(bay, bay.key(), "watch", "{\"rig\":\"rig.yaml\"}")) {
            InputStream in = StreamsTest.started(socket);
            assertThat(Raw.chunk(in)).isEqualTo("{}\n");
            bay.server().close();
            assertThat(Raw.chunk(in)).as("the end, and no cut").isEmpty();
        }
    }

    @Test
    void aFaultThatRepeatsIsNotToldForEver() throws IOException {
        var faults = new ArrayList<Throwable>();
        var bay = new Bay(new OpenedFolder(folder), "9", Optional.empty(), faults::add);
        for (int i = 0; i < 1000; i++) {
            bay.fault(new IllegalStateException("on purpose"));
        }
        assertThat(faults).hasSize(10);
    }

    @Test
    void whatIsToBeDoneAtTheEndIsDoneLastFirstWhateverFails() throws IOException {
        var done = new ArrayList<String>();
        var faults = new ArrayList<Throwable>();
        var bay = new Bay(new OpenedFolder(folder), "9", Optional.empty(), faults::add);
        bay.atTheEnd(() -> done.add("first asked"));
        bay.atTheEnd(
                () -> {
                    throw new IllegalStateException("broken on purpose");
                });
        bay.atTheEnd(() -> done.add("last asked"));
        bay.end();
        bay.end();
        assertThat(done).containsExactly("last asked", "first asked");
        assertThat(faults).hasSize(1);
    }

    private static Opened open(Path folder, Optional<String> rig) {
        return BayServer.open(OpenBay.opening(folder, rig, new ArrayList<>()));
    }

    private static String sentence(Opened opened) {
        assertThat(opened).isInstanceOf(Opened.Not.class);
        return ((Opened.Not) opened).sentence();
    }

    private static String mode(Path file) throws IOException {
        return PosixFilePermissions.toString(Files.getPosixFilePermissions(file));
    }

    private static boolean listens(InetAddress address, int port) {
        try (Socket socket = new Socket(address, port)) {
            return socket.isConnected();
        } catch (IOException e) {
            return false;
        }
    }
}
