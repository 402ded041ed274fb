package liftwright.plant;

import java.util.Arrays;
import java.util.Map;
import java.util.Optional;
import liftwright.plant.drive.FedFans;
import liftwright.plant.supply.Circuit;
import liftwright.plant.supply.SupplyState;
import liftwright.plant.supply.SupplyStepper;

/**
 * When a flight first reached each limit of its supply, and what follows at once: a controller that
 * cuts off stops its fan, a fuse that opens takes its chain out. Between two looks a distance runs
 * straight. Allocates nothing but for an opening; for one thread.
 */
final class DriveLimits implements RunLimits.Pull {

    private static final Cause[] BY_LOOK = {
        Cause.RESERVE, Cause.CELL_VOLTAGE, Cause.CELL_CURRENT, Cause.CUT_OFF, Cause.EMPTY
    };

    private static final double WEAKER_V = 0.4;

    /** Cells in series of each pack. */
    private final int[] series;

    private final RunLimits limits;
    private final ReachedTimes times;
    private final SupplyStepper stepper;
    private final SupplyState state;
    private final FedFans fans;
    private final Circuit circuit;
    private final Optional<HeatRun> heat;

    /** Whether a time was told since the first of all was asked for: all parts are many. */
    private boolean changed = true;

    private Optional<Discharge.End> first = Optional.empty();

    /** Distance of each cause and part at the last look; infinite before the first. */
    private final double[][] before = new double[BY_LOOK.length][];

    /** When that was, s. */
    private final double[][] seenS = new double[BY_LOOK.length][];

    DriveLimits(
            RunLimits limits,
            ReachedTimes times,
            SupplyStepper stepper,
            SupplyState state,
            FedFans fans,
            Circuit circuit,
            Optional<HeatRun> heat,
            int[] series) {
        this.series = series;
        this.limits = limits;
        this.times = times;
        this.stepper = stepper;
        this.state = state;
        this.fans = fans;
        this.circuit = circuit;
        this.heat = heat;
        for (int cause = 0; cause < BY_LOOK.length; cause++) {
            before[cause] = new double[times.of(BY_LOOK[cause]).length];
            seenS[cause] = new double[before[cause].length];
        }
    }

    void start() {
        times.clear();
        changed = true;
        for (double[] distances : before) {
            Arrays.fill(distances, Double.POSITIVE_INFINITY);
        }
        for (double[] moments : seenS) {
            Arrays.fill(moments, 0);
        }
    }

    /**
     * Looks at a point just solved.
     *
     * @param whole whether at everything, or at what can have come near since the last look alone
     * @return whether a controller cut off: the point is to be solved again
     */
    boolean look(boolean whole) {
        boolean again = false;
        double nowS = state.timeS();
        for (int k = 0; k < BY_LOOK.length; k++) {
            Cause cause = BY_LOOK[k];
            double[] when = times.of(cause);
            double[] last = before[k];
            for (int part = 0; part < when.length; part++) {
                if (when[part] < Double.POSITIVE_INFINITY) {
                    continue;
                }
                if (!whole && farOff(cause, part)) {
                    continue;
                }
                double distance = limits.distance(cause, part, stepper, stepper.network(), this);
                if (distance <= 0) {
                    changed = true;
                    when[part] = crossing(last[part], seenS[k][part], distance, nowS);
                    if (cause == Cause.CUT_OFF) {
                        fans.stop(part);
                        again = true;
                    }
                }
                last[part] = distance;
                seenS[k][part] = nowS;
            }
        }
        return again;
    }

    /**
     * Charge goes slowly, and no cell is so much weaker than the mean of its pack, whose links and
     * leads fall between too. Asked at each look, the weakest of all cells costs more than all
     * rotors.
     */
    private boolean farOff(Cause cause, int part) {
        return switch (cause) {
            case RESERVE, EMPTY -> true;
            case CELL_VOLTAGE ->
                    stepper.network().packTerminalV(part)
                            > series[part] * (limits.leastCellV() + WEAKER_V);
            case CELL_CURRENT, CUT_OFF, FULL_THROTTLE, OVERHEATED, FUSE_OPENED -> false;
        };
    }

    private static double crossing(double last, double lastS, double distance, double nowS) {
        double share = last < Double.POSITIVE_INFINITY ? last / (last - distance) : 1;
        return lastS + Math.clamp(share, 0, 1) * (nowS - lastS);
    }

    /**
     * Looks at temperatures that have just moved.
     *
     * @param fromS when they moved before, s
     * @return whether a fuse opened: the point is to be solved again
     */
    boolean lookAtHeat(double fromS) {
        changed = true;
        HeatRun of = heat.orElseThrow();
        of.step(fromS, state, stepper, times.of(Cause.OVERHEATED));
        double[] when = times.of(Cause.FUSE_OPENED);
        boolean opened = false;
        for (int part = 0; part < when.length; part++) {
            if (when[part] == Double.POSITIVE_INFINITY && of.fuseRoom(state, stepper, part) <= 0) {
                when[part] = state.timeS();
                circuit.open(of.chain(part));
                opened = true;
            }
        }
        return opened;
    }

    @Override
    public boolean isStopped(int fan) {
        return fans.isStopped(fan);
    }

    /** A flight tells its fans what its loops want; who flies it says when that is too much. */
    @Override
    public boolean ordersLift() {
        return false;
    }

    @Override
    public double margin() {
        return Double.POSITIVE_INFINITY;
    }

    Optional<Discharge.End> ended() {
        if (changed) {
            first = times.end();
            changed = false;
        }
        return first;
    }

    Map<Cause, Double> firsts() {
        return times.firsts();
    }

    double firstS() {
        return times.first();
    }

    double reachedS(Cause cause, int part) {
        return times.of(cause)[part];
    }
}
