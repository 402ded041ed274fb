package liftwright.plant;

import java.util.Arrays;
import liftwright.plant.drive.Commands;
import liftwright.plant.drive.SpinningFans;
import liftwright.plant.fault.Effect;
import liftwright.plant.motion.RotorInertia;
import liftwright.plant.motion.RotorLaws;
import liftwright.plant.motion.RotorNumbers;
import liftwright.plant.thrust.FanUnits;
import liftwright.rig.Fan;
import liftwright.rig.FanType;
import liftwright.rig.Rig;

/**
 * The fans of a rig as rotors in time: what their types and seats say once and for all, what a
 * vector says of them, and what losses leave of them. One value a fan.
 */
final class DriveFans {

    private static final double NO_TOP = Double.POSITIVE_INFINITY;

    final RotorInertia inertia;
    final RotorNumbers numbers;
    final SpinningFans spinning;
    final Commands commands;

    /** Highest declared speed of rotor and controller, rad/s; infinite where none is. */
    final double[] topRadps;

    /** Thrust of each fan as it turns over its own: 1, or below 0 for the wrong way round. */
    final double[] sense;

    /** 1 for a right-hand fan, −1 for a left-hand one. */
    final int[] hand;

    /** Moment on the rig for each N·m of torque of the air, about the thrust. */
    final double[] swirl;

    private final FanUnits units;
    private final RotorLaws laws;
    private final boolean[] givesBack;
    private final double[] reversedShare;

    /** Moment on the frame for each N·m of the air, as each fan turns now. */
    private final double[] keptSwirl;

    /** Angular momentum about the thrust for each rad/s, as each turns now, kg·m². */
    private final double[] spun;

    /** Whether every fan turns its own way. */
    private boolean ownWay;

    /**
     * @param units of the fans of this rig; who loads, loads them
     */
    DriveFans(Rig rig, FanUnits units) {
        this.units = units;
        int count = rig.fans().size();
        inertia = RotorInertia.of(rig);
        numbers = new RotorNumbers(count);
        laws = new RotorLaws(units);
        spinning = new SpinningFans(laws, numbers);
        givesBack = new boolean[count];
        topRadps = new double[count];
        sense = new double[count];
        hand = new int[count];
        swirl = new double[count];
        keptSwirl = new double[count];
        spun = new double[count];
        double[] delayS = new double[count];
        double[] slewPerS = new double[count];
        for (int fan = 0; fan < count; fan++) {
            declared(fan, rig.fans().get(fan), delayS, slewPerS);
        }
        commands = new Commands(delayS, slewPerS);
        reversedShare = Losses.reversedShare(rig);
    }

    /** What a fan's type and seat say once and for all. */
    private void declared(int fan, Fan of, double[] delayS, double[] slewPerS) {
        FanType.Controller controller = of.type().controller();
        numbers.exitM2[fan] = of.type().exitArea().si();
        topRadps[fan] = topRadps(of.type());
        delayS[fan] = controller.switching().delay().map(late -> late.si()).orElse(0.0);
        slewPerS[fan] =
                controller
                        .switching()
                        .slew()
                        .map(most -> most.si())
                        .orElse(Double.POSITIVE_INFINITY);
        hand[fan] =
                switch (of.spin()) {
                    case RIGHT_HAND -> 1;
                    case LEFT_HAND -> -1;
                };
        controller
                .switching()
                .braking()
                .ifPresent(
                        braking -> {
                            switch (braking) {
                                case COAST -> {
                                    // as where nothing is declared
                                }
                                case SHORT -> numbers.brakes[fan] = true;
                                case FREEWHEEL -> givesBack[fan] = true;
                            }
                        });
    }

    /** The lower of what the rotor and what its controller can follow. */
    private static double topRadps(FanType type) {
        double rotor = type.rotor().topSpeed().map(most -> most.si()).orElse(NO_TOP);
        int pairs = type.motor().polePairs().orElse(0);
        double electrical =
                type.controller().topElectricalSpeed().map(most -> most.si()).orElse(NO_TOP);
        return Math.min(rotor, pairs > 0 ? electrical / pairs : NO_TOP);
    }

    /**
     * Takes the numbers of two vectors, and loads the units.
     *
     * @param p of the plant's table
     * @param turning of the table of {@link #inertia}
     */
    void load(Assembler parts, double[] p, double[] turning) {
        numbers.densityKgpm3 = parts.air.densityKgpm3(p);
        parts.fans.load(p, numbers.densityKgpm3, true, true, true, units);
        for (int fan = 0; fan < sense.length; fan++) {
            commands.full(fan, units.orderedDuty(fan));
            numbers.loss[fan] = parts.fans.intakeLoss(p, fan);
            numbers.inertiaKgm2[fan] = inertia.kgm2(turning, fan);
            swirl[fan] = parts.swirls.momentNm(p, fan, 1);
            laws.giveBack(fan, givesBack[fan]);
        }
        turned();
    }

    /** Takes the units as they stand now: loaded, and as warm as what heats them says. */
    void takeUnits() {
        laws.take(units);
    }

    /** Every fan turns its own way again. */
    void start() {
        Arrays.fill(sense, 1);
        turned();
    }

    /** Ways of turning or numbers are others now. */
    private void turned() {
        ownWay = true;
        for (int fan = 0; fan < sense.length; fan++) {
            double turns = Math.signum(sense[fan]);
            keptSwirl[fan] = turns * swirl[fan];
            spun[fan] = turns * hand[fan] * numbers.inertiaKgm2[fan];
            ownWay &= sense[fan] == 1;
        }
    }

    /** Sizes of all thrusts at the end of the last step together, N. */
    double allThrustN() {
        double[] own = spinning.thrustN();
        int end = own.length - sense.length;
        double sum = 0;
        for (int fan = 0; fan < sense.length; fan++) {
            sum += Math.abs(sense[fan] * own[end + fan]);
        }
        return sum;
    }

    /** What moves the frame over the last step, as {@link Drive#loads} says. */
    void loads(double[] thrustN, double[] reactionNm, double[] spinNms) {
        double[] own = spinning.thrustN();
        System.arraycopy(own, 0, thrustN, 0, own.length);
        if (!ownWay) {
            for (int at = 0; at < own.length; at++) {
                thrustN[at] *= sense[at % sense.length];
            }
        }
        spinning.turning(keptSwirl, spun, reactionNm, spinNms);
    }

    /** Takes what an effect does to fans and their channels. */
    void lose(Effect effect) {
        for (int fan : effect.deadFans()) {
            spinning.fed().stop(fan);
        }
        effect.mostDuty().forEach((fan, duty) -> commands.confine(fan, 0, duty));
        effect.stuckDuty().forEach((fan, duty) -> commands.confine(fan, duty, duty));
        for (int fan : effect.reversedFans()) {
            sense[fan] = -reversedShare[fan];
        }
        turned();
        for (int[] pair : effect.exchangedChannels()) {
            commands.exchange(pair[0], pair[1]);
        }
    }
}
