package liftwright.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import liftwright.app.bay.BayServer;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The report that the page saves is the sheet that the command line writes. */
class ReportOfThePageTest {

    @TempDir private Path folder;

    @Test
    void itIsTheSheetOfTheCommandLine() throws Exception {
        Files.copy(Shell.EXAMPLES.resolve("sandpiper/rig.yaml"), folder.resolve("rig.yaml"));
        assertThat(
                        new Shell(folder)
                                .run("review", "rig.yaml", "--html", "sheet.html", "--units", "us")
                                .code())
                .isEqualTo(1);
        var opened =
                BayServer.open(
                        new BayServer.Opening(
                                folder, Optional.empty(), 0, Program.VERSION, e -> {}));
        try (var server = ((BayServer.Opened.Here) opened).server();
                var client = HttpClient.newHttpClient()) {
            String link = server.link();
            String token = link.substring(link.indexOf("#enter=") + 7);
            String key =
                    text(post(client, server, "enter", "{\"token\":\"" + token + "\"}", ""), "key");
            var document = post(client, server, "document", "{\"rig\":\"rig.yaml\"}", key);
            String base = text(document, "revision");
            String asked = "{\"rig\":\"rig.yaml\",\"base\":\"" + base + "\",\"units\":\"us\"}";
            HttpResponse<String> report = post(client, server, "report", asked, key);
            assertThat(report.statusCode()).isEqualTo(200);
            assertThat(report.headers().firstValue("content-disposition"))
                    .contains("attachment; filename=\"sandpiper-report.html\"");
            assertThat(report.body()).isEqualTo(Files.readString(folder.resolve("sheet.html")));

            String stale = asked.replace(base, "0".repeat(base.length()));
            assertThat(post(client, server, "report", stale, key).statusCode()).isEqualTo(409);
            Files.writeString(folder.resolve("broken.yaml"), "liftwright: 1\nfans: {\n");
            var broken = post(client, server, "document", "{\"rig\":\"broken.yaml\"}", key);
            String none =
                    "{\"rig\":\"broken.yaml\",\"base\":\""
                            + text(broken, "revision")
                            + "\",\"units\":\"si\"}";
            HttpResponse<String> refused = post(client, server, "report", none, key);
            assertThat(refused.statusCode()).isEqualTo(409);
            assertThat(text(refused, "fault")).isEqualTo("refused");
        }
    }

    private static HttpResponse<String> post(
            HttpClient client, BayServer server, String name, String body, String key)
            throws IOException, InterruptedException {
        return client.send(
                HttpRequest.newBuilder(
                                URI.create("http://127.0.0.1:" + server.port() + "/api/" + name))
                        .header("Content-Type", "application/json")
                        .header("Liftwright-Key", key)
                        .POST(HttpRequest.BodyPublishers.ofString(body))
                        .build(),
                HttpResponse.BodyHandlers.ofString());
    }

    private static String text(HttpResponse<String> reply, String name) {
        return reply.body().replaceAll("(?s).*?\"" + name + "\":\"([^\"]*)\".*", "$1");
    }
}
