package liftwright.app.bay;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.charset.StandardCharsets;
import java.util.List;
import liftwright.answer.JsonText;

/** One tab of the page, as the server sees it: a client with a key. */
final class Tab implements AutoCloseable {

    private final HttpClient client = HttpClient.newHttpClient();
    private final String address;
    private final String key;

    /** Comes in by a link of the server. */
    Tab(BayServer server) throws Exception {
        String link = server.link();
        address = link.substring(0, link.indexOf("/#"));
        String token = link.substring(link.indexOf('=') + 1);
        key = send("enter", "", "{\"token\":\"" + token + "\"}").text("key");
    }

    /**
     * @param status of the answer
     * @param body its members
     */
    record Answer(int status, Json.Members body) {
        String text(String name) {
            return body.text(name);
        }

        /** The document, also where it came with a fault. */
        Json.Members document() {
            return status == 200 ? body : body.members("document");
        }
    }

    /** Asks with the members {@code name, value, name, value, …}, all texts. */
    Answer ask(String route, String... members) throws Exception {
        return ask(route, object(List.of(members), ""));
    }

    /** Asks with changes, written as JSON. */
    Answer change(String rig, String base, String changes) throws Exception {
        var texts = List.of("rig", rig, "base", base, "label", "a test");
        return ask("change", object(texts, "\"changes\":" + changes));
    }

    Answer ask(String route, String body) throws Exception {
        return send(route, key, body);
    }

    private Answer send(String route, String shown, String body) throws Exception {
        var reply = client.send(request(route, shown, body), BodyHandlers.ofByteArray());
        return new Answer(reply.statusCode(), JsonReader.read(reply.body()));
    }

    private HttpRequest request(String route, String shown, String body) {
        return HttpRequest.newBuilder(URI.create(address + "/api/" + route))
                .header("Content-Type", "application/json")
                .header("Liftwright-Key", shown)
                .POST(BodyPublishers.ofString(body))
                .build();
    }

    /** A stream that can be read line by line. */
    BufferedReader stream(String route, String... members) throws Exception {
        return lines(route, object(List.of(members), ""));
    }

    /** The same, of a body written as JSON. */
    BufferedReader lines(String route, String body) throws Exception {
        var reply = client.send(request(route, key, body), BodyHandlers.ofInputStream());
        if (reply.statusCode() != 200) {
            throw new IOException(route + " answered " + reply.statusCode());
        }
        return new BufferedReader(new InputStreamReader(reply.body(), StandardCharsets.UTF_8));
    }

    /** A file that is sent to be kept. */
    HttpResponse<byte[]> file(String route, String... members) throws Exception {
        return client.send(
                request(route, key, object(List.of(members), "")), BodyHandlers.ofByteArray());
    }

    private static String object(List<String> members, String more) {
        var json = new JsonText();
        json.object(
                () -> {
                    for (int i = 0; i < members.size(); i += 2) {
                        json.member(members.get(i), members.get(i + 1));
                    }
                });
        String written = json.toString();
        return more.isEmpty()
                ? written
                : written.substring(0, written.length() - 1) + "," + more + "}";
    }

    @Override
    public void close() {
        client.close();
    }
}
