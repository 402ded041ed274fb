package liftwright.rig.csv;

import static java.nio.charset.StandardCharsets.UTF_8;
import static liftwright.rig.Problem.Code.CONTRADICTION;
import static liftwright.rig.Problem.Code.DUPLICATE_KEY;
import static liftwright.rig.Problem.Code.MISSING_KEY;
import static liftwright.rig.Problem.Code.NOT_A_QUANTITY;
import static liftwright.rig.Problem.Code.NOT_TEXT;
import static liftwright.rig.Problem.Code.NO_SUCH_PART;
import static liftwright.rig.Problem.Code.OUT_OF_RANGE;
import static liftwright.rig.Problem.Code.SYNTAX;
import static liftwright.rig.Problem.Code.UNKNOWN_KEY;
import static liftwright.rig.Problem.Code.WRONG_UNIT;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Stream;
import liftwright.rig.Problem;
import liftwright.rig.Problem.Code;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * One mistake in a good table gives one problem: its code, its line and column, its column's name.
 * In the wrong text the sign ¦ stands where the problem must point; it is taken out before reading.
 */
class MalformedTableTest {

    private static final char HERE = '¦';

    private static final String BENCH =
            """
            # one fan, one evening
            voltage [V],bus current [A],thrust [N],duty [%],speed [rpm],air temperature [°C],fan
            44.1,10.5,12.0,40,11000,19.5,A7
            43.6,31.0,37.5,70,19400,19.5,A7

            43.0,62.2,71.0,100,26500,20.0,A7
            """;

    private static final String CELL =
            """
            time [s];discharge current [A];voltage [V];temperature [°C]
            0,0;0,0;4,180;24,0
            1,0;52,0;4,020;24,1
            2,5;52,1;3,985;24,3
            """;

    private static final String TRACE =
            """
            time [s]\tthrottle back [%]\tthrottle pods [%]
            0\t60\t55
            5\t72.5\t70
            30\t60\t55
            """;

    record Mistake(Kind kind, String right, String wrong, Code code, String path) {
        @Override
        public String toString() {
            return kind + ", " + code + ": " + wrong.strip();
        }
    }

    enum Kind {
        BENCH(MalformedTableTest.BENCH),
        CELL(MalformedTableTest.CELL),
        TRACE(MalformedTableTest.TRACE);

        private final String good;

        Kind(String good) {
            this.good = good;
        }

        TableReading<?> read(byte[] bytes) {
            return switch (this) {
                case BENCH -> TableReader.bench("t.csv", bytes);
                case CELL -> TableReader.cellTest("t.csv", bytes);
                case TRACE -> TableReader.trace("t.csv", bytes, List.of("back", "pods"));
            };
        }
    }

    private static Mistake b(String right, String wrong, Code code, String path) {
        return new Mistake(Kind.BENCH, right, wrong, code, path);
    }

    private static Mistake c(String right, String wrong, Code code, String path) {
        return new Mistake(Kind.CELL, right, wrong, code, path);
    }

    private static Mistake t(String right, String wrong, Code code, String path) {
        return new Mistake(Kind.TRACE, right, wrong, code, path);
    }

