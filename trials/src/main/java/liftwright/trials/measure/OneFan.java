package liftwright.trials.measure;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HashSet;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import liftwright.numerics.Roots;
import liftwright.physics.FanUnit;
import liftwright.plant.SiteAir;
import liftwright.plant.motion.RotorInertia;
import liftwright.plant.parameters.Range;
import liftwright.plant.supply.PackBank;
import liftwright.plant.thrust.FanBank;
import liftwright.plant.thrust.FanUnits;
import liftwright.rig.Fan;
import liftwright.rig.FanType;
import liftwright.rig.Rig;
import liftwright.rig.RigPath;
import liftwright.rig.Wiring;

/**
 * One bare fan of a type on a stand: nothing before its intake, straight on the pack that feeds it
 * in the rig, that pack full and its cells settled, motor cold, air of the site. Throttle is taken
 * as duty.
 */
final class OneFan {

    private final FanType type;
    private final int fan;
    private final int pack;
    private final SiteAir air;
    private final FanBank fans;
    private final PackBank packs;
    private final int installation;
    private final int inertia;

    private OneFan(Asked asked, FanType type, int pack, Doubts doubts) {
        Rig rig = asked.rig();
        this.type = type;
        this.pack = pack;
        fan = asked.firstFan(type);
        air = SiteAir.declare(rig.site(), doubts.rows());
        fans = FanBank.declare(rig, doubts.rows());
        packs = PackBank.declare(rig, doubts.rows());
        Fan one = rig.fans().get(fan);
        installation =
                doubts.rows()
                        .row(
                                one.installation().at(),
                                "installation factor of " + type.name(),
                                one.id(),
                                one.installation().value(),
                                Range.NOT_NEGATIVE);
        inertia =
                doubts.rows()
                        .row(
                                RigPath.of("fan types", type.name(), "rotor", "inertia"),
                                "inertia of the rotor of " + type.name(),
                                one.id(),
                                type.rotor().inertia().orElseGet(() -> RotorInertia.estimate(type)),
                                Range.POSITIVE);
    }

    /**
     * Declares what it needs.
     *
     * @return empty where no pack feeds a fan of this type
     */
    static Optional<OneFan> declare(Asked asked, FanType type, Doubts doubts) {
        OptionalInt pack = feeding(asked.rig(), asked.rig().fans().get(asked.firstFan(type)));
        return pack.isPresent()
                ? Optional.of(new OneFan(asked, type, pack.getAsInt(), doubts))
                : Optional.empty();
    }

    FanType type() {
        return type;
    }

    int pack() {
        return pack;
    }

    /** Nearest pack along the chains, counted in chains; of equal ones the first. */
    private static OptionalInt feeding(Rig rig, Fan fan) {
        Map<String, Integer> number =
                IntStream.range(0, rig.packs().size())
                        .boxed()
                        .collect(Collectors.toMap(k -> rig.packs().get(k).id().text(), k -> k));
        Deque<String> next = new ArrayDeque<>();
        Set<String> seen = new HashSet<>();
        next.add(fan.id().text());
        while (!next.isEmpty()) {
            String node = next.remove();
            if (!seen.add(node)) {
                continue;
            }
            Integer found = number.get(node);
            if (found != null) {
                return OptionalInt.of(found);
            }
            for (Wiring.Chain chain : rig.wiring().chains()) {
                if (chain.from().equals(node)) {
                    next.add(chain.to());
                }
                if (chain.to().equals(node)) {
                    next.add(chain.from());
                }
            }
        }
        return OptionalInt.empty();
    }

    /** For one thread. */
    Bench bench() {
        return new Bench();
    }

    /** The fan and its pack at one vector. */
    final class Bench {
        private final FanUnits units = fans.newUnits();
        private final double[] emf = new double[packs.packs().size()];
        private final double[] ohm = new double[packs.packs().size()];

        /** The fan’s coefficient block, see {@link FanUnit}. */
        final double[] unit = new double[FanUnit.COEFFICIENTS];

        private final double[] point = new double[FanUnit.RESULTS];
        private double emfV;
        private double sourceOhm;
        private double inertiaKgm2;
        private double densityKgpm3;
        private double terminalV;

        private Bench() {}

        /** Takes over the values of a vector. */
        void load(double[] p) {
            densityKgpm3 = air.densityKgpm3(p);
            fans.load(p, densityKgpm3, false, false, true, units);
            for (int k = 0; k < unit.length; k++) {
                unit[k] = units.coefficient(fan, k);
            }
            // What the label is worth stays; how it is built in does not.
            unit[FanUnit.THRUST] /= p[installation];
            packs.rest(p, false, emf);
            packs.resistance(p, air.temperatureK(p), false, true, ohm);
            emfV = emf[pack];
            sourceOhm = ohm[pack];
            inertiaKgm2 = p[inertia];
        }

        /** Finds the point at a duty, 0 to 1: the fan takes what the pack gives at its voltage. */
        void operate(double duty) {
            terminalV =
                    Roots.bracketed(
                            volt -> {
                                FanUnit.operate(unit, 0, volt, duty, point, 0);
                                return emfV - sourceOhm * point[FanUnit.BUS_CURRENT] - volt;
                            },
                            0,
                            emfV,
                            1e-12 * emfV);
            FanUnit.operate(unit, 0, terminalV, duty, point, 0);
        }

        double speedRadps() {
            return point[FanUnit.SPEED];
        }

        double thrustN() {
            return FanUnit.thrustN(unit, 0, point[FanUnit.SPEED]);
        }

        double busA() {
            return point[FanUnit.BUS_CURRENT];
        }

        double windingA() {
            return point[FanUnit.WINDING_CURRENT];
        }

        double terminalV() {
            return terminalV;
        }

        /** Whether the controller’s current limit holds it. */
        boolean isLimited() {
            return point[FanUnit.STATE] == FanUnit.CURRENT_LIMITED;
        }

        /** Whether the controller shorts the winding when it is let go. */
        boolean isShorting() {
            return type.controller()
                    .switching()
                    .braking()
                    .equals(Optional.of(FanType.Braking.SHORT));
        }

        double emfV() {
            return emfV;
        }

        double sourceOhm() {
            return sourceOhm;
        }

        double inertiaKgm2() {
            return inertiaKgm2;
        }

        double densityKgpm3() {
            return densityKgpm3;
        }
    }
}
