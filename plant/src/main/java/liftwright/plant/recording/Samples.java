package liftwright.plant.recording;

/**
 * Values over time. Times are finite and rise strictly; values are finite. What was missing is not
 * there: a gap is a longer way to the next sample. Immutable.
 */
public final class Samples {

    private final double[] timesS;
    private final double[] valuesSi;

    /**
     * @param timesS on the clock of the recording, s
     * @param valuesSi one for each time, SI
     * @throws IllegalArgumentException when there is none, lengths differ, times do not rise, or
     *     anything is not finite
     */
    public Samples(double[] timesS, double[] valuesSi) {
        if (timesS.length != valuesSi.length || timesS.length == 0) {
            throw new IllegalArgumentException(
                    timesS.length + " times for " + valuesSi.length + " values");
        }
        for (int k = 0; k < timesS.length; k++) {
            if (!Double.isFinite(timesS[k]) || !Double.isFinite(valuesSi[k])) {
                throw new IllegalArgumentException("sample " + k + " is no number");
            }
            if (k > 0 && !(timesS[k] > timesS[k - 1])) {
                throw new IllegalArgumentException("time does not rise at sample " + k);
            }
        }
        this.timesS = timesS.clone();
        this.valuesSi = valuesSi.clone();
    }

    public int size() {
        return timesS.length;
    }

    public double timeS(int k) {
        return timesS[k];
    }

    public double si(int k) {
        return valuesSi[k];
    }

    public double firstS() {
        return timesS[0];
    }

    public double lastS() {
        return timesS[timesS.length - 1];
    }

    /** Number of the last sample that is not later; −1 before the first. */
    public int upTo(double timeS) {
        int low = 0;
        int high = timesS.length;
        while (low < high) {
            int middle = (low + high) >>> 1;
            if (timesS[middle] <= timeS) {
                low = middle + 1;
            } else {
                high = middle;
            }
        }
        return low - 1;
    }

    /**
     * Straight between samples.
     *
     * @param timeS between {@link #firstS} and {@link #lastS}
     * @throws IllegalArgumentException outside
     */
    public double at(double timeS) {
        if (!(timeS >= firstS() && timeS <= lastS())) {
            throw new IllegalArgumentException(timeS + " s was not recorded");
        }
        int before = upTo(timeS);
        if (before == timesS.length - 1) {
            return valuesSi[before];
        }
        double share = (timeS - timesS[before]) / (timesS[before + 1] - timesS[before]);
        return valuesSi[before] + share * (valuesSi[before + 1] - valuesSi[before]);
    }

    /**
     * The same on a clock that shows more.
     *
     * @param byS so much, s; finite
     */
    public Samples later(double byS) {
        if (byS == 0) {
            return this;
        }
        double[] shiftedS = new double[timesS.length];
        for (int k = 0; k < shiftedS.length; k++) {
            shiftedS[k] = timesS[k] + byS;
        }
        return new Samples(shiftedS, valuesSi);
    }
}
