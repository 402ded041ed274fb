package liftwright.trials.measure;

import java.util.Arrays;
import java.util.Optional;
import liftwright.numerics.Draws;
import liftwright.numerics.Quantiles;
import liftwright.plant.Balancing;
import liftwright.plant.HoverPoint;
import liftwright.plant.parameters.ImpossibleValueException;
import liftwright.plant.parameters.ParameterTable;

/**
 * Speeds that the fans turn at about hover: once a revolution each shakes the frame. From lift of
 * {@value #LEAST} to {@value #MOST} of the weight (from memory), thrust going with the square of
 * speed, on full packs.
 *
 * @param leastRadps of any fan, lower end of its 95 % band, rad/s
 * @param mostRadps of any fan, upper end, rad/s
 * @param lifts whether the rig hovers at all as declared; where not, the speeds are those of full
 *     throttle
 */
record HoverTurns(double leastRadps, double mostRadps, boolean lifts) {

    static final double LEAST = 0.8;
    static final double MOST = 1.25;

    /** Each finds a hover anew. */
    private static final int DRAWS = 256;

    private static final int FEWEST = 100;

    /** Empty where the work was stopped, or nothing turns. */
    static Optional<HoverTurns> of(Asked asked) {
        Balancing balancing = Balancing.of(asked.rig());
        ParameterTable table = balancing.parameters();
        int fans = asked.rig().fans().size();
        double[] least = new double[DRAWS];
        double[] most = new double[DRAWS];
        asked.work().stage("speeds about hover", DRAWS);
        int done =
                Draws.forEach(
                        asked.work(),
                        asked.threads(),
                        DRAWS,
                        balancing::worker,
                        (worker, draw) -> {
                            double[] p = new double[table.size()];
                            least[draw] = Double.NaN;
                            most[draw] = Double.NaN;
                            try {
                                table.draw(asked.seed(), draw, p);
                                double[] turns = turns(worker, p, fans);
                                least[draw] = turns[0];
                                most[draw] = turns[1];
                            } catch (ImpossibleValueException _) {
                                // stays out of the band, as a rig that cannot be
                            }
                        });
        double[] low = told(least);
        double[] high = told(most);
        if (done < DRAWS || low.length < FEWEST) {
            return Optional.empty();
        }
        boolean lifts = balancing.worker().liftOff(table.nominal()).lifts();
        return Optional.of(
                new HoverTurns(
                        Quantiles.ofSorted(low, 0.025), Quantiles.ofSorted(high, 0.975), lifts));
    }

    /** Slowest and fastest fan, over the range of lift; not numbers where none turns. */
    static double[] turns(Balancing.Worker worker, double[] p, int fans) {
        HoverPoint point = worker.liftOff(p);
        double least = Double.POSITIVE_INFINITY;
        double most = 0;
        for (int fan = 0; fan < fans; fan++) {
            double torque = worker.torqueNm(fan);
            if (point.converged() && torque > 0) {
                double radps = worker.shaftW(fan) / torque;
                least = Math.min(least, radps);
                most = Math.max(most, radps);
            }
        }
        return most > 0
                ? new double[] {least * Math.sqrt(LEAST), most * Math.sqrt(MOST)}
                : new double[] {Double.NaN, Double.NaN};
    }

    private static double[] told(double[] drawn) {
        return Arrays.stream(drawn).filter(Double::isFinite).sorted().toArray();
    }
}
