package liftwright.rig.csv;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import liftwright.rig.Problem;
import liftwright.rig.table.KillLog;
import liftwright.rig.table.KillLog.Signal;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Logs of pressed kills: what they mean, and what is wrong with them, word by word. */
class KillLogTest {

    private static final List<String> PATHS = List.of("remote", "chest button", "link loss");

    private static TableReading<KillLog> read(String text) {
        return TableReader.kills("k.csv", text.getBytes(UTF_8), PATHS);
    }

    private static KillLog whole(String text) {
        return switch (read(text)) {
            case TableReading.Whole<KillLog>(var log) -> log;
            case TableReading.Broken<KillLog>(var problems) ->
                    throw new AssertionError(problems.toString());
        };
    }

    @Test
    void rowsMeanWhatTheirHeadsSay() {
        KillLog log =
                whole(
                        """
                        Press;speed [rpm];time [ms];filter [ms];note
                        ;9000;0;5;steady
                        Remote;9000,5;20;;
                        remote;;40;;lost
                        0;120;60;5;
                        """);
        assertThat(log.signal()).isEqualTo(Signal.SPEED);
        assertThat(log.filterS()).hasValue(0.005);
        assertThat(log.rows()).hasSize(4);
        assertThat(log.rows().getFirst().pressed()).isEmpty();
        assertThat(log.rows().getFirst().value().orElseThrow()).isEqualTo(9000 * Math.PI / 30);
        assertThat(log.rows().get(1).pressed()).contains("remote");
        assertThat(log.rows().get(1).timeS()).isEqualTo(0.02);
        assertThat(log.rows().get(2).value()).isEmpty();
        assertThat(log.rows().get(2).line()).isEqualTo(4);
        assertThat(log.rows().get(3).pressed()).isEmpty();
    }

    @Test
    void aMarkIsNamedByItsPath() {
        KillLog log =
                whole(
                        """
                        time [s],press,path,thrust [N]
                        0,no,,60
                        1,x,link loss,60
                        2,1,chest button,1
                        """);
        assertThat(log.rows().stream().map(KillLog.Row::pressed).toList().toString())
                .isEqualTo("[Optional.empty, Optional[link loss], Optional[chest button]]");
        var only =
                TableReader.kills(
                        "k.csv",
                        "time [s],press,current [A]\n0,,30\n1,1,30\n".getBytes(UTF_8),
                        List.of("remote"));
        assertThat(only).isInstanceOf(TableReading.Whole.class);
    }

