package liftwright.plant;

import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import liftwright.plant.supply.Circuit;
import liftwright.plant.supply.NetworkState;
import liftwright.plant.thrust.FanUnits;

/** What flows at the point that the survivors of a loss were solved at last. For one thread. */
final class LossFlow {

    private final Assembler parts;
    private final FansUnderOrder fans;
    private final Circuit circuit;
    private final SteadyState state;
    private final double[] thrustN;
    private final double[] torqueNm;
    private final double[] copperW;

    LossFlow(Assembler parts, FansUnderOrder fans, Circuit circuit) {
        this.parts = parts;
        this.fans = fans;
        this.circuit = circuit;
        int count = parts.rig.fans().size();
        state =
                new SteadyState(
                        count, parts.rig.packs().size(), parts.rig.wiring().chains().size());
        thrustN = new double[count];
        torqueNm = new double[count];
        copperW = new double[count];
    }

    /** Reads the point off units and network. */
    void measure() {
        FanUnits units = fans.units();
        NetworkState supply = circuit.state();
        for (int k = 0; k < thrustN.length; k++) {
            thrustN[k] = 0;
            torqueNm[k] = 0;
            copperW[k] = 0;
            state.fanShaftW[k] = 0;
            boolean fed = circuit.plan().isFed(k);
            double speed = fed ? units.speedRadps(k) : 0;
            if (speed > 0) {
                units.account(k, supply.loadTerminalV(k));
                double turns = fans.sense(k);
                thrustN[k] = turns * units.thrustN();
                torqueNm[k] = Math.signum(turns) * units.shaftW() / speed;
                copperW[k] = units.copperW();
                state.fanShaftW[k] = units.shaftW();
            }
        }
    }

    /** Thrust along each fan's axis; below 0 where it blows the wrong way, N. */
    double[] thrustN() {
        return thrustN;
    }

    /** Torque at each shaft; below 0 where it turns the wrong way, N·m. */
    double[] torqueNm() {
        return torqueNm;
    }

    /**
     * The point as that of full throttle.
     *
     * @param fullN takes the thrust each fan has without regard to its sense, N
     * @param shaftW takes the power at each shaft, W
     * @param heatW takes the heat of the current in each winding, W
     */
    void full(double[] fullN, double[] shaftW, double[] heatW) {
        for (int k = 0; k < thrustN.length; k++) {
            fullN[k] = thrustN[k] / fans.sense(k);
        }
        System.arraycopy(state.fanShaftW, 0, shaftW, 0, shaftW.length);
        System.arraycopy(copperW, 0, heatW, 0, heatW.length);
    }

    /**
     * The whole of it.
     *
     * @param p vector it was solved at
     * @param hover whether at the lift asked for
     * @param fullN thrusts at full throttle, N
     */
    LossPoint.Flow told(double[] p, boolean hover, double[] fullN) {
        fill(p);
        List<Double> share =
                IntStream.range(0, fullN.length)
                        .mapToObj(k -> fullN[k] > 0 ? thrustN[k] / fans.sense(k) / fullN[k] : 0)
                        .toList();
        List<OperatingLimit> exceeded =
                new OperatingLimits(
                                parts.rig,
                                parts.air,
                                parts.fans,
                                parts.packs,
                                parts.wires,
                                parts.network)
                        .of(p, state).stream().filter(OperatingLimit::exceeded).toList();
        return new LossPoint.Flow(
                hover,
                list(thrustN),
                share,
                list(state.fanTerminalV),
                list(state.fanBusA),
                list(state.fanWindingA),
                list(state.packA),
                list(state.chainA),
                exceeded);
    }

    private static List<Double> list(double[] values) {
        return Arrays.stream(values).boxed().toList();
    }

    private void fill(double[] p) {
        FanUnits units = fans.units();
        NetworkState supply = circuit.state();
        for (int pack = 0; pack < state.packA.length; pack++) {
            double currentA = supply.packA(pack);
            state.packA[pack] = currentA;
            state.packRestV[pack] = supply.emfV[pack];
            state.packTerminalV[pack] = supply.packTerminalV(pack);
            state.cellUnderLoadV[pack] =
                    parts.packs.cellV(p, pack, supply.packTerminalV(pack), currentA);
        }
        for (int chain = 0; chain < state.chainA.length; chain++) {
            state.chainA[chain] = supply.chainA(chain);
            state.chainLossW[chain] = supply.chainLossW(chain);
        }
        for (int k = 0; k < thrustN.length; k++) {
            boolean fed = circuit.plan().isFed(k) && !units.isStopped(k);
            state.fanFed[k] = fed;
            state.fanTerminalV[k] = fed ? supply.loadTerminalV(k) : 0;
            state.fanDuty[k] = fed ? units.duty(k) : 0;
            state.fanSpeedRadps[k] = fed ? units.speedRadps(k) : 0;
            state.fanWindingA[k] = fed ? units.windingA(k) : 0;
            state.fanBusA[k] = fed ? units.currentA(k) : 0;
            state.fanThrustN[k] = thrustN[k];
            state.fanLimited[k] = fed && units.limited(k);
        }
    }
}
