package liftwright.trials.proof;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.random.RandomGenerator;
import liftwright.answer.Finding;
import liftwright.answer.Outcome;
import liftwright.plant.Effects;
import liftwright.plant.Plant;
import liftwright.rig.LimitName;
import liftwright.rig.Rig;
import liftwright.rig.csv.TableReader;
import liftwright.rig.csv.TableReading;
import liftwright.rig.table.KillLog;
import liftwright.testkit.Seeded;
import liftwright.trials.RandomTrialRig;
import liftwright.trials.TrialExamples;
import org.junit.jupiter.api.Test;

/** Logs of random rigs: which ways to stop are proved by them, against times that are known. */
class ProvingTest {

    private static final LocalDate DAY = LocalDate.of(2026, 5, 2);
    private static final double ROW_S = 0.005;

    /** One press: of what, and its true times; thrust stays where they are infinite. */
    record Press(String path, double delayS, double tauS) {
        double tenthS() {
            return delayS + tauS * Math.log(10);
        }
    }

    /** A log of presses 4 s apart; 200 rows a second, noise of 0.3 %. */
    static String log(RandomGenerator random, String column, List<Press> presses) {
        StringBuilder out = new StringBuilder("time [s],press," + column + ",filter [s]\n");
        for (int k = 0; k < presses.size(); k++) {
            Press press = presses.get(k);
            for (int row = 0; row < 800; row++) {
                double t = row * ROW_S;
                double since = t - 1.5 - ROW_S / 2;
                double level =
                        since < press.delayS() || press.tauS() == Double.POSITIVE_INFINITY
                                ? 1
                                : Math.exp(-(since - press.delayS()) / press.tauS());
                out.append(
                        String.format(
                                Locale.ROOT,
                                "%.4f,%s,%.4f,0%n",
                                4 * k + t,
                                since >= 0 && since < 1.5 ? press.path() : "",
                                200 * Math.max(0, level + 0.003 * random.nextGaussian())));
            }
        }
        return out.toString();
    }

    static KillLog read(Rig rig, String text) {
        List<String> names = ProofPath.of(rig).stream().map(ProofPath::name).toList();
        return switch (TableReader.kills("kills.csv", text.getBytes(UTF_8), names)) {
            case TableReading.Whole<KillLog>(var log) -> log;
            case TableReading.Broken<KillLog>(var problems) ->
                    throw new AssertionError(problems.toString());
        };
    }

    private static KillProof prove(Plant plant, String text) {
        return Proving.of(
                plant, read(plant.rig(), text), DAY, ProofTextTest.DIGEST, ProofTextTest.DIGEST);
    }

    @Test
    void theWorstPressIsJudgedAtItsWorstEnd() {
        Map<Outcome, Integer> seen = new HashMap<>();
        Seeded.check(
                40,
                random -> {
                    Plant plant = Plant.assemble(RandomTrialRig.rig(random));
                    double limit = plant.rig().limits().si(LimitName.KILL_TIME);
                    List<Press> presses = new ArrayList<>();
                    Map<String, Double> worst = new HashMap<>();
                    Map<String, Integer> counted = new HashMap<>();
                    for (ProofPath path : ProofPath.of(plant.rig())) {
                        int count = random.nextInt(4) == 0 ? random.nextInt(0, 3) : 3;
                        double slow = random.nextInt(3) == 0 ? 2 : 0.7;
                        for (int k = 0; k < count; k++) {
                            double tenth = limit * slow * random.nextDouble(0.1, 1);
                            double delay = tenth * random.nextDouble(0.1, 0.6);
                            presses.add(
                                    new Press(path.name(), delay, (tenth - delay) / Math.log(10)));
                            worst.merge(path.name(), tenth, Math::max);
                            counted.merge(path.name(), 1, Integer::sum);
                        }
                    }
                    if (presses.isEmpty()) {
                        return;
                    }
                    KillProof proof = prove(plant, log(random, "thrust [N]", presses));
                    assertThat(proof.paths()).hasSameSizeAs(ProofPath.of(plant.rig()));
                    for (PathProof path : proof.paths()) {
                        seen.merge(path.outcome(), 1, Integer::sum);
                        judge(path, worst, counted, limit);
                    }
                });
        assertThat(seen.keySet())
                .as(seen.toString())
                .contains(Outcome.HOLDS, Outcome.DOES_NOT_HOLD, Outcome.CANNOT_BE_TOLD);
    }

    private static void judge(
            PathProof path, Map<String, Double> worst, Map<String, Integer> counted, double limit) {
        if (!worst.containsKey(path.path())) {
            assertThat(path.outcome()).isEqualTo(Outcome.CANNOT_BE_TOLD);
            assertThat(path.reasons()).containsExactly("not pressed in this log");
            return;
        }
        double truth = worst.get(path.path());
        Span tenth = path.tenth().orElseThrow();
        assertThat(path.presses()).isEqualTo(counted.get(path.path()));
        assertThat(tenth.lowS()).isLessThanOrEqualTo(truth);
        assertThat(tenth.highS()).isBetween(truth, truth + 0.1 * truth + 3 * ROW_S);
        Outcome expected =
                tenth.lowS() > limit
                        ? Outcome.DOES_NOT_HOLD
                        : tenth.highS() <= limit && path.presses() >= 3
                                ? Outcome.HOLDS
                                : Outcome.CANNOT_BE_TOLD;
        assertThat(path.outcome()).isEqualTo(expected);
        if (truth > limit) {
            assertThat(path.outcome()).isNotEqualTo(Outcome.HOLDS);
        }
    }

    private static final Rig CURLEW = TrialExamples.rig("curlew");