    private static final String ALL = "remote, chest button, link loss";

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '\\',
            value = {
                // what is needed
                "press,thrust [N];remote,60 | 1:1 time: no column “time”; “time [s]”",
                "time [s],thrust [N];0,60;1,60 | 1:1 press: no column “press”; “press”",
                "time [s],press;0,;1,remote | 1:1 thrust: no column that tells of thrust; “thrust [N]”, “speed [rpm]” or “current [A]”",
                "time [s],press,thrust [N];0,remote,60 | 2:1 : one row; two rows or more: a time passes between rows",
                "time [s],press,thrust [N];0,,60;1,,60 | 1:10 press: a log in which nothing is pressed; the name of a way to stop in the row of its press; The ways are: ALL.",
                "time [s],press,thrust [N];0,,60;1,0,60;2,off,60 | 1:10 press: a log in which nothing is pressed; the name of a way to stop in the row of its press; The ways are: ALL.",
                "time [s],press,thrust [N];0,,0;1,remote,0 | 1:16 thrust: nothing above 0 in any row; more than 0 before the press; A kill is proved on a running fan.",
                "time [s],press,thrust [N];0,,-3;1,remote, | 1:16 thrust: nothing above 0 in any row; more than 0 before the press; A kill is proved on a running fan.",
                "time [s],press,speed [rpm];0,,0;1,remote,0 | 1:16 speed: nothing above 0 in any row; more than 0 before the press; A kill is proved on a running fan.",
                // one signal
                "time [s],press,thrust [N],speed [rpm];0,,6,7;1,remote,6,7 | 1:27 speed: “speed” beside “thrust”; one of thrust, speed and current; Thrust tells most: leave the others out.",
                "time [s],press,speed [rpm],current [A];0,,6,7;1,remote,6,7 | 1:28 current: “current” beside “speed”; one of thrust, speed and current; Thrust tells most: leave the others out.",
                "time [s],press,thrust [N],thrust [N];0,,6,7;1,remote,6,7 | 1:27 thrust: the column “thrust” again; each column once",
                // names of presses
                "time [s],press,thrust [N];0,,6;1,remot,6 | 3:3 press: “remot”; a way to stop of this rig: ALL; Perhaps “remote” is meant.",
                "time [s],press,thrust [N];0,,6;1,linkloss,6 | 3:3 press: “linkloss”; a way to stop of this rig: ALL; Perhaps “link loss” is meant.",
                "time [s],press,thrust [N];0,,6;1,big red thing,6 | 3:3 press: “big red thing”; a way to stop of this rig: ALL",
                "time [s],press,thrust [N];0,,6;1,2,6 | 3:3 press: “2”; a way to stop of this rig: ALL",
                "time [s],press,thrust [N];0,,6;1,x,6 | 3:3 press: “x”, which does not say what was pressed; the name of a way to stop: ALL; Or name it under “path” in the same row.",
                "time [s],press,path,thrust [N];0,,,6;1,yes,,6 | 3:3 press: “yes”, which does not say what was pressed; the name of a way to stop: ALL; Or name it under “path” in the same row.",
                "time [s],press,path,thrust [N];0,,,6;1,1,chest,6 | 3:5 path: “chest”; a way to stop of this rig: ALL",
                "time [s],press,path,thrust [N];0,,,6;1,1,Remotes,6 | 3:5 path: “Remotes”; a way to stop of this rig: ALL; Perhaps “remote” is meant.",
                // times
                "time [s],press,thrust [N];0,,6;0,remote,6 | 3:1 time: “0 s”; more than 0 s, the time of line 2; Times rise from row to row.",
                "time [s],press,thrust [N];5,,6;6,,6;2,remote,6 | 4:1 time: “2 s”; more than 6 s, the time of line 3; Times rise from row to row.",
                "time [ms],press,thrust [N];20,,6;10,remote,6 | 3:1 time: “10 ms”; more than 0.02 s, the time of line 2; Times rise from row to row.",
                "time [s],press,thrust [N];,,6;1,remote,6;2,remote,6 | 2:1 time: an empty cell; a time (s) from −1000000 s to 10000000 s; Leave out a row in which this was not measured.",
                "time [s],press,thrust [N];0,,6;12:30:01,remote,6 | 3:1 time: “12:30:01”; a number; Write times as one number in the unit of the column.",
                "time [s],press,thrust [N];0,,6;soon,remote,6 | 3:1 time: “soon”; a number",
                "time [s],press,thrust [N];0,,6;1e9,remote,6 | 3:1 time: “1e9 s”; a time (s) from −1000000 s to 10000000 s",
                // units
                "time,press,thrust [N];0,,6;1,remote,6 | 1:1 time: “time” without a unit; a unit in square brackets; Write it as in “time [s]”.",
                "time [N],press,thrust [N];0,,6;1,remote,6 | 1:7 time: “N”: *",
                "time [s],press,thrust [kg];0,,6;1,remote,6 | 1:24 thrust: “kg”: *",
                "time [s],press,thrust (N);0,,6;1,remote,6 | 1:16 thrust: “thrust (N)”; the unit in square brackets; Write it as in “thrust [N]”.",
                "time [s],press [1],thrust [N];0,,6;1,remote,6 | 1:17 press: the unit “1”; no unit: the cells hold text; Write “press”.",
                "time [s],press,speed [m/s];0,,6;1,remote,6 | 1:23 speed: “m/s”: *",
                // numbers
                "time [s],press,thrust [N];0,,6;1,remote,6 N | 3:10 thrust: “6 N”; a number; The unit stands in the head of the column, not in the cell.",
                "time [s],press,thrust [N];0,,nan;1,remote,6 | 2:4 thrust: “nan”; a number; Leave the cell empty where nothing was measured.",
                "time [s],press,thrust [N];0,,1.2;1,remote,1.2.3 | 3:10 thrust: “1.2.3”; a number; One plain number, such as 0.5 or 1e-3, and nothing between its digits.",
                "time [s],press,thrust [N];0,,6;1,remote,200000 | 3:10 thrust: “200000 N”; a force (N) from −100000 N to 100000 N",
                "time [s],press,speed [rpm];0,,6;1,remote,-6 | 3:10 speed: “-6 rpm”; a speed of rotation (rpm) from 0 rpm to 200000 rpm",
                "time [s],press,current [A];0,,6;1,remote,6000 | 3:10 current: “6000 A”; a current (A) from −5000 A to 5000 A",
                // smoothing
                "time [s],press,thrust [N],filter [ms];0,,6,5;1,remote,6,10 | 3:12 filter: “10”; the smoothing told in line 2; It belongs to the instrument: say it once, in the first row.",
                "time [s],press,thrust [N],filter [ms];0,,6,-5;1,remote,6, | 2:6 filter: “-5 ms”; a time (s) from 0 s to 10 s",
                "time [s],press,thrust [N],filter [s];0,,6,11;1,remote,6, | 2:6 filter: “11 s”; a time (s) from 0 s to 10 s",
                "time [s],press,thrust [N],filter [Hz];0,,6,11;1,remote,6, | 1:35 filter: “Hz”: *",
                // words that are not taken
                "time [s],press,rpm;0,,6;1,remote,6 | 1:1 thrust: no column that tells of thrust; “thrust [N]”, “speed [rpm]” or “current [A]” & 1:16 rpm: the column “rpm”; a column of this table; Write “speed [rpm]”.",
                "time [s],press,thrust [N],throttle [%];0,,6,30;1,remote,6,0 | 1:27 throttle: the column “throttle [%]”; a column of this table; Leave it out: what is ordered does not tell when the thrust went.",
                "time [s],press,thrust [N],voltage [V];0,,6,30;1,remote,6,0 | 1:27 voltage: the column “voltage [V]”; a column of this table; Leave it out: a turning motor holds up the voltage of a dead supply.",
                "time [s],kill,thrust [N];0,,6;1,remote,6 | 1:1 press: no column “press”; “press” & 1:10 kill: the column “kill”; a column of this table; Write “press”: its cells name what is pressed.",
                "time [s],press,bus current [A];0,,6;1,remote,6 | 1:16 bus current: the column “bus current [A]”; a column of this table; Write “current [A]”.",
                // form
                "time [s],press,thrust [N];0,,6;1,remote | 3:9 : 2 cells; 3, as many as line 1 has names; What was not measured is an empty cell, with its separator.",
                "time [s],press,thrust [N];0,,6;1,remote,6,7 | 3:12 : 4 cells; 3, as many as line 1 has names; A decimal comma needs semicolons or tabs between the cells.",
                "time [s],press,thrust [N] | 1:1 : names of columns and no row; at least one row below them",
                "time [s],press,thrust [N],;0,,6,;1,remote,6, | 1:27 : a column without a name; a name such as time [s]; Does the line end with a separator too many?",
                "time [s],press,thrust [N];0,,6;1,\"remote,6 | 3:3 : a quote that is not closed; a closing quote in the same line; Numbers need no quotes."
            })
    void whatIsWrongIsToldWordByWord(String text, String told) {
        switch (read(text.replace(";", "\n") + "\n")) {
            case TableReading.Whole<KillLog> _ -> throw new AssertionError("read " + text);
            case TableReading.Broken<KillLog>(var problems) -> {
                List<String> wanted = List.of(told.replace("ALL", ALL).split(" & "));
                assertThat(problems.stream().map(KillLogTest::words).toList())
                        .hasSameSizeAs(wanted);
                for (int k = 0; k < wanted.size(); k++) {
                    String want = wanted.get(k);
                    String said = words(problems.get(k));
                    if (want.endsWith("*")) {
                        // How a unit is refused is the words of the parser of units.
                        assertThat(said).startsWith(want.substring(0, want.length() - 1));
                    } else {
                        assertThat(said).isEqualTo(want);
                    }
                }
            }
        }
    }

    private static String words(Problem problem) {
        return problem.at().line()
                + ":"
                + problem.at().column()
                + " "
                + problem.at().path()
                + ": "
                + problem.found()
                + "; "
                + problem.expected()
                + (problem.advice().isEmpty() ? "" : "; " + problem.advice());
    }
}
