package liftwright.logbook.reading;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import liftwright.plant.recording.Samples;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class LogReadingTest {

    @TempDir private static Path folder = Path.of("");

    private static Logs logs;

    @BeforeAll
    static void start() throws IOException {
        logs = new Logs(folder);
    }

    @AfterAll
    static void end() {
        logs.close();
    }

    private static Clocked one(String text) throws IOException {
        return logs.whole(logs.read(logs.file(text))).tables().getFirst();
    }

    @Test
    void readsColumnsWithUnits() throws IOException {
        Clocked table =
                one(
                        """
                        time [ms],thrust [kgf],temperature p.1 [°C],throttle [%],note
                        0,1,20,50,start
                        500,2,,60,
                        1000,3,25.5,NaN,
                        """);

        assertThat(table.channels().stream().map(Channel::name))
                .containsExactly("thrust", "temperature p.1", "throttle");
        assertThat(table.rows()).isEqualTo(3);
        assertThat(logs.samples(table, "thrust").at(0.5)).isEqualTo(2 * 9.80665, within(1e-12));
        assertThat(logs.samples(table, "temperature p.1").size()).isEqualTo(2);
        assertThat(logs.samples(table, "temperature p.1").si(1)).isEqualTo(298.65, within(1e-12));
        assertThat(logs.samples(table, "throttle").si(1)).isEqualTo(0.6, within(1e-15));
        assertThat(logs.samples(table, "throttle").lastS()).isEqualTo(0.5);
    }

    @Test
    void readsADecimalCommaBetweenSemicolonsBelowAPreamble() throws IOException {
        Clocked table =
                one(
                        """
                        # of the scale

                        Made by hand
                        time [s];scale [kg]

                        0,0;12,5
                        # a pause
                        0,5;12,75
                        """);

        Samples scale = logs.samples(table, "scale");
        assertThat(scale.si(0)).isEqualTo(12.5);
        assertThat(scale.si(1)).isEqualTo(12.75);
        assertThat(scale.timeS(1)).isEqualTo(0.5);
    }

    @Test
    void readsOtherEncodings() throws IOException {
        String text = "time [s]\ttemperature p.1 [°C]\r\n0\t20\r\n1\t21\r\n";
        for (Charset charset :
                List.of(
                        StandardCharsets.UTF_8,
                        StandardCharsets.ISO_8859_1,
                        StandardCharsets.UTF_16,
                        StandardCharsets.UTF_16LE,
                        StandardCharsets.UTF_16BE)) {
            Imported read = logs.whole(logs.read(logs.file(text.getBytes(charset))));
            Samples warm = logs.samples(read.tables().getFirst(), "temperature p.1");
            assertThat(warm.si(1)).as(charset.name()).isEqualTo(294.15, within(1e-12));
        }
        Imported marked = logs.whole(logs.read(logs.file("\uFEFF" + text)));
        assertThat(marked.tables().getFirst().rows()).isEqualTo(2);
    }

    @Test
    void readsClocks() throws IOException {
        Clocked day = one("time,thrust [N]\n23:59:59.5,1\n00:00:00.25,2\n00:00:01,3\n");
        Samples thrust = logs.samples(day, "thrust");
        assertThat(thrust.timeS(1) - thrust.timeS(0)).isEqualTo(0.75, within(1e-9));
        assertThat(thrust.timeS(2) - thrust.timeS(0)).isEqualTo(1.5, within(1e-9));

        Clocked dated =
                one(
                        """
                        time,thrust [N]
                        2026-03-14T14:03:07.250Z,1
                        2026-03-14T15:03:08.5+01:00,2
                        """);
        assertThat(dated.begin()).contains(Instant.parse("2026-03-14T14:03:07Z"));
        Samples at = logs.samples(dated, "thrust");
        assertThat(at.timeS(0)).isEqualTo(0.25, within(1e-6));
        assertThat(at.timeS(1)).isEqualTo(1.5, within(1e-6));

        Clocked epoch = one("time,thrust [N]\n1773496987250,1\n1773496987500,2\n");
        assertThat(epoch.begin()).contains(Instant.parse("2026-03-14T14:03:07Z"));
        assertThat(logs.samples(epoch, "thrust").timeS(1)).isEqualTo(0.5, within(1e-9));

        Clocked seconds = one("time [s],thrust [N]\n1773496987.25,1\n1773496987.5,2\n");
        assertThat(logs.samples(seconds, "thrust").timeS(1)).isEqualTo(0.5, within(1e-6));
    }

    @Test
    void keepsWhatIsNoRowAside() throws IOException {
        Imported read =
                logs.whole(
                        logs.read(
                                logs.file(
                                        """
                                        time [s],thrust [N]
                                        0,1
                                        1,2 N
                                        2,3,4
                                        3
                                        4,5
                                        ,6
                                        5,7
                                        5,7
                                        4.5,8
                                        900,9
                                        6,10
                                        7,"11
                                        8,12
                                        9,\0
                                        10,14
                                        11,15
                                        12,16
                                        13,17
                                        14,18
                                        15,19
                                        """)));

        Rejected rejected = read.rejected().getFirst();
        assertThat(rejected.first())
                .extracting(row -> row.line() + ": " + row.reason())
                .containsExactly(
                        "3: no number under “thrust [N]”: “2 N”",
                        "4: 3 cells instead of 2",
                        "5: 1 cell instead of 2",
                        "7: no time",
                        "9: the same row again",
                        "10: time does not rise: 4.5 s after 5 s",
                        "11: the time leaps ahead to 900 s and comes back",
                        "13: a quote that is not closed",
                        "15: the control character U+0000");
        assertThat(rejected.count()).isEqualTo(9);
        assertThat(Files.readString(rejected.file()))
                .startsWith(
                        "line,reason,text\n3,\"no number under “thrust [N]”: “2 N”\",\"1,2 N\"");
        assertThat(read.tables().getFirst().rows()).isEqualTo(20 - 9);
        assertThat(read.notes())
                .extracting(Note::kind)
                .contains(Note.Kind.ROWS_ASIDE, Note.Kind.DUPLICATE, Note.Kind.CLOCK_JUMP);
    }
}
