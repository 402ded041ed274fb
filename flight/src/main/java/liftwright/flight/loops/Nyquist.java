package liftwright.flight.loops;

/**
 * Where an open loop L runs against −1: whether the closed loop is stable by Nyquist's criterion,
 * and how near it comes. The turning of 1 + L is followed from low to high frequencies; L has no
 * poles on the right, so that the loop is stable where it ends where it has to, at no turning at
 * all. The inverse of the least distance is the greatest sensitivity (Åström and Murray,
 * <i>Feedback Systems</i>, from memory).
 *
 * @param stable whether the closed loop is
 * @param distance least of |1 + L|, 1
 * @param radps where that is, rad/s
 */
public record Nyquist(boolean stable, double distance, double radps) {

    private static final int STEPS = 200;

    /** Turning between two frequencies that is followed without a look in between, rad. */
    private static final double TURN = 0.3;

    private static final int DEEPEST = 12;

    /**
     * Follows a loop.
     *
     * @param open L; at {@code leastRadps} it is that of its integrators, at {@code mostRadps} its
     *     gain is below one
     */
    public static Nyquist of(Transfer open, double leastRadps, double mostRadps) {
        return new Walk(open).along(leastRadps, mostRadps);
    }

    /** On the way from low to high. */
    private static final class Walk {

        private final Transfer open;
        private double nearest = Double.POSITIVE_INFINITY;
        private double at;
        private double turned;

        Walk(Transfer open) {
            this.open = open;
        }

        private Complex look(double radps) {
            Complex from = open.at(radps).plus(Complex.ONE);
            if (from.gain() < nearest) {
                nearest = from.gain();
                at = radps;
            }
            return from;
        }

        Nyquist along(double least, double most) {
            double ratio = Math.log(most / least) / STEPS;
            Complex before = look(least);
            double start = before.phaseRad();
            // Two integrators begin at −180°: rounding must not make that +180°.
            turned = start > Math.PI / 2 ? start - 2 * Math.PI : start;
            for (int k = 1; k <= STEPS; k++) {
                double low = least * Math.exp(ratio * (k - 1));
                double high = least * Math.exp(ratio * k);
                Complex next = look(high);
                step(low, before, high, next, 0);
                before = next;
            }
            return new Nyquist(Math.abs(turned) < Math.PI / 2, nearest, at);
        }

        private void step(double low, Complex from, double high, Complex to, int deep) {
            double turn = to.over(from).phaseRad();
            // Near −1 the way is followed closely, so that the least distance is found.
            double least = Math.min(from.gain(), to.gain());
            double way = to.plus(from.times(-1)).gain();
            boolean near = 2 * way > least || (least < 1.2 * nearest && 8 * way > least);
            if ((Math.abs(turn) > TURN || near) && deep < DEEPEST && high > low * (1 + 1e-6)) {
                double middle = Math.sqrt(low * high);
                Complex between = look(middle);
                step(low, from, middle, between, deep + 1);
                step(middle, between, high, to, deep + 1);
            } else {
                turned += turn;
            }
        }
    }
}
