package liftwright.flight.loops;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import liftwright.physics.FanLaw;
import liftwright.physics.FanUnit;
import liftwright.plant.Balancing;
import liftwright.plant.HoverPoint;
import liftwright.plant.balance.FanAtWork;
import liftwright.rig.Fan;
import liftwright.rig.FanType;
import liftwright.rig.Rig;
import liftwright.rig.Vec3;

/** Reads the numbers that loops are made from at a rig's hover point. */
final class CraftReading {

    private final Rig rig;
    private final double[] p;
    private final double[] rotorKgm2;
    private final Balancing.Worker worker;

    CraftReading(Balancing balancing, double[] p, double[] rotorKgm2) {
        rig = balancing.rig();
        this.p = p;
        this.rotorKgm2 = rotorKgm2;
        worker = balancing.worker();
    }

    /** Empty where no operating point is found. */
    Optional<Craft> read(Lags lags, Flexible flexible, boolean yawHeld) {
        HoverPoint hover = worker.liftOff(p);
        if (!hover.converged()) {
            return Optional.empty();
        }
        List<Lifter.Rotor> rotors = new ArrayList<>();
        List<Lifter.Volts> volts = new ArrayList<>();
        List<Double> hoverV = new ArrayList<>();
        List<Double> idleN = new ArrayList<>();
        List<Double> limitN = new ArrayList<>();
        for (int f = 0; f < rig.fans().size(); f++) {
            double thrustN = hover.ledger().fans().get(f).thrustN();
            double speed = worker.speedRadps(f);
            boolean turns = speed > 0 && thrustN > 0;
            rotors.add(turns ? rotor(f, thrustN, speed) : STILL);
            volts.add(turns ? volts(f, thrustN, speed) : NO_VOLTS);
            limitN.add(turns ? limitN(f, thrustN, speed) : 0);
            hoverV.add(worker.terminalV(f));
            idleN.add(volts.getLast().thrustN(idle(f) * worker.terminalV(f)));
        }
        Optional<List<FanAtWork>> full = worker.fullThrottle(p, hover.mass().centre());
        if (full.isEmpty()) {
            return Optional.empty();
        }
        List<Lifter> fans = new ArrayList<>();
        for (int f = 0; f < rig.fans().size(); f++) {
            fans.add(
                    lifter(
                            rig.fans().get(f),
                            hover.ledger().fans().get(f),
                            full.get().get(f).thrustN(),
                            limitN.get(f),
                            idleN.get(f),
                            volts.get(f),
                            rotors.get(f)));
        }
        return Optional.of(
                new Craft(
                        hover.mass().massKg(),
                        hover.mass().inertia(),
                        fans,
                        hoverV,
                        lags,
                        flexible,
                        yawHeld));
    }

    /** Fall of thrust over which the spooling down of a rotor counts, 1. */
    private static final double FALL = 0.3;

    /** Change of the logarithm of thrust after one time constant of such a fall. */
    private static final double FALLEN = -Math.log(1 - (1 - Math.exp(-1)) * FALL);

    /** A fan that nothing feeds. */
    private static final Lifter.Rotor STILL = new Lifter.Rotor(0, 0, 0, 1);

    private static final Lifter.Volts NO_VOLTS = new Lifter.Volts(0, 1, 0);

    private static Lifter lifter(
            Fan fan,
            FanAtWork hover,
            double mostN,
            double limitN,
            double idleN,
            Lifter.Volts volts,
            Lifter.Rotor rotor) {
        int spin =
                switch (fan.spin()) {
                    case RIGHT_HAND -> 1;
                    case LEFT_HAND -> -1;
                };
        double thrustN = hover.thrustN();
        Vec3 moment =
                thrustN > 0
                        ? hover.moment().times(1 / thrustN)
                        : hover.arm().cross(hover.actual()).plus(hover.strike().turn());
        Vec3 force = hover.actual().plus(hover.strike().force());
        return new Lifter(
                fan.id(),
                force,
                moment,
                hover.actual(),
                spin,
                thrustN,
                Math.max(mostN, 0),
                limitN,
                Math.min(idleN, 0.5 * Math.max(mostN, 0)),
                volts,
                rotor);
    }

