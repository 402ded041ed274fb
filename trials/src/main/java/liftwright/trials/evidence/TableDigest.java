package liftwright.trials.evidence;

import java.lang.reflect.RecordComponent;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Set;
import liftwright.rig.file.RigReading;

/** Names a table by what it says: not by its file, nor by the lines that its rows stand in. */
final class TableDigest {

    private static final Set<String> LAYOUT = Set.of("file", "line");

    private TableDigest() {}

    static String of(Record table) {
        var text = new StringBuilder();
        write(table, text);
        return "table " + RigReading.digest(text.toString().getBytes(StandardCharsets.UTF_8));
    }

    private static void write(Object value, StringBuilder text) {
        switch (value) {
            case List<?> rows -> {
                text.append(rows.size()).append('[');
                rows.forEach(row -> write(row, text));
                text.append(']');
            }
            case Record record -> {
                text.append('{').append(record.getClass().getSimpleName());
                for (RecordComponent component : record.getClass().getRecordComponents()) {
                    if (!LAYOUT.contains(component.getName())) {
                        text.append(';').append(component.getName()).append('=');
                        write(InputWriter.value(component, record), text);
                    }
                }
                text.append('}');
            }
            // Lengths first: no text can look like two.
            default -> text.append(value.toString().length()).append(':').append(value);
        }
    }
}
