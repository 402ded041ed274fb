package liftwright.review.referee;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.random.RandomGenerator;
import liftwright.answer.Answer;
import liftwright.answer.Outcome;
import liftwright.answer.Section;
import liftwright.answer.Value;
import liftwright.numerics.Work;
import liftwright.review.HeatCase;
import liftwright.review.HeatQuestion;
import liftwright.review.Settings;
import liftwright.review.Stage;
import liftwright.review.Task;
import liftwright.rig.Rig;
import liftwright.testkit.Seeded;
import org.junit.jupiter.api.Test;

/**
 * What gives out first in rigs drawn at random, and when, held against a referee with a library's
 * integrator, laws of its own and a solver of its own.
 */
class HeatOnRandomRigsTest {

    private static final int RIGS = 200;
    private static final int JUDGED = Seeded.deep() ? 60 : 6;
    private static final int REFEREE_DRAWS = 300;
    private static final Settings SETTINGS = new Settings(7, 256, 256, 2, false);

    /** Longest hover that a referee follows, s. */
    private static final double HORIZON_S = 3000;

    /** Times to 3 %: the referee's wires warm by a coarse law, which full throttle feels. */
    private static final double TIME = 0.03;

    /** Temperatures to this, K, for the same reason. */
    private static final double KELVIN = 1;

    @Test
    void verdictAndFirstLimitAreTheReferees() {
        Map<RefereeHeat.Why, Integer> seen = new EnumMap<>(RefereeHeat.Why.class);
        int[] compared = {0};
        List<String> others = new ArrayList<>();
        Seeded.check(
                RIGS,
                random -> {
                    Optional<RefereeHover> drawn = draw(random);
                    if (drawn.isEmpty()) {
                        return;
                    }
                    RefereeHover hover = drawn.get().withDemand(1);
                    RefereeHeat.End says =
                            new RefereeHeat(hover, RefereeDraw.nominal()).first(HORIZON_S);
                    if (says.timeS() >= HORIZON_S) {
                        return;
                    }
                    Answer answer = nominal(Written.rig(text(hover)));
                    Section.Timeline.Bar first = timeline(answer).bars().getFirst();
                    if (why(first.what()).isEmpty()) {
                        return; // the wiring after all: another referee's affair
                    }
                    compared[0]++;
                    double at = si(first.at());
                    // A part that nears its limit slowly is there at once for a small difference.
                    var referee = new RefereeHeat(hover, RefereeDraw.nominal());
                    double soonS = referee.first(HORIZON_S, -KELVIN).timeS();
                    double lateS = referee.first(HORIZON_S, KELVIN).timeS();
                    assertThat(at)
                            .as("%s against %s in%n%s", first, says, text(hover))
                            .isBetween((1 - TIME) * soonS - 0.4, (1 + TIME) * lateS + 0.4);
                    boolean named =
                            timeline(answer).bars().stream()
                                    .filter(bar -> isSoon(bar, lateS))
                                    .flatMap(bar -> why(bar.what()).stream())
                                    .anyMatch(says.whys()::contains);
                    if (!named) {
                        others.add(first + " against " + says + " in\n" + text(hover));
                    }
                    says.whys().forEach(one -> seen.merge(one, 1, Integer::sum));
                });
        // Two that come at nearly one moment change places for a small difference; that is rare.
        assertThat(others.size())
                .as(String.join("\n", others))
                .isLessThanOrEqualTo(compared[0] / 40);
        if (compared[0] > RIGS / 2) {
            for (RefereeHeat.Why why :
                    new RefereeHeat.Why[] {
                        RefereeHeat.Why.RESERVE,
                        RefereeHeat.Why.CELL_VOLTAGE,
                        RefereeHeat.Why.WINDING,
                        RefereeHeat.Why.CELLS
                    }) {
                assertThat(seen.getOrDefault(why, 0)).as("%s in %s", why, seen).isPositive();
            }
        }
    }

    private static boolean isSoon(Section.Timeline.Bar bar, double timeS) {
        return bar.at().figure() instanceof Value.Figure.Amount(double si, var _)
                && si <= (1 + TIME) * timeS + 0.4;
    }

    @Test
    void verdictsEqualTheReferees() {
        int[] rigs = {0};
        int[] certain = {0};
        Seeded.check(
                JUDGED,
                random -> {
                    rigs[0]++;
                    Optional<RefereeHover> drawn = draw(random);
                    while (drawn.isEmpty()) {
                        drawn = draw(random);
                    }
                    certain[0] += judge(drawn.get(), random) ? 1 : 0;
                });
        if (rigs[0] >= JUDGED) {
            assertThat(certain[0]).as("rigs on which the referee is certain").isPositive();
        }
    }

