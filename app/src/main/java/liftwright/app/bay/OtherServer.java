package liftwright.app.bay;

import java.io.IOException;
import java.io.InputStream;
import java.net.HttpURLConnection;
import java.net.Proxy;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Optional;
import java.util.regex.Pattern;
import liftwright.answer.JsonText;
import liftwright.app.bay.BayServer.Opened;

/** The server that has the folder already: asked for another link. */
final class OtherServer {

    private static final int PATIENCE_MS = 2_000;

    /** It may have the lock and not listen yet. */
    private static final int TRIES = 20;

    private static final Duration BETWEEN_TRIES = Duration.ofMillis(100);
    private static final int MOST_BYTES = 64 << 10;
    private static final Pattern LINK =
            Pattern.compile("http://127\\.0\\.0\\.1:[0-9]{1,5}/#enter=[A-Za-z0-9_-]{20,100}");

    private OtherServer() {}

    /**
     * @param own the folder in which it says where it listens
     * @param rig to show first
     */
    static Opened link(Path own, Optional<String> rig) {
        try {
            for (int i = 0; i < TRIES; i++) {
                Optional<FolderLock.Listening> listening = FolderLock.told(own);
                if (listening.isPresent()) {
                    return ask(listening.get(), rig);
                }
                Thread.sleep(BETWEEN_TRIES);
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
        return new Opened.Not(
                "the folder is open already, and the process that has it does not say where: it is"
                        + " another user's, or just starting. Stop it, or try again");
    }

    private static Opened ask(FolderLock.Listening listening, Optional<String> rig) {
        var body = new JsonText();
        body.object(() -> body.member("rig", rig));
        try {
            var asked =
                    (HttpURLConnection)
                            URI.create(
                                            "http://127.0.0.1:"
                                                    + listening.port()
                                                    + Door.API
                                                    + Entry.LINK)
                                    .toURL()
                                    .openConnection(Proxy.NO_PROXY);
            asked.setConnectTimeout(PATIENCE_MS);
            asked.setReadTimeout(PATIENCE_MS);
            asked.setRequestMethod("POST");
            asked.setInstanceFollowRedirects(false);
            asked.setDoOutput(true);
            asked.setRequestProperty("Content-Type", "application/json");
            asked.setRequestProperty(Gate.KEY, listening.secret());
            asked.getOutputStream().write(body.toString().getBytes(StandardCharsets.UTF_8));
            if (asked.getResponseCode() == HttpURLConnection.HTTP_OK) {
                try (InputStream in = asked.getInputStream()) {
                    String url = JsonReader.read(in.readNBytes(MOST_BYTES)).text("url");
                    if (LINK.matcher(url).matches()) {
                        return new Opened.Already(url);
                    }
                }
            }
        } catch (IOException | FaultException e) {
            // told below
        }
        return new Opened.Not(
                "the folder is open already, and the server that has it (port "
                        + listening.port()
                        + ") gives no link. Stop it and try again");
    }
}
