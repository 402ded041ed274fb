package liftwright.logbook.reading;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.TreeSet;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Logs in which something is wrong, each with what is said of it, word by word. */
class MalformedLogsTest {

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

    private static final Map<String, String> REFUSED = new LinkedHashMap<>();

    static {
        REFUSED.put(
                "",
                "MISSING_KEY 1:1 found an empty file | expected a line with the names of the"
                        + " columns, and rows below it | Was the log saved to the end?");
        REFUSED.put(
                "\n\n# nothing\n",
                "MISSING_KEY 1:1 found a file that says nothing | expected a line with the names of"
                        + " the columns, and rows below it | Was the log saved to the end?");
        REFUSED.put(
                "time [s],thrust [N]\n",
                "MISSING_KEY 1:1 found names of columns and no row | expected at least one row"
                        + " below them | Was the log saved to the end?");
        REFUSED.put(
                "0,1\n1,2\n",
                "MISSING_KEY 1:1 found no column of time among the 2 columns | expected a column"
                        + " “time [s]” | A map of the log can say which column is the time.");
        REFUSED.put(
                "Time_ms,thrust [N]\n0,1\n",
                "MISSING_KEY 1:1 found “Time_ms” | expected a column “time [s]” | Perhaps “time"
                        + " [s]” is meant.");
        REFUSED.put(
                "tme [s],thrust [N]\n0,1\n",
                "MISSING_KEY 1:1 found “tme [s]” | expected a column “time [s]” | Perhaps “time"
                        + " [s]” is meant.");
        REFUSED.put(
                "time,thrust [N]\n0,1\n1,2\n",
                "WRONG_UNIT 1:1 found “time” above “0” | expected the unit in square brackets |"
                        + " Write it as in “time [s]” or “time [ms]”.");
        REFUSED.put(
                "time [V],thrust [N]\n0,1\n",
                "WRONG_UNIT 1:1 found the unit “V” | expected a unit of time, such as s or ms");
        REFUSED.put(
                "time [s],thrust [kg]\n0,1\n",
                "WRONG_UNIT 1:18 found the unit “kg” | expected a unit of “thrust”, such as N");
        REFUSED.put(
                "time [s],current p.1 [V]\n0,1\n",
                "WRONG_UNIT 1:23 found the unit “V” | expected a unit of “current”, such as A");
        REFUSED.put(
                "time [s],current p.1 [Amps]\n0,1\n",
                "WRONG_UNIT 1:23 found “Amps”: no unit is written Amps | expected a unit of “current”,"
                        + " such as A | Perhaps “A” is meant.");
        REFUSED.put(
                "time [s],thrust\n0,1\n",
                "WRONG_UNIT 1:10 found “thrust” | expected the unit in square brackets | Write it"
                        + " as in “thrust [N]”.");
        REFUSED.put(
                "time [s],thrust (N)\n0,1\n",
                "WRONG_UNIT 1:10 found “thrust (N)” | expected the unit in square brackets | Write"
                        + " it as in “thrust [N]”.");
        REFUSED.put(
                "time [s],curent p.1 [A]\n0,1\n",
                "UNKNOWN_WORD 1:10 found “curent p.1 [A]” | expected the name of a channel, or one"
                        + " that a map translates | Perhaps “current p.1” is meant.");
        REFUSED.put(
                "time [s],temperatur p.1 [°C]\n0,1\n",
                "UNKNOWN_WORD 1:10 found “temperatur p.1 [°C]” | expected the name of a channel, or"
                        + " one that a map translates | Perhaps “temperature p.1” is meant.");
        REFUSED.put(
                "time [s],current p.9 [A]\n0,1\n",
                "NO_SUCH_PART 1:10 found the part “p.9” | expected a fan, a pack, a control group, a"
                        + " part of the wiring of this rig | Perhaps “p.1” is meant.");
        REFUSED.put(
                "time [s],speed p.1 [rpm]\n0,1\n",
                "NO_SUCH_PART 1:10 found a pack, “p.1” | expected a fan of this rig");
        REFUSED.put(
                "time [s],speed fan1 [rpm]\n0,1\n",
                "NO_SUCH_PART 1:10 found the part “fan1” | expected a fan of this rig | Perhaps"
                        + " “fan.1” is meant.");
        REFUSED.put(
                "time [s],wind fan.1 [m/s]\n0,1\n",
                "NO_SUCH_PART 1:10 found “wind fan.1” | expected “wind” alone | There is one for the"
                        + " whole rig.");
        REFUSED.put(
                "time [s],thrust [N],thrust [kgf]\n0,1,2\n",
                "DUPLICATE_KEY 1:21 found the column “thrust” again | expected each column once | It"
                        + " stands in column 10 of the line already.");
        REFUSED.put(
                "time [s],thrust [N],time [ms]\n0,1,2\n",
                "DUPLICATE_KEY 1:21 found the column “time” again | expected each column once | It"
                        + " stands in column 1 of the line already.");
        REFUSED.put(
                "time [s],state\n0,on\n",
                "MISSING_KEY 1:1 found no column of a channel | expected heads such as “thrust [N]”"
                        + " or “current p.1 [A]” | A map of the log translates the heads of an"
                        + " instrument.");
        REFUSED.put(
                "time [s];thrust [N]\n0,0;1,5\n0.1;1.6\n0,2;1,7\n",
                "CONTRADICTION 3:1 found “0.1” | expected a decimal comma as in “0,0” in line 2 |"
                        + " One log has one decimal sign, and nothing between thousands.");
        REFUSED.put(
                "time [s],thrust [N]\n0,0,1,5\n0,1,1,6\n",
                "SYNTAX 2:1 found 4 cells instead of 2; so are most of the 2 rows | expected a"
                        + " number in each cell, as many cells as line 1 has names | A decimal comma"
                        + " needs semicolons or tabs between the cells.\n"
                        + "SYNTAX 3:1 found 4 cells instead of 2; so are most of the 2 rows |"
                        + " expected a number in each cell, as many cells as line 1 has names | A"
                        + " decimal comma needs semicolons or tabs between the cells.");
        REFUSED.put(
                "time [s];thrust [N]\n0;5 N\n1;6 N\n",
                "NOT_A_QUANTITY 2:1 found no number under “thrust [N]”: “5 N”; so are most of the 2"
                        + " rows | expected a number in each cell, as many cells as line 1 has names"
                        + " | A map of the log can say which columns are not to be read.\n"
                        + "NOT_A_QUANTITY 3:1 found no number under “thrust [N]”: “6 N”; so are most"
                        + " of the 2 rows | expected a number in each cell, as many cells as line 1"
                        + " has names | A map of the log can say which columns are not to be read.");
        REFUSED.put(
                "time [s],throttle [1]\n0,50\n1,60\n2,70\n",
                "OUT_OF_RANGE 1:10 found 100 % of the values under “throttle [1]” beyond all that"
                        + " can be | expected a throttle from 0 to 100 % | Is the unit right, and do"
                        + " the columns stand under their own heads?");
        REFUSED.put(
                "time [s],air pressure [Pa],throttle [%]\n0,50,101300\n1,60,101300\n",
                "OUT_OF_RANGE 1:10 found 100 % of the values under “air pressure [Pa]” beyond all"
                        + " that can be | expected air at 300 to 1200 hPa | Is the unit right, and do"
                        + " the columns stand under their own heads?\n"
                        + "OUT_OF_RANGE 1:28 found 100 % of the values under “throttle [%]” beyond"
                        + " all that can be | expected a throttle from 0 to 100 % | Is the unit"
                        + " right, and do the columns stand under their own heads?");
        REFUSED.put(
                "time [s],cell voltage p.1 [mV]\n0,3.9\n1,3.8\n2,390000\n3,380000\n4,390000\n",
                "OUT_OF_RANGE 1:10 found 60 % of the values under “cell voltage p.1 [mV]” beyond all"
                        + " that can be | expected a voltage of one cell, below 6 V | Is the unit"
                        + " right, and do the columns stand under their own heads?");
        REFUSED.put(
                "\"time [s],thrust [N]\n0,1\n",
                "SYNTAX 1:1 found a quote that is not closed | expected a closing quote in the same"
                        + " line | Numbers need no quotes.");
        REFUSED.put(
                "\0\0\0\1binary",
                "NOT_TEXT 1:1 found the control character U+0000 | expected text | Is this a log?"
                        + " Save the log as CSV in UTF-8.");
        REFUSED.put(
                "PAR1\0\0half a file",
                "NOT_TEXT 1:1 found a Parquet file | expected a log as CSV | Save the table as CSV,"
                        + " then read that in.");
        REFUSED.put(
                "PK\3\4workbook",
                "NOT_TEXT 1:1 found a ZIP archive, such as a workbook of a spreadsheet | expected a"
                        + " log as CSV | Save the table as CSV, then read that in.");
        REFUSED.put(
                "time,thrust [N]\nnoon,1\nhalf past,2\n",
                "WRONG_UNIT 1:1 found “time” above “noon” | expected the unit in square brackets |"
                        + " Write it as in “time [s]” or “time [ms]”.");
        REFUSED.put(
                "time,thrust [N]\n12:00:00,1\nx,2\ny,3\nz,4\n",
                "NOT_A_QUANTITY 3:1 found no time that can be read: “x” | expected a time in each"
                        + " row | A map of the log can say how its times are written.");
    }

