package liftwright.flight.profile;

import static java.nio.charset.StandardCharsets.UTF_8;
import static liftwright.rig.Problem.Code.CONTRADICTION;
import static liftwright.rig.Problem.Code.DUPLICATE_KEY;
import static liftwright.rig.Problem.Code.MISSING_KEY;
import static liftwright.rig.Problem.Code.NOT_ALLOWED_IN_RIG_FILES;
import static liftwright.rig.Problem.Code.NOT_A_QUANTITY;
import static liftwright.rig.Problem.Code.NO_SUCH_PART;
import static liftwright.rig.Problem.Code.OUT_OF_RANGE;
import static liftwright.rig.Problem.Code.UNKNOWN_KEY;
import static liftwright.rig.Problem.Code.UNKNOWN_WORD;
import static liftwright.rig.Problem.Code.WRONG_KIND;
import static liftwright.rig.Problem.Code.WRONG_UNIT;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import liftwright.flight.Examples;
import liftwright.plant.fault.Fault;
import liftwright.rig.Problem;
import liftwright.rig.Rig;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** One mistake in a good profile gives one problem at its place. */
class ProfileReadingTest {

    private static final Rig CURLEW = Examples.rig("curlew");

    static final String GOOD =
            """
            liftwright profile: 1
            name: there and back
            start: {on: ground, charge: 95 %}
            steps:
              - make live: 2 s
              - lift: {to: 1.5 m, at: 0.5 m/s}
              - hold: 5 s
              - move to: {forward: -1 m, right: 12 m, at: 1.5 m/s}
              - turn: {by: 90°, at: 20 deg/s}
              - land: 0.3 m/s
              - make dead: 1 s
            limits: {tilt: 30°, drift: 1 m, height lost: 0.5 m, miss: 0.4 m, landing: 0.7 m/s}
            aborts:
              - {tilt: 40°, then: land}
              - {cell: 3.1 V, then: make dead}
            kill: {at: 6 s, with: remote}
            faults:
              - {at: 5 s, part: fan.3, fault: stuck full}
              - {at: 4 s, part: p.2}
            wind: {mean: 3 m/s, from: 60°, gust: 2 m/s, gust at: 9 s, gust length: 30 m, rough: no}
            """;

    private static ProfileReading read(String text) {
        return ProfileReading.read("flight.yaml", text.getBytes(UTF_8), CURLEW);
    }

    @Test
    void aGoodFileIsRead() {
        ProfileReading reading = read(GOOD);
        assertThat(reading.problems()).isEmpty();
        Profile profile = reading.profile().orElseThrow();
        assertThat(profile.name()).isEqualTo("there and back");
        assertThat(profile.start().chargeShare()).hasValue(0.95);
        assertThat(profile.steps())
                .hasSize(7)
                .contains(
                        new Profile.Step.MakeLive(2),
                        new Profile.Step.Lift(1.5, 0.5),
                        new Profile.Step.Move(-1, 12, OptionalDouble.empty(), 1.5));
        assertThat(profile.limits().tiltRad()).isCloseTo(Math.PI / 6, within(1e-12));
        assertThat(profile.aborts())
                .contains(new Profile.Abort(Profile.Watch.CELL, 3.1, Profile.Then.MAKE_DEAD));
        assertThat(profile.kill()).contains(new Profile.Press(6, "remote"));
        // in order of time, and the first of what can happen to a pack is that it gives nothing
        assertThat(profile.faults())
                .extracting(Profile.Scripted::atS, one -> one.fault().kind())
                .containsExactly(tuple(4.0, Fault.Kind.PACK), tuple(5.0, Fault.Kind.STUCK_FULL));
        assertThat(profile.wind().orElseThrow().turbulent()).isFalse();
        assertThat(profile.defaults()).isEmpty();
    }

    @Test
    void whatIsLeftOutStandsInAndIsTold() {
        Profile profile =
                read("""
                                liftwright profile: 1
                                steps:
                                  - make live: 1 s
                                  - lift: {to: 1 m}
                                  - land: 0.3 m/s
                                """)
                        .profile()
                        .orElseThrow();
        assertThat(profile.limits().tiltRad()).isCloseTo(Math.PI / 4, within(1e-12));
        assertThat(profile.limits().driftM()).isEqualTo(3);
        assertThat(profile.steps().get(1)).isEqualTo(new Profile.Step.Lift(1, 0.5));
        assertThat(profile.defaults())
                .extracting(one -> one.at().toString())
                .contains("limits/tilt", "limits/height lost", "start/on", "steps/2/lift/at");
    }

