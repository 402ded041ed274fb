package liftwright.review.referee;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.random.RandomGenerator;
import liftwright.answer.Outcome;
import liftwright.answer.Section;
import liftwright.answer.Value;
import liftwright.numerics.Work;
import liftwright.review.FailureCase;
import liftwright.review.FailuresAnswer;
import liftwright.review.FailuresQuestion;
import liftwright.review.Settings;
import liftwright.review.Stage;
import liftwright.rig.Fan;
import liftwright.rig.Rig;
import liftwright.testkit.Seeded;
import org.junit.jupiter.api.Test;

/** Losses of fans and packs of modules that fly by themselves, as a small referee has them. */
class FailuresOnRandomRigsTest {

    private static final Settings SETTINGS = new Settings(5, 128, 128, 2, false);

    private static FailuresAnswer ask(Rig rig, Stage stage) {
        return (FailuresAnswer)
                FailuresQuestion.staged(rig, "drawn", FailureCase.quick(), SETTINGS)
                        .answer(stage, Work.quiet())
                        .orElseThrow();
    }

    private static Section.Matrix.Line line(FailuresAnswer answer, String part, String what) {
        return answer.sections().stream()
                .filter(section -> section.id().equals("failures"))
                .flatMap(section -> ((Section.Matrix) section).lines().stream())
                .filter(one -> one.part().equals(part) && one.what().equals(what))
                .findFirst()
                .orElseThrow(() -> new AssertionError(part + ": " + what));
    }

    private static Value value(Section.Matrix.Line line, String field) {
        return line.cells().stream()
                .map(Section.Matrix.Cell::value)
                .filter(value -> value.field().equals(field))
                .findFirst()
                .orElseThrow();
    }

    /** Negative infinity where there is no trim. */
    private static double si(Section.Matrix.Line line, String field) {
        return value(line, field).figure() instanceof Value.Figure.Amount(double si, var _)
                ? si
                : Double.NEGATIVE_INFINITY;
    }

    /** All that the referee knows of a line; which parts are lost. */
    private static void compare(
            FailuresAnswer answer, RefereeModule module, String part, String what, boolean[] dead) {
        RefereeModule.Left left = module.without(dead);
        Section.Matrix.Line line = line(answer, part, what);
        String where = part + ": " + what;
        same(si(line, "fault-lift"), left.lift(), where);
        same(si(line, "fault-trim-held"), left.trimmed(), where);
        same(si(line, "fault-roll"), left.roll(), where);
        same(si(line, "fault-pitch"), left.pitch(), where);
        same(si(line, "fault-yaw"), left.yaw(), where);
        // On the very edge of what fans can do rounding would decide.
        boolean held = left.roll() > 1e-6 && left.pitch() > 1e-6 && left.yaw() > 1e-6;
        boolean flies =
                value(line, "fault-outcome").figure() instanceof Value.Figure.Words(String text)
                        && text.equals("flies on");
        assertThat(flies).as(where).isEqualTo(held);
        if (held) {
            // The better of flying on and of landing cannot be less than flying on.
            double flying =
                    Math.min(
                            left.trimmed() / 1.05 - 1,
                            Math.min(
                                    left.roll() / 2, Math.min(left.pitch() / 2, left.yaw() / 0.3)));
            assertThat(si(line, "fault-margin")).isGreaterThanOrEqualTo(Math.min(9, flying) - 1e-6);
        }
    }

    private static void same(double actual, double expected, String where) {
        if (expected == Double.NEGATIVE_INFINITY) {
            assertThat(actual).as(where).isEqualTo(expected);
        } else {
            assertThat(actual)
                    .as(where)
                    .isCloseTo(expected, within(2e-6 * (1 + Math.abs(expected))));
        }
    }

    private static void compareAll(FailuresAnswer answer, RefereeModule module, Rig rig) {
        for (int fan = 0; fan < module.fans(); fan++) {
            boolean[] dead = new boolean[module.fans()];
            dead[fan] = true;
            boolean alone = alone(module, module.packOf()[fan]);
            if (!alone) {
                compare(answer, module, rig.fans().get(fan).id().text(), "the fan stops", dead);
            }
        }
        for (int pack = 0; pack < rig.packs().size(); pack++) {
            boolean[] dead = new boolean[module.fans()];
            for (int fan = 0; fan < dead.length; fan++) {
                dead[fan] = module.packOf()[fan] == pack;
            }
            if (!alone(module, pack)) {
                compare(
                        answer,
                        module,
                        rig.packs().get(pack).id().text(),
                        "it gives nothing",
                        dead);
            }
        }
    }

