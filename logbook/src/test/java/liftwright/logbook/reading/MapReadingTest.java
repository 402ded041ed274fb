package liftwright.logbook.reading;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import liftwright.plant.recording.Signal;
import liftwright.rig.Problem.Code;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class MapReadingTest {

    private static final String MAP =
            """
            liftwright log map: 1
            separator: bar
            decimal: comma
            head line: 2
            time: "Tick"
            time form: ms
            columns:
              - {head: "I(1)", is: current p.1, unit: A, factor: 0.1, offset: -2, error: 3, error share: 2 %}
              - {head: "Temp", is: temperature fan.1 winding, unit: °F}
              - {head: "thr", is: throttle, unit: "1", factor: 0.001}
            ignore: ["State"]
            """;

    @TempDir private Path folder = Path.of("");

    private static MapReading read(String text) {
        return MapReading.read("scale.yaml", text.getBytes(StandardCharsets.UTF_8));
    }

    @Test
    void translatesTheHeadsOfAnInstrument() throws IOException {
        LogMap map = read(MAP).map().orElseThrow();
        try (var logs = new Logs(folder)) {
            Imported read =
                    logs.whole(
                            logs.read(
                                    map,
                                    logs.file(
                                            """
                                            any time of day
                                            Tick|I(1)|State|Temp|thr
                                            0|12|on|50|0
                                            250|22,5|on|68|700
                                            """)));

            Clocked table = read.tables().getFirst();
            Channel current = table.channels().getFirst();
            assertThat(current.signal()).isEqualTo(Signal.CURRENT);
            assertThat(current.of()).isEqualTo("p.1");
            assertThat(current.errorSi()).isEqualTo(3);
            assertThat(current.errorShare()).isEqualTo(0.02);
            assertThat(logs.samples(table, "current p.1").si(1)).isEqualTo(2.05, within(1e-12));
            assertThat(logs.samples(table, "temperature fan.1 winding").si(1))
                    .isEqualTo(293.15, within(1e-9));
            assertThat(logs.samples(table, "throttle").si(1)).isEqualTo(0.7, within(1e-12));
            assertThat(logs.samples(table, "throttle").timeS(1)).isEqualTo(0.25);
            assertThat(read.notes())
                    .as("nothing is told of a head that is to be ignored")
                    .noneMatch(note -> note.kind() == Note.Kind.COLUMN_LEFT);
        }
    }

    @Test
    void tellsWhatIsWrongWithAMap() {
        Map<String, Code> wrong =
                Map.ofEntries(
                        Map.entry("", Code.MISSING_KEY),
                        Map.entry("separator: comma\n", Code.MISSING_KEY),
                        Map.entry(v("separater: comma"), Code.UNKNOWN_KEY),
                        Map.entry(v("separator: dot"), Code.UNKNOWN_WORD),
                        Map.entry(v("head line: 0"), Code.OUT_OF_RANGE),
                        Map.entry(v("time: T\ntime form: hours"), Code.UNKNOWN_WORD),
                        Map.entry(v("time form: ms"), Code.MISSING_KEY),
                        Map.entry(c("{is: thrust, unit: N}"), Code.MISSING_KEY),
                        Map.entry(c("{head: a, is: trust, unit: N}"), Code.UNKNOWN_WORD),
                        Map.entry(c("{head: a, is: thrust, unit: A}"), Code.WRONG_UNIT),
                        Map.entry(c("{head: a, is: thrust, unit: Nn}"), Code.WRONG_UNIT),
                        Map.entry(c("{head: a, is: thrust, factor: 2 N}"), Code.NOT_A_QUANTITY),
                        Map.entry(c("{head: a, is: thrust, factor: 0}"), Code.OUT_OF_RANGE),
                        Map.entry(c("{head: a, is: thrust, error: -1}"), Code.OUT_OF_RANGE),
                        Map.entry(c("{head: a, is: thrust, error share: x}"), Code.NOT_A_QUANTITY),
                        Map.entry(
                                c("{head: a, is: thrust}\n  - {head: a, is: scale}"),
                                Code.DUPLICATE_KEY),
                        Map.entry("liftwright log map: 2\n", Code.OUT_OF_RANGE));
        wrong.forEach(
                (text, code) -> {
                    MapReading reading = read(text);
                    assertThat(reading.map()).as(text).isEmpty();
                    assertThat(reading.problems())
                            .as(text)
                            .extracting(problem -> problem.code())
                            .isEqualTo(List.of(code));
                });
        assertThat(read(c("{head: a, is: trust, unit: N}")).problems().getFirst().advice())
                .isEqualTo("Perhaps “thrust” is meant.");
    }

    private static String v(String line) {
        return "liftwright log map: 1\n" + line + "\n";
    }

    private static String c(String column) {
        return v("columns:\n  - " + column);
    }
}
