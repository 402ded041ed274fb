package liftwright.plant.motion;

/** Upward thrust that jumps at given times and is steady between them. */
final class SteadyThrust implements Lifting {

    private final double[] fromS;
    private final double[] upN;
    private int now;

    /**
     * @param fromS when each begins to act, rising, the first at 0, s
     * @param upN N
     */
    SteadyThrust(double[] fromS, double[] upN) {
        this.fromS = fromS.clone();
        this.upN = upN.clone();
    }

    @Override
    public int states() {
        return 0;
    }

    @Override
    public void begin(double[] y, int from) {
        now = 0;
    }

    @Override
    public double upN(double timeS, double[] y, int from, double upMps) {
        return upN[now];
    }

    @Override
    public void slopes(double timeS, double[] y, int from, double[] slope) {
        // no states
    }

    @Override
    public double nextChangeS(double timeS) {
        return now + 1 < fromS.length ? fromS[now + 1] : Double.POSITIVE_INFINITY;
    }

    @Override
    public void change(double timeS) {
        if (nextChangeS(timeS) <= timeS) {
            now++;
        }
    }

    @Override
    public boolean beyondLaw() {
        return false;
    }

    @Override
    public double closure(double[] y, int from) {
        return 0;
    }
}
