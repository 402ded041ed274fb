package liftwright.rig.shape;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import liftwright.rig.book.PartsBookPage;
import org.junit.jupiter.api.Test;

/** The pages and the schema that are written from tables are those of today's tables. */
class RigReferencePagesTest {

    private static final Path REFERENCE = Path.of("..", "docs", "reference");

    @Test
    void theReferencePageIsUpToDate() throws IOException {
        upToDate("rig-file.md", RigReference.markdown());
    }

    @Test
    void theSchemaIsUpToDate() throws IOException {
        upToDate("rig-file.schema.json", RigSchema.text());
    }

    @Test
    void thePartsBookIsUpToDate() throws IOException {
        upToDate("parts-book.md", PartsBookPage.markdown());
    }

    @Test
    void everyLinkOfThePageHasItsHeading() {
        String page = RigReference.markdown();
        var links = java.util.regex.Pattern.compile("]\\(#([a-z-]+)\\)").matcher(page);
        int found = 0;
        while (links.find()) {
            String heading = links.group(1).replace('-', ' ');
            assertThat(page.replace('-', ' ')).containsIgnoringCase("\n## " + heading + "\n");
            found++;
        }
        assertThat(found).isGreaterThan(30);
    }

    private static void upToDate(String name, String text) throws IOException {
        Path page = REFERENCE.resolve(name);
        if (System.getProperty("liftwright.write") != null) {
            Files.writeString(page, text);
        }
        assertThat(Files.readString(page))
                .as("docs/reference/%s; write it anew with -Dliftwright.write", name)
                .isEqualTo(text);
    }
}