    /** Whether the referee was certain; then the verdict must be the same. */
    private static boolean judge(RefereeHover drawn, RandomGenerator random) {
        long seed = random.nextLong();
        double nominal = new RefereeHeat(drawn, RefereeDraw.nominal()).first(HORIZON_S).timeS();
        if (nominal >= HORIZON_S || nominal < 5) {
            return false;
        }
        double demand = Math.round(1000 * nominal * random.nextDouble(0.4, 1.4)) / 1000.0;
        RefereeHover hover = drawn.withDemand(demand);
        SplittableRandom draws = new SplittableRandom(seed);
        double[] within = new double[REFEREE_DRAWS];
        for (int i = 0; i < within.length; i++) {
            within[i] =
                    new RefereeHeat(hover, RefereeDraw.of(draws.split(), ""))
                            .withinLimitsS(demand, HORIZON_S);
        }
        RefereeBand band = RefereeBand.of(within);
        Optional<RefereeBand.Says> says = band.certain(demand, SETTINGS.firstDraws());
        Outcome outcome =
                HeatQuestion.ask(
                                Written.rig(text(hover)),
                                "drawn",
                                HeatCase.of(new Task.Hover()),
                                SETTINGS,
                                Work.quiet())
                        .orElseThrow()
                        .verdict()
                        .outcome();
        says.ifPresent(
                sure ->
                        assertThat(outcome)
                                .as(
                                        "%s: %s s against %s to %s in%n%s",
                                        sure, demand, band.low(), band.high(), text(hover))
                                .isEqualTo(sure.outcome()));
        return says.isPresent();
    }

    /** A rig that this referee knows all about; empty where packs share a bus or cells differ. */
    private static Optional<RefereeHover> draw(RandomGenerator random) {
        RefereeHover hover = RefereeHover.draw(random, RefereeHover.Unlike.IN_ONE_WAY);
        boolean known =
                !hover.rig().oneBus()
                        && !hover.capacityAh().each()
                        && !hover.resistanceMilliohm().each();
        return known ? Optional.of(hover) : Optional.empty();
    }

    /** With wiring that gives out last. */
    private static String text(RefereeHover hover) {
        return hover.text()
                .replace("{fuse: 250 A", "{fuse: 2000 A, speed: slow")
                .replaceAll(
                        "(\\{run: [^,]*, length: [^}]*)\\}", "$1, class: 400 °C, insulation: PTFE}")
                .replace("limits: {", "limits: {joint temperature: 250 °C, ");
    }

    private static Answer nominal(Rig rig) {
        return HeatQuestion.staged(rig, "drawn", HeatCase.of(new Task.Hover()), SETTINGS)
                .answer(Stage.NOMINAL, Work.quiet())
                .orElseThrow();
    }

    private static Section.Timeline timeline(Answer answer) {
        return answer.sections().stream()
                .filter(Section.Timeline.class::isInstance)
                .map(Section.Timeline.class::cast)
                .findFirst()
                .orElseThrow();
    }

    private static double si(Value value) {
        return value.figure() instanceof Value.Figure.Amount(double si, var _)
                ? si
                : Double.POSITIVE_INFINITY;
    }

    private static Optional<RefereeHeat.Why> why(String what) {
        return WORDS.entrySet().stream()
                .filter(word -> what.startsWith(word.getKey()))
                .map(Map.Entry::getValue)
                .findFirst();
    }

    /** How the bars of this referee's limits begin. */
    private static final Map<String, RefereeHeat.Why> WORDS =
            Map.of(
                    "the reserve", RefereeHeat.Why.RESERVE,
                    "the least cell voltage", RefereeHeat.Why.CELL_VOLTAGE,
                    "the peak current", RefereeHeat.Why.CELL_CURRENT,
                    "the cut-off", RefereeHeat.Why.CUT_OFF,
                    "full throttle", RefereeHeat.Why.FULL_THROTTLE,
                    "an empty cell", RefereeHeat.Why.EMPTY,
                    "switches", RefereeHeat.Why.SWITCHES,
                    "motor winding", RefereeHeat.Why.WINDING,
                    "magnets", RefereeHeat.Why.MAGNETS,
                    "cells", RefereeHeat.Why.CELLS);
}
