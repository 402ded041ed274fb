package liftwright.review.referee;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.function.ToDoubleBiFunction;
import java.util.random.RandomGenerator;
import liftwright.answer.Answer;
import liftwright.answer.Outcome;
import liftwright.answer.Section;
import liftwright.answer.Value;
import liftwright.answer.Value.Figure;
import liftwright.numerics.Work;
import liftwright.quantity.Band;
import liftwright.review.Settings;
import liftwright.review.compare.CompareAnswer;
import liftwright.review.compare.Comparison;
import liftwright.review.compare.Put;
import liftwright.review.compare.Puts;
import liftwright.review.compare.Revision;
import liftwright.rig.Rig;
import liftwright.testkit.Seeded;
import org.junit.jupiter.api.Test;

/**
 * Two revisions of drawn rigs beside each other, held against the referee: it draws both rigs from
 * one stream of its own, subtracts, and has a solver and a sampler that are its own.
 */
class ComparisonOnRandomRigsTest {

    private static final Settings SETTINGS = new Settings(5, 1024, 1024, 2, false);
    private static final int RIGS = Seeded.deep() ? 60 : 10;
    private static final int REFEREE_DRAWS = 1200;

    @Test
    void bandsOfDifferencesAreThoseOfPairedDraws() {
        int[] rigs = {0};
        int[] cancelled = {0};
        Seeded.check(
                RIGS,
                random -> {
                    RefereeRig before = RefereeRandom.rig(random);
                    RefereeRig after = revised(before, random);
                    CompareAnswer answer = compared(before, after, List.of("lift"));
                    long seed = random.nextLong();

                    Value ratio = row(answer, "verdicts-compared", "lift").getLast();
                    double[] ratios = differences(before, after, seed, RefereeLift::ratio);
                    hold(ratio, nominal(before, after, RefereeLift::ratio), ratios, 1);

                    Value weight = row(answer, "compared-lift-lift-waterfall", "weight").getLast();
                    double[] weights = differences(before, after, seed, RefereeLift::weightN);
                    // Of single figures fewer draws were made: 256.
                    hold(weight, nominal(before, after, RefereeLift::weightN), weights, 2);

                    rigs[0]++;
                    Band own = ratio.band().orElseThrow();
                    double apart = RefereeBand.of(unpaired(before, after, seed)).halfWidth() * 2;
                    cancelled[0] += own.high() - own.low() < apart / 2 ? 1 : 0;
                });
        if (rigs[0] >= RIGS) {
            // The test has teeth: bands that are not paired are several times as wide.
            assertThat(cancelled[0]).as("shared doubt cancelled").isGreaterThan(RIGS * 3 / 4);
        }
    }

    private static void hold(Value told, double nominal, double[] differences, double noise) {
        if (!(told.figure() instanceof Figure.Amount(double si, Optional<Band> band))) {
            throw new AssertionError("no number: " + told);
        }
        assertThat(si).isCloseTo(nominal, within(1e-9 * Math.max(1, Math.abs(nominal))));
        RefereeBand referee = RefereeBand.of(differences);
        double near = noise * 6 * referee.endError() + 1e-9;
        if (band.isEmpty()) {
            assertThat(referee.halfWidth()).as("nothing in doubt").isLessThan(1e-7);
            return;
        }
        assertThat(band.get().low()).isCloseTo(referee.low(), within(near));
        assertThat(band.get().high()).isCloseTo(referee.high(), within(near));
    }

    private static double nominal(
            RefereeRig before,
            RefereeRig after,
            ToDoubleBiFunction<RefereeRig, RefereeDraw> number) {
        return number.applyAsDouble(after, RefereeDraw.nominal())
                - number.applyAsDouble(before, RefereeDraw.nominal());
    }

    /** Both rigs from one stream, draw by draw. */
    private static double[] differences(
            RefereeRig before,
            RefereeRig after,
            long seed,
            ToDoubleBiFunction<RefereeRig, RefereeDraw> number) {
        double[] differences = new double[REFEREE_DRAWS];
        for (int k = 0; k < differences.length; k++) {
            differences[k] =
                    number.applyAsDouble(after, drawn(seed + k))
                            - number.applyAsDouble(before, drawn(seed + k));
        }
        return differences;
    }

