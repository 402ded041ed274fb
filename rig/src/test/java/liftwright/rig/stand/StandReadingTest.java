package liftwright.rig.stand;

import static liftwright.rig.Problem.Code.CONTRADICTION;
import static liftwright.rig.Problem.Code.DUPLICATE_KEY;
import static liftwright.rig.Problem.Code.MISSING_KEY;
import static liftwright.rig.Problem.Code.NOT_ALLOWED_IN_RIG_FILES;
import static liftwright.rig.Problem.Code.NOT_A_QUANTITY;
import static liftwright.rig.Problem.Code.OUT_OF_RANGE;
import static liftwright.rig.Problem.Code.SYNTAX;
import static liftwright.rig.Problem.Code.UNKNOWN_KEY;
import static liftwright.rig.Problem.Code.WRONG_KIND;
import static liftwright.rig.Problem.Code.WRONG_UNIT;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.charset.StandardCharsets;
import java.util.stream.Stream;
import liftwright.quantity.Tolerance;
import liftwright.rig.DefaultUsed;
import liftwright.rig.Problem;
import liftwright.rig.Problem.Code;
import liftwright.testkit.Seeded;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * One mistake in a good file gives one problem: its code, its line and column, its path. In the
 * wrong text the sign ¦ stands where the problem must point; it is taken out before reading.
 */
class StandReadingTest {

    private static final String GOOD =
            """
            stand: 1
            name: Barn
            thrust: 92 N
            wanted: 1 %
            cell:
              rating: 200 N
              class: 0.05 %
              creep: 0.02 %
              temperature: 0.02 %/10 K
              warming: 5 K
              zero drift: 0.2 N
              step: 0.05 N
              calibration: ± 0.1 %
            lever: {fan arm: 300 mm ± 0.5 mm, cell arm: 150 mm ± 0.4 mm bound}
            alignment: 1° ± 1°
            jet on the stand: {area: 6 cm², distance: 250 mm, exit area: 120 cm²}
            clearance: {behind: 8, in front: 4}
            air: {temperature: ± 1 K, pressure: ± 2 hPa}
            repeats: {runs: 5, scatter: 1 %}
            """;

    record Mistake(String right, String wrong, Code code, String path) {
        @Override
        public String toString() {
            return code + ": " + wrong;
        }
    }

    private static Mistake m(String right, String wrong, Code code, String path) {
        return new Mistake(right, wrong, code, path);
    }

    static Stream<Mistake> mistakes() {
        return Stream.of(
                m("stand: 1\n", "stand: ¦2\n", OUT_OF_RANGE, "stand"),
                m("stand: 1\n", "stand: ¦one\n", WRONG_KIND, "stand"),
                m("stand: 1\nname", "¦name", MISSING_KEY, "stand"),
                m("thrust: 92 N\n", "thrust: ¦92\n", WRONG_UNIT, "thrust"),
                m("thrust: 92 N\n", "thrust: ¦9.2 kg\n", WRONG_UNIT, "thrust"),
                m("thrust: 92 N\n", "thrust: ¦-92 N\n", OUT_OF_RANGE, "thrust"),
                m("thrust: 92 N\n", "thrust: ¦92 N ± 3 N\n", CONTRADICTION, "thrust"),
                m("thrust: 92 N\n", "¦trust: 92 N\nthrust: 92 N\n", UNKNOWN_KEY, "trust"),
                m("thrust: 92 N\n", "thrust: 92 N\n¦thrust: 93 N\n", DUPLICATE_KEY, ""),
                m("wanted: 1 %", "wanted: ¦0 %", OUT_OF_RANGE, "wanted"),
                m("  rating: 200 N\n", "", MISSING_KEY, "cell/rating"),
                m("class: 0.05 %", "class: ¦0.05 N", WRONG_UNIT, "cell/class"),
                m("class: 0.05 %", "class: ¦50 %", OUT_OF_RANGE, "cell/class"),
                m("class: 0.05 %", "class: ¦0.05 % ± 0.01 %", CONTRADICTION, "cell/class"),
                m("creep: 0.02 %", "creep: ¦some", NOT_A_QUANTITY, "cell/creep"),
                m("0.02 %/10 K", "¦0.02 %", WRONG_UNIT, "cell/temperature"),
                m("  warming: 5 K\n", "", MISSING_KEY, "cell/warming"),
                m("warming: 5 K", "warming: ¦5 °C", WRONG_UNIT, "cell/warming"),
                m(
                        "calibration: ± 0.1 %",
                        "calibration: ¦0.1 %", NOT_A_QUANTITY, "cell/calibration"),
                m("300 mm ± 0.5 mm", "¦300 mm", MISSING_KEY, "lever/fan arm"),
                m("300 mm ± 0.5 mm", "¦300 mm +0.5/-0.2 mm", NOT_A_QUANTITY, "lever/fan arm"),
                m(", cell arm: 150 mm ± 0.4 mm bound", "", MISSING_KEY, "lever/cell arm"),
                m("alignment: 1° ± 1°", "alignment: ¦40° ± 1°", OUT_OF_RANGE, "alignment"),
                m("area: 6 cm², ", "", MISSING_KEY, "jet on the stand/area"),
                m("distance: 250 mm, ", "", MISSING_KEY, "jet on the stand/distance"),
                m("behind: 8", "behind: ¦0.5", OUT_OF_RANGE, "clearance/behind"),
                m("behind: 8", "behind: ¦8 m", WRONG_UNIT, "clearance/behind"),
                m("in front: 4}", "in front: 4, ¦behnd: 8}", UNKNOWN_KEY, "clearance/behnd"),
                m(
                        "temperature: ± 1 K",
                        "temperature: ¦288 K ± 1 K",
                        NOT_A_QUANTITY,
                        "air/temperature"),
                m("pressure: ± 2 hPa", "pressure: ¦± 2 K", WRONG_UNIT, "air/pressure"),
                m("runs: 5", "runs: ¦1", OUT_OF_RANGE, "repeats/runs"),
                m("runs: 5", "runs: ¦5 times", WRONG_KIND, "repeats/runs"),
                m("scatter: 1 %", "scatter: ¦± 1 %", NOT_A_QUANTITY, "repeats/scatter"),
                m("{runs: 5, scatter: 1 %}", "¦five", WRONG_KIND, "repeats"),
                m("name: Barn", "name: ¦&a Barn", NOT_ALLOWED_IN_RIG_FILES, "name"));
    }

