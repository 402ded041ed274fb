package liftwright.trials.proof;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.random.RandomGenerator;

/**
 * A log of presses as an instrument would write it, with the true times beside it. Knows nothing of
 * how logs are read: thrust that waits and then falls off by an exponential or as a rotor coasts, a
 * smoothing stepped through in tenths of a millisecond, noise of its own colour, rows that are
 * missing, cells that dropped out, readings that stand for several rows, steps of a display.
 */
final class SimulatedLog {

    /** One press: when, and when thrust truly was at a half and a tenth, s after it. */
    record Truth(double pressS, double halfS, double tenthS) {}

    /** What goes wrong on the way into the log. */
    record Faults(
            double rateHz,
            double noiseShare,
            double colour,
            double filterS,
            double jitterShare,
            double dropShare,
            int held,
            double stepShare,
            double jumpS) {

        static Faults draw(RandomGenerator random) {
            return new Faults(
                    5 * Math.pow(100, random.nextDouble()),
                    random.nextInt(4) == 0 ? 0 : random.nextDouble(0, 0.03),
                    random.nextBoolean() ? 0 : random.nextDouble(0, 0.7),
                    random.nextBoolean() ? 0 : random.nextDouble(0.002, 0.08),
                    random.nextBoolean() ? 0 : random.nextDouble(0, 0.3),
                    random.nextInt(3) > 0 ? 0 : random.nextDouble(0, 0.1),
                    random.nextInt(4) > 0 ? 1 : random.nextInt(2, 6),
                    random.nextBoolean() ? 0 : random.nextDouble(0, 0.01),
                    random.nextInt(8) > 0 ? 0 : random.nextDouble(0.1, 1));
        }
    }

    private static final double FINE_S = 1e-4;

    final List<Truth> truths = new ArrayList<>();
    final Faults faults;
    final boolean speed;
    final double levelN;
    private final StringBuilder text = new StringBuilder();
    private final List<Double> delays = new ArrayList<>();
    private final List<Double> taus = new ArrayList<>();
    private final List<Boolean> coasts = new ArrayList<>();

    SimulatedLog(RandomGenerator random, Faults faults, int presses, boolean speed) {
        this.faults = faults;
        this.speed = speed;
        levelN = random.nextDouble(10, 3000);
        double at = random.nextDouble(2.2, 3);
        for (int k = 0; k < presses; k++) {
            double delay = random.nextDouble(0, 0.15);
            double tau = random.nextDouble(0.01, 0.4);
            boolean coast = random.nextBoolean();
            delays.add(delay);
            taus.add(tau);
            coasts.add(coast);
            truths.add(
                    new Truth(
                            at,
                            delay + (coast ? tau * (Math.sqrt(2) - 1) : tau * Math.log(2)),
                            delay + (coast ? tau * (Math.sqrt(10) - 1) : tau * Math.log(10))));
            at += random.nextDouble(7, 9);
        }
        write(random, at - 2);
    }

    byte[] bytes() {
        return text.toString().getBytes(UTF_8);
    }

    /** Share of full thrust that truly is there: a fall after each press, up again 4 s later. */
    private double thrust(double t) {
        for (int k = truths.size() - 1; k >= 0; k--) {
            double since = t - truths.get(k).pressS();
            if (since >= 0) {
                double up = Math.clamp((since - 4) / 0.5, 0, 1);
                double left = Math.max(0, since - delays.get(k)) / taus.get(k);
                double fallen = coasts.get(k) ? 1 / ((1 + left) * (1 + left)) : Math.exp(-left);
                return Math.max(up, fallen);
            }
        }
        return 1;
    }

    private void write(RandomGenerator random, double endS) {
        text.append(speed ? "time [s],press,speed [rpm]" : "time [s],press,thrust [N]");
        text.append(",filter [ms]\n");
        double scale = speed ? levelN * 10 : levelN;
        double jumpAt = faults.jumpS > 0 ? random.nextDouble(2, endS) : Double.MAX_VALUE;
        double smooth = 1;
        double noise = 0;
        double next = random.nextDouble(0, 1 / faults.rateHz);
        int row = 0;
        String shown = "";
        double keep = Math.exp(-FINE_S / Math.max(1e-9, faults.filterS));
        double white = Math.sqrt(1 - faults.colour * faults.colour);
        boolean first = true;
        for (long k = 0; k * FINE_S < endS; k++) {
            double t = k * FINE_S;
            double x = thrust(t);
            double seen = speed ? Math.sqrt(x) : x;
            smooth = faults.filterS > 0 ? seen + (smooth - seen) * keep : seen;
            if (t < next) {
                continue;
            }
            next += (1 + faults.jitterShare * (random.nextDouble() - 0.5)) / faults.rateHz;
            noise = faults.colour * noise + white * random.nextGaussian() * faults.noiseShare;
            if (row++ % faults.held == 0) {
                double value = scale * (smooth + noise);
                double step = faults.stepShare * scale;
                value = step > 0 ? Math.round(value / step) * step : value;
                shown = String.format(Locale.ROOT, "%.6f", speed ? Math.max(0, value) : value);
            }
            if (random.nextDouble() < faults.dropShare / 2) {
                continue; // no row at all
            }
            String cell = random.nextDouble() < faults.dropShare / 2 ? "" : shown;
            text.append(
                    String.format(
                            Locale.ROOT,
                            "%.6f,%s,%s,%s%n",
                            t >= jumpAt ? t + faults.jumpS : t,
                            pressed(t) ? "remote" : "",
                            cell,
                            first
                                    ? String.format(Locale.ROOT, "%.6f", 1000 * faults.filterS)
                                    : ""));
            first = false;
        }
    }

    private boolean pressed(double t) {
        return truths.stream().anyMatch(one -> t >= one.pressS() && t < one.pressS() + 2);
    }
}
