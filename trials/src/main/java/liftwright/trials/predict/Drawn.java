package liftwright.trials.predict;

import liftwright.plant.Discharge;

/** What one draw comes to: each reading at its start, at the end of each step, and at its worst. */
final class Drawn implements CardRun.Listener {

    final double[] start;
    final double[][] end;
    final double[][] worst;

    /** Steps that were followed to their end. */
    int steps;

    /** First limit of any kind, the last level held on, s; infinite where none came. */
    double firstS = Double.POSITIVE_INFINITY;

    private final Reader reader;
    private final int[] sign;
    private final double[] now;
    private boolean begun;

    Drawn(Reader reader, int[] sign, int steps) {
        this.reader = reader;
        this.sign = sign;
        start = new double[sign.length];
        now = new double[sign.length];
        end = new double[steps][sign.length];
        worst = new double[steps][sign.length];
        for (double[] of : worst) {
            for (int k = 0; k < of.length; k++) {
                of[k] = -sign[k] * Double.POSITIVE_INFINITY;
            }
        }
    }

    @Override
    public void at(Discharge run, int step) {
        reader.read(run, now);
        if (!begun) {
            System.arraycopy(now, 0, start, 0, now.length);
            begun = true;
        }
        for (int k = 0; k < now.length; k++) {
            worst[step][k] =
                    sign[k] > 0
                            ? Math.max(worst[step][k], now[k])
                            : Math.min(worst[step][k], now[k]);
        }
    }

    void stepEnds(int step) {
        System.arraycopy(now, 0, end[step], 0, now.length);
        steps = step + 1;
    }
}
