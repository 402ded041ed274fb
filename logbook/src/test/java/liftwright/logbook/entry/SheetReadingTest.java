package liftwright.logbook.entry;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import liftwright.testkit.Seeded;
import org.junit.jupiter.api.Test;

/** Sheets, incidents and notes: what is written is read again. */
class SheetReadingTest {

    @Test
    void packsAreReadAsTheyWereWritten() {
        Seeded.check(
                300,
                random -> {
                    PackSheet sheet = new RandomEntries(random).pack();
                    var text = new StringBuilder();
                    for (PackSheet.Row row : sheet.rows()) {
                        SheetText pieces = SheetText.of(sheet, row);
                        text.append(text.isEmpty() ? pieces.head() + pieces.rowsBegin() : "");
                        text.append(pieces.row());
                    }
                    var read = EntryReading.pack("p", text.toString().getBytes(UTF_8));
                    assertThat(read.problems()).as("%s", text).isEmpty();
                    assertThat(read.entry()).as("%s", text).isEqualTo(Optional.of(sheet));
                });
    }

    @Test
    void partsAreReadAsTheyWereWritten() {
        Seeded.check(
                300,
                random -> {
                    PartSheet sheet = new RandomEntries(random).part();
                    var text = new StringBuilder();
                    for (PartSheet.Inspection one : sheet.inspections()) {
                        SheetText pieces = SheetText.of(sheet, one);
                        text.append(text.isEmpty() ? pieces.head() + pieces.rowsBegin() : "");
                        text.append(pieces.row());
                    }
                    var read = EntryReading.part("p", text.toString().getBytes(UTF_8));
                    assertThat(read.problems()).as("%s", text).isEmpty();
                    assertThat(read.entry()).as("%s", text).isEqualTo(Optional.of(sheet));
                });
    }

    @Test
    void incidentsAndNotesAreReadAsTheyWereWritten() {
        Seeded.check(
                300,
                random -> {
                    var entries = new RandomEntries(random);
                    Incident incident = entries.incident();
                    String text = EntryReading.text(incident);
                    var read = EntryReading.incident("i", text.getBytes(UTF_8));
                    assertThat(read.problems()).as(text).isEmpty();
                    assertThat(read.entry()).isEqualTo(Optional.of(incident));
                    Note note = entries.note(new EntryId(entries.date(), 3));
                    assertThat(
                                    EntryReading.note("n", EntryReading.text(note).getBytes(UTF_8))
                                            .entry())
                            .isEqualTo(Optional.of(note));
                });
    }
}