    @ParameterizedTest
    @MethodSource("mistakes")
    void eachMistakeIsToldAtItsPlace(Mistake mistake) {
        assertThat(GOOD).as("what is to be spoilt").contains(mistake.right());
        String marked = GOOD.replace(mistake.right(), mistake.wrong());
        int mark = marked.indexOf('¦');
        var read = read(marked.replace("¦", ""));
        assertThat(read.stand()).isEmpty();
        assertThat(read.problems()).hasSize(1);
        Problem problem = read.problems().getFirst();
        assertThat(problem.code()).isEqualTo(mistake.code());
        assertThat(problem.at().path()).isEqualTo(mistake.path());
        if (mark >= 0) {
            String before = marked.substring(0, mark);
            assertThat(problem.at().line()).isEqualTo((int) before.lines().count() + ends(before));
            assertThat(problem.at().column()).isEqualTo(mark - before.lastIndexOf('\n'));
        }
        assertThat(problem.expected()).isNotBlank();
    }

    /** A text that ends a line has its next character on the one behind. */
    private static int ends(String text) {
        return text.isEmpty() || text.endsWith("\n") ? 1 : 0;
    }

    @Test
    void twoWaysToSayTheSameAreTooMany() {
        assertThat(problems("exit area: 120 cm²}", "exit area: 120 cm², loss: 2 % ± 0.5 %}"))
                .contains(CONTRADICTION);
        assertThat(problems("in front: 4}", "in front: 4, measured: ± 0.3 %}"))
                .contains(CONTRADICTION);
    }

    private static Stream<Code> problems(String right, String wrong) {
        return read(GOOD.replace(right, wrong)).problems().stream().map(Problem::code);
    }

    @Test
    void severalMistakesComeAtOnce() {
        var read =
                read(
                        GOOD.replace("92 N", "92 kg")
                                .replace("class: 0.05 %", "class: 0.05 N")
                                .replace("runs: 5", "runs: none"));
        assertThat(read.problems()).extracting(p -> p.at().line()).containsExactly(3, 7, 19);
    }

    @Test
    void whatIsNoYamlIsToldAsSuch() {
        assertThat(read("stand: 1\ncell: {\n").problems())
                .extracting(Problem::code)
                .contains(SYNTAX);
        assertThat(read("").problems()).extracting(Problem::code).containsExactly(MISSING_KEY);
        assertThat(read("# only words\n").problems()).isNotEmpty();
    }

    @Test
    void aGoodFileIsReadInSi() {
        Stand stand = read(GOOD).stand().orElseThrow();
        assertThat(stand.thrustN()).isEqualTo(92);
        assertThat(stand.wantedShare()).isCloseTo(0.01, within(1e-15));
        assertThat(stand.cell().perKelvin().orElseThrow()).isCloseTo(2e-5, within(1e-18));
        assertThat(stand.cell().calibration().orElseThrow().halfWidth())
                .isCloseTo(0.001, within(1e-15));
        Stand.Lever lever = stand.lever().orElseThrow();
        assertThat(lever.fanArm().si()).isCloseTo(0.3, within(1e-15));
        assertThat(lever.cellArm().doubt().form()).isEqualTo(Tolerance.Form.BOUND);
        assertThat(stand.air().orElseThrow().pascal().halfWidth()).isCloseTo(200, within(1e-9));
        assertThat(stand.repeats()).isEqualTo(new Stand.Repeats(5, 0.01));
        assertThat(stand.defaults()).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(strings = {"lever", "alignment", "jet on the stand", "air", "wanted"})
    void whatIsLeftOpenIsSaid(String key) {
        String less =
                GOOD.lines()
                        .filter(line -> !line.startsWith(key + ":"))
                        .reduce("", (a, b) -> a + b + "\n");
        Stand stand = read(less).stand().orElseThrow();
        assertThat(stand.defaults())
                .extracting((DefaultUsed used) -> used.at().toString())
                .containsExactly(key);
    }

    /** Whatever a file holds, it is read or refused, and never both. */
    @Test
    void noFileMakesTheReaderFail() {
        byte[] good = GOOD.getBytes(StandardCharsets.UTF_8);
        Seeded.check(
                500,
                random -> {
                    byte[] bytes = good.clone();
                    for (int i = random.nextInt(1, 6); i > 0; i--) {
                        bytes[random.nextInt(bytes.length)] = (byte) random.nextInt(256);
                    }
                    var read = StandReading.read("stand.yaml", bytes);
                    assertThat(read.stand().isPresent()).isEqualTo(read.problems().isEmpty());
                });
    }

    private static StandReading read(String text) {
        return StandReading.read("stand.yaml", text.getBytes(StandardCharsets.UTF_8));
    }
}
