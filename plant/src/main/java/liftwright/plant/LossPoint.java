package liftwright.plant;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import liftwright.plant.balance.Allocation;
import liftwright.plant.balance.MomentLedger;
import liftwright.plant.fault.Effect;

/**
 * What a loss leaves of a rig, in still air, with cold motors.
 *
 * @param effect what was lost
 * @param whole the same with everything named that is dead by it
 * @param converged whether the voltages settled everywhere; the rest means nothing where not
 * @param weightN weight of the whole, N
 * @param liftN upward thrust with all survivors at full throttle, N
 * @param computer what a flight computer can do; empty with a shared throttle
 * @param shared what a shared throttle does; empty with a flight computer
 * @param flow currents of the survivors
 */
public record LossPoint(
        Effect effect,
        Effect whole,
        boolean converged,
        double weightN,
        double liftN,
        Optional<Computer> computer,
        Optional<Shared> shared,
        Flow flow) {

    /**
     * What a flight computer can do that commands every fan by itself and knows of the loss.
     *
     * @param held with the moment about the upright axis held too
     * @param free with yaw left to itself
     * @param authorityN authority index, {@link Allocation#authorityN}
     * @param loop least real part of the eigenvalues of B′ B⁺, where B is what the computer
     *     believes its channels do and B′ what they do: 1 where it is right; at or below 0 its
     *     loops run away
     */
    public record Computer(Trims held, Trims free, double authorityN, double loop) {}

    /**
     * Trims and reserves.
     *
     * @param greatestLiftN most lift without the moments held, N; empty where stuck fans leave none
     * @param holds whether the lift asked for is reached without those moments
     * @param reserves about each axis and sign, roll, pitch, yaw, right before left
     * @param gap greatest of the proofs of these optima
     */
    public record Trims(
            OptionalDouble greatestLiftN, boolean holds, List<Reserve> reserves, double gap) {
        public Trims {
            reserves = List.copyOf(reserves);
        }

        /** One of them. */
        public Reserve reserve(Allocation.Axis axis, int sign) {
            return reserves.stream()
                    .filter(one -> one.axis() == axis && one.sign() == sign)
                    .findFirst()
                    .orElseThrow();
        }

        /** Least of the reserves about an axis; empty where one of them is none. */
        public OptionalDouble leastNm(Allocation.Axis axis) {
            Reserve right = reserve(axis, 1);
            Reserve left = reserve(axis, -1);
            return right.momentNm().isPresent() && left.momentNm().isPresent()
                    ? OptionalDouble.of(
                            Math.min(right.momentNm().getAsDouble(), left.momentNm().getAsDouble()))
                    : OptionalDouble.empty();
        }

        /** The same over the moment of inertia, rad/s². */
        public OptionalDouble leastRadps2(Allocation.Axis axis) {
            OptionalDouble nm = leastNm(axis);
            return nm.isPresent()
                    ? OptionalDouble.of(nm.getAsDouble() / reserve(axis, 1).inertiaKgm2())
                    : nm;
        }
    }

    /**
     * Greatest moment about one axis with the lift asked for and the other moments zero.
     *
     * @param axis about which
     * @param sign +1 or −1: which way
     * @param momentNm below 0 where not even the trim is possible, N·m; empty where nothing holds
     *     lift and the other moments
     * @param inertiaKgm2 of the whole about the axis
     */
    public record Reserve(
            Allocation.Axis axis, int sign, OptionalDouble momentNm, double inertiaKgm2) {

        /** Over the moment of inertia, rad/s². */
        public OptionalDouble accelerationRadps2() {
            return momentNm.isPresent()
                    ? OptionalDouble.of(momentNm.getAsDouble() / inertiaKgm2)
                    : momentNm;
        }
    }

    /**
     * What a shared throttle does.
     *
     * @param lifts whether it gives the lift asked for
     * @param throttle that gives it; 1 where none does
     * @param ledger what turns the rig there
     */
    public record Shared(boolean lifts, double throttle, MomentLedger ledger) {}

    /**
     * The survivors at work.
     *
     * @param hover whether at the lift asked for: with a shared throttle at its throttle, with a
     *     flight computer in the trim of least power (yaw held if it can be, else free); else with
     *     all survivors at full throttle
     * @param thrustN along each fan's axis; below 0 where it blows the wrong way, N
     * @param share of full throttle's thrust
     * @param terminalV at each controller, V
     * @param fanA from the supply, A
     * @param windingA in each motor, A
     * @param packA out of each pack, A
     * @param chainA through each chain, A
     * @param exceeded limits of parts that are exceeded there, healthy ones too
     */
    public record Flow(
            boolean hover,
            List<Double> thrustN,
            List<Double> share,
            List<Double> terminalV,
            List<Double> fanA,
            List<Double> windingA,
            List<Double> packA,
            List<Double> chainA,
            List<OperatingLimit> exceeded) {
        public Flow {
            thrustN = List.copyOf(thrustN);
            share = List.copyOf(share);
            terminalV = List.copyOf(terminalV);
            fanA = List.copyOf(fanA);
            windingA = List.copyOf(windingA);
            packA = List.copyOf(packA);
            chainA = List.copyOf(chainA);
            exceeded = List.copyOf(exceeded);
        }
    }
}
