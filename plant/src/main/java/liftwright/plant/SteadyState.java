package liftwright.plant;

/**
 * One steady operating point of a rig at full throttle. Its arrays are used again by every solution
 * that is written into it. Fans, packs and chains count as in the rig's lists.
 *
 * <p>A fan without supply has zeros everywhere and {@link #fanFed} false. Without sag ({@link
 * Effects#sag}) nothing flows through the network: figures of packs, chains and losses are zero
 * except the packs' rest voltages.
 */
public final class SteadyState {

    final double[] fanTerminalV;
    final double[] fanDuty;
    final double[] fanSpeedRadps;
    final double[] fanWindingA;
    final double[] fanBusA;
    final double[] fanThrustN;
    final double[] fanUpwardThrustN;
    final double[] fanShaftW;
    final boolean[] fanLimited;
    final boolean[] fanFed;
    final double[] packA;
    final double[] packTerminalV;
    final double[] packRestV;
    final double[] cellUnderLoadV;
    final double[] chainA;
    final double[] chainLossW;
    double liftN;
    double sourceW;
    double busPowerW;
    double shaftW;
    double supplyLossW;
    double fanLossW;
    double closure;
    boolean converged;
    int iterations;
    int fansWithoutSupply;

    SteadyState(int fans, int packs, int chains) {
        fanTerminalV = new double[fans];
        fanDuty = new double[fans];
        fanSpeedRadps = new double[fans];
        fanWindingA = new double[fans];
        fanBusA = new double[fans];
        fanThrustN = new double[fans];
        fanUpwardThrustN = new double[fans];
        fanShaftW = new double[fans];
        fanLimited = new boolean[fans];
        fanFed = new boolean[fans];
        packA = new double[packs];
        packTerminalV = new double[packs];
        packRestV = new double[packs];
        cellUnderLoadV = new double[packs];
        chainA = new double[chains];
        chainLossW = new double[chains];
    }

    /** Voltage at the controller, V. */
    public double fanTerminalV(int fan) {
        return fanTerminalV[fan];
    }

    /** Duty in effect, after the controller's current limit, 0 to 1. */
    public double fanDuty(int fan) {
        return fanDuty[fan];
    }

    /** Shaft speed, rad/s. */
    public double fanSpeedRadps(int fan) {
        return fanSpeedRadps[fan];
    }

    /** Current in the motor, A. */
    public double fanWindingA(int fan) {
        return fanWindingA[fan];
    }

    /** Current from the supply, A. */
    public double fanBusA(int fan) {
        return fanBusA[fan];
    }

    /** Installed thrust along the fan's axis, N. */
    public double fanThrustN(int fan) {
        return fanThrustN[fan];
    }

    /** Upward part of the thrust, N; negative for a fan that blows upward. */
    public double fanUpwardThrustN(int fan) {
        return fanUpwardThrustN[fan];
    }

    /** Power at the shaft, W. */
    public double fanShaftW(int fan) {
        return fanShaftW[fan];
    }

    /** Whether the controller lowered the duty to hold its current limit. */
    public boolean fanLimited(int fan) {
        return fanLimited[fan];
    }

    /** Whether a pack feeds the fan. */
    public boolean fanFed(int fan) {
        return fanFed[fan];
    }

    /** Discharge current, A; negative where other packs charge this one. */
    public double packA(int pack) {
        return packA[pack];
    }

    /** Voltage at the pack's leads, V. */
    public double packTerminalV(int pack) {
        return packTerminalV[pack];
    }

    /** Voltage without current at the pack's charge, V. */
    public double packRestV(int pack) {
        return packRestV[pack];
    }

    /** Mean cell voltage under load: leads and links taken out, over cells in series, V. */
    public double cellUnderLoadV(int pack) {
        return cellUnderLoadV[pack];
    }

    /** Current through the chain, positive from its first node to its second, A. */
    public double chainA(int chain) {
        return chainA[chain];
    }

    /** Heat in the whole chain, out and back, W. */
    public double chainLossW(int chain) {
        return chainLossW[chain];
    }

    /** Sum of the upward thrusts, N. */
    public double liftN() {
        return liftN;
    }

    /** Power that the cells give up, their own heat included, W. */
    public double sourceW() {
        return sourceW;
    }

    /** Power at the controllers' terminals, W. */
    public double busPowerW() {
        return busPowerW;
    }

    /** Power at the shafts, W. */
    public double shaftW() {
        return shaftW;
    }

    /** Heat in packs and wiring, W. */
    public double supplyLossW() {
        return supplyLossW;
    }

    /** Heat in motors and controllers, W. */
    public double fanLossW() {
        return fanLossW;
    }

    /** All heat: packs, wiring, controllers, motors, W. */
    public double lossW() {
        return supplyLossW + fanLossW;
    }

    /**
     * Power that is not accounted for, over the power that the cells give up (without sag: over the
     * power at the terminals); rounding alone leaves about 1e-14.
     */
    public double closure() {
        return closure;
    }

    /** Whether the voltages settled. The other figures mean nothing where they did not. */
    public boolean converged() {
        return converged;
    }

    /** Newton steps taken. */
    public int iterations() {
        return iterations;
    }

    /** How many fans no pack feeds. */
    public int fansWithoutSupply() {
        return fansWithoutSupply;
    }

    public int fans() {
        return fanThrustN.length;
    }

    public int packs() {
        return packA.length;
    }

    public int chains() {
        return chainA.length;
    }
}
