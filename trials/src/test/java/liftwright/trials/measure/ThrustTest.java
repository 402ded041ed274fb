package liftwright.trials.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import liftwright.plant.RandomRigs;
import liftwright.rig.CellType;
import liftwright.rig.Fan;
import liftwright.rig.FanType;
import liftwright.rig.Pack;
import liftwright.rig.Rig;
import liftwright.rig.Wiring;
import liftwright.testkit.Seeded;
import liftwright.trials.CardKind;
import liftwright.trials.Reading;
import org.junit.jupiter.api.Test;

/** One bare fan on its pack, found again from the records by halving an interval of speeds. */
class ThrustTest {

    /** A fan on a full pack, all numbers worked out here. */
    static final class Bench {
        final double thrust;
        final double torque;
        final double kv;
        final double ohm;
        final double noLoad;
        final double loss;
        final double fixed;
        final double limit;
        final double emf;
        final double source;

        Bench(Rig rig, Fan fan, Pack pack) {
            FanType type = fan.type();
            double z = rig.site().elevation().si();
            double standardK = 288.15 - 0.0065 * (6356766.0 * z / (6356766.0 + z));
            double airK = rig.site().temperature().map(q -> q.si()).orElse(standardK);
            double pascal =
                    rig.site()
                            .pressure()
                            .map(q -> q.si())
                            .orElse(101325 * Math.pow(standardK / 288.15, 5.25588));
            double t = airK - 273.15;
            double vapour =
                    rig.site().humidity().si() * 611.21 * Math.exp(17.502 * t / (240.97 + t));
            double density =
                    ((pascal - vapour) / (287.05307 * airK) + vapour / (461.5 * airK)) / 1.225;
            double worth = type.data() == FanType.Data.SELLER ? 0.9 : 1;
            double scale = density * worth * type.scatter().si();
            switch (type.performance()) {
                case FanType.Performance.AtSpeed at -> {
                    thrust = scale * at.thrust().si() / Math.pow(at.speed().si(), 2);
                    torque = density * at.shaftPower().si() / Math.pow(at.speed().si(), 3);
                }
                case FanType.Performance.Coefficients at -> {
                    thrust = scale * at.thrust().si();
                    torque = density * at.torque().si();
                }
                case FanType.Performance.Measured _ -> throw new AssertionError("no table here");
            }
            kv = type.motor().speedConstant().orElseThrow().si();
            ohm =
                    type.motor().windingResistance().orElseThrow().si()
                            + type.controller().onResistance().si();
            noLoad = type.motor().noLoadCurrent().orElseThrow().si();
            loss = type.controller().switchingLoss().si();
            fixed = type.controller().fixedPower().si();
            limit = type.controller().currentLimit().map(q -> q.si()).orElse(1e12);
            CellType cell = pack.cell();
            CellType.Curve curve = cell.openCircuit().orElseThrow();
            emf = pack.series() * PulseTest.between(curve.charge(), curve.volt(), 1);
            double kelvin = pack.temperature().map(q -> q.si()).orElse(airK);
            double settled = cell.resistance().orElseThrow().si();
            for (CellType.Settling pair : cell.settling()) {
                settled += pair.resistance().si();
            }
            settled *=
                    Math.exp(cell.temperatureCoefficient().si() * (1 / kelvin - 1 / 298.15))
                            * cell.ageing().resistanceGrowth().map(q -> q.si()).orElse(1.0)
                            * cell.resistanceOverCharge()
                                    .map(s -> PulseTest.between(s.charge(), s.factor(), 1))
                                    .orElse(1.0);
            source = settled * pack.series() / pack.parallel() + pack.interconnect().si();
        }

        /** What is found at a duty: thrust, current, speed, voltage. */
        double[] at(double duty) {
            double low = 0;
            double high = 2 * emf * kv;
            for (int k = 0; k < 55; k++) {
                double speed = (low + high) / 2;
                // Current that this speed asks for, and whether the pack drives more than it.
                double asked = noLoad + torque * kv * speed * speed;
                double volt = volt(duty, asked, speed);
                boolean drives = duty * volt > asked * ohm + speed / kv && asked < limit;
                if (drives) {
                    low = speed;
                } else {
                    high = speed;
                }
            }
            double speed = (low + high) / 2;
            double amp = noLoad + torque * kv * speed * speed;
            double volt = volt(duty, amp, speed);
            double own = Math.min(duty, (amp * ohm + speed / kv) / volt);
            double bus = amp * (own + loss * (1 - own)) + fixed / volt;
            return new double[] {thrust * speed * speed, bus, speed, volt};
        }

        /** Voltage of the pack when the winding takes a current at a speed. */
        private double volt(double duty, double amp, double speed) {
            double volt = emf;
            double before = 0;
            for (int k = 0; k < 400 && Math.abs(volt - before) > 1e-13 * emf; k++) {
                before = volt;
                double own = Math.min(duty, (amp * ohm + speed / kv) / volt);
                volt = emf - source * (amp * (own + loss * (1 - own)) + fixed / volt);
                if (!(volt > 1)) {
                    return 1;
                }
            }
            return volt;
        }
    }

    /** Packs at the least number of chains from a fan. */
    static Set<String> nearest(Rig rig, Fan fan) {
        Set<String> reached = new HashSet<>(Set.of(fan.id().text()));
        Set<String> packs = new HashSet<>();
        rig.packs().forEach(pack -> packs.add(pack.id().text()));
        for (int round = 0; round < 60; round++) {
            Set<String> found = new HashSet<>(reached);
            found.retainAll(packs);
            if (!found.isEmpty()) {
                return found;
            }
            Set<String> wider = new HashSet<>(reached);
            for (Wiring.Chain chain : rig.wiring().chains()) {
                if (reached.contains(chain.from()) || reached.contains(chain.to())) {
                    wider.add(chain.from());
                    wider.add(chain.to());
                }
            }
            reached = wider;
        }
        return Set.of();
    }

    @Test
    void agreesWithSpeedsFoundByHalving() {
        int[] seen = {0};
        Seeded.check(
                120,
                random -> {
                    Rig rig = RandomRigs.exact(random);
                    Map<String, Reading> read = Made.readings(rig, CardKind.THRUST);
                    for (FanType type : rig.fanTypes()) {
                        List<Fan> fans =
                                rig.fans().stream().filter(fan -> fan.type().equals(type)).toList();
                        if (fans.isEmpty()) {
                            continue;
                        }
                        Set<String> packs = nearest(rig, fans.getFirst());
                        if (packs.size() != 1) {
                            continue; // none, or several as near as each other
                        }
                        Pack pack =
                                rig.packs().stream()
                                        .filter(one -> packs.contains(one.id().text()))
                                        .findFirst()
                                        .orElseThrow();
                        Bench bench = new Bench(rig, fans.getFirst(), pack);
                        for (int percent : new int[] {20, 40, 60, 80, 100}) {
                            double[] found = bench.at(percent / 100.0);
                            String at = type.name() + " at " + percent + " % throttle, ";
                            close(Made.of(read, at + "thrust"), found[0]);
                            close(Made.of(read, at + "current of the supply"), found[1]);
                            close(Made.of(read, at + "speed"), found[2]);
                            close(Made.of(read, at + "voltage at the controller"), found[3]);
                            seen[0]++;
                        }
                    }
                });
        assertThat(seen[0]).isGreaterThan(400);
    }

    private static void close(Reading reading, double found) {
        assertThat(reading.expectedSi()).isCloseTo(found, within(1e-9 * Math.abs(found)));
    }
}