    /**
     * @param right stands once in the good file
     * @param wrong in its place; ¦ where the problem points
     */
    record Slip(String right, String wrong, Problem.Code code, String path) {
        @Override
        public String toString() {
            return code + ": " + wrong;
        }
    }

    private static Slip s(String right, String wrong, Problem.Code code, String path) {
        return new Slip(right, wrong, code, path);
    }

    static Stream<Slip> slips() {
        return Stream.of(
                s("liftwright profile: 1\n", "", MISSING_KEY, "liftwright profile"),
                s("profile: 1", "profile: ¦2", OUT_OF_RANGE, "liftwright profile"),
                s("profile: 1", "profile: ¦one", WRONG_KIND, "liftwright profile"),
                s("name: there", "¦nam: there", UNKNOWN_KEY, "nam"),
                s("name: there and back", "name: ¦[there]", WRONG_KIND, "name"),
                s("on: ground", "on: ¦water", UNKNOWN_WORD, "start/on"),
                s("on: ground", "on: ¦held", MISSING_KEY, "start/on"),
                s("on: ground", "on: ground, height: ¦1 m", CONTRADICTION, "start/height"),
                s("charge: 95 %", "charge: ¦195 %", OUT_OF_RANGE, "start/charge"),
                s("charge: 95 %", "charge: ¦95 V", WRONG_UNIT, "start/charge"),
                s("make live: 2 s", "make live: ¦2 m", WRONG_UNIT, "steps/1/make live"),
                s("make live: 2 s", "make live: ¦soon", NOT_A_QUANTITY, "steps/1/make live"),
                s("make live: 2 s", "make live: ¦-2 s", OUT_OF_RANGE, "steps/1/make live"),
                s("make live: 2 s", "make live: ¦2 s ± 0.1 s", CONTRADICTION, "steps/1/make live"),
                s("  - make live: 2 s\n", "", CONTRADICTION, "steps/1"),
                s("make live: 2 s", "{make live: 2 s, hold: ¦2 s}", CONTRADICTION, "steps/1/hold"),
                s("- make live: 2 s", "- ¦make live", WRONG_KIND, "steps/1"),
                s("{to: 1.5 m, at: 0.5 m/s}", "¦{at: 0.5 m/s}", MISSING_KEY, "steps/2/lift/to"),
                s("to: 1.5 m, at", "to: ¦150 m, at", OUT_OF_RANGE, "steps/2/lift/to"),
                s("to: 1.5 m, at", "¦too: 1.5 m, to: 1.5 m, at", UNKNOWN_KEY, "steps/2/lift/too"),
                s("at: 0.5 m/s", "at: ¦0 m/s", OUT_OF_RANGE, "steps/2/lift/at"),
                s("{to: 1.5 m, at: 0.5 m/s}", "¦1.5 m", WRONG_KIND, "steps/2/lift"),
                s("- hold: 5 s", "- make live: 5 s", CONTRADICTION, "steps/3"),
                s("hold: 5 s", "hold: ¦5000 s", OUT_OF_RANGE, "steps/3/hold"),
                s("- hold: 5 s", "- make dead: 5 s", CONTRADICTION, "steps/3"),
                s("right: 12 m", "right: ¦12 s", WRONG_UNIT, "steps/4/move to/right"),
                s("right: 12 m", "right: ¦1.2 km", OUT_OF_RANGE, "steps/4/move to/right"),
                s("right: 12 m", "¦rihgt: 12 m", UNKNOWN_KEY, "steps/4/move to/rihgt"),
                s("at: 1.5 m/s", "at: ¦90 m/s", OUT_OF_RANGE, "steps/4/move to/at"),
                s("by: 90°, ", "", MISSING_KEY, "steps/5/turn/by"),
                s("by: 90°", "by: ¦90 m", WRONG_UNIT, "steps/5/turn/by"),
                s("at: 20 deg/s", "at: ¦0 deg/s", OUT_OF_RANGE, "steps/5/turn/at"),
                s("land: 0.3 m/s", "land: ¦5 m/s", OUT_OF_RANGE, "steps/6/land"),
                s("  - land: 0.3 m/s\n", "", CONTRADICTION, "steps/6"),
                s(
                        "  - make dead: 1 s\n",
                        "  - make dead: 1 s\n  - hold: 1 s\n",
                        CONTRADICTION,
                        "steps/8"),
                s("tilt: 30°", "tilt: ¦100°", OUT_OF_RANGE, "limits/tilt"),
                s("drift: 1 m", "drift: ¦1 m ± 0.1 m", CONTRADICTION, "limits/drift"),
                s("miss: 0.4 m", "¦misses: 0.4 m", UNKNOWN_KEY, "limits/misses"),
                s("landing: 0.7 m/s", "landing: ¦0.7", WRONG_UNIT, "limits/landing"),
                s("{tilt: 40°, then: land}", "¦{tilt: 40°}", MISSING_KEY, "aborts/1/then"),
                s("{tilt: 40°, then: land}", "¦{then: land}", MISSING_KEY, "aborts/1/tilt"),
                s(
                        "tilt: 40°, then",
                        "tilt: 40°, sink: ¦1 m/s, then",
                        CONTRADICTION,
                        "aborts/1/sink"),
                s("then: land", "then: ¦pray", UNKNOWN_WORD, "aborts/1/then"),
                s("cell: 3.1 V", "cell: ¦31 V", OUT_OF_RANGE, "aborts/2/cell"),
                s("with: remote", "with: ¦remotte", NO_SUCH_PART, "kill/with"),
                s("{at: 6 s, with: remote}", "¦{at: 6 s}", MISSING_KEY, "kill/with"),
                s("at: 6 s", "at: ¦600 s", CONTRADICTION, "kill/at"),
                s("part: fan.3", "part: ¦fan.33", NO_SUCH_PART, "faults/1/part"),
                s("fault: stuck full", "fault: ¦stuck", UNKNOWN_WORD, "faults/1/fault"),
                s("fault: stuck full", "fault: ¦pack", NO_SUCH_PART, "faults/1/fault"),
                s("{at: 5 s, part", "{at: ¦500 s, part", CONTRADICTION, "faults/1/at"),
                s("part: p.2", "part: ¦p", NO_SUCH_PART, "faults/2/part"),
                s("- {at: 4 s, part: p.2}", "- ¦{part: p.2}", MISSING_KEY, "faults/2/at"),
                s("mean: 3 m/s, ", "", MISSING_KEY, "wind/mean"),
                s("mean: 3 m/s", "mean: ¦3 km", WRONG_UNIT, "wind/mean"),
                s("gust: 2 m/s, ", "", MISSING_KEY, "wind/gust"),
                s(", gust at: 9 s", "", MISSING_KEY, "wind/gust at"),
                s("gust at: 9 s", "gust at: ¦900 s", CONTRADICTION, "wind/gust at"),
                s("rough: no", "rough: ¦perhaps", UNKNOWN_WORD, "wind/rough"),
                s("rough: no", "rough: no, ¦rough: yes", DUPLICATE_KEY, "wind"),
                s("rough: no", "rough: ¦&a no", NOT_ALLOWED_IN_RIG_FILES, "wind/rough"));
    }

