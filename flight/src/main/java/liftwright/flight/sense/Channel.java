package liftwright.flight.sense;

import java.util.Arrays;
import liftwright.physics.Rotation;
import liftwright.rig.Control.Measures;

/**
 * One sensor at work: turned axes, offset, noise, range, losses, filter, and a line of readings on
 * their way. Allocates nothing after it was made.
 */
final class Channel {

    /** A reading that is due within so small a part of the time between two has arrived. */
    private static final double ON_TIME = 1e-6;

    final SensorNumbers n;
    final int axes;

    /** The reading that has arrived. */
    final double[] value;

    /** Truth at a reading, to be filled before {@link #take}. */
    final double[] truth;

    private final Draws draws;
    private final boolean wraps;
    private final double noise;
    private final double pole;
    private final double[] bias;
    private final double[] turn = new double[9];
    private final double[] raw = new double[3];
    private final double[] filtered;
    private final double[] line;
    private final boolean[] lostInLine;
    private final boolean[] cutInLine;
    private long taken;
    private long arrived;
    private boolean started;
    private boolean fresh;
    private boolean cut;
    private boolean dead;
    private double arrivedAtS;
    private long cuts;
    private long losses;

    Channel(SensorNumbers n, Draws draws, Biases biases, double dtS) {
        this.n = n;
        this.draws = draws;
        axes = n.axes();
        value = new double[axes];
        truth = new double[3];
        filtered = new double[axes];
        bias = new double[axes];
        wraps = n.measures() == Measures.HEADING;
        noise = n.noise() * Math.sqrt(n.rateHz());
        pole = -Math.expm1(-2 * Math.PI * n.filterHz() / n.rateHz());
        int length = (int) Math.ceil((n.delayS() + dtS) * n.rateHz()) + 3;
        line = new double[axes * length];
        lostInLine = new boolean[length];
        cutInLine = new boolean[length];
        double half = n.misalignmentRad() / 2;
        double[] q = {
            1,
            axes == 3 ? half / 2 * draws.misalignment(0) : 0,
            axes == 3 ? half / 2 * draws.misalignment(1) : 0,
            axes >= 2 ? half / 2 * draws.misalignment(2) : 0
        };
        Rotation.normalise(q, 0);
        Rotation.matrix(q, 0, turn);
        for (int k = 0; k < axes; k++) {
            bias[k] = n.bias() + n.biasDoubt() * biases.of(n.measures(), k);
        }
    }

    /** When the next reading is due, s. */
    double dueS() {
        return taken / n.rateHz();
    }

    boolean isDue(double tS) {
        return taken <= tS * n.rateHz() + ON_TIME;
    }

    /** Reads {@link #truth}. */
    void take() {
        int slot = (int) (taken % lostInLine.length);
        boolean lost = started && draws.isLost(n.dropout(), taken);
        lostInLine[slot] = lost;
        cutInLine[slot] = false;
        if (lost) {
            losses++;
        } else {
            measure(slot);
        }
        System.arraycopy(filtered, 0, line, slot * axes, axes);
        started = true;
        taken++;
    }

    private void measure(int slot) {
        for (int k = 0; k < axes; k++) {
            double seen =
                    axes == 1
                            ? truth[k]
                            : turn[k] * truth[0] + turn[3 + k] * truth[1] + turn[6 + k] * truth[2];
            raw[k] = seen + bias[k] + (noise == 0 ? 0 : noise * draws.noise(k, taken));
            if (Math.abs(raw[k]) > n.range()) {
                raw[k] = Math.copySign(n.range(), raw[k]);
                cutInLine[slot] = true;
            }
            double off = raw[k] - filtered[k];
            if (wraps) {
                off = Math.IEEEremainder(off, 2 * Math.PI);
            }
            filtered[k] += started ? pole * off : off;
            if (wraps) {
                filtered[k] = Math.IEEEremainder(filtered[k], 2 * Math.PI);
            }
        }
        cuts += cutInLine[slot] ? 1 : 0;
    }

    /** Lets arrive what has been on its way long enough. */
    void arrive(double tS) {
        fresh = false;
        while (arrived < taken && arrived <= (tS - n.delayS()) * n.rateHz() + ON_TIME) {
            int slot = (int) (arrived % lostInLine.length);
            if (!lostInLine[slot] && !dead) {
                System.arraycopy(line, slot * axes, value, 0, axes);
                cut = cutInLine[slot];
                fresh = true;
                arrivedAtS = tS;
            }
            arrived++;
        }
    }

    /** All as if it had read this for ever. */
    void settle() {
        Arrays.fill(filtered, 0);
        taken = 0;
        arrived = 0;
        cuts = 0;
        losses = 0;
        dead = false;
        started = false;
        measure(0);
        started = true;
        cuts = 0;
        System.arraycopy(filtered, 0, value, 0, axes);
        fresh = true;
        cut = false;
        arrivedAtS = 0;
    }

    void die() {
        dead = true;
    }

    /** Whether a reading arrived in this tick. */
    boolean isFresh() {
        return fresh;
    }

    /** Whether the last reading stood at the end of the range. */
    boolean isCut() {
        return cut;
    }

    boolean isDead() {
        return dead;
    }

    double arrivedAtS() {
        return arrivedAtS;
    }

    long cuts() {
        return cuts;
    }

    long losses() {
        return losses;
    }

    long taken() {
        return taken;
    }
}
