package liftwright.plant.motion;

import java.util.Arrays;
import liftwright.plant.supply.NetworkState;

/**
 * Voltages that rotors found in the run before this one, in the order in which they were asked. Two
 * runs of one rig that begin alike ask the same until the first of them is stopped: at speeds that
 * are equal to the last bit the network is not solved again. Anything else ends it, so that what is
 * found depends on no run before. For one thread.
 */
public final class SolvedBefore {

    private double[] start = {};
    private double[] duty = {};

    /** By question: speeds and voltages, one a fan, then the point of the network. */
    private double[] kept = {};

    private int count;
    private int next;

    /** Forgets everything: the rig has other numbers. */
    public void clear() {
        start = new double[0];
        duty = new double[0];
        count = 0;
        next = 0;
    }

    /** A run begins; what was kept holds only if it begins as the last one did. */
    void begin(double[] fromRadps, double[] told) {
        next = 0;
        if (!Arrays.equals(start, fromRadps) || !Arrays.equals(duty, told)) {
            start = fromRadps.clone();
            duty = told.clone();
            count = 0;
        }
    }

    /**
     * Looks whether the next question is that of the last run.
     *
     * @param at place of the first speed
     * @param volt takes the voltages, where it is
     * @param network takes its point, where it is: what is solved next goes on from there
     */
    boolean knows(double[] speedRadps, int at, double[] volt, NetworkState network) {
        int fans = volt.length;
        int from = next * size(fans, network);
        if (next >= count || !Arrays.equals(kept, from, from + fans, speedRadps, at, at + fans)) {
            return false;
        }
        System.arraycopy(kept, from + fans, volt, 0, fans);
        network.goOnFrom(kept, from + 2 * fans);
        next++;
        return true;
    }

    /** Keeps an answer as the next one, in place of all that the last run asked from here on. */
    void keep(double[] speedRadps, int at, double[] volt, NetworkState network) {
        int fans = volt.length;
        int size = size(fans, network);
        int from = next * size;
        if (kept.length < from + size) {
            kept = Arrays.copyOf(kept, Math.max(2 * kept.length, from + 128 * size));
        }
        System.arraycopy(speedRadps, at, kept, from, fans);
        System.arraycopy(volt, 0, kept, from + fans, fans);
        network.tellPoint(kept, from + 2 * fans);
        next++;
        count = next;
    }

    private static int size(int fans, NetworkState network) {
        return 2 * fans + network.pointSize();
    }
}
