package liftwright.app.bay;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A rig from nothing, over the wire. */
class GuideRoutesTest {

    @TempDir private Path folder;

    @Test
    void theGuideAsksAndTellsWhatIsWrong() throws Exception {
        try (var bay = OpenBay.at(folder);
                var tab = new Tab(bay.server())) {
            var guide = tab.ask("guide", "{\"answers\":{}}");
            assertThat(guide.status()).isEqualTo(200);
            assertThat(guide.body().items("steps")).hasSizeGreaterThan(5);
            assertThat(guide.text("text")).contains("liftwright: 1");
            var wrong = tab.ask("guide", "{\"answers\":{\"tip\":\"wide\"},\"units\":\"us\"}");
            assertThat(wrong.status()).isEqualTo(200);
            assertThat(wrong.body().optionalText("text")).isEmpty();
            assertThat(tab.ask("guide", "{\"answers\":{\"tip\":3}}").status()).isEqualTo(400);
            assertThat(tab.ask("guide", "{\"answers\":{},\"units\":\"x\"}").status())
                    .isEqualTo(400);
        }
    }

    @Test
    void aRigIsBegunAndNothingIsWrittenOver() throws Exception {
        try (var bay = OpenBay.at(folder);
                var tab = new Tab(bay.server())) {
            String heron = "{\"name\":\"heron\",\"answers\":{\"name\":\"Heron\"}}";
            var begun = tab.ask("begin", heron);
            assertThat(begun.status()).isEqualTo(200);
            assertThat(begun.text("rig")).isEqualTo("heron/rig.yaml");
            assertThat(begun.body().truth("saved")).isTrue();
            assertThat(begun.body().truth("readable")).isTrue();
            assertThat(begun.body().items("problems")).isEmpty();
            assertThat(Files.readString(folder.resolve("heron/rig.yaml")))
                    .isEqualTo(begun.text("text"));
            assertThat(tab.ask("begin", heron).status()).isEqualTo(409);
            assertThat(tab.ask("begin", "{\"name\":\"rig.yaml\",\"answers\":{}}").status())
                    .isEqualTo(409);
            assertThat(Files.readString(folder.resolve("rig.yaml"))).isEqualTo(OpenBay.RIG);
        }
    }

    @Test
    void itIsBegunInsideTheFolderOrNotAtAll() throws Exception {
        Path opened = Files.createDirectory(folder.resolve("opened"));
        try (var bay = OpenBay.at(opened);
                var tab = new Tab(bay.server())) {
            for (String name :
                    new String[] {
                        "../out", "/tmp/out.yaml", ".hidden/rig.yaml", "", "a/../../b", "a\\u0000b"
                    }) {
                var begun = tab.ask("begin", "{\"name\":\"" + name + "\",\"answers\":{}}");
                assertThat(begun.status()).as(name).isBetween(400, 409);
            }
            assertThat(folder.resolve("out")).doesNotExist();
            var wrong = tab.ask("begin", "{\"name\":\"x\",\"answers\":{\"tip\":\"wide\"}}");
            assertThat(wrong.status()).isEqualTo(409);
            assertThat(opened.resolve("x")).doesNotExist();
        }
    }
}