    private static double[] unpaired(RefereeRig before, RefereeRig after, long seed) {
        double[] differences = new double[REFEREE_DRAWS / 2];
        for (int k = 0; k < differences.length; k++) {
            differences[k] =
                    RefereeLift.ratio(after, drawn(seed + k))
                            - RefereeLift.ratio(before, drawn(~seed - k));
        }
        return differences;
    }

    private static RefereeDraw drawn(long seed) {
        return RefereeDraw.of(new SplittableRandom(seed), "");
    }

    @Test
    void equalRigsDifferByExactlyNothing() {
        Seeded.check(
                6,
                random -> {
                    RefereeRig rig = RefereeRandom.rig(random);
                    CompareAnswer answer =
                            compared(rig, rig, List.of("lift", "endurance", "balance"));
                    assertThat(answer.sections()).hasSize(1);
                    for (List<Value> row : table(answer, "verdicts-compared").rows()) {
                        if (row.getLast().figure()
                                instanceof Figure.Amount(double si, Optional<Band> band)) {
                            assertThat(si).isZero();
                            assertThat(band.orElseThrow().low()).isZero();
                            assertThat(band.orElseThrow().high()).isZero();
                        } else {
                            throw new AssertionError("no change told: " + row);
                        }
                    }
                    assertThat(answer.findings()).isEmpty();
                    assertThat(answer.verdict().outcome()).isEqualTo(Outcome.HOLDS);
                });
    }

    @Test
    void theOrderSwappedNegatesEveryChange() {
        int[] changes = {0};
        Seeded.check(
                4,
                random -> {
                    RefereeRig one = RefereeRandom.rig(random);
                    RefereeRig other = revised(one, random);
                    CompareAnswer there = compared(one, other, List.of("lift", "balance"));
                    CompareAnswer back = compared(other, one, List.of("lift", "balance"));
                    assertThat(back.sections().stream().map(Section::id))
                            .containsExactlyElementsOf(
                                    there.sections().stream().map(Section::id).toList());
                    for (Section section : there.sections()) {
                        List<List<Value>> rows = ((Section.Table) section).rows();
                        List<List<Value>> swapped = table(back, section.id()).rows();
                        assertThat(swapped).hasSameSizeAs(rows);
                        for (int k = 0; k < rows.size(); k++) {
                            changes[0] += negated(rows.get(k), swapped.get(k));
                        }
                    }
                });
        assertThat(changes[0]).as("changes that were compared").isPositive();
    }

    private static int negated(List<Value> row, List<Value> swapped) {
        if (!(row.getLast().figure() instanceof Figure.Amount(double si, Optional<Band> band))
                || !(swapped.getLast().figure()
                        instanceof Figure.Amount(double other, Optional<Band> otherBand))) {
            return 0;
        }
        assertThat(other).as(row.toString()).isEqualTo(-si);
        assertThat(otherBand.isPresent()).isEqualTo(band.isPresent());
        if (band.isPresent()) {
            double near = 1e-12 * Math.abs(band.get().high()) + 1e-15;
            assertThat(otherBand.get().low()).isCloseTo(-band.get().high(), within(near));
            assertThat(otherBand.get().high()).isCloseTo(-band.get().low(), within(near));
        }
        return 1;
    }