    /** Whether a pack feeds one fan alone: then the two are one line under the fan's name. */
    private static boolean alone(RefereeModule module, int pack) {
        int fed = 0;
        for (int of : module.packOf()) {
            fed += of == pack ? 1 : 0;
        }
        return fed == 1;
    }

    private static RefereeModule module(
            Rig rig,
            double density,
            RefereeModule.Unit unit,
            int[] packOf,
            double emfV,
            double[] ohm,
            double[] kg,
            double[] frameM,
            double[] upM) {
        int fans = rig.fans().size();
        double[] x = new double[fans];
        double[] y = new double[fans];
        boolean[] right = new boolean[fans];
        for (int k = 0; k < fans; k++) {
            Fan fan = rig.fans().get(k);
            x[k] = fan.at().x();
            y[k] = fan.at().y();
            right[k] = fan.spin() == Fan.Spin.RIGHT_HAND;
        }
        double[] packX = rig.packs().stream().mapToDouble(pack -> pack.at().x()).toArray();
        return new RefereeModule(
                density, unit, x, y, right, packOf, packX, upM[0], emfV, ohm[0], ohm[1], kg[0],
                kg[1], kg[2], frameM, kg[3], kg[4], upM[1]);
    }

    /**
     * Curlew as its file declares it and the parts book has it: bullets of 0.2 and 0.3 mΩ, a fuse
     * of 56 mV at 250 A, a pole of 0.2 mΩ, strand of 2.02 Ω per 1,000 ft 30 K above the air, cells
     * of 2000 K, a screen by Idelchik, an installation of 0.90.
     */
    @Test
    void curlewLosesEachFanAndEachPack() throws IOException {
        Rig rig = Written.rig(Files.readString(Path.of("..", "examples", "curlew", "rig.yaml")));
        double omega = 26000 * Math.PI / 30;
        double root = 0.707 * Math.pow(0.12, 0.375) + 0.12;
        double zeta = root * root / (0.88 * 0.88);
        double areas = 128.0 / 210;
        RefereeModule.Unit unit =
                new RefereeModule.Unit(
                        92 / (omega * omega),
                        4600 / (omega * omega * omega),
                        520 * Math.PI / 30,
                        0.014,
                        2.5,
                        5,
                        0.10,
                        0.90 * Math.pow(1 + zeta * areas * areas, -2.0 / 3),
                        0.070);
        double cold = Math.exp(2000 * (1 / 285.15 - 1 / 298.15));
        double source = 14 * 0.0014 * cold + 0.0015 + 0.0002 + 0.056 / 250 + 0.0002;
        double branch = 2 * 0.3 * 2.02 / 304.8 * (1 + 0.00393 * (12 + 30 - 20)) + 0.0003;
        RefereeModule module =
                module(
                        rig,
                        RefereeLift.density(4, 12, 0.8),
                        unit,
                        new int[] {0, 1, 2, 3, 3, 2, 1, 0},
                        14 * 4.2,
                        new double[] {source, branch},
                        new double[] {0.86, 14 * 0.165 + 0.25, 2.2, 1.1, 0.06},
                        new double[] {0.64, 0.32, 0.06},
                        new double[] {0.06, 0.04});
        FailuresAnswer answer = ask(rig, Stage.NOMINAL);
        compareAll(answer, module, rig);
    }

    @Test
    void eachFateIsTheReferees() {
        int[] seen = new int[2];
        Seeded.check(
                12,
                random -> {
                    Drawn drawn = Drawn.of(random);
                    Rig rig = Written.rig(drawn.text());
                    FailuresAnswer answer = ask(rig, Stage.NOMINAL);
                    compareAll(answer, drawn.module(rig), rig);
                    for (Section section : answer.sections()) {
                        if (section instanceof Section.Matrix matrix) {
                            matrix.lines()
                                    .forEach(line -> seen[si(line, "fault-margin") < 0 ? 0 : 1]++);
                        }
                    }
                    assertThat(answer.verdict().outcome()).isEqualTo(Outcome.NOT_JUDGED);
                });
        assertThat(seen[0]).isPositive();
        assertThat(seen[1]).isPositive();
    }

