package liftwright.plant;

import java.util.Arrays;
import liftwright.plant.fault.Effect;
import liftwright.plant.supply.Circuit;
import liftwright.plant.supply.Consumer;
import liftwright.plant.supply.NetworkState;
import liftwright.plant.thrust.FanUnits;
import liftwright.rig.Control;

/**
 * All fans of a rig following an {@link Order} on whatever voltages the supply has, with motors as
 * cold or warm as the units are told. Allocates nothing in its loop; for one thread.
 */
public final class FansUnderOrder implements Consumer, RunLimits.Pull {

    /** The lift ordered is met to this share of itself. */
    private static final double MET = 1e-8;

    private static final int MOST_TRIES = 60;

    /** Along a ramp heat goes by a power of the throttle: steps no longer than a part of it. */
    private static final double STEPS_OF_A_RAMP = 8;

    /** Along a recorded course the throttle moves no further within a step, of full. */
    private static final double MOST_MOVE = 1.0 / 8;

    /** Throttles found closer together in time tell no rise, s. */
    private static final double LEAST_APART_S = 1e-3;

    private final Circuit circuit;
    private final FanUnits units;
    private final boolean flightComputer;
    private final double[] upShare;
    private final double[] groupShare;

    /** Share of each fan's own channel. */
    private final double[] ownShare;

    /** Upward thrust over what the fan would lift: 1, or below 0 where it turns the wrong way. */
    private final double[] sense;

    private Order order = new Order.Throttle(0);
    private double throttle;
    private double liftN;
    private boolean reached;

    /** Lift ordered at the last point, N; 0 where none was. */
    private double wantedN;

    /** Last throttle or thrust scale that gave an ordered lift: where the next search starts. */
    private double lastThrottle;

    /** Slope of the square root of lift there. */
    private double lastSlope;

    /** When that was, s, and how the throttle rose then, 1/s: packs sag steadily. */
    private double lastTimeS;

    private double rise;

    /** Which stretch of a course the last point was on. */
    private int stretch;

    FansUnderOrder(Circuit circuit, FanUnits units, Control.Kind kind) {
        this.circuit = circuit;
        this.units = units;
        flightComputer =
                switch (kind) {
                    case SHARED_THROTTLE -> false;
                    case FLIGHT_COMPUTER -> true;
                };
        upShare = new double[units.fans()];
        groupShare = new double[units.fans()];
        ownShare = new double[units.fans()];
        sense = new double[units.fans()];
        Arrays.fill(sense, 1);
    }

    /** Takes the duties that the units were loaded with as those of full throttle. */
    void loaded() {
        lastThrottle = 0;
        rise = 0;
        for (int fan = 0; fan < groupShare.length; fan++) {
            ownShare[fan] = units.orderedDuty(fan);
        }
        whole();
    }

    /** Nothing is lost (any more). */
    void whole() {
        Arrays.fill(sense, 1);
        System.arraycopy(ownShare, 0, groupShare, 0, groupShare.length);
        for (int fan = 0; fan < groupShare.length; fan++) {
            units.stop(fan, false);
            units.confine(fan, 0, 1);
        }
    }

    /**
     * Does to the fans what an effect does to them; what it does to the supply is the circuit's.
     * Adds to what was lost before.
     *
     * @param reversedShare thrust of each fan with swapped leads over its own, 1
     */
    void lose(Effect effect, double[] reversedShare) {
        for (int fan : effect.deadFans()) {
            units.stop(fan, true);
        }
        effect.mostDuty().forEach((fan, duty) -> units.confine(fan, 0, duty));
        effect.stuckDuty().forEach((fan, duty) -> units.confine(fan, duty, duty));
        for (int fan : effect.reversedFans()) {
            sense[fan] = -reversedShare[fan];
        }
        for (int[] pair : effect.exchangedChannels()) {
            double one = groupShare[pair[0]];
            groupShare[pair[0]] = groupShare[pair[1]];
            groupShare[pair[1]] = one;
        }
    }

