package liftwright.review.referee;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.random.RandomGenerator;
import liftwright.answer.Finding;
import liftwright.answer.Outcome;
import liftwright.answer.Remedy;
import liftwright.numerics.Work;
import liftwright.plant.Cause;
import liftwright.plant.Discharge;
import liftwright.plant.Order;
import liftwright.plant.Plant;
import liftwright.plant.supply.CellDraw;
import liftwright.review.EnduranceAnswer;
import liftwright.review.EnduranceQuestion;
import liftwright.review.Settings;
import liftwright.review.Task;
import liftwright.rig.Change;
import liftwright.rig.Rig;
import liftwright.rig.text.RigText;
import liftwright.testkit.Seeded;
import org.junit.jupiter.api.Test;

/**
 * How long rigs drawn at random hover and what ends it, held against the referee, whose steps,
 * solver and cells are its own.
 */
class EnduranceOnRandomRigsTest {

    private static final int RIGS = 400;

    /** A deep run has ten times as many: new rigs then, rather than hours. */
    private static final int JUDGED = Seeded.deep() ? 12 : 200;

    private static final int REMEDIED = Seeded.deep() ? 1 : 8;
    private static final int REFEREE_DRAWS = 300;
    private static final Settings SETTINGS = new Settings(7, 256, 1024, 2, false);

    /** Endurance and end, to 0.5 %; another reason must come within that time too. */
    private static final double TIME = 0.005;

    @Test
    void declaredRigsEndWhenAndWhyTheRefereeSays() {
        Map<RefereeEndurance.Why, Integer> seen = new EnumMap<>(RefereeEndurance.Why.class);
        int[] rigs = {0};
        Seeded.check(
                RIGS,
                random -> {
                    rigs[0]++;
                    RefereeHover hover = RefereeHover.draw(random, RefereeHover.Unlike.IN_ONE_WAY);
                    RefereeEndurance.End says = RefereeEndurance.declared(hover);
                    Discharge.End end = hover(hover.text(), random.nextBoolean()).orElseThrow();
                    assertThat(Math.abs(end.timeS() - says.timeS()))
                            .as("%s against %s in%n%s", end, says, hover.text())
                            .isLessThanOrEqualTo(TIME * says.timeS() + 1e-3);
                    RefereeEndurance.Why why = why(end.cause());
                    if (!says.whys().contains(why)) {
                        double alone = RefereeEndurance.declared(hover, EnumSet.of(why)).timeS();
                        assertThat(alone)
                                .as("%s against %s in%n%s", end, says, hover.text())
                                .isLessThanOrEqualTo((1 + TIME) * says.timeS() + 1e-3);
                    }
                    if (says.timeS() > 0) {
                        says.whys().forEach(one -> seen.merge(one, 1, Integer::sum));
                    }
                });
        if (rigs[0] >= RIGS) {
            for (RefereeEndurance.Why why :
                    EnumSet.complementOf(EnumSet.of(RefereeEndurance.Why.EMPTY))) {
                assertThat(seen.getOrDefault(why, 0)).as("%s in %s", why, seen).isPositive();
            }
        }
    }

    @Test
    void verdictsEqualTheReferees() {
        Tally.check(JUDGED, 1 / 3.0, EnduranceOnRandomRigsTest::judge);
    }

    private static void judge(RandomGenerator random, Tally tally) {
        RefereeHover drawn = RefereeHover.draw(random, RefereeHover.Unlike.IN_BOTH);
        long seed = random.nextLong();
        RefereeBand band = sample(drawn, seed, REFEREE_DRAWS);
        if (!(band.low() > 0)) {
            return; // some draws do not take off at all: lift's affair
        }
        double middle = (band.low() + band.high()) / 2;
        double demand = middle + random.nextDouble(-3, 3) * band.halfWidth();
        if (demand < 1) {
            return;
        }
        RefereeHover hover = drawn.withDemand(Math.round(1000 * demand) / 1000.0);
        demand = hover.demandS();
        double nominal = RefereeEndurance.declared(hover).timeS();
        double truth =
                RefereeEndurance.drawn(hover, RefereeDraw.of(new SplittableRandom(~seed), ""))
                        .timeS();

        Outcome outcome =
                Told.of(
                                EnduranceQuestion.staged(
                                        Written.rig(hover.text()),
                                        "drawn",
                                        new Task.Hover(),
                                        SETTINGS),
                                random)
                        .outcome();

        Optional<RefereeBand.Says> says = band.certain(demand, SETTINGS.firstDraws());
        if (says.isPresent() && outcome != says.get().outcome()) {
            // One in thousands of small samples has an end that strays: a large one decides.
            says = sample(hover, ~seed, 10 * REFEREE_DRAWS).certain(demand, SETTINGS.firstDraws());
        }
        if (says.isPresent()) {
            tally.certain();
            assertThat(outcome)
                    .as(
                            "%s: %s s against %s to %s in%n%s",
                            says, demand, band.low(), band.high(), hover.text())
                    .isEqualTo(says.get().outcome());
        }
        tally.add(band, demand, nominal, truth, outcome);
    }

