package liftwright.plant.supply;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import liftwright.plant.RigSketch;
import liftwright.plant.parameters.ParameterRows;
import liftwright.rig.PartId;
import liftwright.rig.Wiring;
import liftwright.testkit.Seeded;
import org.junit.jupiter.api.Test;

/** Sensitivities of terminal voltages equal differences of whole solutions. */
class SensitivityTest {

    /** Loads that draw a + b V + c / V, so that slopes of both signs occur. */
    private static final class Loads implements Device {
        final double[] a;
        final double[] b;
        final double[] c;
        final double[] current;
        final double[] slope;

        Loads(int count) {
            a = new double[count];
            b = new double[count];
            c = new double[count];
            current = new double[count];
            slope = new double[count];
        }

        @Override
        public void operate(int load, double terminalV) {
            double volt = Math.max(terminalV, 5);
            current[load] = a[load] + b[load] * terminalV + c[load] / volt;
            slope[load] = b[load] - (terminalV > 5 ? c[load] / (volt * volt) : 0);
        }

        @Override
        public double currentA(int load) {
            return current[load];
        }

        @Override
        public double slopeS(int load) {
            return slope[load];
        }
    }

    private static Wiring.Chain chain(int number, String from, String to) {
        return new Wiring.Chain(
                new PartId("c" + number), from, to, List.of(RigSketch.joint("j" + number, 0.001)));
    }

    @Test
    void equalDifferencesOfWholeSolutions() {
        Seeded.check(
                300,
                random -> {
                    List<Wiring.Chain> chains =
                            List.of(
                                    chain(1, "p1", "bus"),
                                    chain(2, "p2", "tie"),
                                    chain(3, "bus", "tie"),
                                    chain(4, "bus", "l1"),
                                    chain(5, "tie", "l2"),
                                    chain(6, "bus", "l3"),
                                    chain(7, "island", "l4"));
                    Wires wires =
                            Wires.declare(
                                    new Wiring(chains, List.of(), Optional.empty()),
                                    new ParameterRows());
                    Network network =
                            Network.of(
                                    List.of("p1", "p2"),
                                    List.of("l1", "l2", "l3", "l4"),
                                    wires,
                                    new boolean[chains.size()]);
                    NetworkState s = network.newState();
                    for (int k = 0; k < 2; k++) {
                        s.emfV[k] = random.nextDouble(40, 58);
                        s.packOhm[k] = random.nextDouble(0.01, 0.05);
                    }
                    for (int k = 0; k < chains.size(); k++) {
                        s.chainOhm[k] = random.nextDouble(0.0005, 0.01);
                    }
                    Loads loads = new Loads(4);
                    for (int load = 0; load < 4; load++) {
                        loads.a[load] = random.nextDouble(0, 20);
                        loads.b[load] = random.nextDouble(0, 0.5);
                        loads.c[load] = random.nextDouble(0, 1500);
                    }
                    network.solve(s, loads);
                    assertThat(s.converged()).isTrue();
                    double[] before = volts(s);
                    double[] ohm = new double[4];
                    double[] share = new double[4];
                    assertThat(network.linearise(s, loads)).isTrue();
                    int load = random.nextInt(3);
                    int pack = random.nextInt(2);
                    network.dropPerAmpere(s, load, ohm);
                    network.risePerVolt(s, pack, share);

                    double step = 1e-4;
                    loads.a[load] += step;
                    network.solve(s, loads);
                    double[] drawn = volts(s);
                    loads.a[load] -= step;
                    s.emfV[pack] += step;
                    network.solve(s, loads);
                    double[] raised = volts(s);
                    for (int k = 0; k < 4; k++) {
                        assertThat(ohm[k])
                                .isCloseTo(
                                        (before[k] - drawn[k]) / step,
                                        within(1e-6 + 1e-3 * ohm[k]));
                        assertThat(share[k])
                                .isCloseTo((raised[k] - before[k]) / step, within(1e-3));
                    }
                    assertThat(ohm[3]).as("an island of its own").isZero();
                });
    }

    private static double[] volts(NetworkState s) {
        double[] volt = new double[4];
        for (int k = 0; k < 4; k++) {
            volt[k] = s.loadTerminalV(k);
        }
        return volt;
    }
}
