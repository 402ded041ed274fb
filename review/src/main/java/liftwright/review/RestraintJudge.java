package liftwright.review;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import liftwright.plant.Plant;
import liftwright.plant.hold.Ask;
import liftwright.plant.hold.Held;
import liftwright.plant.hold.HoldMemory;
import liftwright.review.restraint.HoldWords;
import liftwright.rig.LimitName;
import liftwright.rig.Rig;

/**
 * Judges the least margin of everything that holds the rig: load at which it gives, over the load,
 * over how many times that is asked, less one. Every fan alone, and a runaway, are dear, so bands
 * begin with 256 draws and end at 4,096, with a tether at 1,024.
 */
record RestraintJudge(boolean dear, Settings settings, HoldMemory memory)
        implements Judging<RestraintJudgement, RestraintSample> {

    private static final int MOST_DRAWS = 1024;

    static RestraintJudge of(Rig rig, Settings settings) {
        boolean runs = rig.restraint().tether().isPresent();
        int first = Math.min(Stage.FIRST_DRAWS, settings.firstDraws());
        int most = runs ? MOST_DRAWS : 4 * MOST_DRAWS;
        return new RestraintJudge(
                runs,
                new Settings(
                        settings.seed(),
                        first,
                        Math.max(first, Math.min(most, settings.mostDraws())),
                        settings.threads(),
                        settings.remedies()),
                new HoldMemory());
    }

    @Override
    public double demand(Rig rig) {
        return 0;
    }

    @Override
    public Optional<String> demandAt() {
        return Optional.of("limits/restraint factor");
    }

    @Override
    public Optional<String> demandOrigin(Rig rig) {
        return Optional.of(rig.limits().origin(LimitName.RESTRAINT_FACTOR));
    }

    @Override
    public Plant assemble(Rig rig) {
        return Plant.assembleHeld(rig);
    }

    /** Everything at the declared values; empty where no operating point was found. */
    Optional<Held> declared(Plant plant, boolean keep) {
        return plant.holding(memory).at(plant.parameters().nominal(), keep);
    }

    @Override
    public double nominal(Plant plant) {
        return nominal(declared(plant, false));
    }

    /** −1, the least there is, where nothing was found. */
    private static double nominal(Optional<Held> held) {
        OptionalDouble margin = held.map(Held::margin).orElseGet(OptionalDouble::empty);
        return margin.orElse(-1);
    }

    @Override
    public RestraintSample sample(Plant plant, double[] widthScale) {
        return new RestraintSample(plant, widthScale, settings, memory, List.of());
    }

    /** The same, which tells of every line too. */
    RestraintSample telling(Plant plant, List<Ask> asks) {
        return new RestraintSample(plant, Sample.asDeclared(plant), settings, memory, asks);
    }

    @Override
    public RestraintJudgement judgement(Pursuit<RestraintSample> pursued) {
        Optional<Held> held = declared(pursued.sample().plant, false);
        double nominal = nominal(held);
        List<String> downgrades = pursued.downgrades(held.isPresent());
        held.ifPresent(
                found ->
                        found.asks().stream()
                                .filter(ask -> ask.margin().isEmpty())
                                .map(
                                        ask ->
                                                HoldWords.name(ask)
                                                        + ": “"
                                                        + HoldWords.key(ask.what())
                                                                .orElse(HoldWords.path(ask.what()))
                                                        + "” is not declared")
                                .forEach(downgrades::add));
        return new RestraintJudgement(
                pursued.outcome(),
                pursued.outcome(held.isPresent(), downgrades),
                nominal,
                pursued.band(nominal),
                pursued.draws(),
                pursued.failed(),
                downgrades,
                pursued.sample());
    }

    @Override
    public String field() {
        return "restraint-margin";
    }
}
