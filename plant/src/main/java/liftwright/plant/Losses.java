package liftwright.plant;

import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import liftwright.plant.balance.FanAtWork;
import liftwright.plant.body.Inertia;
import liftwright.plant.fault.Effect;
import liftwright.plant.fault.LiveWiring;
import liftwright.plant.supply.Circuit;
import liftwright.plant.supply.NetworkState;
import liftwright.plant.supply.Severing;
import liftwright.plant.thrust.FanUnits;
import liftwright.rig.Rig;
import liftwright.rig.Vec3;

/**
 * What losses leave of a rig in numbers: lift, trims, reserves and currents of the survivors on
 * what is left of the supply. Immutable; each thread brings its own {@link Worker}.
 *
 * <p>The rig stands upright in still air, motors are cold, cells settled. Where fans push is taken
 * from the whole rig: beams under mounts keep the bend that they have there.
 */
public final class Losses {

    /** Charge of the packs. */
    public enum Charge {
        /** Full packs, as at lift-off. */
        FULL,
        /** The charge at which lift is judged. */
        JUDGED
    }

    private final Assembler parts;
    private final Charge charge;
    private final Balancing balancing;
    private final LiveWiring wiring;
    private final double[] reversed;

    Losses(Assembler parts, Charge charge) {
        this.parts = parts;
        this.charge = charge;
        balancing = new Balancing(parts);
        wiring = LiveWiring.of(parts.rig);
        reversed = reversedShare(parts.rig);
    }

    /** Thrust of each fan with swapped leads over its own, 1. */
    static double[] reversedShare(Rig rig) {
        return rig.fans().stream().mapToDouble(fan -> fan.type().reversedThrust().si()).toArray();
    }

    /** Takes out of the supply what an effect takes out of it. */
    static void lose(Effect effect, Circuit circuit) {
        for (int chain : effect.openChains()) {
            circuit.open(chain);
        }
        for (int pack : effect.lostPacks()) {
            circuit.lose(pack);
        }
    }

    public Rig rig() {
        return parts.rig;
    }

    /** Which losses come to the same. */
    public LiveWiring wiring() {
        return wiring;
    }

    /** For one thread. */
    public Worker worker() {
        return new Worker();
    }

    /** Solves losses with scratch of its own. */
    public final class Worker {

        private static final int ROUNDS = 12;
        private static final double STEADY = 1e-10;

        private final int count = parts.rig.fans().size();
        private final boolean computer =
                switch (parts.rig.control().kind()) {
                    case SHARED_THROTTLE -> false;
                    case FLIGHT_COMPUTER -> true;
                };
        private final Balancing.Worker balance = balancing.worker();
        private final NetworkState supply = parts.network.newState();
        private final FanUnits units = parts.fans.newUnits();
        private final Circuit circuit = new Circuit(parts.network, supply);
        private final FansUnderOrder fans =
                new FansUnderOrder(circuit, units, parts.rig.control().kind());
        private final Severing severing = new Severing(circuit);
        private final LossFlow flow = new LossFlow(parts, fans, circuit);
        private final LossSteering steering = new LossSteering(count);
        private final double[] fullN = new double[count];
        private final double[] shaftW = new double[count];
        private final double[] copperW = new double[count];

        private double[] held = {};
        private boolean found;
        private double throttle;
        private double weightN;
        private double liftN;
        private boolean settled;
        private Effect whole = Effect.NONE;

        /** What is dead by an effect, once it was found. */
        private final Map<Effect, Effect> wholes = new HashMap<>();

        private Worker() {}

        /**
         * What a loss leaves, with the weight to be held. Allocates.
         *
         * @param p vector of {@link Plant#parameters}
         */
        public LossPoint at(double[] p, Effect effect) {
            load(p);
            return at(p, effect, weightN);
        }

        /**
         * The same with another lift to be held: less than the weight for a rig that sinks.
         *
         * @param wantedN upward thrust, &gt; 0, N
         */
        public LossPoint at(double[] p, Effect effect, double wantedN) {
            load(p);
            boolean converged = lose(effect);
            return switch (parts.rig.control().kind()) {
                case SHARED_THROTTLE -> shared(effect, converged, wantedN);
                case FLIGHT_COMPUTER -> steered(effect, converged, wantedN);
            };
        }

        /**
         * Loses something at the vector of the last {@link #load}, with all survivors at full
         * throttle. For loops: {@link #liftN} and {@link #trims} then speak of it.
         *
         * @return whether an operating point was found
         */
        public boolean lose(Effect effect) {
            whole = wholes.computeIfAbsent(effect, wiring::whole);
            severing.sever(effect.openChains(), effect.lostPacks());
            fans.whole();
            fans.lose(whole, reversed);
            fans.order(new Order.Throttle(1));
            boolean converged = fans.settle(0, circuit.state());
            flow.measure();
            flow.full(fullN, shaftW, copperW);
            liftN = fans.liftN();
            if (computer) {
                steering.lose(whole, fans, flow);
            }
            settled = converged && found;
            return settled;
        }

        /** Upward thrust with all survivors of the last {@link #lose} at full throttle, N. */
        public double liftN() {
            return liftN;
        }

        /** Weight at the vector of the last {@link #load}, N. */
        public double weightN() {
            return weightN;
        }

        /**
         * What a flight computer can do after the last {@link #lose}.
         *
         * @param yawHeld whether the moment about the upright axis is held too
         * @param wantedN lift to be held, &gt; 0, N
         */
        public LossPoint.Trims trims(boolean yawHeld, double wantedN) {
            if (!computer) {
                throw new IllegalStateException("a shared throttle trims nothing");
            }
            if (!whole.stuckDuty().isEmpty()) {
                hover(wantedN);
            }
            return steering.trims(yawHeld, wantedN);
        }

