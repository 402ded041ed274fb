package liftwright.rig.csv;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import liftwright.rig.Problem;
import liftwright.rig.Problem.Code;
import liftwright.rig.table.TurningTable;
import liftwright.rig.table.TurningTable.Axis;
import liftwright.rig.table.TurningTable.Swap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Tables of measured turning: what they mean, and what is wrong with them at its place. */
class TurningTableTest {

    private static final List<String> FANS = List.of("left.1", "left.2", "right pod.1");

    private static TableReading<TurningTable> read(String text) {
        return TableReader.turning("t.csv", text.getBytes(UTF_8), FANS);
    }

    private static TurningTable whole(String text) {
        return switch (read(text)) {
            case TableReading.Whole<TurningTable>(var table) -> table;
            case TableReading.Broken<TurningTable>(var problems) ->
                    throw new AssertionError(problems.toString());
        };
    }

    @Test
    void rowsMeanWhatTheirHeadsSay() {
        TurningTable table =
                whole(
                        """
                        throttle [%],yaw [deg/s²],yaw doubt [rad/s²],roll [rad/s²],roll doubt [rad/s²],arms doubt [°],swap
                        ,90,0.05,,,1,
                        45,-9,0.05,0.2,0.1,,exchange left.2 right pod.1
                        ,-9,0.05,0.2,0.1,,half turn right pod.1
                        ,-9,0.05,0.2,0.1,,reversal left.1
                        """);
        TurningTable.Row hop = table.rows().getFirst();
        assertThat(hop.line()).isEqualTo(2);
        assertThat(hop.throttle()).isEmpty();
        assertThat(hop.armsRad().orElseThrow()).isCloseTo(Math.toRadians(1), within(1e-12));
        assertThat(hop.swap()).isEqualTo(new Swap.None());
        assertThat(hop.rates()).hasSize(1);
        assertThat(hop.rates().getFirst().axis()).isEqualTo(Axis.YAW);
        assertThat(hop.rates().getFirst().radps2()).isCloseTo(Math.PI / 2, within(1e-12));
        TurningTable.Row stand = table.rows().get(1);
        assertThat(stand.throttle().orElseThrow()).isCloseTo(0.45, within(1e-12));
        assertThat(stand.rates().getFirst()).isEqualTo(new TurningTable.Rate(Axis.ROLL, 0.2, 0.1));
        assertThat(stand.swap()).isEqualTo(new Swap.Exchange("left.2", "right pod.1"));
        assertThat(table.rows().get(2).swap()).isEqualTo(new Swap.HalfTurn("right pod.1"));
        assertThat(table.rows().get(3).swap()).isEqualTo(new Swap.Reversal("left.1"));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "note;x | MISSING_KEY | 1 | 1",
                "yaw [rad/s²];0.2 | MISSING_KEY | 1 | 1",
                "yaw [rad/s²],yaw doubt [rad/s²];,0.1 | MISSING_KEY | 2 | 1",
                "yaw [rad/s²],yaw doubt [rad/s²];0.2, | MISSING_KEY | 2 | 5",
                "yaw [rad/s²],yaw doubt [rad/s²];0.2,0 | OUT_OF_RANGE | 2 | 5",
                "yaw [rad/s²],yaw doubt [rad/s²];2e9,1 | OUT_OF_RANGE | 2 | 1",
                "yaw [rad/s²],yaw doubt [rad/s²];fast,1 | NOT_A_QUANTITY | 2 | 1",
                "yaw [rad/s],yaw doubt [rad/s²];1,1 | WRONG_UNIT | 1 | 6",
                "yaw,yaw doubt [rad/s²];1,1 | WRONG_UNIT | 1 | 1",
                "yaw [rad/s²],yaw doubt [rad/s²],speed;1,1,1 | UNKNOWN_KEY | 1 | 33",
                "yaw [rad/s²],yaw doubt [rad/s²],swap;1,1,half turn left.3 | NO_SUCH_PART | 2 | 5",
                "yaw [rad/s²],yaw doubt [rad/s²],swap;1,1,exchange left.1 | UNKNOWN_WORD | 2 | 5",
                "yaw [rad/s²],yaw doubt [rad/s²],swap;1,1,exchange left.1 left.1 | UNKNOWN_WORD | 2 | 5",
                "yaw [rad/s²],yaw doubt [rad/s²],swap;1,1,shake it | UNKNOWN_WORD | 2 | 5",
                "yaw [rad/s²],yaw doubt [rad/s²],throttle [%];1,1,140 | OUT_OF_RANGE | 2 | 5"
            })
    void whatIsWrongIsToldAtItsPlace(String text, Code code, int line, int column) {
        switch (read(text.replace(";", "\n") + "\n")) {
            case TableReading.Whole<TurningTable> _ -> throw new AssertionError("read " + text);
            case TableReading.Broken<TurningTable>(var problems) -> {
                assertThat(problems).as(problems.toString()).hasSize(1);
                Problem problem = problems.getFirst();
                assertThat(problem.code()).as(problem.toString()).isEqualTo(code);
                assertThat(problem.at().line()).as(problem.toString()).isEqualTo(line);
                assertThat(problem.at().column()).as(problem.toString()).isEqualTo(column);
            }
        }
    }
}