    /** Upward thrust over thrust of a fan as it turns now. */
    private double lifts(int fan) {
        return sense[fan] * upShare[fan];
    }

    /**
     * Where the next search for a throttle starts, instead of from full throttle.
     *
     * @param like one that has found its lift; where it has not, nothing changes
     */
    void startAs(FansUnderOrder like) {
        lastThrottle = like.lastThrottle;
        lastSlope = like.lastSlope;
    }

    /**
     * The same from a throttle that gives some lift.
     *
     * @param share above 0, up to 1
     * @param upwardN what it gives, &gt; 0, N
     */
    void startAt(double share, double upwardN) {
        lastThrottle = share;
        lastSlope = Math.sqrt(upwardN) / share;
    }

    /** Thrust of a fan as it turns now over its own: 1, or below 0 for the wrong way round. */
    public double sense(int fan) {
        return sense[fan];
    }

    double[] upShare() {
        return upShare;
    }

    public void order(Order next) {
        order = next;
    }

    public Order order() {
        return order;
    }

    @Override
    public boolean settle(double timeS, NetworkState supply) {
        wantedN = 0;
        return switch (order) {
            case Order.Throttle(double share) -> {
                throttle(share);
                yield solve(supply, true);
            }
            case Order.Ramp ramp -> {
                throttles(ramp, (timeS - ramp.fromS()) / (ramp.toS() - ramp.fromS()));
                yield solve(supply, true);
            }
            case Order.Course course -> {
                throttles(course, timeS);
                yield solve(supply, true);
            }
            case Order.Thrusts(double[] thrustN) -> {
                for (int fan = 0; fan < thrustN.length; fan++) {
                    units.orderThrust(fan, thrustN[fan]);
                }
                boolean found = solve(supply, true);
                throttle = greatestDuty();
                reached = !anyFalls();
                yield found;
            }
            case Order.Lift(double upwardN) -> lift(timeS, upwardN, supply);
            case Order.LiftRamp ramp -> {
                double part = (timeS - ramp.fromS()) / (ramp.toS() - ramp.fromS());
                yield lift(timeS, ramp.fromN() + part * (ramp.toN() - ramp.fromN()), supply);
            }
        };
    }

    @Override
    public double longestStepS() {
        return switch (order) {
            case Order.Ramp ramp -> (ramp.toS() - ramp.fromS()) / STEPS_OF_A_RAMP;
            case Order.LiftRamp ramp -> (ramp.toS() - ramp.fromS()) / STEPS_OF_A_RAMP;
            case Order.Course(double[] timesS, double[][] shares) -> longestStepS(timesS, shares);
            case Order.Throttle _, Order.Lift _, Order.Thrusts _ -> Double.POSITIVE_INFINITY;
        };
    }

    private double longestStepS(double[] timesS, double[][] shares) {
        double most = 0;
        for (int fan = 0; fan < groupShare.length; fan++) {
            most = Math.max(most, Math.abs(shares[stretch + 1][fan] - shares[stretch][fan]));
        }
        return most == 0
                ? Double.POSITIVE_INFINITY
                : (timesS[stretch + 1] - timesS[stretch]) * MOST_MOVE / most;
    }

    private boolean lift(double timeS, double upwardN, NetworkState supply) {
        wantedN = upwardN;
        if (upwardN <= 0) {
            throttle(0);
            return solve(supply, true);
        }
        return flightComputer ? shareOut(upwardN, supply) : findThrottle(timeS, upwardN, supply);
    }

    private void throttles(Order.Ramp ramp, double part) {
        throttle = 0;
        for (int fan = 0; fan < groupShare.length; fan++) {
            double share = ramp.from()[fan] + part * (ramp.to()[fan] - ramp.from()[fan]);
            units.order(fan, share * groupShare[fan]);
            throttle = Math.max(throttle, share);
        }
    }