        /**
         * What a shared throttle does after the last {@link #lose}; {@link #thrustN} and {@link
         * #balance} then speak of it.
         *
         * @param wantedN lift to be held, &gt; 0, N
         */
        public LossPoint.Shared shared(double wantedN) {
            if (computer) {
                throw new IllegalStateException("a flight computer has no shared throttle");
            }
            if (throttle > 0) {
                fans.startAt(throttle, weightN);
            }
            fans.order(new Order.Lift(wantedN));
            settled &= fans.settle(0, circuit.state());
            flow.measure();
            return new LossPoint.Shared(
                    fans.reached(), fans.throttle(), balance().nudged(held, NO_TURN));
        }

        /** Whether every operating point since the last {@link #lose} was found. */
        public boolean converged() {
            return settled;
        }

        /**
         * Thrust of each fan at the point solved last, N: below 0 where it blows the wrong way. The
         * caller must not change it.
         */
        public double[] thrustN() {
            return flow.thrustN();
        }

        /** As {@link LossPoint.Computer#loop}, after the last {@link #lose}. */
        public double loop() {
            return computer ? steering.loop() : 1;
        }

        /**
         * The rig with its fans as the last loss left them, for what is asked of the arms: {@link
         * Balancing.Worker#turned} and {@link Balancing.Worker#nudged} speak of it, at the same
         * vector.
         */
        public Balancing.Worker balance() {
            balance.take(flow.thrustN(), flow.torqueNm());
            return balance;
        }

        /** Takes the numbers of a vector; does nothing where they are those it has. */
        public void load(double[] p) {
            if (Arrays.equals(held, p)) {
                return;
            }
            held = p.clone();
            HoverPoint hover = balance.liftOff(p);
            throttle = hover.throttle();
            weightN = hover.mass().weightN();
            Optional<List<FanAtWork>> work = atWork(hover);
            found = hover.converged() && work.isPresent();
            severing.restore();
            double airK = parts.air.temperatureK(p);
            boolean judged =
                    switch (charge) {
                        case FULL -> false;
                        case JUDGED -> true;
                    };
            parts.fans.load(p, parts.air.densityKgpm3(p), true, true, true, units);
            fans.loaded();
            parts.packs.rest(p, judged, supply.emfV);
            parts.packs.resistance(p, airK, judged, true, supply.packOhm);
            parts.wires.resistance(p, airK, supply.chainOhm);
            severing.load();
            work.ifPresent(pushing -> take(pushing, hover.mass().inertia()));
        }

        /** Every fan where its thrust is told of: at lift-off or, with a computer, at full. */
        private Optional<List<FanAtWork>> atWork(HoverPoint hover) {
            Vec3 centre = hover.mass().centre();
            return switch (parts.rig.control().kind()) {
                case SHARED_THROTTLE -> balance.atThrottle(held, centre, hover.throttle());
                case FLIGHT_COMPUTER -> balance.fullThrottle(held, centre);
            };
        }

        private void take(List<FanAtWork> pushing, Inertia inertia) {
            steering.load(pushing, weightN, inertia);
            for (int k = 0; k < count; k++) {
                FanAtWork fan = pushing.get(k);
                fans.upShare()[k] = -fan.actual().z() - fan.strike().force().z();
            }
            if (computer) {
                fans.order(new Order.Throttle(1));
                fans.settle(0, circuit.state());
                flow.measure();
                steering.whole(fans, flow);
            }
        }

        private LossPoint shared(Effect effect, boolean converged, double wantedN) {
            settled = converged;
            LossPoint.Shared one = shared(wantedN);
            return new LossPoint(
                    effect,
                    whole,
                    settled,
                    weightN,
                    liftN,
                    Optional.empty(),
                    Optional.of(one),
                    flow.told(held, one.lifts(), fullN));
        }

        private LossPoint steered(Effect effect, boolean converged, double wantedN) {
            settled = converged;
            boolean hovers = hover(wantedN);
            return new LossPoint(
                    effect,
                    whole,
                    settled,
                    weightN,
                    liftN,
                    Optional.of(steering.told(wantedN)),
                    Optional.empty(),
                    flow.told(held, hovers, fullN));
        }

        /** Trims for a lift, with stuck fans at what they give there; whether it can be held. */
        private boolean hover(double wantedN) {
            boolean hovers = false;
            for (int round = 0; round < ROUNDS; round++) {
                hovers = steering.trim(wantedN);
                if (!hovers && round == 0) {
                    break;
                }
                fans.order(hovers ? new Order.Thrusts(steering.orderedN()) : new Order.Throttle(1));
                settled &= fans.settle(0, circuit.state());
                flow.measure();
                // Where no trim is left, stuck fans give what they give at full throttle again.
                if (steady() || !hovers) {
                    break;
                }
            }
            if (!whole.stuckDuty().isEmpty()) {
                steering.settles(hovers);
            }
            return hovers;
        }

        /** Takes over what stuck fans give now; whether it is what they gave before. */
        private boolean steady() {
            boolean steady = true;
            for (int fan : whole.stuckDuty().keySet()) {
                steady &= steering.stuckAt(fan, units.thrustAtPointN(fan)) <= STEADY;
            }
            return steady;
        }
    }

    private static final double[] NO_TURN = new double[8];
}