    @Test
    void whatComesFirstIsWhichVerdictsChange() {
        int[] turned = {0};
        Seeded.check(
                8,
                random -> {
                    RefereeRig drawn = RefereeRandom.rig(random);
                    double nominal = RefereeLift.ratio(drawn, RefereeDraw.nominal());
                    RefereeRig good = drawn.withDemand(nominal * 0.5);
                    RefereeRig bad = drawn.withDemand(nominal * 2);
                    CompareAnswer worse = compared(good, bad, List.of("lift"));
                    if (!row(worse, "verdicts-compared", "lift")
                            .get(1)
                            .equals(Value.words("verdict-before", "met"))) {
                        return; // a law that is left takes every verdict away
                    }
                    turned[0]++;
                    assertThat(worse.verdict().outcome()).isEqualTo(Outcome.DOES_NOT_HOLD);
                    assertThat(worse.findings().getFirst().code()).isEqualTo("verdict-worse");
                    assertThat(table(worse, "file-changes").rows()).hasSize(1);
                    assertThat(table(worse, "file-changes").rows().getFirst().getFirst())
                            .isEqualTo(Value.words("file-place", "demands/thrust to weight"));
                    CompareAnswer better = compared(bad, good, List.of("lift"));
                    assertThat(better.verdict().outcome()).isEqualTo(Outcome.HOLDS);
                    assertThat(better.findings())
                            .anyMatch(finding -> finding.code().equals("verdict-better"));
                });
        assertThat(turned[0]).as("verdicts that turned").isPositive();
    }

    /** The same rig with other values of what it has; doubts keep their form. */
    private static RefereeRig revised(RefereeRig rig, RandomGenerator random) {
        RefereeRig.FanUnit fan = rig.fan();
        var other =
                new RefereeRig.FanUnit(
                        fan.tipMm(),
                        fan.hubMm(),
                        fan.exitAreaCm2(),
                        other(fan.massKg(), random),
                        fan.seller(),
                        fan.speedRpm(),
                        other(fan.thrustN(), random),
                        fan.shaftPowerW(),
                        fan.scatterPercent(),
                        fan.speedConstantRpmPerV(),
                        other(fan.windingMilliohm(), random),
                        fan.noLoadA(),
                        fan.onMilliohm(),
                        fan.currentLimitA(),
                        fan.cutOffV(),
                        fan.fixedW(),
                        fan.controllerKg(),
                        fan.screen(),
                        fan.installation());
        List<Doubtful> parts = new ArrayList<>();
        rig.partsKg().forEach(part -> parts.add(other(part, random)));
        return new RefereeRig(
                rig.elevationM(),
                rig.temperatureC(),
                rig.humidity(),
                rig.judgedAtCharge(),
                rig.demand(),
                other,
                rig.cell(),
                rig.series(),
                rig.extraMass(),
                rig.interconnectMilliohm(),
                rig.fansOfPack(),
                rig.share(),
                rig.trunk(),
                rig.trunkJointMilliohm(),
                rig.fuseMilliohm(),
                rig.branch(),
                rig.branchJointMilliohm(),
                rig.cantDegrees(),
                parts,
                rig.oneBus());
    }

    private static Doubtful other(Doubtful of, RandomGenerator random) {
        double value =
                Double.parseDouble(
                        String.format(
                                java.util.Locale.ROOT,
                                "%.4g",
                                of.value() * random.nextDouble(0.95, 1.08)));
        return new Doubtful(value, of.unit(), of.plus(), of.minus(), of.bound(), of.each());
    }

    private static CompareAnswer compared(
            RefereeRig before, RefereeRig after, List<String> questions) {
        Revision first = revision("first", Written.rig(RefereeText.of(before)));
        Revision second = revision("second", Written.rig(RefereeText.of(after)));
        List<Put> puts = questions.stream().map(q -> Puts.of(q, first, second, SETTINGS)).toList();
        return Comparison.of(first, second, puts, SETTINGS, Work.quiet()).orElseThrow();
    }

    private static Revision revision(String name, Rig rig) {
        return new Revision(name, rig, "digest of " + name, Map.of());
    }

    private static Section.Table table(Answer answer, String id) {
        return answer.sections().stream()
                .filter(section -> section.id().equals(id))
                .map(Section.Table.class::cast)
                .findFirst()
                .orElseThrow(() -> new AssertionError("no table " + id));
    }

    private static List<Value> row(Answer answer, String id, String first) {
        return table(answer, id).rows().stream()
                .filter(
                        row ->
                                row.getFirst().figure() instanceof Figure.Words(var words)
                                        && words.equals(first))
                .findFirst()
                .orElseThrow(() -> new AssertionError("no row " + first));
    }
}
