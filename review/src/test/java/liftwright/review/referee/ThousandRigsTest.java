package liftwright.review.referee;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.random.RandomGenerator;
import liftwright.answer.Answer;
import liftwright.answer.Finding;
import liftwright.answer.Outcome;
import liftwright.answer.Remedy;
import liftwright.numerics.Work;
import liftwright.review.LiftAnswer;
import liftwright.review.LiftQuestion;
import liftwright.review.Settings;
import liftwright.rig.Change;
import liftwright.rig.Rig;
import liftwright.rig.text.RigText;
import liftwright.testkit.Seeded;
import org.junit.jupiter.api.Test;

/**
 * The main job on rigs that nobody has seen: 1,000 rigs drawn at random are written as rig files,
 * read, asked and held against the referee, whose solver, sampler and generator are its own.
 */
class ThousandRigsTest {

    /** A deep run has ten times as many: new rigs then, rather than hours. */
    private static final int RIGS = Seeded.deep() ? 300 : 1000;

    private static final int REMEDIED = Seeded.deep() ? 200 : 1000;
    private static final int NAMED = 12;
    private static final int REFEREE_DRAWS = 1000;
    private static final Settings SETTINGS = new Settings(7, 1024, 4096, 2, false);

    @Test
    void verdictsEqualTheReferees() {
        Tally.check(RIGS, 1 / 2.0, ThousandRigsTest::judge);
    }

    private static void judge(RandomGenerator random, Tally tally) {
        RefereeRig drawn = RefereeRandom.rig(random);
        long seed = random.nextLong();
        RefereeBand band = RefereeBand.of(drawn, seed, REFEREE_DRAWS, "");
        double middle = (band.low() + band.high()) / 2;
        double demand = middle + random.nextDouble(-3, 3) * band.halfWidth();
        RefereeRig rig = drawn.withDemand(demand);
        double nominal = RefereeLift.ratio(rig, RefereeDraw.nominal());
        double truth = RefereeLift.ratio(rig, RefereeDraw.of(new SplittableRandom(~seed), ""));

        Told told =
                Told.of(
                        LiftQuestion.staged(Written.rig(RefereeText.of(rig)), "drawn", SETTINGS),
                        random);
        Outcome outcome = told.outcome();

        told.whole()
                .ifPresent(answer -> assertThat(nominalRatio(answer)).isEqualTo(told.nominal()));
        assertThat(told.nominal())
                .as(RefereeText.of(rig))
                .isCloseTo(nominal, within(1e-9 * nominal));
        Optional<RefereeBand.Says> says = band.certain(demand);
        if (says.isPresent() && outcome != says.get().outcome()) {
            // One in thousands of small samples has an end that strays: a large one decides.
            says =
                    RefereeBand.of(rig, ~seed, 30 * REFEREE_DRAWS, "")
                            .certain(demand, REFEREE_DRAWS);
        }
        if (says.isPresent()) {
            tally.certain();
            assertThat(outcome).as(RefereeText.of(rig)).isEqualTo(says.get().outcome());
        }
        tally.add(band, demand, nominal, truth, outcome);
    }

    @Test
    void remediesWrittenToTheFileTurnTheVerdictAndLessDoesNot() {
        int[] cleared = {0};
        int[] rigs = {0};
        Seeded.check(
                REMEDIED,
                random -> {
                    rigs[0]++;
                    RefereeRig drawn = RefereeRandom.rig(random);
                    double nominal = RefereeLift.ratio(drawn, RefereeDraw.nominal());
                    // A few percent to a third short.
                    RefereeRig rig = drawn.withDemand(nominal * random.nextDouble(1.0, 1.3));
                    // Verdict and remedy are judged on the same draws, however few.
                    Settings settings = new Settings(random.nextLong(), 256, 256, 2, true);
                    RigText text = Written.text(RefereeText.of(rig));
                    LiftAnswer answer = ask(Written.rig(text), settings);
                    for (Remedy remedy : remedies(answer)) {
                        cleared[0] += holdAgainst(text, remedy, settings) ? 1 : 0;
                    }
                });
        if (rigs[0] >= REMEDIED) {
            assertThat(cleared[0]).as("remedies that clear").isGreaterThan(REMEDIED);
        }
    }

