package liftwright.trials.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import liftwright.answer.Section;
import liftwright.plant.RandomRigs;
import liftwright.rig.CellType;
import liftwright.rig.Pack;
import liftwright.rig.Rig;
import liftwright.testkit.Seeded;
import liftwright.trials.CardKind;
import liftwright.trials.Reading;
import org.hipparchus.ode.ODEState;
import org.hipparchus.ode.OrdinaryDifferentialEquation;
import org.hipparchus.ode.nonstiff.DormandPrince853Integrator;
import org.junit.jupiter.api.Test;

/** Pulses on packs, against their differential equations integrated from the records. */
class PulseTest {

    /** A pack's mean cell, worked out here. */
    private static final class Cell {
        final Pack pack;
        final double warm;
        final double growth;
        final double capacityAs;

        Cell(Rig rig, Pack pack) {
            this.pack = pack;
            double z = rig.site().elevation().si();
            double standardK = 288.15 - 0.0065 * (6356766.0 * z / (6356766.0 + z));
            double airK = rig.site().temperature().map(q -> q.si()).orElse(standardK);
            double kelvin = pack.temperature().map(q -> q.si()).orElse(airK);
            CellType type = pack.cell();
            warm = Math.exp(type.temperatureCoefficient().si() * (1 / kelvin - 1 / 298.15));
            growth = type.ageing().resistanceGrowth().map(q -> q.si()).orElse(1.0);
            capacityAs =
                    type.capacity().orElseThrow().si()
                            * type.ageing().capacityLeft().map(q -> q.si()).orElse(1.0)
                            * pack.parallel();
        }

        double shape(double charge) {
            return pack.cell()
                    .resistanceOverCharge()
                    .map(shape -> between(shape.charge(), shape.factor(), charge))
                    .orElse(1.0);
        }

        double r0(double charge) {
            return pack.cell().resistance().orElseThrow().si() * growth * warm * shape(charge);
        }

        /** Voltage at a time after the pulse began, shape taken where it starts or as it goes. */
        double volt(double amp, double pulseS, double atS, boolean frozen) {
            List<CellType.Settling> pairs = pack.cell().settling();
            double start = pack.charge().si();
            var equation =
                    new OrdinaryDifferentialEquation() {
                        double now = amp;

                        @Override
                        public int getDimension() {
                            return 1 + pairs.size();
                        }

                        @Override
                        public double[] computeDerivatives(double t, double[] y) {
                            double[] d = new double[y.length];
                            d[0] = -now / capacityAs;
                            for (int k = 0; k < pairs.size(); k++) {
                                double r =
                                        pairs.get(k).resistance().si()
                                                * growth
                                                * warm
                                                * shape(frozen ? start : y[0]);
                                double tau = pairs.get(k).time().si() * growth * warm;
                                d[1 + k] = (r * now / pack.parallel() - y[1 + k]) / tau;
                            }
                            return d;
                        }
                    };
            var integrator = new DormandPrince853Integrator(1e-9, 1, 1e-13, 1e-12);
            double[] y = new double[1 + pairs.size()];
            y[0] = start;
            double on = Math.min(atS, pulseS);
            if (on > 0) {
                y = integrator.integrate(equation, new ODEState(0, y), on).getPrimaryState();
            }
            boolean loaded = atS <= pulseS && amp > 0 && atS > 0;
            if (atS > pulseS) {
                equation.now = 0;
                y = integrator.integrate(equation, new ODEState(pulseS, y), atS).getPrimaryState();
            }
            CellType.Curve curve = pack.cell().openCircuit().orElseThrow();
            double cell =
                    between(curve.charge(), curve.volt(), y[0])
                            + pack.cell().openCircuitDoubt().si();
            for (int k = 0; k < pairs.size(); k++) {
                cell -= y[1 + k];
            }
            if (!loaded) {
                return pack.series() * cell;
            }
            cell -= r0(frozen ? start : y[0]) * amp / pack.parallel();
            return pack.series() * cell - amp * pack.interconnect().si();
        }
    }

    static double between(List<Double> at, List<Double> value, double x) {
        if (x <= at.getFirst()) {
            return value.getFirst();
        }
        for (int k = 1; k < at.size(); k++) {
            if (x <= at.get(k)) {
                double share = (x - at.get(k - 1)) / (at.get(k) - at.get(k - 1));
                return value.get(k - 1) * (1 - share) + value.get(k) * share;
            }
        }
        return value.getLast();
    }

    @Test
    void agreesWithAnIntegrator() {
        int[] seen = {0};
        double[] worst = {0};
        Seeded.check(
                120,
                random -> {
                    Rig rig = RandomRigs.exact(random);
                    Measured card = Made.card(rig, CardKind.CELLS);
                    Map<String, Reading> read = Made.readings(card);
                    int number = 0;
                    for (Pack pack : rig.packs()) {
                        Cell cell = new Cell(rig, pack);
                        Section.Table pulse = Made.table(card, "cells-pulse-" + ++number);
                        double amp = Made.amount(pulse.rows().getFirst().get(1));
                        String name = "pack " + pack.id();
                        double rest = cell.volt(0, 0, 0, true);
                        double on = cell.volt(amp, 10, 0.1, true);
                        double end = cell.volt(amp, 10, 10, true);
                        double off = cell.volt(amp, 10, 10.1, true);
                        double after = cell.volt(amp, 10, 70, true);
                        close(read, name + ", at rest before the pulse", rest, rest);
                        close(read, name + ", at the end of the pulse", end, rest);
                        close(read, name + ", step when the current comes on", rest - on, rest);
                        close(
                                read,
                                name + ", fall from there to the end of the pulse",
                                on - end,
                                rest);
                        close(read, name + ", step when the current goes off", off - end, rest);
                        close(read, name + ", rise in the minute after", after - off, rest);
                        double r0 = cell.r0(pack.charge().si()) / cell.warm;
                        close(read, name + ": R0 of a cell at 25 °C, worked out", r0, r0);
                        close(Made.amount(pulse.rows().getFirst().get(3)), rest - end, rest);
                        assertThat(Made.amount(pulse.rows().getFirst().get(5)))
                                .isCloseTo(1.5 * r0 / cell.growth, within(1e-9));
                        // What it costs to hold the shape of resistance where the pulse starts.
                        double moving = cell.volt(amp, 10, 10, false);
                        worst[0] = Math.max(worst[0], Math.abs(moving - end) / rest);
                        seen[0]++;
                    }
                });
        assertThat(seen[0]).isGreaterThan(150);
        assertThat(worst[0]).isLessThan(0.01);
    }

    private static void close(
            Map<String, Reading> read, String name, double expected, double size) {
        assertThat(read).containsKey(name);
        close(Made.of(read, name).expectedSi(), expected, size);
    }

    private static void close(double told, double expected, double size) {
        assertThat(told).isCloseTo(expected, within(1e-9 * Math.abs(size)));
    }
}
