package liftwright.plant.identify;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.SplittableRandom;
import liftwright.rig.CellType;
import liftwright.rig.table.CellTests;
import org.junit.jupiter.api.Test;

/**
 * The surface of a measured cell: heat capacity and conductance to the air fitted to two rates,
 * other rates and a second cell told. What is reached stands in docs/validation.md ({@code
 * -Dliftwright.write} writes it anew); the bounds here are a little wider than that.
 */
class CellSurfaceValidationTest {

    private static final Path PAGE = Path.of("..", "docs", "validation.md");
    private static final String FROM =
            "<!-- cell surfaces: written by CellSurfaceValidationTest -->\n";
    private static final String TO = "<!-- end of cell surfaces -->";

    /** What a builder declares who fitted: ± 15 % and ± 50 % as of a cell that nobody measured. */
    private static final double CAPACITY_DOUBT = 0.15;

    private static final double CONDUCTANCE_DOUBT = 0.5;

    /** By hand: 29.5 mΩ of the first second, 46 g at 1000 J/(kg K), nothing leaves. */
    private static final double HAND_OHM = 0.0295;

    private static final double HAND_J_PER_K = 46;

    private static final double LIMIT_K = 313.15;

    /** One run told, beside the measured one. */
    private static final class Told {
        final String name;
        final double rmsK;
        final double byHandK;
        final double endK;
        final double measuredEndK;
        final double handEndK;
        final double limitError;
        final double handLimitError;
        final double halfWidthK;
        int inside;
        final int rows;

        Told(CellType type, CellTests.Run run, CellSurfaceFit fit) {
            name = name(run);
            CellSurface at = new CellSurface(type, run, fit.jpK, fit.wpK);
            CellSurface more = new CellSurface(type, run, 1.02 * fit.jpK, fit.wpK);
            CellSurface open = new CellSurface(type, run, fit.jpK, 1.02 * fit.wpK);
            rmsK = at.rmsK();
            rows = at.timeS.length - 1;
            endK = at.surfaceK[rows];
            measuredEndK = at.measuredK[rows];
            double[] hand = new double[rows + 1];
            double square = 0;
            for (int k = 0; k <= rows; k++) {
                hand[k] =
                        at.measuredK[0]
                                + at.meanA * at.meanA * HAND_OHM / HAND_J_PER_K * at.timeS[k];
                square += Math.pow(hand[k] - at.measuredK[k], 2);
            }
            byHandK = Math.sqrt(square / rows);
            handEndK = hand[rows];
            double measuredS = CellSurface.passedS(at.timeS, at.measuredK, LIMIT_K);
            limitError = CellSurface.passedS(at.timeS, at.surfaceK, LIMIT_K) / measuredS - 1;
            handLimitError = CellSurface.passedS(at.timeS, hand, LIMIT_K) / measuredS - 1;
            double widths = 0;
            for (int k = 1; k <= rows; k++) {
                double byC = (more.surfaceK[k] - at.surfaceK[k]) / 0.02 * CAPACITY_DOUBT;
                double byG = (open.surfaceK[k] - at.surfaceK[k]) / 0.02 * CONDUCTANCE_DOUBT;
                double half = central(byC, byG);
                widths += half / rows;
                inside += Math.abs(at.surfaceK[k] - at.measuredK[k]) <= half ? 1 : 0;
            }
            halfWidthK = widths;
        }

        /** Half of the central 95 % of a sum of two even spreads, by draws. */
        private static double central(double a, double b) {
            SplittableRandom random = new SplittableRandom(7);
            double[] draw = new double[400];
            for (int k = 0; k < draw.length; k++) {
                draw[k] = Math.abs(a * random.nextDouble(-1, 1) + b * random.nextDouble(-1, 1));
            }
            java.util.Arrays.sort(draw);
            return draw[379];
        }

