package liftwright.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import liftwright.report.html.HtmlReport;
import liftwright.rig.file.Folder;
import liftwright.rig.file.RigFiles;
import liftwright.rig.file.RigReading;
import liftwright.trials.Planned;
import liftwright.trials.programme.Programme;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * The cards that lie beside the demo rigs are those of the rigs as they are; printed anew by {@code
 * ./liftwright card examples/curlew --all --html examples/curlew/cards.html}.
 */
class CardsOfExamplesTest {

    @ParameterizedTest
    @ValueSource(strings = {"mudlark", "curlew"})
    void everyCardOfTheRigAsItIsLiesBesideIt(String example) throws IOException {
        Path folder = Shell.EXAMPLES.resolve(example);
        RigReading read =
                RigReading.read(
                        "rig.yaml", RigFiles.read(folder.resolve("rig.yaml")), new Folder(folder));
        byte[] bytes = Files.readAllBytes(folder.resolve("cards.html"));
        assertThat(HtmlReport.isUnchanged(bytes)).isTrue();
        String cards = Files.readString(folder.resolve("cards.html"));
        assertThat(cards).contains(read.digest());
        for (Planned card : Programme.of(read.rig().orElseThrow()).cards()) {
            assertThat(cards).contains("<strong>" + card.id().text() + "<");
            assertThat(cards).contains(card.purpose().replace("'", "&#39;"));
        }
    }
}
