package liftwright.trials.predict;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import liftwright.numerics.Work;
import liftwright.testkit.Seeded;
import liftwright.trials.Reading;
import org.junit.jupiter.api.Test;

/**
 * Runs of a richer model, which shares no line with the product, inside the printed bands. Its
 * truth is drawn anew from what is declared; it has what the product lacks: air that differs from
 * fan to fan, walls and floor near the jets, coefficients that drift with speed, heavy tails of
 * fans, iron losses that rise, cells with another slow resistance, throttle in steps, a hand that
 * misses its lift, thrust that flickers, instruments with bias and drift, cooling by another power,
 * wires and joints of lumps.
 */
class PredictedBandsTest {

    private static final int RIGS = 60;

    /** Truths of a rig: the first judge, the others are what an ideal predictor knows. */
    private static final int JUDGES = 10;

    private static final int KNOWN = 60;

    /** Penalty of the interval score for what lies outside: 2/α, Gneiting and Raftery (2007). */
    private static final double OUTSIDE = 2 / 0.05;

    /** Counts and scores of one channel. */
    private static final class Tally {
        int inside;
        int all;
        double score;
        double ideal;
        double width;
    }

    private static double score(double low, double high, double read) {
        return high - low + OUTSIDE * (Math.max(0, low - read) + Math.max(0, read - high));
    }

    /** What is read in each truth, by truth, then step, then channel. */
    private static List<List<double[]>> truths(RandomCard card, Predictions told, long seed) {
        List<List<double[]>> all = new ArrayList<>();
        for (int k = 0; k < JUDGES + KNOWN; k++) {
            TrueRig rig = new TrueRig(card.rig(), seed + 7919L * k);
            TrueRun run = new TrueRun(rig, card.run());
            TrueReader reader = new TrueReader(rig.draw);
            List<double[]> read = new ArrayList<>();
            run.go(
                    (timeS, step, ends) -> {
                        if (ends && told.steps().get(step).cut().isEmpty()) {
                            double part = timeS / told.steps().getLast().endS();
                            read.add(
                                    told.steps().get(step).readings().stream()
                                            .mapToDouble(
                                                    one ->
                                                            reader.reads(
                                                                    one.channel(),
                                                                    run.value(one.channel()),
                                                                    part))
                                            .toArray());
                        }
                        return true;
                    });
            all.add(read);
        }
        return all;
    }

    private static void judge(RandomCard card, long seed, Map<String, Tally> tallies) {
        Predictions told =
                Predictions.of(
                                card.rig(),
                                PredictionsTest.card(card.run()),
                                Conditions.DECLARED,
                                seed,
                                2,
                                Work.quiet())
                        .orElseThrow();
        List<List<double[]>> truths = truths(card, told, seed);
        for (int step = 0; step < truths.getFirst().size(); step++) {
            List<Reading> readings = told.steps().get(step).readings();
            for (int k = 0; k < readings.size(); k++) {
                int channel = k;
                int at = step;
                double[] known =
                        truths.stream()
                                .skip(JUDGES)
                                .mapToDouble(one -> one.get(at)[channel])
                                .sorted()
                                .toArray();
                var band = readings.get(k).band();
                Tally tally =
                        tallies.computeIfAbsent(
                                readings.get(k).channel().field(), any -> new Tally());
                double low = known[0] + 0.5 * (known[1] - known[0]);
                double high = known[KNOWN - 1] - 0.5 * (known[KNOWN - 1] - known[KNOWN - 2]);
                double unit = high - low;
                for (int judge = 0; judge < JUDGES; judge++) {
                    double read = truths.get(judge).get(at)[channel];
                    tally.all++;
                    tally.inside += read >= band.low() && read <= band.high() ? 1 : 0;
                    tally.score += score(band.low(), band.high(), read) / unit;
                    tally.ideal += score(low, high, read) / unit;
                    tally.width += band.width() / unit;
                }
            }
        }
    }

    @Test
    void bandsHoldWhatARicherModelShows() {
        Map<String, Tally> tallies = new TreeMap<>();
        Seeded.check(RIGS, random -> judge(RandomCard.draw(random), random.nextLong(), tallies));
        assertThat(tallies).hasSizeGreaterThan(12);
        StringBuilder told = new StringBuilder();
        tallies.forEach(
                (field, of) ->
                        told.append(
                                String.format(
                                        Locale.ROOT,
                                        "%n%-22s %5d read, %5.1f %% inside, score %.2f of the ideal, width %.2f",
                                        field,
                                        of.all,
                                        100.0 * of.inside / of.all,
                                        of.score / of.ideal,
                                        of.width / of.all)));
        tallies.forEach(
                (field, of) -> {
                    assertThat((double) of.inside / of.all)
                            .as("share of %s inside%s", field, told)
                            .isBetween(0.90, 0.99);
                    assertThat(of.score / of.ideal)
                            .as("score of %s%s", field, told)
                            .isLessThan(1.5);
                });
    }
}