        String line(String from) {
            return String.format(
                    Locale.ROOT,
                    "| %s | %s | %.1f K | %.0f K | %+.1f K of %.0f K | %+.0f K | %+.0f %% | %+.0f %% |"
                            + " %d of %d | ± %.1f K |\n",
                    from,
                    name,
                    rmsK,
                    byHandK,
                    endK - measuredEndK,
                    measuredEndK - 296,
                    handEndK - measuredEndK,
                    100 * limitError,
                    100 * handLimitError,
                    inside,
                    rows,
                    halfWidthK);
        }
    }

    private static String name(CellTests.Run run) {
        return run.test()
                .file()
                .replaceFirst("^.*/", "")
                .replace(".csv", "")
                .replace("s001-", "cell 1, ")
                .replace("s003-", "cell 3, ")
                .replaceFirst("(\\d)c$", "$1C");
    }

    private static CellSurfaceFit fit(CellType type) {
        return new CellSurfaceFit(type, runs(type, false));
    }

    private static List<CellTests.Run> runs(CellType type, boolean heldOut) {
        return type.measured().orElseThrow().runs().stream()
                .filter(run -> run.heldOut() == heldOut && !name(run).contains("c10"))
                .toList();
    }

    private static List<Told> told(CellType type) {
        CellSurfaceFit fit = fit(type);
        return runs(type, true).stream()
                .filter(run -> !name(run).contains("1C"))
                .map(run -> new Told(type, run, fit))
                .toList();
    }

    @Test
    void thePageSaysWhatComesOut() throws IOException {
        CellType slow = CellData.p30("s001-c10", "s001-1c", "s001-3c");
        CellType fast = CellData.p30("s001-c10", "s001-2c", "s001-4c");
        List<Told> first = told(slow);
        List<Told> second = told(fast);
        for (Told one : List.of(first, second).stream().flatMap(List::stream).toList()) {
            assertThat(one.rmsK).as(one.line("")).isLessThan(2.2).isLessThan(one.byHandK / 5);
            assertThat(Math.abs(one.endK - one.measuredEndK)).as(one.line("")).isLessThan(3.2);
            assertThat(Math.abs(one.limitError)).as(one.line("")).isLessThan(0.21);
            assertThat(Math.abs(one.limitError))
                    .as(one.line(""))
                    .isLessThan(Math.abs(one.handLimitError) * 0.7);
            assertThat(one.inside).as(one.line("")).isGreaterThan(one.rows / 4);
        }
        var table =
                new StringBuilder(
                        """

                        | Fitted to | Told | rms | By hand | At the end | By hand | Time to 40 °C | By hand | In the 95 % band | Its half width |
                        |---|---|---|---|---|---|---|---|---|---|
                        """);
        first.forEach(one -> table.append(one.line("1C and 3C of cell 1")));
        second.forEach(one -> table.append(one.line("2C and 4C of cell 1")));
        String page = Files.readString(PAGE);
        assertThat(page).contains(FROM, TO);
        if (System.getProperty("liftwright.write") != null) {
            int from = page.indexOf(FROM) + FROM.length();
            int to = page.indexOf(TO);
            Files.writeString(PAGE, page.substring(0, from) + table + "\n" + page.substring(to));
        }
        assertThat(Files.readString(PAGE))
                .as("write it anew with -Dliftwright.write")
                .contains(FROM + table + "\n" + TO);
    }

    /**
     * A bare cell of 46 g has some 45 J/K; what was found is more, since the holder warms too and
     * part of the loss is not seen as heat. Declared as a bare cell, the surface comes out too hot.
     */
    @Test
    void aBareCellWouldBeTooHot() {
        CellType type = CellData.p30("s001-c10", "s001-1c", "s001-3c");
        CellSurfaceFit fit = fit(type);
        assertThat(fit.jpK).isBetween(65.0, 90.0);
        assertThat(fit.wpK).isBetween(0.03, 0.06);
        for (CellTests.Run run : runs(type, true)) {
            CellSurface bare = new CellSurface(type, run, 46, 0.6 * 0.046);
            int last = bare.timeS.length - 1;
            assertThat(bare.surfaceK[last] - bare.measuredK[last]).isBetween(5.0, 20.0);
        }
    }
}
