package liftwright.flight.motion;

import java.util.Arrays;
import liftwright.physics.FreeJet;

/**
 * Jets in the scene as air that moves where they are: straight free jets ({@link FreeJet}), u² of
 * several added up as a vector. Left out are what runs along the ground, what a wind bends, the way
 * of the air from exit to place and what a body that is struck shades. Allocates only to grow.
 */
public final class JetAir {

    /** Slower than this share of its exit a jet counts as gone, m/s over m/s. */
    static final double GONE = 0.01;

    /** Of one jet: place, way, exit area, exit speed. */
    private static final int TERMS = 8;

    private double[] jets = new double[TERMS * 16];
    private int count;

    /** No jets. */
    public void clear() {
        count = 0;
    }

    /** Whether there is none. */
    public boolean isEmpty() {
        return count == 0;
    }

    /**
     * Adds a jet where it blows into a ball; all in scene axes.
     *
     * @param at place of the exit, three numbers, m
     * @param way where it goes, of length 1, three numbers
     * @param exitMps speed at the exit, &gt; 0
     * @param ball its middle, three numbers, m
     */
    public void add(
            double[] at,
            double[] way,
            double exitM2,
            double exitMps,
            double[] ball,
            double ballRadiusM) {
        double x = ball[0] - at[0];
        double y = ball[1] - at[1];
        double z = ball[2] - at[2];
        double along = x * way[0] + y * way[1] + z * way[2];
        double far = along + ballRadiusM;
        if (far <= 0) {
            return;
        }
        double off = Math.sqrt(Math.max(0, x * x + y * y + z * z - along * along)) - ballRadiusM;
        if (off > 0 && FreeJet.speedShare(far, off, exitM2) < GONE) {
            return;
        }
        if (TERMS * (count + 1) > jets.length) {
            jets = Arrays.copyOf(jets, 2 * jets.length);
        }
        int to = TERMS * count++;
        System.arraycopy(at, 0, jets, to, 3);
        System.arraycopy(way, 0, jets, to + 3, 3);
        jets[to + 6] = exitM2;
        jets[to + 7] = exitMps;
    }

    /**
     * Speed of the air at a place, scene axes.
     *
     * @param out takes three numbers, m/s
     */
    public void at(double xM, double yM, double zM, double[] out) {
        double sx = 0;
        double sy = 0;
        double sz = 0;
        for (int k = 0; k < count; k++) {
            int at = TERMS * k;
            double x = xM - jets[at];
            double y = yM - jets[at + 1];
            double z = zM - jets[at + 2];
            double along = x * jets[at + 3] + y * jets[at + 4] + z * jets[at + 5];
            if (along <= 0) {
                continue;
            }
            double off = Math.sqrt(Math.max(0, x * x + y * y + z * z - along * along));
            double share = FreeJet.speedShare(along, off, jets[at + 6]);
            if (share < GONE) {
                continue;
            }
            double u = share * jets[at + 7];
            sx += u * u * jets[at + 3];
            sy += u * u * jets[at + 4];
            sz += u * u * jets[at + 5];
        }
        double size = Math.sqrt(Math.sqrt(sx * sx + sy * sy + sz * sz));
        out[0] = size > 0 ? sx / size : 0;
        out[1] = size > 0 ? sy / size : 0;
        out[2] = size > 0 ? sz / size : 0;
    }
}