    private void throttles(Order.Course course, double timeS) {
        double[] timesS = course.timesS();
        int found = Arrays.binarySearch(timesS, timeS);
        stretch = Math.clamp(found >= 0 ? found : -found - 2, 0, timesS.length - 2);
        double part =
                Math.clamp(
                        (timeS - timesS[stretch]) / (timesS[stretch + 1] - timesS[stretch]), 0, 1);
        double[] from = course.shares()[stretch];
        double[] to = course.shares()[stretch + 1];
        throttle = 0;
        for (int fan = 0; fan < groupShare.length; fan++) {
            double share = from[fan] + part * (to[fan] - from[fan]);
            units.order(fan, share * groupShare[fan]);
            throttle = Math.max(throttle, share);
        }
    }

    private void throttle(double share) {
        throttle = share;
        for (int fan = 0; fan < groupShare.length; fan++) {
            units.order(fan, share * groupShare[fan]);
        }
    }

    private boolean solve(NetworkState supply, boolean meets) {
        circuit.plan().solve(supply, units);
        double sum = 0;
        for (int fan = 0; fan < upShare.length; fan++) {
            if (circuit.plan().isFed(fan)) {
                sum += lifts(fan) * units.thrustAtPointN(fan);
            }
        }
        liftN = sum;
        reached = meets;
        return supply.converged();
    }

    /**
     * One throttle that gives the lift; full throttle where none does. The square root of lift is
     * nearly straight in the throttle: chords between brackets, at first with the slope that the
     * last search ended with, from the throttle that it found and how it rose.
     */
    private boolean findThrottle(double timeS, double wantedN, NetworkState supply) {
        double wanted = Math.sqrt(wantedN);
        if (lastThrottle <= 0) {
            throttle(1);
            if (!solve(supply, true)) {
                return false;
            }
            if (liftN < wantedN) {
                reached = false;
                return true;
            }
            lastSlope = Math.sqrt(liftN);
            lastThrottle = wanted / lastSlope;
        }
        double low = 0;
        double lowRoot = 0;
        double high = Double.POSITIVE_INFINITY;
        double highRoot = Double.POSITIVE_INFINITY;
        double guess = lastThrottle + rise * (timeS - lastTimeS);
        double at = guess > 0 ? Math.min(1, guess) : lastThrottle;
        double before = Double.NaN;
        double rootBefore = Double.NaN;
        for (int tries = 0; tries < MOST_TRIES; tries++) {
            throttle(at);
            if (!solve(supply, true)) {
                return false;
            }
            double root = Math.sqrt(Math.max(liftN, 0));
            if (tries > 0 && at != before) {
                lastSlope = (root - rootBefore) / (at - before);
            }
            if (Math.abs(liftN - wantedN) <= MET * wantedN) {
                found(timeS, at);
                return true;
            }
            if (root < wanted) {
                if (at >= 1) {
                    reached = false;
                    return true;
                }
                low = at;
                lowRoot = root;
            } else {
                high = at;
                highRoot = root;
            }
            before = at;
            rootBefore = root;
            double next = at + (wanted - root) / lastSlope;
            if (!(next > low && next < high) || tries > 6) {
                next =
                        high == Double.POSITIVE_INFINITY
                                ? 1
                                : tries % 3 == 0
                                        ? (low + high) / 2
                                        : low
                                                + (high - low)
                                                        * (wanted - lowRoot)
                                                        / (highRoot - lowRoot);
            }
            at = Math.min(1, next);
            if (high - low < 1e-12) {
                break;
            }
        }
        // Lift jumps over what is wanted: a fan that starts does so at once. The side above holds
        // it.
        lastThrottle = Math.min(1, high);
        throttle(lastThrottle);
        boolean found = solve(supply, true);
        reached = liftN >= wantedN * (1 - MET);
        return found;
    }