    @Test
    void eachIsRefusedAtItsPlace() throws IOException {
        assertThat(REFUSED).hasSizeGreaterThan(30);
        var others = new ArrayList<String>();
        for (var row : REFUSED.entrySet()) {
            String said = refusal(logs.read(logs.file(row.getKey())));
            if (!said.equals(row.getValue())) {
                others.add(row.getKey() + "gives:\n" + said);
            }
        }
        assertThat(others).isEmpty();
    }

    private static String refusal(LogOutcome outcome) {
        return switch (outcome) {
            case LogOutcome.Read(var imported) -> "read in: " + imported.notes();
            case LogOutcome.Refused(var problems) ->
                    String.join("\n", problems.stream().map(Logs::told).toList());
        };
    }

    @Test
    void aClockThatBeginsAnewIsRefusedWithItsLine() throws IOException {
        var text = new StringBuilder("time [s],thrust [N]\n");
        for (int k = 0; k < 50; k++) {
            text.append(k % 25).append(',').append(k).append('\n');
        }
        assertThat(refusal(logs.read(logs.file(text.toString()))))
                .isEqualTo(
                        "CONTRADICTION 27:1 found time does not rise: 0 s after 24 s | expected"
                                + " times that rise | Where the clock began anew, cut the file and"
                                + " read in both.");
    }

