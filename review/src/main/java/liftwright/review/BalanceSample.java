package liftwright.review;

import java.util.Arrays;
import liftwright.numerics.Draws;
import liftwright.numerics.Work;
import liftwright.plant.Balancing;
import liftwright.plant.HoverPoint;
import liftwright.plant.Plant;
import liftwright.plant.balance.FanAtWork;
import liftwright.plant.balance.TurningCause;
import liftwright.plant.body.MassProperties;
import liftwright.plant.parameters.ImpossibleValueException;

/**
 * What steering has left at lift-off, over the draws of its declared doubt; and, once it is {@link
 * #tell told}, what turns the rig in the same draws. Remedies are judged by the first alone.
 */
final class BalanceSample extends Sample<BalanceSample.Scratch> {

    private static final TurningCause[] CAUSES = TurningCause.values();
    private static final Turn[] TURNS = Turn.values();

    /** Centre below the shoulders, then inertias in the order of the turns. */
    private static final int WEARER_VALUES = 4;

    private final Balancing balancing;
    private final Steering steering;
    private final double[][] reaches;
    private double[] left = new double[0];
    private double[] throttle = new double[0];
    private double[][] acceleration = new double[TURNS.length][0];
    private double[][] moment = new double[TURNS.length][0];
    private double[][] share = new double[TURNS.length * CAUSES.length][0];
    private double[][] wearer = new double[WEARER_VALUES][0];
    private boolean[] lifts = new boolean[0];

    /** Thrust that each fan's jet loses to what it strikes, N. */
    private final double[][] jetLossN;

    BalanceSample(Plant plant, double[] widthScale, Settings settings) {
        super(plant, widthScale, settings);
        balancing = Balancing.of(plant.rig());
        steering = Steering.of(balancing);
        reaches = steering.reaches(balancing);
        jetLossN = new double[plant.rig().fans().size()][0];
    }

    /** Lift-off to be found. */
    static final class Scratch {
        final Balancing.Worker worker;
        final double[] p;

        Scratch(Balancing balancing) {
            worker = balancing.worker();
            p = new double[balancing.parameters().size()];
        }
    }

    @Override
    Scratch scratch() {
        return new Scratch(balancing);
    }

    @Override
    void reserve(int target) {
        left = Arrays.copyOf(left, target);
        throttle = Arrays.copyOf(throttle, target);
        lifts = Arrays.copyOf(lifts, target);
    }

    /**
     * Computes what turns the rig in the first {@code draws} draws.
     *
     * @return whether it was not stopped before that
     */
    boolean tell(int draws, Work work) {
        grow(acceleration, draws);
        grow(moment, draws);
        grow(share, draws);
        grow(wearer, draws);
        grow(jetLossN, draws);
        return Draws.forEach(work, settings.threads(), 0, draws, this::scratch, this::turning)
                == draws;
    }

    private static void grow(double[][] arrays, int target) {
        for (int k = 0; k < arrays.length; k++) {
            arrays[k] = Arrays.copyOf(arrays[k], target);
        }
    }

    @Override
    boolean solve(Scratch scratch, int draw) {
        left[draw] = Steering.WORST;
        HoverPoint point;
        try {
            balancing.parameters().draw(settings.seed(), draw, widthScale, scratch.p);
            point = scratch.worker.liftOff(scratch.p);
        } catch (ImpossibleValueException beyond) {
            return false;
        }
        if (!point.converged()) {
            return false;
        }
        lifts[draw] = point.lifts();
        throttle[draw] = point.throttle();
        left[draw] = steering.left(scratch.worker, scratch.p, point, reaches, plant.rig().limits());
        return true;
    }

    /** A draw that has no operating point leaves its places at nought, and is counted as failed. */
    private void turning(Scratch scratch, int draw) {
        HoverPoint point;
        try {
            balancing.parameters().draw(settings.seed(), draw, widthScale, scratch.p);
            point = scratch.worker.liftOff(scratch.p);
            balancing.standingWearer(scratch.p).ifPresent(person -> wearer(person, draw));
        } catch (ImpossibleValueException beyond) {
            return;
        }
        if (!point.converged()) {
            return;
        }
        for (Turn turn : TURNS) {
            acceleration[turn.index()][draw] = turn.of(point.ledger().acceleration());
            moment[turn.index()][draw] = turn.of(point.ledger().moment());
        }
        for (TurningCause cause : CAUSES) {
            var of = point.ledger().of(cause);
            for (Turn turn : TURNS) {
                share[index(turn, cause)][draw] = turn.of(of);
            }
        }
        for (int fan = 0; fan < jetLossN.length; fan++) {
            FanAtWork own = point.ledger().fans().get(fan);
            jetLossN[fan][draw] = own.strike().share() * own.thrustN();
        }
    }

    /** Thrust that a fan's jet loses in one draw to what it strikes, N. */
    double jetLossN(int fan, int draw) {
        return jetLossN[fan][draw];
    }

    private void wearer(MassProperties person, int draw) {
        double[] values = wearerValues(person);
        for (int k = 0; k < WEARER_VALUES; k++) {
            wearer[k][draw] = values[k];
        }
    }

    /** What is told of the wearer alone: centre below the shoulders, m; inertias, kg·m². */
    static double[] wearerValues(MassProperties person) {
        return new double[] {
            person.centre().z(), person.inertia().xx(), person.inertia().yy(), person.inertia().zz()
        };
    }

    /** One of those values over the draws. */
    double[] wearers(int value, int draws) {
        return Arrays.copyOf(wearer[value], draws);
    }

    private static int index(Turn turn, TurningCause cause) {
        return turn.index() * CAUSES.length + Arrays.asList(CAUSES).indexOf(cause);
    }

    @Override
    double[] values(int draws) {
        return Arrays.copyOf(left, draws);
    }

    /** Draws in which the fans do not give the weight. */
    int heavy(int draws) {
        int heavy = 0;
        for (int i = 0; i < draws; i++) {
            heavy += lifts[i] ? 0 : 1;
        }
        return heavy;
    }

    double[] throttles(int draws) {
        return Arrays.copyOf(throttle, draws);
    }

    double[] accelerations(Turn turn, int draws) {
        return Arrays.copyOf(acceleration[turn.index()], draws);
    }

    double[] moments(Turn turn, int draws) {
        return Arrays.copyOf(moment[turn.index()], draws);
    }

    double[] shares(Turn turn, TurningCause cause, int draws) {
        return Arrays.copyOf(share[index(turn, cause)], draws);
    }
}