    @ParameterizedTest
    @MethodSource("slips")
    void aSlipIsToldAtItsPlace(Slip slip) {
        assertThat(GOOD).containsOnlyOnce(slip.right());
        String marked = GOOD.replace(slip.right(), slip.wrong());
        ProfileReading reading = read(marked.replace("¦", ""));
        List<Problem> problems = reading.problems();
        assertThat(problems)
                .as("%s", problems)
                .extracting(Problem::code, problem -> problem.at().path())
                .containsExactly(tuple(slip.code(), slip.path()));
        assertThat(reading.profile()).isEmpty();
        int here = marked.indexOf('¦');
        if (here >= 0) {
            String before = marked.substring(0, here);
            int line = (int) before.chars().filter(c -> c == '\n').count() + 1;
            int column = here - before.lastIndexOf('\n');
            assertThat(problems.getFirst().at())
                    .extracting(Problem.Place::line, Problem.Place::column)
                    .containsExactly(line, column);
        }
    }

    @Test
    void fortySlipsOrMoreAreTried() {
        assertThat(slips()).hasSizeGreaterThanOrEqualTo(40);
    }

    @Test
    void aFileThatSaysNothingIsAProblem() {
        assertThat(read("").problems()).hasSize(1);
        assertThat(read("# nothing\n").profile()).isEmpty();
    }
}