    /** Limits hold before anything is expanded: in little time and memory, whatever the size. */
    @Test
    void endlessLinesAndAMillionColumnsCostAGlance() throws IOException {
        Path endless = folder.resolve("endless.csv");
        try (OutputStream out = Files.newOutputStream(endless)) {
            var block = new byte[1 << 20];
            Arrays.fill(block, (byte) '7');
            for (int k = 0; k < 300; k++) {
                out.write(block);
            }
        }
        var wide = new StringBuilder("time [s]");
        for (int k = 0; k < 1_000_000; k++) {
            wide.append(",c").append(k);
        }
        wide.append("\n0,1\n");
        var cells = new StringBuilder("time [s],thrust [N]\n0");
        cells.append(",".repeat(1_000_000)).append('\n');

        long before = System.nanoTime();
        assertThat(refusal(logs.read(Source.of(endless))))
                .isEqualTo(
                        "TOO_LARGE 1:1 found a line of more than 65536 bytes | expected lines of at"
                                + " most 65536 bytes | Is this a log? A row ends with the end of its"
                                + " line.");
        assertThat(refusal(logs.read(logs.file(wide.toString()))))
                .isEqualTo(
                        "TOO_LARGE 1:1 found more than 512 cells | expected at most 512 columns |"
                                + " Leave out columns, or cut the log into files that share the"
                                + " time.");
        assertThat(refusal(logs.read(logs.file(cells.toString()))))
                .startsWith("TOO_LARGE 2:1 found more than 512 cells");
        assertThat(Duration.ofNanos(System.nanoTime() - before)).isLessThan(Duration.ofSeconds(60));
    }

    @Test
    void anEndlessLineInUtf16CostsNoMemoryEither() throws IOException {
        Path endless = folder.resolve("endless16.csv");
        try (OutputStream out = Files.newOutputStream(endless)) {
            out.write(new byte[] {(byte) 0xFF, (byte) 0xFE});
            var block = new byte[1 << 20];
            for (int k = 0; k < block.length; k += 2) {
                block[k] = '7';
            }
            for (int k = 0; k < 60; k++) {
                out.write(block);
            }
        }
        assertThat(refusal(logs.read(Source.of(endless)))).startsWith("TOO_LARGE 1:1");
    }

