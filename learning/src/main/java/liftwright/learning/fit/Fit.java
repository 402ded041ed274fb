package liftwright.learning.fit;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import liftwright.numerics.CholeskyFactor;
import liftwright.numerics.PrincipalAxes;
import liftwright.numerics.Work;

/**
 * Fits the numbers of a rig to one or several tests: the most probable values given what was
 * declared (maximum a posteriori), by damped Gauss–Newton steps along the directions of declared
 * doubt, each one standard deviation long; slopes by central differences of full runs. What the
 * model leaves out has a size of its own for each channel, found within bounds by expectation and
 * maximisation; blocks far off their neighbours count for less, as under Student's t [LANGE89].
 *
 * <p>Whether the place found is a most probable one is proven apart from how it was found, as in
 * {@link liftwright.numerics.LeastSquares}: the step left must be negligible, and the sum must rise
 * to both sides along the axes that the tests tell best. What the tests do not tell is told as
 * such.
 */
public final class Fit {

    /** Spread left over that declared above which a direction is not told. */
    public static final double OPEN = 0.9;

    private static final int MOST_STEPS = 20;
    private static final int SCATTER_ROUNDS = 2;

    /** Less than this over all readings, in deviations, does not count. */
    private static final double NOTHING = 0.1;

    private static final double STEP = 0.5;

    /** Slopes are kept while a step brings so much of what they promise. */
    private static final double KEEPS = 0.5;

    /** The decrease of the sum that a step may still promise. */
    private static final double SETTLED = 1e-3;

    /** The same where runs are too coarse to show it: a fifth of a deviation is left to go. */
    private static final double STALLED = 0.05;

    /** Steps with slopes that stay, and the decrease that the last may still promise. */
    private static final int MOST_CHORDS = 12;

    private static final double CHORD_SETTLED = 0.1;

    private static final double LOOK = 0.5;
    private static final int MOST_LOOKS = 6;

    /** Share of the rise that a bowl of the same slopes would show. */
    private static final double BOWL = 0.1;

    private final Stage stage;
    private final Unknowns unknowns;
    private final List<Integer> chosen = new ArrayList<>();
    private double[] z;

    /** What all tests show there. */
    private double[][][] here = new double[0][][];

    private List<double[][]> raw = List.of();

    /** The same as the scatters of now whiten them. */
    private List<double[][]> slopes = List.of();

    /** Whether the slopes are those of this place. */
    private boolean fresh;

    private double[][] leftOut;
    private boolean settled;

    private Fit(List<Model> tests, int threads, Work work) {
        unknowns = new Unknowns(tests.stream().map(Model::parameters).toList());
        stage = new Stage(tests, unknowns, threads, work);
        z = new double[unknowns.size()];
        leftOut = Stage.ones(tests);
    }

    /**
     * @param tests at least one, each of the same rig as declared
     * @param threads ≥ 1
     * @throws IllegalArgumentException where there is none, one has no channel, or one does not run
     *     to its end as declared
     */
    public static Fitted of(List<Model> tests, int threads, Work work) {
        if (tests.isEmpty() || tests.stream().anyMatch(test -> test.channels().isEmpty())) {
            throw new IllegalArgumentException("nothing to fit: no channel can be compared");
        }
        return new Fit(tests, threads, work).fitted();
    }

    /**
     * Fits, and tells each of the last tests by what the others find. A test is left out by taking
     * its readings from the normal equations and going on to where the others are fitted best, with
     * the slopes of the fit of all: a fit anew for each would take as long as the first, and ends
     * at the same place as far as slopes stay. What the model leaves out keeps its size.
     *
     * @param last so many tests, the last ones; fewer where there are fewer
     * @throws IllegalArgumentException as {@link #of}
     */
    public static LeftOneOut leavingOut(List<Model> tests, int last, int threads, Work work) {
        if (tests.isEmpty() || tests.stream().anyMatch(test -> test.channels().isEmpty())) {
            throw new IllegalArgumentException("nothing to fit: no channel can be compared");
        }
        Fit fit = new Fit(tests, threads, work);
        Fitted fitted = fit.fitted();
        List<LeftOneOut.Told> told = new ArrayList<>();
        if (tests.size() > 1) {
            for (int k = Math.max(0, tests.size() - last); k < tests.size(); k++) {
                told.add(new LeftOneOut.Told(k, fit.without(k)));
            }
        }
        return new LeftOneOut(fitted, told);
    }

    /** What a test would show by what the others find, its own day as it was measured. */
    private Optional<double[][]> without(int test) {
        List<double[][]> others = new ArrayList<>();
        for (double[][] slope : slopes) {
            double[][] masked = slope.clone();
            masked[test] = new double[slope[test].length];
            others.add(masked);
        }
        double[] at = z.clone();
        for (int k = 0; k < unknowns.size(); k++) {
            if (unknowns.get(k).test() == test) {
                at[k] = 0;
            }
        }
        double sum = Double.POSITIVE_INFINITY;
        for (int k = 0; k < MOST_CHORDS; k++) {
            Optional<double[][][]> there = stage.predict(at);
            if (there.isEmpty()) {
                return Optional.empty();
            }
            double[][] left = stage.left(there.get());
            Arrays.fill(left[test], 0);
            double sumThere = stage.sum(left, at);
            Stage.Normal normal = stage.normal(others, left, at, chosen);
            double[] step = CholeskyFactor.of(normal.matrix()).solve(normal.right());
            if (Stage.dot(step, normal.right()) < CHORD_SETTLED) {
                return Optional.of(there.get()[test]);
            }
            if (!(sumThere < sum)) {
                return Optional.empty();
            }
            sum = sumThere;
            at = plus(at, step, 1);
        }
        return Optional.empty();
    }

