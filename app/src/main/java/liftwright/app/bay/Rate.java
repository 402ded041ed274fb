package liftwright.app.bay;

import java.util.function.LongSupplier;

/** Lets so many through a second, and so many at once after a rest. */
final class Rate {

    private final double perNano;
    private final double most;
    private final LongSupplier nanoTime;
    private double left;
    private long last;

    /**
     * @param perSecond let through in the long run
     * @param atOnce let through after a rest
     * @param nanoTime a clock that only goes forward, in ns
     */
    Rate(double perSecond, double atOnce, LongSupplier nanoTime) {
        perNano = perSecond / 1e9;
        most = atOnce;
        left = atOnce;
        this.nanoTime = nanoTime;
        last = nanoTime.getAsLong();
    }

    /** Whether one more may pass. */
    synchronized boolean passes() {
        long now = nanoTime.getAsLong();
        left = Math.min(most, left + (now - last) * perNano);
        last = now;
        if (left < 1) {
            return false;
        }
        left -= 1;
        return true;
    }
}
