package liftwright.trials.predict;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import liftwright.numerics.Draws;
import liftwright.numerics.Work;
import liftwright.plant.Discharge;
import liftwright.plant.Order;
import liftwright.plant.Plant;
import liftwright.plant.parameters.ImpossibleValueException;
import liftwright.plant.supply.CellDraw;
import liftwright.rig.Fan;
import liftwright.rig.Rig;
import liftwright.rig.table.StartState;
import liftwright.trials.Run;

/** One card's run at the declared values and in draws of the declared doubt. */
final class Prediction {

    /** Longest time between two moments of the run at the declared values, s. */
    private static final double FINE_S = 0.2;

    /** What its own flow cooled is warmest 10 to 60 s after a stop; common practice. */
    private static final double REST_S = 90;

    /** The last level is held on for so long to see when a limit would come, s. */
    static final double HELD_ON_S = 30;

    /**
     * Errors of temperatures in a draw's steps over the usual ones: still small beside the doubts
     * that are drawn.
     */
    private static final double COARSE = 5;

    private final Rig rig;
    private final Run run;
    private final Plant plant;
    private final Conditions conditions;
    private final long seed;
    private final CardRun card;
    private final Platform platform;
    private final List<Watch> watches;
    private final List<String> notes = new ArrayList<>();
    private final Trace trace;

    /** Why the first step that is cut is cut. */
    private Optional<String> cut = Optional.empty();

    Prediction(Rig declared, Run run, Conditions conditions, long seed) {
        rig =
                run.held() == Run.Held.BENCH
                        ? bare(conditions.in(declared))
                        : conditions.in(declared);
        this.run = run;
        this.conditions = conditions;
        this.seed = seed;
        plant = Plant.assembleHeated(rig);
        card = new CardRun(plant, run);
        platform = Platform.of(rig, run, notes);
        watches = worthReading();
        trace = atDeclaredValues();
    }

    /** On a bench a fan stands without its grille and away from the rig. */
    private static Rig bare(Rig rig) {
        return rig.with(rig.fans().stream().map(Fan::bare).toList());
    }

    List<Watch> watches() {
        return watches;
    }

    /** The run at the declared values. */
    Trace trace() {
        return trace;
    }

    private Discharge declared() {
        Discharge discharge = plant.discharge();
        discharge.load(plant.parameters().nominal(), new CellDraw.Expected());
        return discharge;
    }

    private double weightN() {
        return card.weightN(plant.parameters().nominal());
    }

    private List<Watch> worthReading() {
        Discharge discharge = declared();
        Survey survey = new Survey(plant, card);
        card.begin(discharge, conditions.found());
        for (int step = 0; step < run.steps().size(); step++) {
            if (!card.follow(discharge, step, weightN(), Double.MAX_VALUE, survey)) {
                break;
            }
        }
        List<Watch> found = new ArrayList<>(survey.watches());
        switch (run.held()) {
            case SCALE -> platform.watch(weightN()).ifPresent(found::add);
            case TETHER -> found.add(tether());
            case BENCH, STAND, NOTHING -> {}
        }
        return List.copyOf(found);
    }

    private Watch tether() {
        boolean hangs =
                run.steps().stream()
                        .allMatch(
                                step ->
                                        !(step.level()
                                                        instanceof
                                                        Run.Level.OfWeight(double ofWeight))
                                                || ofWeight < 1);
        return new Watch(
                Gauge.TETHER,
                "tether",
                new int[0],
                hangs
                        ? Optional.of(
                                new Watch.Limit(0, "a slack tether holds nothing: by definition"))
                        : Optional.empty());
    }

    private Trace atDeclaredValues() {
        Discharge discharge = declared();
        Reader reader = new Reader(watches);
        Trace made = new Trace(reader, watches.size());
        reader.begin(weightN(), platform.scaleN(weightN()), platform.hidden());
        card.begin(discharge, conditions.found());
        discharge.stopAtFirst(true);
        for (int step = 0; step < run.steps().size(); step++) {
            boolean whole = card.follow(discharge, step, weightN(), FINE_S, made);
            cut = new Cut(plant, watches).reason(discharge, whole, made, step);
            if (cut.isPresent()) {
                return made;
            }
            made.stepEnds();
        }
        made.rests(rest(discharge));
        return made;
    }

    /** The hottest in the rest after the run. */
    private double[] rest(Discharge discharge) {
        double[] most = new double[watches.size()];
        discharge.stopAtFirst(false);
        discharge.follow(
                new Order.Throttle(0),
                REST_S,
                moment -> {
                    for (int k = 0; k < most.length; k++) {
                        if (watches.get(k).gauge().isHeat()) {
                            for (int part : watches.get(k).members()) {
                                most[k] = Math.max(most[k], moment.nowK(part));
                            }
                        }
                    }
                });
        return most;
    }

    /** Draws and what comes of them; empty when stopped. */
    Optional<Predictions> bands(Stopping stopping, int threads, Work work) {
        return told(Predictions.DRAWS, threads, work).map(told -> predictions(told, stopping));
    }

    /**
     * What is told of so many draws.
     *
     * @return empty when stopped
     */
    Optional<Told> told(int count, int threads, Work work) {
        Drawn[] draws = new Drawn[trace.steps() == 0 ? 0 : count];
        if (draws.length > 0) {
            work.stage("draws", draws.length);
            int made =
                    Draws.forEach(
                            work,
                            threads,
                            draws.length,
                            plant::discharge,
                            (discharge, draw) -> draws[draw] = drawn(discharge, draw));
            if (made < draws.length) {
                return Optional.empty();
            }
        }
        return Optional.of(new Told(run, watches, trace, List.of(draws), seed, cut));
    }

    /** The same with what follows from the time of a stop. */
    Predictions predictions(Told told, Stopping stopping) {
        List<String> all = new ArrayList<>(notes);
        all.addAll(told.notes());
        return new Predictions(
                told.steps(),
                new Aborts(rig, run, watches, trace, told, stopping).list(),
                stopping,
                all,
                told.draws());
    }

    private Drawn drawn(Discharge discharge, int draw) {
        Reader reader = new Reader(watches);
        Drawn made =
                new Drawn(
                        reader,
                        watches.stream().mapToInt(watch -> watch.gauge().sign()).toArray(),
                        trace.steps());
        double[] p = new double[plant.parameters().size()];
        double[] ones = new double[plant.parameters().inputs().size()];
        Arrays.fill(ones, 1);
        StartState start = conditions.drawn(seed, draw);
        try {
            plant.parameters().draw(seed, draw, ones, p);
            discharge.load(p, new CellDraw.Drawn(seed, draw, ones));
        } catch (ImpossibleValueException beyond) {
            return made;
        }
        double weightN = card.weightN(p);
        reader.begin(weightN, platform.scaleN(weightN), platform.hidden(seed, draw));
        discharge.stopAtFirst(false);
        discharge.allowError(COARSE);
        card.begin(discharge, start);
        for (int step = 0; step < trace.steps(); step++) {
            if (!card.follow(discharge, step, weightN, Double.MAX_VALUE, made)) {
                made.firstS = discharge.firstS();
                return made;
            }
            made.stepEnds(step);
        }
        discharge.stopAtFirst(true);
        card.hold(discharge, trace.steps() - 1, weightN, HELD_ON_S);
        made.firstS = discharge.firstS();
        return made;
    }
}