    /**
     * Whether it claims to clear; then it must, from the file, and must not when it is made
     * smaller.
     */
    private static boolean holdAgainst(RigText text, Remedy remedy, Settings settings) {
        return switch (remedy.effect()) {
            case Remedy.Effect.Clears _ -> {
                Settings plain = settings.withoutRemedies();
                assertThat(
                                ask(Written.rig(Written.edited(text, remedy.changes())), plain)
                                        .verdict()
                                        .outcome())
                        .as("%s in%n%s", remedy.changes(), text.text())
                        .isEqualTo(Outcome.HOLDS);
                List<Change> less = Smaller.than(text, remedy.changes());
                Unmet.check(
                        LiftQuestion.staged(
                                Written.rig(Written.edited(text, less)), "drawn", plain),
                        less + " in\n" + text.text());
                yield true;
            }
            case Remedy.Effect.Helps _, Remedy.Effect.Refused _ -> false;
        };
    }

    @Test
    void theInputNamedIsTheOneWhoseHalvedDoubtHelpsMost() {
        int[] named = {0};
        int[] rigs = {0};
        Seeded.check(
                NAMED,
                random -> {
                    rigs[0]++;
                    RefereeRig drawn = RefereeRandom.rig(random);
                    RefereeRig rig =
                            drawn.withDemand(RefereeLift.ratio(drawn, RefereeDraw.nominal()));
                    LiftAnswer answer = ask(Written.rig(RefereeText.of(rig)));
                    answer.verdict()
                            .wouldTell()
                            .ifPresent(
                                    tell -> {
                                        named[0]++;
                                        long seed = random.nextLong();
                                        int draws = 1500;
                                        double best = Double.MAX_VALUE;
                                        double ofNamed = Double.NaN;
                                        double error =
                                                RefereeBand.of(rig, seed, draws, "").endError();
                                        for (var input : RefereeInputs.PATHS.entrySet()) {
                                            double width =
                                                    RefereeBand.of(rig, seed, draws, input.getKey())
                                                            .halfWidth();
                                            best = Math.min(best, width);
                                            if (input.getValue().equals(tell.path())) {
                                                ofNamed = width;
                                            }
                                        }
                                        assertThat(ofNamed)
                                                .as("%s in%n%s", tell.path(), RefereeText.of(rig))
                                                .isNotNaN();
                                        // Two inputs that help alike may change places within the
                                        // noise of the sample's ends.
                                        assertThat(ofNamed)
                                                .as("%s in%n%s", tell.path(), RefereeText.of(rig))
                                                .isLessThan(best + 4 * error);
                                    });
                });
        if (rigs[0] >= NAMED) {
            assertThat(named[0]).as("undecided rigs").isGreaterThan(NAMED / 2);
        }
    }

    /** The number that the sentence of the verdict tells. */
    private static double nominalRatio(Answer answer) {
        return answer.verdict().sentence().parts().stream()
                .flatMap(
                        part ->
                                part instanceof liftwright.answer.Sentence.Part.Amount amount
                                        ? java.util.stream.Stream.of(amount.si())
                                        : java.util.stream.Stream.empty())
                .findFirst()
                .orElseThrow();
    }

    private static List<Remedy> remedies(LiftAnswer answer) {
        List<Remedy> remedies = new ArrayList<>();
        for (Finding finding : answer.findings()) {
            remedies.addAll(finding.remedies());
        }
        return remedies;
    }

    private static LiftAnswer ask(Rig rig) {
        return ask(rig, SETTINGS);
    }

    private static LiftAnswer ask(Rig rig, Settings settings) {
        return LiftQuestion.ask(rig, "drawn", settings, Work.quiet()).orElseThrow();
    }
}
