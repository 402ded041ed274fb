package liftwright.logbook.entry;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import liftwright.testkit.Seeded;
import org.junit.jupiter.api.Test;

/** The file of a test. */
class TestReadingTest {

    @Test
    void whatIsWrittenIsReadAgain() {
        Seeded.check(
                500,
                random -> {
                    TestEntry entry = new RandomEntries(random).test();
                    String text = EntryReading.text(entry);
                    var read = EntryReading.test("test.yaml", text.getBytes(UTF_8));
                    assertThat(read.problems()).as(text).isEmpty();
                    assertThat(read.entry()).as(text).isEqualTo(Optional.of(entry));
                });
    }
}
