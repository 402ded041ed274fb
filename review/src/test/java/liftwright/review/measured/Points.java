package liftwright.review.measured;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** A table of measured points beside the example rig; each file says where its points are from. */
final class Points {

    static final Path FOLDER = Path.of("..", "examples", "measured");

    private Points() {}

    /** One row, by the names in the table's head. */
    record Row(Map<String, String> cells) {

        String word(String column) {
            String word = cells.get(column);
            if (word == null) {
                throw new IllegalArgumentException("no column is called " + column);
            }
            return word;
        }

        double number(String column) {
            return Double.parseDouble(word(column));
        }
    }

    static List<Row> read(String file) {
        List<String> lines;
        try {
            lines =
                    Files.readAllLines(FOLDER.resolve("points").resolve(file)).stream()
                            .filter(line -> !line.startsWith("#"))
                            .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        List<String> head = List.of(lines.getFirst().split(",", -1));
        List<Row> rows = new ArrayList<>();
        for (String line : lines.subList(1, lines.size())) {
            String[] cells = line.split(",", -1);
            if (cells.length != head.size()) {
                throw new IllegalArgumentException(
                        file + ": not as many cells as columns: " + line);
            }
            Map<String, String> row = new TreeMap<>();
            for (int k = 0; k < cells.length; k++) {
                row.put(head.get(k), cells[k]);
            }
            rows.add(new Row(row));
        }
        return rows;
    }

    static List<Row> read(String file, String column, String word) {
        return read(file).stream().filter(row -> row.word(column).equals(word)).toList();
    }
}
