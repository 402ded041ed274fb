package liftwright.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import liftwright.report.pdf.CardPdf;
import liftwright.rig.file.Folder;
import liftwright.rig.file.RigFiles;
import liftwright.rig.file.RigReading;
import liftwright.trials.Planned;
import liftwright.trials.programme.Programme;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * The cards that lie beside the demo rigs are those of the rigs as they are; printed anew by {@code
 * ./liftwright card examples/curlew --all --pdf examples/curlew/cards.pdf}. How they lie on their
 * pages is judged in the room of reports.
 */
class CardsOfExamplesTest {

    @ParameterizedTest
    @ValueSource(strings = {"mudlark", "curlew"})
    void everyCardOfTheRigAsItIsLiesBesideIt(String example) throws IOException {
        Path folder = Shell.EXAMPLES.resolve(example);
        RigReading read =
                RigReading.read(
                        "rig.yaml", RigFiles.read(folder.resolve("rig.yaml")), new Folder(folder));
        byte[] bytes = Files.readAllBytes(folder.resolve("cards.pdf"));
        assertThat(CardPdf.isUnchanged(bytes)).isTrue();
        String printed = letters(text(bytes));
        says(printed, read.digest());
        for (Planned card : Programme.of(read.rig().orElseThrow()).cards()) {
            says(printed, "card " + card.id().text() + " page");
            says(printed, card.purpose());
        }
    }

    /** Two hundred pages are no message. */
    private static void says(String printed, String text) {
        assertThat(printed.contains(letters(text))).as(text).isTrue();
    }

    private static String text(byte[] pdf) throws IOException {
        try (var document = Loader.loadPDF(pdf)) {
            return new PDFTextStripper().getText(document);
        }
    }

    /** Where lines end is no matter of what is said. */
    private static String letters(String text) {
        return text.replaceAll("\\s+", "");
    }
}