    /** What is read in all the same, with what is told of it. */
    @Test
    void whatCanBeReadIsReadAndTold() throws IOException {
        var told = new LinkedHashMap<String, String>();
        told.put(
                "time [s],thrust [N]\n0,1\n1,NaN\n2,nan\n3,4\n",
                "READ_AS Read as UTF-8, cells between commas, decimal point, heads in line 1, times"
                        + " as seconds.");
        told.put(
                "thrust [N],time [s]\n1,0\n2,1\n",
                "READ_AS Read as UTF-8, cells between commas, decimal point, heads in line 1, times"
                        + " as seconds.");
        told.put(
                "time [s],thrust [N],Status,\"a; b\"\n0,1,ok,x\n1,2,ok,y\n",
                "COLUMN_LEFT 2 columns are not read: “Status”, “a; b”.");
        told.put(
                "time [s],thrust [N]\n0,1\n1,2\n2,x\n3,4\n",
                "ROWS_ASIDE 1 row is set aside; the first in line 4: no number under “thrust [N]”:"
                        + " “x”.");
        told.put(
                "time [s],thrust [N]\n0,1\n1,2\n1,2\n2,3\n3,4\n",
                "DUPLICATE 1 row came twice; once is kept.");
        told.put(
                "time [s],thrust [N]\n0,1\n1,2\n2,3\n1.5,9\n3,4\n4,4\n",
                "CLOCK_JUMP The clock went wrong in 1 row, which are set aside.");
        told.put(
                "time [s],thrust [N]\n0,1\n1,2\n2,3\n3,3\n50,4\n51,4\n",
                "GAP Once nothing was recorded for 47.0 s, where 1.00 s is usual: a gap, or the"
                        + " clock leapt.");
        told.put(
                "time,thrust [N]\n23:59:59,1\n00:00:00,2\n00:00:01,3\n",
                "CLOCK_JUMP The clock goes past midnight; time goes on.");
        for (var row : told.entrySet()) {
            Imported read = logs.whole(logs.read(logs.file(row.getKey())));
            assertThat(read.notes())
                    .as(row.getKey())
                    .extracting(note -> note.kind() + " " + note.text())
                    .contains(row.getValue());
        }
        Imported latin =
                logs.whole(
                        logs.read(
                                logs.file(
                                        "time [s];temperature p.1 [°C]\n0;20\n1;21\n"
                                                .getBytes(StandardCharsets.ISO_8859_1))));
        assertThat(latin.notes().getFirst().text())
                .startsWith("Read as Latin-1, cells between semi");
    }

    @Test
    void oldLineEndsAndMarksChangeNothing() throws IOException {
        for (String end : List.of("\n", "\r\n", "\r")) {
            String text =
                    "\uFEFFtime [s],thrust [N]" + end + "0,1" + end + end + "1,x" + end + "2,3";
            Imported read = logs.whole(logs.read(logs.file(text)));
            assertThat(read.tables().getFirst().rows()).isEqualTo(2);
            assertThat(read.rejected().getFirst().first())
                    .extracting(Rejected.Row::line)
                    .containsExactly(4L);
        }
    }

    /** Whatever bytes there are: an outcome, and never anything thrown. */
    @Test
    void bytesAtRandomAreReadOrRefused() throws IOException {
        byte[] good =
                "time [s],thrust [N],current p.1 [A]\n0,1,2\n1,2,3\n2,3,4\n3,\"4\",5\n"
                        .getBytes(StandardCharsets.UTF_8);
        var random = new SplittableRandom(7);
        var kinds = new TreeSet<String>();
        for (int k = 0; k < 150; k++) {
            var bytes = new ByteArrayOutputStream();
            for (byte b : good) {
                int luck = random.nextInt(60);
                if (luck == 0) {
                    bytes.write(random.nextInt(256));
                } else if (luck == 1) {
                    bytes.write(",;\"\n\r\t|#".charAt(random.nextInt(8)));
                } else if (luck > 2) {
                    bytes.write(b);
                }
            }
            switch (logs.read(logs.file(bytes.toByteArray()))) {
                case LogOutcome.Read _ -> kinds.add("read");
                case LogOutcome.Refused(var problems) -> {
                    kinds.add("refused");
                    assertThat(problems).isNotEmpty();
                    var sentences = new ArrayList<String>();
                    problems.forEach(p -> sentences.add(Logs.told(p)));
                    assertThat(sentences).noneMatch(s -> s.contains("Exception"));
                }
            }
        }
        assertThat(kinds).containsExactly("read", "refused");
    }
}
