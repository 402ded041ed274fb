package liftwright.rig.csv;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import liftwright.rig.Problem;
import liftwright.rig.Problem.Code;
import liftwright.rig.table.ThrottleTrace;
import liftwright.rig.table.ThrottleTrace.Command;
import org.junit.jupiter.api.Test;

/** What a trace commands, and of whom. */
class ThrottleTraceTest {

    private static TableReading<ThrottleTrace> read(String text, String... groups) {
        return TableReader.trace("t.csv", text.getBytes(UTF_8), List.of(groups));
    }

    private static ThrottleTrace trace(String text, String... groups) {
        return switch (read(text, groups)) {
            case TableReading.Whole<ThrottleTrace>(var trace) -> trace;
            case TableReading.Broken<ThrottleTrace>(var problems) ->
                    throw new AssertionError(problems.toString());
        };
    }

    @Test
    void groupsStandInTheOrderOfTheirColumnsWithTheirOwnLetters() {
        var trace =
                trace(
                        """
                        throttle Left_Pods [%],time [min],Throttle back [1],note
                        55,0,0.6,start
                        70,0.5,0.725,
                        """,
                        "back", "Left_Pods");
        assertThat(trace.command()).isEqualTo(Command.THROTTLE);
        assertThat(trace.groups()).containsExactly("Left_Pods", "back");
        assertThat(trace.rows().get(0).values()).containsExactly(0.55, 0.6);
        assertThat(trace.rows().get(1).timeS()).isCloseTo(30, within(1e-12));
        assertThat(trace.rows().get(1).values()).containsExactly(0.7, 0.725);
        assertThat(trace.rows()).extracting(ThrottleTrace.Row::line).containsExactly(2, 3);
    }

    @Test
    void oneThrottleIsForTheWholeRigWhateverItsGroups() {
        var trace = trace("time [s];throttle [%]\n0;62,5\n9,5;100\n", "back", "pods");
        assertThat(trace.groups()).isEmpty();
        assertThat(trace.rows().getFirst().values()).containsExactly(0.625);
        assertThat(trace.rows().getLast().timeS()).isEqualTo(9.5);
    }

    @Test
    void aLiftIsThatOfTheWholeRig() {
        var trace = trace("time [s],lift [kgf]\n0,80\n10,90\n", "back");
        assertThat(trace.command()).isEqualTo(Command.LIFT);
        assertThat(trace.groups()).isEmpty();
        // 9.80665 N is a kilogram-force: CGPM 1901.
        assertThat(trace.rows().getFirst().values().getFirst())
                .isCloseTo(80 * 9.80665, within(1e-9));
        assertThatIllegalArgumentException()
                .isThrownBy(
                        () ->
                                new ThrottleTrace(
                                        "t.csv", Command.LIFT, List.of("back"), trace.rows()));
    }

    @Test
    void aGroupThatIsLeftOutIsMissed() {
        assertThat(problems("time [s],throttle back [%]\n0,60\n9,70\n", "back", "pods"))
                .singleElement()
                .satisfies(
                        p -> {
                            assertThat(p.code()).isEqualTo(Code.MISSING_KEY);
                            assertThat(p.at().path()).isEqualTo("throttle pods");
                        });
    }

    @Test
    void aRigWithoutGroupsHasNone() {
        assertThat(problems("time [s],throttle back [%]\n0,60\n9,70\n"))
                .extracting(Problem::code)
                .containsExactly(Code.NO_SUCH_PART);
    }

    private static List<Problem> problems(String text, String... groups) {
        return MalformedTableTest.problems(read(text, groups));
    }
}