    private double[][][] run(double[] at) {
        return stage.predict(at)
                .orElseThrow(
                        () ->
                                new IllegalArgumentException(
                                        "as declared, the rig would not have run to the end of"
                                                + " this recording"));
    }

    private Fitted fitted() {
        double[][][] declared = run(z);
        here = declared;
        stage.scattered(Stage.scatters(stage.tests(), declared, leftOut, MEMORY));
        choose();
        for (int round = 0; round <= SCATTER_ROUNDS; round++) {
            walk(round == 0 ? MOST_STEPS / 2 : MOST_STEPS);
            if (round < SCATTER_ROUNDS) {
                leftOut = LeftOut.of(stage, slopes, covariance(), here, leftOut, MEMORY);
                stage.scattered(Stage.scatters(stage.tests(), here, leftOut, MEMORY));
            }
        }
        double[][] covariance = covariance();
        boolean least = settled && isLeast(covariance);
        return new Report(stage, unknowns, chosen, z, covariance, leftOut, declared, here, least)
                .made();
    }

    /** Short memory of what is left out over the length of a recording. */
    static final double MEMORY = 0.15;

    /** Unknowns that the tests can tell anything of. */
    private void choose() {
        List<Integer> all = new ArrayList<>();
        for (int k = 0; k < unknowns.size(); k++) {
            all.add(k);
        }
        List<Optional<double[][]>> found = stage.slopes(z, here, all, STEP);
        List<double[][]> kept = new ArrayList<>();
        for (int k : all) {
            if (found.get(k).isPresent()) {
                double square = 0;
                for (double[] of : stage.whitened(found.get(k).get())) {
                    square += Stage.dot(of, of);
                }
                if (square > NOTHING * NOTHING) {
                    chosen.add(k);
                    kept.add(found.get(k).get());
                }
            }
        }
        raw = kept;
        fresh = true;
    }

    /**
     * Steps. Slopes are what takes time: they stay while steps with them bring most of what they
     * promise, but what settles has settled with slopes of its place.
     */
    private void walk(int most) {
        slopesHere();
        double[][] left = stage.left(here);
        double sum = stage.sum(left, z);
        settled = chosen.isEmpty();
        for (int k = 0; k < most && !settled; k++) {
            Stage.Normal normal = stage.normal(slopes, left, z, chosen);
            double[] step = CholeskyFactor.of(normal.matrix()).solve(normal.right());
            double promised = Stage.dot(step, normal.right());
            if (promised < SETTLED && fresh) {
                settled = true;
                break;
            }
            double gained = 0;
            for (double part = 1; part > 0.05 && gained <= 0; part /= 2) {
                double[] next = plus(z, step, part);
                Optional<double[][][]> there = stage.predict(next);
                if (there.isPresent()) {
                    double[][] leftThere = stage.left(there.get());
                    double sumThere = stage.sum(leftThere, next);
                    if (sumThere < sum) {
                        z = next;
                        here = there.get();
                        left = leftThere;
                        gained = sum - sumThere;
                        sum = sumThere;
                    }
                }
            }
            if (gained <= 0 && fresh) {
                // No way down: runs are as fine as their steps. Whether it is a least, the proof
                // tells.
                settled = promised < STALLED;
                break;
            }
            fresh &= gained <= 0;
            if ((!fresh && gained < KEEPS * promised) || promised < SETTLED) {
                slopesHere();
            }
        }
    }

    private void slopesHere() {
        if (!fresh) {
            List<Optional<double[][]>> found = stage.slopes(z, here, chosen, STEP);
            List<double[][]> kept = new ArrayList<>();
            List<Integer> still = new ArrayList<>();
            for (int k = 0; k < found.size(); k++) {
                if (found.get(k).isPresent()) {
                    kept.add(found.get(k).get());
                    still.add(chosen.get(k));
                }
            }
            chosen.clear();
            chosen.addAll(still);
            raw = kept;
            fresh = true;
        }
        slopes = raw.stream().map(stage::whitened).toList();
    }

    private double[] plus(double[] from, double[] step, double part) {
        double[] to = from.clone();
        for (int k = 0; k < step.length; k++) {
            to[chosen.get(k)] += part * step[k];
        }
        return to;
    }

    /** Of the chosen unknowns. */
    private double[][] covariance() {
        if (chosen.isEmpty()) {
            return new double[0][0];
        }
        slopesHere();
        return CholeskyFactor.of(stage.normal(slopes, stage.left(here), z, chosen).matrix())
                .inverse();
    }

    private boolean isLeast(double[][] covariance) {
        if (chosen.isEmpty()) {
            return true;
        }
        double sum = stage.sum(stage.left(here), z);
        PrincipalAxes axes = PrincipalAxes.of(covariance);
        for (int look = 0; look < Math.min(MOST_LOOKS, axes.size()); look++) {
            int k = axes.size() - 1 - look;
            double[] step = axes.axis(k);
            double length = LOOK * Math.sqrt(Math.max(0, axes.value(k)));
            for (int side = -1; side <= 1; side += 2) {
                double[] there = plus(z, step, side * length);
                Optional<double[][][]> run = stage.predict(there);
                if (run.isEmpty()
                        || !(stage.sum(stage.left(run.get()), there) - sum >= BOWL * LOOK * LOOK)) {
                    return false;
                }
            }
        }
        return true;
    }

    static double[] filled(int n, double value) {
        double[] all = new double[n];
        Arrays.fill(all, value);
        return all;
    }
}
