package liftwright.app.bay;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.function.UnaryOperator;

/** A server on a folder with one rig in it, and one who was let in. */
final class OpenBay implements AutoCloseable {

    static final String RIG = "liftwright: 1\nrig: Heron\n";

    private final BayServer server;
    private final Raw raw;
    private final List<Throwable> faults;

    private OpenBay(BayServer server, List<Throwable> faults) {
        this.server = server;
        this.faults = faults;
        raw = new Raw(server.port());
    }

    static OpenBay at(Path folder, Route... more) throws IOException {
        return at(folder, limits -> limits, more);
    }

    static OpenBay at(Path folder, UnaryOperator<Limits> limits, Route... more) throws IOException {
        if (!Files.exists(folder.resolve("rig.yaml"))) {
            Files.writeString(folder.resolve("rig.yaml"), RIG);
        }
        List<Throwable> faults = new CopyOnWriteArrayList<>();
        var opened =
                BayServer.open(
                        opening(folder, Optional.empty(), faults),
                        limits.apply(Limits.STANDARD),
                        List.of(more));
        assertThat(opened).isInstanceOf(BayServer.Opened.Here.class);
        return new OpenBay(((BayServer.Opened.Here) opened).server(), faults);
    }

    static BayServer.Opening opening(Path folder, Optional<String> rig, List<Throwable> faults) {
        return new BayServer.Opening(folder, rig, 0, "9.9.9", faults::add);
    }

    BayServer server() {
        return server;
    }

    Raw raw() {
        return raw;
    }

    /** Mistakes of ours that were told. */
    List<Throwable> faults() {
        return faults;
    }

    /** The token of a fresh link. */
    String token() {
        return token(server.link());
    }

    static String token(String link) {
        return link.substring(link.indexOf("#enter=") + "#enter=".length());
    }

    Raw.Answer enter(String token) {
        return raw.post("enter", "{\"token\":\"" + token + "\"}");
    }

    /** The header of one who came in by a fresh link. */
    String key() {
        Raw.Answer entered = enter(token());
        assertThat(entered.status()).isEqualTo(200);
        return "Liftwright-Key: " + entered.text("key");
    }

    @Override
    public void close() throws IOException {
        server.close();
    }
}
