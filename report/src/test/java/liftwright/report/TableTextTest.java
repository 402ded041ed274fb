package liftwright.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.random.RandomGenerator;
import liftwright.answer.Section;
import liftwright.answer.Value;
import liftwright.testkit.Seeded;
import org.junit.jupiter.api.Test;

class TableTextTest {

    private static final List<String> WORDS = List.of("part", "what", "where");
    private static final List<String> NUMBERS = List.of("fan-voltage", "winding-current", "mass");

    @Test
    void noLineIsWiderThanTheTerminalAndNoNumberIsLostOrBroken() {
        Seeded.check(
                300,
                random -> {
                    int columns = 40 + random.nextInt(61);
                    Section.Table table = table(random);
                    var look = Sample.look(columns);
                    String text = TextReport.sections(List.of(table), look);
                    assertThat(text.lines()).allMatch(line -> line.length() <= columns);
                    var figures = new Figures(look);
                    for (List<Value> row : table.rows()) {
                        for (Value value : row) {
                            String shown = figures.value(value).replace('\u00a0', ' ');
                            boolean number = value.figure() instanceof Value.Figure.Amount;
                            for (String word : number ? List.of(shown) : words(shown)) {
                                assertThat(text).contains(word);
                            }
                        }
                    }
                });
    }

    private static List<String> words(String text) {
        return List.of(text.split(" ", -1));
    }

    /** Words that any terminal has room for, each its own. */
    private static Section.Table table(RandomGenerator random) {
        List<String> columns = new ArrayList<>();
        int across = 1 + random.nextInt(6);
        for (int k = 0; k < across; k++) {
            columns.add((k % 2 == 0 ? WORDS : NUMBERS).get(k / 2));
        }
        List<List<Value>> rows = new ArrayList<>();
        for (int r = 0; r < 1 + random.nextInt(5); r++) {
            List<Value> row = new ArrayList<>();
            for (int k = 0; k < across; k++) {
                String field = columns.get(k);
                if (NUMBERS.contains(field)) {
                    row.add(Value.of(field, 1000 * random.nextDouble()));
                    continue;
                }
                var cell = new StringBuilder("c" + r + "-" + k);
                for (int w = random.nextInt(8); w > 0; w--) {
                    cell.append(' ').append("w".repeat(1 + random.nextInt(12))).append(w);
                }
                row.add(Value.words(field, cell.toString()));
            }
            rows.add(row);
        }
        return new Section.Table("t", "T", columns, rows);
    }
}