    static Stream<Mistake> mistakes() {
        return Stream.of(
                // the head
                b("bus current [A]", "¦current [A]", UNKNOWN_KEY, "current"),
                b("bus current [A]", "¦battery current [A]", UNKNOWN_KEY, "battery current"),
                b("speed [rpm]", "¦winding current [A]", CONTRADICTION, "winding current"),
                b("duty [%]", "¦throttle [%]", UNKNOWN_KEY, "throttle"),
                b("duty [%]", "¦dutty [%]", UNKNOWN_KEY, "dutty"),
                b("duty [%]", "¦power [W]", UNKNOWN_KEY, "power"),
                b("duty [%]", "¦pressure [hPa]", UNKNOWN_KEY, "pressure"),
                b("duty [%]", "¦lift [N]", UNKNOWN_KEY, "lift"),
                b("speed [rpm]", "¦thrust [gf]", DUPLICATE_KEY, "thrust"),
                b("speed [rpm]", "¦Thrust [N]", DUPLICATE_KEY, "thrust"),
                b("thrust [N]", "thrust [¦g]", WRONG_UNIT, "thrust"),
                b("thrust [N]", "thrust [¦kg]", WRONG_UNIT, "thrust"),
                b("thrust [N]", "thrust [¦Nm]", WRONG_UNIT, "thrust"),
                b("thrust [N]", "thrust [¦]", WRONG_UNIT, "thrust"),
                b("thrust [N]", "thrust [¦N ± 2]", WRONG_UNIT, "thrust"),
                b("thrust [N]", "¦thrust", WRONG_UNIT, "thrust"),
                b("thrust [N]", "¦thrust (N)", WRONG_UNIT, "thrust"),
                b("thrust [N]", "¦thrust_N", WRONG_UNIT, "thrust"),
                b("voltage [V]", "voltage [¦A]", WRONG_UNIT, "voltage"),
                b("voltage [V]", "voltage [¦volt meter reading]", WRONG_UNIT, "voltage"),
                b("speed [rpm]", "speed [¦m/s]", WRONG_UNIT, "speed"),
                b("air temperature [°C]", "air temperature [¦°]", WRONG_UNIT, "air temperature"),
                b(",fan\n", ",fan [¦1]\n", WRONG_UNIT, "fan"),
                b(",fan\n", ",¦\n", MISSING_KEY, ""),
                b("\nvoltage [V],bus", "\n¦note,bus", MISSING_KEY, "voltage"),
                // the lines
                b("43.6,31.0,37.5,70,19400,19.5,A7", "43.6,31.0,37.5,70,19400,19.5¦", SYNTAX, ""),
                b("43.6,31.0,37.5,70", "43,6,31.0,37.5,70", SYNTAX, "-"),
                b("19.5,A7\n\n", "19.5,A7,¦9\n\n", SYNTAX, ""),
                b("71.0,100,26500", "71.0,¦\"100,26500", SYNTAX, ""),
                b("71.0,100,", "71.0,¦\"100\"x,", SYNTAX, ""),
                // numbers
                b("44.1,", "¦NaN,", NOT_A_QUANTITY, "voltage"),
                b("44.1,", "¦inf,", NOT_A_QUANTITY, "voltage"),
                b("44.1,", "¦n/a,", NOT_A_QUANTITY, "voltage"),
                b("44.1,", "¦44.1 V,", NOT_A_QUANTITY, "voltage"),
                b("44.1,", "¦44..1,", NOT_A_QUANTITY, "voltage"),
                b("44.1,", "¦44.1 ± 1,", NOT_A_QUANTITY, "voltage"),
                b("44.1,", "¦\"44,1\",", NOT_A_QUANTITY, "voltage"),
                b("44.1,", "¦0x2C,", NOT_A_QUANTITY, "voltage"),
                b("11000,", "¦11 000,", NOT_A_QUANTITY, "speed"),
                b("11000,", "¦1e999,", OUT_OF_RANGE, "speed"),
                b("44.1,", "¦,", MISSING_KEY, "voltage"),
                b("31.0,37.5", "31.0,¦ ", MISSING_KEY, "thrust"),
                b("44.1,", "¦٤٤,", NOT_A_QUANTITY, "voltage"),
                b("44.1,", "¦4\u200B4.1,", NOT_TEXT, ""),
                // what cannot be
                b("44.1,", "¦-44.1,", OUT_OF_RANGE, "voltage"),
                b("44.1,", "¦0,", OUT_OF_RANGE, "voltage"),
                b("44.1,", "¦44100,", OUT_OF_RANGE, "voltage"),
                b("10.5,12.0", "¦-10.5,12.0", OUT_OF_RANGE, "bus current"),
                b("12.0,40", "¦-12.0,40", OUT_OF_RANGE, "thrust"),
                b("12.0,40", "12.0,¦140", OUT_OF_RANGE, "duty"),
                b("12.0,40", "12.0,¦-1", OUT_OF_RANGE, "duty"),
                b("11000", "¦0", OUT_OF_RANGE, "speed"),
                b("11000", "¦900000", OUT_OF_RANGE, "speed"),
                b("11000,19.5", "11000,¦-300", OUT_OF_RANGE, "air temperature"),
                b("11000,19.5", "11000,¦195", OUT_OF_RANGE, "air temperature"),
                // cells
                c("discharge current [A]", "¦current [A]", UNKNOWN_KEY, "current"),
                c("temperature [°C]", "¦charge current [A]", CONTRADICTION, "charge current"),
                c("temperature [°C]", "¦capacity [Ah]", UNKNOWN_KEY, "capacity"),
                c("time [s];", "¦note;", MISSING_KEY, "time"),
                c("discharge current [A]", "note", MISSING_KEY, "-"),
                c("time [s]", "time [¦A]", WRONG_UNIT, "time"),
                c("2,5;52,1", "¦1,0;52,1", OUT_OF_RANGE, "time"),
                c("2,5;52,1", "¦0,5;52,1", OUT_OF_RANGE, "time"),
                c("2,5;52,1", "¦00:02;52,1", NOT_A_QUANTITY, "time"),
                c("52,1;3,985", "¦52.1;3,985", CONTRADICTION, "discharge current"),
                c("52,1;3,985", "¦1.052,1;3,985", NOT_A_QUANTITY, "discharge current"),
                c("3,985;24,3", "3,985;¦kalt", NOT_A_QUANTITY, "temperature"),
                c("3,985;24,3", "¦-3,985;24,3", OUT_OF_RANGE, "voltage"),
                c("1,0;52,0;4,020;24,1\n2,5;52,1;3,985;24,3\n", "", MISSING_KEY, "-"),
                // traces
                t("throttle back [%]", "¦throttle bakc [%]", NO_SUCH_PART, "throttle bakc"),
                t("throttle back [%]", "¦throttle [%]", CONTRADICTION, "throttle"),
                t("throttle back [%]", "throttle back [¦N]", WRONG_UNIT, "throttle back"),
                t("throttle back [%]", "¦throttle back (%)", WRONG_UNIT, "throttle back"),
                t(
                        "throttle back [%]\tthrottle",
                        "lift [N]\t¦throttle", CONTRADICTION, "throttle pods"),
                t("throttle back [%]", "¦duty [%]", UNKNOWN_KEY, "duty"),
                t("throttle pods [%]", "¦throttle back [%]", DUPLICATE_KEY, "throttle back"),
                t("72.5\t", "¦172.5\t", OUT_OF_RANGE, "throttle back"),
                t("72.5\t", "¦\t", MISSING_KEY, "throttle back"),
                t("0\t60\t55\n5", "¦1\t60\t55\n5", OUT_OF_RANGE, "time"),
                t("0\t60\t55\n5", "¦-1\t60\t55\n5", OUT_OF_RANGE, "time"),
                t("30\t60", "¦5\t60", OUT_OF_RANGE, "time"),
                t("30\t60\t55", "30\t60¦", SYNTAX, ""));
    }