    /**
     * J dΩ/dt = (I − I₀)/K_v − Q near hover with d V kept: the mixer's duties follow the measured
     * voltage, so that the supply's sag takes no part. Where a change of {@value #FALL} of the
     * thrust takes longer, that counts: up, for what the current limit leaves above the air's
     * torque; down, for air and friction alone where a controller cannot draw current back, else
     * with its current limit beside them.
     */
    private Lifter.Rotor rotor(int f, double thrustN, double speed) {
        double kv = worker.coefficient(f, FanUnit.KV);
        double back = 1 / (kv * kv * worker.coefficient(f, FanUnit.RESISTANCE));
        double friction = worker.coefficient(f, FanUnit.NO_LOAD_SLOPE) / kv;
        double airNm = airNm(f, speed);
        double air = (2 + worker.coefficient(f, FanUnit.TORQUE_DRIFT)) * airNm / speed;
        double small = rotorKgm2[f] / (back + friction + air);
        double still = worker.coefficient(f, FanUnit.NO_LOAD) / kv + friction * speed;
        double share = 2 + worker.coefficient(f, FanUnit.THRUST_DRIFT);
        double change = FALLEN * rotorKgm2[f] * speed / share;
        double limitNm = worker.coefficient(f, FanUnit.CURRENT_LIMIT) / kv;
        double spareNm = limitNm - airNm - still;
        // A fan at its limit in a hover rises no more: what can be steered with it is told
        // elsewhere.
        double rise = spareNm > 0 ? change / spareNm : 0;
        double fall = change / (airNm + still + (drawsBack(f) ? limitNm : 0));
        double slow = Math.max(small, Math.max(rise, fall));
        return new Lifter.Rotor(
                rotorKgm2[f], speed, slow + slewS(f, thrustN, speed), share * thrustN / speed);
    }

    /** What a controller's own ramp adds over the same fall, s. */
    private double slewS(int f, double thrustN, double speed) {
        double volt = worker.terminalV(f);
        Lifter.Volts law = volts(f, thrustN, speed);
        double fallen = law.at(thrustN) - law.at((1 - FALL) * thrustN);
        return rig.fans()
                .get(f)
                .type()
                .controller()
                .switching()
                .slew()
                .map(perS -> (1 - Math.exp(-1)) * fallen / volt / perS.si())
                .orElse(0.0);
    }

    private boolean drawsBack(int f) {
        return rig.fans().get(f).type().controller().switching().braking().stream()
                .anyMatch(braking -> braking == FanType.Braking.FREEWHEEL);
    }

    private Lifter.Volts volts(int f, double thrustN, double speed) {
        double ohm = worker.coefficient(f, FanUnit.RESISTANCE);
        double kv = worker.coefficient(f, FanUnit.KV);
        double perRoot = speed / Math.sqrt(thrustN);
        return new Lifter.Volts(
                ohm * worker.coefficient(f, FanUnit.NO_LOAD),
                perRoot * (1 / kv + ohm * worker.coefficient(f, FanUnit.NO_LOAD_SLOPE)),
                ohm * kv * airNm(f, speed) / thrustN);
    }

    /** I₀ + s Ω + K_v Q is the limit: square in the root of the thrust. */
    private double limitN(int f, double thrustN, double speed) {
        double kv = worker.coefficient(f, FanUnit.KV);
        double left =
                worker.coefficient(f, FanUnit.CURRENT_LIMIT)
                        - worker.coefficient(f, FanUnit.NO_LOAD);
        if (left == Double.POSITIVE_INFINITY) {
            return left;
        }
        return new Lifter.Volts(
                        0,
                        worker.coefficient(f, FanUnit.NO_LOAD_SLOPE) * speed / Math.sqrt(thrustN),
                        kv * airNm(f, speed) / thrustN)
                .thrustN(left);
    }

    private double airNm(int f, double speed) {
        return worker.coefficient(f, FanUnit.TORQUE)
                * speed
                * speed
                * FanLaw.drift(
                        worker.coefficient(f, FanUnit.TORQUE_DRIFT),
                        speed,
                        worker.coefficient(f, FanUnit.REFERENCE_SPEED));
    }

    private double idle(int f) {
        return rig.fans()
                .get(f)
                .type()
                .controller()
                .misbehaviour()
                .idle()
                .map(q -> q.si())
                .orElse(0.0);
    }
}
