package liftwright.review;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import liftwright.plant.Balancing;
import liftwright.plant.HoverPoint;
import liftwright.plant.Plant;
import liftwright.plant.balance.FanAtWork;
import liftwright.plant.balance.TurningCause;
import liftwright.plant.body.MassProperties;
import liftwright.plant.parameters.ImpossibleValueException;

/**
 * What steering has left at lift-off, over the draws of its declared doubt; where it shall tell,
 * also what turns the rig and what the arms hold in the same draws. Remedies are judged by the
 * first alone.
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

    /** Whether more than the judged number is wanted. */
    private final boolean tells;

    private final Optional<ArmLoadSample> armLoads;

    BalanceSample(Plant plant, double[] widthScale, Settings settings) {
        this(plant, widthScale, settings, false);
    }

    /**
     * @param tells whether more than the judged number is wanted
     */
    BalanceSample(Plant plant, double[] widthScale, Settings settings, boolean tells) {
        super(plant, widthScale, settings);
        this.tells = tells;
        balancing = plant.balancing();
        steering = Steering.of(balancing);
        reaches = steering.reaches(balancing);
        jetLossN = new double[plant.rig().fans().size()][0];
        armLoads = tells ? ArmLoadSample.of(balancing, settings.seed()) : Optional.empty();
    }

    Balancing balancing() {
        return balancing;
    }

    /** The judged number of a point, all arms reaching as they do at the declared values. */
    double left(Balancing.Worker worker, double[] p, HoverPoint point) {
        return steering.left(worker, p, point, reaches, plant.rig().limits());
    }

    /** What the arms hold; none where arms hold nothing, or this sample does not tell. */
    List<ArmLoadSample.Row> armLoads(int drawn) {
        return armLoads.map(loads -> loads.rows(drawn)).orElse(List.of());
    }

    /** Lift-off to be found. */
    static final class Scratch {
        final Balancing.Worker worker;
        final double[] p;
        final Optional<ArmLoadSample.Scratch> arms;

        Scratch(Balancing balancing, Optional<ArmLoadSample> loads) {
            arms = loads.map(ArmLoadSample::scratch);
            worker = balancing.worker();
            p = new double[balancing.parameters().size()];
        }
    }

    @Override
    Scratch scratch() {
        return new Scratch(balancing, armLoads);
    }

    @Override
    void reserve(int target) {
        left = Arrays.copyOf(left, target);
        throttle = Arrays.copyOf(throttle, target);
        lifts = Arrays.copyOf(lifts, target);
        if (tells) {
            grow(acceleration, target);
            grow(moment, target);
            grow(share, target);
            grow(wearer, target);
            grow(jetLossN, target);
            armLoads.ifPresent(loads -> loads.reserve(target));
        }
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
            if (tells) {
                balancing.standingWearer(scratch.p).ifPresent(person -> wearer(person, draw));
            }
        } catch (ImpossibleValueException beyond) {
            return false;
        }
        if (!point.converged()) {
            return false;
        }
        lifts[draw] = point.lifts();
        throttle[draw] = point.throttle();
        left[draw] = left(scratch.worker, scratch.p, point);
        if (tells) {
            turning(point, draw);
            armLoads.ifPresent(loads -> arms(loads, scratch, point, draw));
        }
        return true;
    }

    private static void arms(ArmLoadSample loads, Scratch scratch, HoverPoint point, int draw) {
        scratch.arms.ifPresent(own -> loads.draw(scratch.worker, scratch.p, point, own, draw));
    }

    private void turning(HoverPoint point, int draw) {
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
