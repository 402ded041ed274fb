package liftwright.report.pdf;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import liftwright.report.PaperSize;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Every page of the cards that lie beside the demo rigs. */
class ExampleCardsTest {

    @ParameterizedTest
    @ValueSource(strings = {"mudlark", "curlew"})
    void nothingIsCutOrOverlaidOnAnyPage(String example) throws IOException {
        Path file = Path.of("..", "examples", example, "cards.pdf");
        Printed printed = Printed.of(Files.readAllBytes(file));
        assertThat(printed.pages()).hasSizeGreaterThan(20);
        CardPdfTest.nothingCutOrOverlaid(printed, PaperSize.A4);
    }
}