    private static List<Press> thrice(String path, double delayS, double tauS) {
        return List.of(
                new Press(path, delayS, tauS),
                new Press(path, delayS, tauS),
                new Press(path, delayS, tauS));
    }

    private static PathProof remote(KillProof proof) {
        return proof.paths().stream()
                .filter(path -> path.path().equals("remote"))
                .findFirst()
                .orElseThrow();
    }

    /** Half of the speed of a falling rotor is a quarter of its thrust: sooner than in current. */
    @Test
    void speedCountsWithItsSquare() {
        Plant plant = Plant.assemble(CURLEW);
        Seeded.check(
                5,
                random -> {
                    PathProof path =
                            remote(
                                    prove(
                                            plant,
                                            log(
                                                    random,
                                                    "speed [rpm]",
                                                    thrice("remote", 0.05, 0.2))));
                    assertThat(path.tenth().orElseThrow().highS())
                            .isCloseTo(0.05 + 0.2 * Math.log(Math.sqrt(10)), within(0.03));
                    assertThat(path.half().orElseThrow().highS())
                            .isCloseTo(0.05 + 0.2 * Math.log(Math.sqrt(2)), within(0.03));
                });
    }

    /** Current ends at once; the rotors coast on by J/κ (1/Ω₁ − 1/Ω₀), typed anew. */
    @Test
    void currentEndsTheDriveAndRotorsCoastOn() {
        Plant plant = Plant.assemble(CURLEW);
        var state = plant.state();
        plant.solve(
                plant.parameters().nominal(),
                Effects.ALL.withCharge(false),
                plant.workspace(),
                state);
        double longest = 0;
        for (int k = 0; k < CURLEW.fans().size(); k++) {
            var rotor = CURLEW.fans().get(k).type().rotor().inertia().orElseThrow();
            double w = state.fanSpeedRadps(k);
            double tau = (rotor.si() + rotor.tolerance().plus()) * w * w / state.fanShaftW(k);
            longest = Math.max(longest, tau * (Math.sqrt(10) - 1));
        }
        double coast = longest;
        Seeded.check(
                5,
                random -> {
                    PathProof path =
                            remote(
                                    prove(
                                            plant,
                                            log(
                                                    random,
                                                    "current [A]",
                                                    thrice("remote", 0.05, 1e-4))));
                    assertThat(path.tenth().orElseThrow().highS())
                            .isBetween(0.05 + coast, 0.05 + coast + 3 * ROW_S);
                });
    }

    /** What goes wrong is told, and nothing of it proves a kill. */
    @Test
    void whatGoesWrongIsTold() {
        Plant plant = Plant.assemble(CURLEW);
        Seeded.check(
                3,
                random -> {
                    String good = log(random, "thrust [N]", thrice("remote", 0.05, 0.05));
                    assertThat(remote(prove(plant, good)).outcome()).isEqualTo(Outcome.HOLDS);
                    String never =
                            log(
                                    random,
                                    "thrust [N]",
                                    thrice("remote", 0.05, Double.POSITIVE_INFINITY));
                    told(plant, never, Outcome.DOES_NOT_HOLD, "still above a tenth");
                    String again = good.replaceAll("(?m)^(9\\.9\\d*,remote),[^,]*,", "$1,150,");
                    assertThat(again).isNotEqualTo(good);
                    told(plant, again, Outcome.DOES_NOT_HOLD, "thrust rose again");
                    String atRest = good.replaceAll("(?m)^((?:8|9)\\.\\d*,[a-z]*),[^,]*,", "$1,0,");
                    told(plant, atRest, Outcome.CANNOT_BE_TOLD, "pressed without thrust before");
                    String two = good.lines().limit(1601).reduce("", (a, b) -> a + b + "\n");
                    told(plant, two, Outcome.CANNOT_BE_TOLD, "2 of at least 3");
                    String cut = good.lines().limit(1601 + 310).reduce("", (a, b) -> a + b + "\n");
                    told(plant, cut, Outcome.CANNOT_BE_TOLD, "the log ends");
                    String gap = good.replaceAll("(?m)^1\\.5[2-9]\\d*,.*\n", "");
                    assertThat(remote(prove(plant, gap)).reasons().toString())
                            .contains("a gap, or a clock that jumped");
                });
    }

    private static void told(Plant plant, String log, Outcome outcome, String words) {
        PathProof path = remote(prove(plant, log));
        assertThat(path.outcome()).as(path.toString()).isEqualTo(outcome);
        assertThat(path.reasons().toString()).contains(words);
    }

    /** A way that is not proved stops, and heights come with every way that was timed. */
    @Test
    void findingsAndHeightsFollow() {
        Plant plant = Plant.assemble(CURLEW);
        Seeded.check(
                3,
                random -> {
                    KillProof proof =
                            prove(plant, log(random, "thrust [N]", thrice("remote", 0.05, 0.05)));
                    Heights heights = Heights.of(plant, proof);
                    assertThat(heights.paths().stream().map(Heights.OfPath::path))
                            .contains("remote");
                    Heights.OfPath remote = heights.paths().getFirst();
                    PathProof timed = remote(proof);
                    assertThat(remote.kill().switchS())
                            .isEqualTo(timed.half().orElseThrow().highS());
                    List<Finding> findings = ProofSections.findings(plant.rig(), proof, heights);
                    long stops =
                            findings.stream()
                                    .filter(one -> one.severity() == Finding.Severity.STOPS)
                                    .count();
                    assertThat(stops)
                            .isEqualTo(
                                    proof.paths().stream()
                                            .filter(one -> one.outcome() != Outcome.HOLDS)
                                            .count());
                    assertThat(ProofSections.times(proof).rows()).hasSameSizeAs(proof.paths());
                    assertThat(ProofSections.heights(heights).rows())
                            .hasSameSizeAs(heights.paths());
                });
    }
}