    private void found(double timeS, double at) {
        double sinceS = timeS - lastTimeS;
        if (sinceS > LEAST_APART_S) {
            rise = (at - lastThrottle) / sinceS;
        }
        lastThrottle = at;
        lastTimeS = timeS;
    }

    /** Thrusts in proportion to what they lift; fans at their end leave theirs to the others. */
    private boolean shareOut(double wantedN, NetworkState supply) {
        double squares = 0;
        for (int fan = 0; fan < upShare.length; fan++) {
            if (circuit.plan().isFed(fan) && runs(fan) && lifts(fan) > 0) {
                squares += lifts(fan) * lifts(fan);
            }
        }
        if (squares == 0) {
            throttle(0);
            return solve(supply, false);
        }
        double scale = wantedN / squares;
        for (int tries = 0; tries < MOST_TRIES; tries++) {
            for (int fan = 0; fan < upShare.length; fan++) {
                units.orderThrust(fan, Math.max(0, lifts(fan)) * scale);
            }
            if (!solve(supply, true)) {
                return false;
            }
            throttle = greatestDuty();
            double miss = wantedN - liftN;
            if (Math.abs(miss) <= MET * wantedN || (miss < 0 && scale == 0)) {
                return true;
            }
            double free = 0;
            for (int fan = 0; fan < upShare.length; fan++) {
                if (circuit.plan().isFed(fan) && lifts(fan) > 0 && !ended(fan)) {
                    free += lifts(fan) * lifts(fan);
                }
            }
            if (free == 0) {
                reached = miss < 0;
                return true;
            }
            // Stuck fans can give more than their share, and even more than is wanted.
            scale = Math.max(0, scale + miss / free);
        }
        reached = false;
        return true;
    }

    private boolean runs(int fan) {
        return !units.isStopped(fan) && !units.isStuck(fan);
    }

    private boolean ended(int fan) {
        return !runs(fan) || units.falls(fan);
    }

    private boolean anyFalls() {
        for (int fan = 0; fan < upShare.length; fan++) {
            if (!circuit.plan().isFed(fan) || ended(fan)) {
                return true;
            }
        }
        return false;
    }

    private double greatestDuty() {
        double most = 0;
        for (int fan = 0; fan < upShare.length; fan++) {
            if (circuit.plan().isFed(fan)) {
                most = Math.max(most, units.duty(fan));
            }
        }
        return most;
    }

    /**
     * Throttle at the last point, 0 to 1: the shared one, or the greatest duty where each fan has
     * its own.
     */
    public double throttle() {
        return throttle;
    }

    /**
     * How far the order is from what the fans can do: what the throttle (or, with a flight
     * computer, the least loaded fan) has left, 0 to 1; where the lift ordered was not reached,
     * what is missing over what was ordered, below 0.
     */
    @Override
    public double margin() {
        if (wantedN > 0 && !reached) {
            return liftN / wantedN - 1;
        }
        if (!flightComputer) {
            return 1 - throttle;
        }
        double least = 1;
        for (int fan = 0; fan < upShare.length; fan++) {
            if (circuit.plan().isFed(fan) && lifts(fan) > 0 && !ended(fan)) {
                least = Math.min(least, units.duty(fan));
            }
        }
        return 1 - least;
    }

    /** Sum of the upward thrusts at the last point, N. */
    public double liftN() {
        return liftN;
    }

    /** Whether a lift is ordered, rather than throttles or thrusts. */
    @Override
    public boolean ordersLift() {
        return switch (order) {
            case Order.Lift _, Order.LiftRamp _ -> true;
            case Order.Throttle _, Order.Ramp _, Order.Course _, Order.Thrusts _ -> false;
        };
    }

    /** Whether the thrust ordered was reached at the last point. */
    public boolean reached() {
        return reached;
    }

    @Override
    public boolean isStopped(int fan) {
        return units.isStopped(fan);
    }

    /** The units at the last point. */
    public FanUnits units() {
        return units;
    }
}