    /** A ring of fans on packs in the middle, all values exact. */
    @SuppressWarnings("ArrayRecordComponent") // never compared
    private record Drawn(
            int fans, int[] packOf, double ratio, double swirl, double radiusM, int packs) {

        static Drawn of(RandomGenerator random) {
            int packs = random.nextInt(2, 5);
            int fans = packs * random.nextInt(2, 4);
            int[] packOf = new int[fans];
            boolean apart = random.nextBoolean();
            for (int k = 0; k < fans; k++) {
                packOf[k] = apart ? k % packs : k * packs / fans;
            }
            return new Drawn(
                    fans,
                    packOf,
                    Math.round(100 * random.nextDouble(1.1, 3)) / 100.0,
                    Math.round(100 * random.nextDouble(0.3, 1)) / 100.0,
                    Math.round(100 * random.nextDouble(0.3, 0.8)) / 100.0,
                    packs);
        }

        /** So heavy that full throttle of the rated fans is so many weights. */
        private double frameKg() {
            return Math.rint(100 * (fans * 80 / 9.81 / ratio - fans * 0.5 - packs)) / 100.0;
        }

        String text() {
            StringBuilder feeds = new StringBuilder();
            for (int pack = 0; pack < packs; pack++) {
                feeds.append(pack == 0 ? "" : ", ").append("p.").append(pack + 1).append(": [");
                boolean first = true;
                for (int k = 0; k < fans; k++) {
                    if (packOf[k] == pack) {
                        feeds.append(first ? "" : ", ").append("fan.").append(k + 1);
                        first = false;
                    }
                }
                feeds.append("]");
            }
            return String.format(
                    Locale.ROOT,
                    """
                    liftwright: 1
                    rig: Drawn
                    site: {elevation: 100 m, temperature: 15 °C, humidity: 50 %%}
                    demands: {hover: 60 s, height: 0.5 m}
                    mounts: {deck: {on: frame}}
                    fan types:
                      fan-a:
                        tip: 140 mm
                        hub: 52 mm
                        exit area: 128 cm²
                        mass: 0.4 kg
                        data: measured
                        at speed: {speed: 26000 rpm, thrust: 92 N, shaft power: 4.6 kW}
                        swirl: %s
                        scatter: ± 0.01 %% each
                        motor: {speed constant: 520 rpm/V, winding resistance: 12 mΩ, no-load current: 2.5 A, pole pairs: 5}
                        controller: {on-resistance: 2 mΩ, fixed power: 5 W, switching loss: 0.03, mass: 0.1 kg}
                        installation: 1
                    fans:
                      - {id: fan, type: fan-a, mount: deck, ring: %d, radius: %s m, spin: alternating}
                    cells:
                      cell-a: {chemistry: LiPo, capacity: 8 Ah, resistance: 0.9 mΩ, settling: [{resistance: 0.5 mΩ, time: 25 s}], mass: 60 g, open circuit: LiPo}
                    packs:
                      - {id: p, count: %d, cell: cell-a, series: 14, parallel: 1, extra mass: 0.16 kg, interconnect: 1.5 mΩ, at: {mount: deck}, temperature: 25 °C}
                    wiring:
                      feeds:
                        - id: feed
                          from: p
                          trunk: [{fuse: 250 A, resistance: 0.2 mΩ}]
                          branch: [{joint: bullet 6 mm, resistance: 0.3 mΩ}]
                          fans: {%s}
                    other parts:
                      - {id: frame, mass: %s kg, box: [400 mm, 300 mm, 100 mm], at: {mount: deck}}
                    control: {kind: flight computer, link loss: cut}
                    """,
                    swirl,
                    fans,
                    radiusM,
                    packs,
                    feeds,
                    frameKg());
        }

        RefereeModule module(Rig rig) {
            double omega = 26000 * Math.PI / 30;
            return FailuresOnRandomRigsTest.module(
                    rig,
                    RefereeLift.density(100, 15, 0.5),
                    new RefereeModule.Unit(
                            92 / (omega * omega),
                            4600 / (omega * omega * omega),
                            520 * Math.PI / 30,
                            0.014,
                            2.5,
                            5,
                            swirl,
                            1,
                            0.070),
                    packOf,
                    14 * 4.2,
                    new double[] {14 * 0.0014 + 0.0015 + 0.0002, 0.0003},
                    new double[] {0.5, 1.0, frameKg(), 0, 0},
                    new double[] {0.4, 0.3, 0.1},
                    new double[] {0, 0});
        }
    }
}