    private static RefereeBand sample(RefereeHover hover, long seed, int draws) {
        SplittableRandom random = new SplittableRandom(seed);
        double[] timeS = new double[draws];
        for (int i = 0; i < draws; i++) {
            timeS[i] = RefereeEndurance.drawn(hover, RefereeDraw.of(random.split(), "")).timeS();
        }
        return RefereeBand.of(timeS);
    }

    @Test
    void remediesWrittenToTheFileTurnTheVerdictAndLessDoesNot() {
        int[] cleared = {0};
        int[] rigs = {0};
        Seeded.check(
                REMEDIED,
                random -> {
                    rigs[0]++;
                    RefereeHover drawn = RefereeHover.draw(random, RefereeHover.Unlike.IN_BOTH);
                    double declared =
                            hover(drawn.text(), true).map(Discharge.End::timeS).orElseThrow();
                    if (declared < 5) {
                        return;
                    }
                    double demand = declared * random.nextDouble(1.0, 1.3);
                    RefereeHover hover = drawn.withDemand(Math.round(100 * demand) / 100.0);
                    Settings settings = new Settings(random.nextLong(), 256, 256, 2, true);
                    RigText text = Written.text(hover.text());
                    for (Finding finding : ask(Written.rig(text), settings).findings()) {
                        for (Remedy remedy : finding.remedies()) {
                            cleared[0] += holdAgainst(text, remedy, settings) ? 1 : 0;
                        }
                    }
                });
        if (rigs[0] >= REMEDIED) {
            assertThat(cleared[0]).as("remedies that clear").isPositive();
        }
    }

    /** Whether it claims to clear; then it must, from the file, and less must not. */
    private static boolean holdAgainst(RigText text, Remedy remedy, Settings settings) {
        return switch (remedy.effect()) {
            case Remedy.Effect.Clears _ -> {
                Settings plain = settings.withoutRemedies();
                assertThat(outcome(text, remedy.changes(), plain))
                        .as("%s in%n%s", remedy.changes(), text.text())
                        .isEqualTo(Outcome.HOLDS);
                List<Change> less = Smaller.than(text, remedy.changes());
                Unmet.check(
                        EnduranceQuestion.staged(
                                Written.rig(Written.edited(text, less)),
                                "drawn",
                                new Task.Hover(),
                                plain),
                        less + " in\n" + text.text());
                yield true;
            }
            case Remedy.Effect.Helps _, Remedy.Effect.Refused _ -> false;
        };
    }

    private static Outcome outcome(RigText text, List<Change> changes, Settings settings) {
        return ask(Written.rig(Written.edited(text, changes)), settings).verdict().outcome();
    }

    private static EnduranceAnswer ask(Rig rig, Settings settings) {
        return EnduranceQuestion.ask(rig, "drawn", new Task.Hover(), settings, Work.quiet())
                .orElseThrow();
    }

    private static RefereeEndurance.Why why(Cause cause) {
        return switch (cause) {
            case RESERVE -> RefereeEndurance.Why.RESERVE;
            case CELL_VOLTAGE -> RefereeEndurance.Why.CELL_VOLTAGE;
            case CELL_CURRENT -> RefereeEndurance.Why.CELL_CURRENT;
            case CUT_OFF -> RefereeEndurance.Why.CUT_OFF;
            case FULL_THROTTLE -> RefereeEndurance.Why.FULL_THROTTLE;
            case EMPTY -> RefereeEndurance.Why.EMPTY;
            case OVERHEATED, FUSE_OPENED ->
                    throw new IllegalArgumentException("no heat is computed here");
        };
    }

    private static Optional<Discharge.End> hover(String yaml, boolean stopsAtFirst) {
        Plant plant = Plant.assemble(Written.rig(yaml));
        double[] p = plant.parameters().nominal();
        Discharge run = plant.discharge();
        run.load(p, new CellDraw.Expected());
        run.stopAtFirst(stopsAtFirst);
        run.start();
        run.follow(new Order.Lift(plant.weightN(p)), 1e5, _ -> {});
        assertThat(run.failed()).as(yaml).isFalse();
        return run.ended();
    }
}