    @ParameterizedTest
    @MethodSource("mistakes")
    void isFoundAtItsPlace(Mistake mistake) {
        assertThat(mistake.kind().good).containsOnlyOnce(mistake.right());
        String marked = mistake.kind().good.replace(mistake.right(), mistake.wrong());
        String text = marked.replace(String.valueOf(HERE), "");
        List<Problem> problems = problems(mistake.kind().read(text.getBytes(UTF_8)));
        assertThat(problems)
                .as(text)
                .first()
                .satisfies(
                        p -> {
                            assertThat(p.code()).isEqualTo(mistake.code());
                            if (!mistake.path().equals("-")) {
                                assertThat(p.at().path()).isEqualTo(mistake.path());
                            }
                            assertThat(p.found()).isNotBlank();
                            assertThat(p.expected()).isNotBlank();
                        });
        int at = marked.indexOf(HERE);
        if (at >= 0) {
            String before = marked.substring(0, at);
            int line = (int) before.chars().filter(c -> c == '\n').count() + 1;
            int column = before.length() - before.lastIndexOf('\n');
            assertThat(problems.getFirst().at())
                    .extracting(Problem.Place::line, Problem.Place::column)
                    .containsExactly(line, column);
        }
        assertThat(problems).hasSize(1);
    }

    /** One at rest among others is a row; none at work is no fan. */
    @Test
    void aFanThatNeverWorkedIsRefusedAtItsColumn() {
        String head = "voltage [V],bus current [A],thrust [N]\n";
        for (String rows : List.of("44,0,12\n43,0,37\n", "44,10,0\n43,31,0\n")) {
            List<Problem> problems = problems(Kind.BENCH.read((head + rows).getBytes(UTF_8)));
            assertThat(problems)
                    .singleElement()
                    .satisfies(
                            p -> {
                                assertThat(p.code()).isEqualTo(OUT_OF_RANGE);
                                assertThat(p.at().line()).isEqualTo(1);
                                assertThat(head.substring(p.at().column() - 1))
                                        .startsWith(p.at().path());
                            });
        }
        byte[] resting = (head + "44,0,0\n43,31,37\n").getBytes(UTF_8);
        assertThat(Kind.BENCH.read(resting)).isInstanceOf(TableReading.Whole.class);
    }

    /** A rotor on a stand of torque and speed needs nothing electric, but both in every row. */
    @Test
    void aRotorAloneIsTakenByTorqueAndSpeed() {
        String head = "speed [rpm],torque [N·m],thrust [N]\n";
        assertThat(problems(Kind.BENCH.read((head + "4000,0.06,3\n").getBytes(UTF_8)))).isEmpty();
        assertThat(problems(Kind.BENCH.read((head + "4000,,3\n").getBytes(UTF_8))))
                .singleElement()
                .satisfies(
                        p -> {
                            assertThat(p.at().line()).isEqualTo(2);
                            assertThat(p.at().column()).isEqualTo(6);
                            assertThat(p.at().path()).isEqualTo("torque");
                        });
        assertThat(problems(Kind.BENCH.read((head + "4000,0,3\n").getBytes(UTF_8)))).hasSize(1);
        String half = "speed [rpm],thrust [N]\n4000,3\n";
        assertThat(problems(Kind.BENCH.read(half.getBytes(UTF_8)))).hasSize(2);
    }

    @Test
    void theGoodTablesAreGood() {
        for (Kind kind : Kind.values()) {
            assertThat(kind.read(kind.good.getBytes(UTF_8))).isInstanceOf(TableReading.Whole.class);
        }
    }

    static List<Problem> problems(TableReading<?> reading) {
        return switch (reading) {
            case TableReading.Whole<?> _ -> List.of();
            case TableReading.Broken<?>(var problems) -> problems;
        };
    }
}
