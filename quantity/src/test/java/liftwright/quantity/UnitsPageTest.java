package liftwright.quantity;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** docs/reference/units.md is made from the table; {@code -Dliftwright.write} writes it. */
class UnitsPageTest {

    private static final Path PAGE = Path.of("..", "docs", "reference", "units.md");

    @Test
    void thePageIsTheTable() throws IOException {
        String text = UnitsPage.text();
        if (System.getProperty("liftwright.write") != null) {
            Files.writeString(PAGE, text);
        }
        assertThat(Files.readString(PAGE))
                .as("docs/reference/units.md; write it anew with -Dliftwright.write")
                .isEqualTo(text);
    }

    /** Everything that the page shows as readable is read. */
    @Test
    void theExamplesOfThePageAreRead() {
        var examples = Pattern.compile("`([^`]+)` +✓").matcher(UnitsPage.text()).results().toList();
        assertThat(examples).hasSizeGreaterThan(8);
        for (var example : examples) {
            String text = example.group(1);
            boolean readable =
                    QuantityParser.parse(text) instanceof Reading.Parsed<?>
                            || QuantityParser.parseTolerance(text) instanceof Reading.Parsed<?>
                            || QuantityParser.parseRange(text, Dimensions.LENGTH)
                                    instanceof Reading.Parsed<?>;
            assertThat(readable).as(text).isTrue();
        }
    }
}
