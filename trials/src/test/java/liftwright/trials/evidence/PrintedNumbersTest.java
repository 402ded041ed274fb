package liftwright.trials.evidence;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.random.RandomGenerator;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import liftwright.numerics.Work;
import liftwright.rig.Rig;
import liftwright.testkit.Seeded;
import liftwright.trials.CardKind;
import liftwright.trials.Planned;
import liftwright.trials.RandomTrialRig;
import liftwright.trials.measure.Measuring;
import liftwright.trials.predict.Conditions;
import liftwright.trials.predict.Predictions;
import liftwright.trials.programme.Programme;
import org.junit.jupiter.api.Test;

/** What is printed on a card is the same as long as its pass stands. */
class PrintedNumbersTest {

    private static final long SEED = 7;
    private static final Pattern NUMBER = Pattern.compile("-?[0-9]+(\\.[0-9]+)?(E-?[0-9]+)?");

    /** Of a card, everything that is predicted, with all its digits. */
    private static String measured(Rig rig, Planned card) {
        return String.valueOf(Measuring.of(rig, card, SEED, 1, Work.quiet()));
    }

    private static String predicted(Rig rig, Planned card) {
        var all = Predictions.of(rig, card, Conditions.DECLARED, SEED, 2, Work.quiet());
        return all.map(p -> p.steps() + " " + p.aborts()).orElse("");
    }

    /**
     * Cards whose passes a random change of a rig leaves standing, with the rig before and after.
     */
    private record Stands(Planned card, Rig before, Rig after, String change) {}

    private static List<Stands> stand(RandomGenerator random) {
        var reading = RandomTrialRig.reading(RandomTrialRig.yaml(random));
        Rig before = reading.rig().orElseThrow();
        var made = RandomChange.of(reading, random);
        Rig after = made.after().rig().orElseThrow();
        Inputs was = Inputs.of(before);
        Inputs is = Inputs.of(after);
        if (was.equals(is)) {
            return List.of();
        }
        var now = Programme.of(after);
        return Programme.of(before).cards().stream()
                .filter(
                        card ->
                                now.card(card.id())
                                        .filter(
                                                same ->
                                                        is.since(
                                                                        was.restingOn(card.basis()),
                                                                        same.basis())
                                                                .isEmpty())
                                        .isPresent())
                .map(card -> new Stands(card, before, after, made.changes().toString()))
                .toList();
    }

    /** The same words, and numbers as near as a solver that starts elsewhere comes. */
    private static void same(Stands one, String before, String after) {
        assertThat(NUMBER.matcher(after).replaceAll("#"))
                .as(one.card().id() + " after " + one.change())
                .isEqualTo(NUMBER.matcher(before).replaceAll("#"));
        Matcher was = NUMBER.matcher(before);
        Matcher is = NUMBER.matcher(after);
        while (was.find() && is.find()) {
            double value = Double.parseDouble(was.group());
            assertThat(Double.parseDouble(is.group()))
                    .as(one.card().id() + " after " + one.change() + near(before, was.start()))
                    .isCloseTo(value, within(1e-6 * Math.max(1e-3, Math.abs(value))));
        }
    }

    /** Around the first difference, so that a failure can be read. */
    private static String near(String text, int at) {
        return text.substring(Math.max(0, at - 300), Math.min(text.length(), at + 100));
    }

    @Test
    void whatMeasuringCardsPredictIsTheSameWhileTheirPassStands() {
        Set<CardKind> seen = new HashSet<>();
        int[] held = {0};
        Seeded.check(
                25,
                random -> {
                    for (Stands one : stand(random)) {
                        String before = measured(one.before(), one.card());
                        if (!before.equals(Optional.empty().toString())) {
                            same(one, before, measured(one.after(), one.card()));
                            seen.add(one.card().id().kind());
                            held[0]++;
                        }
                    }
                });
        assertThat(held[0]).isGreaterThan(40);
        assertThat(seen).hasSizeGreaterThan(5);
    }

    @Test
    void whatRunsPredictIsTheSameWhileTheirPassStands() {
        int[] held = {0};
        Seeded.check(
                12,
                random -> {
                    var runs =
                            stand(random).stream()
                                    .filter(one -> one.card().run().isPresent())
                                    .toList();
                    if (!runs.isEmpty()) {
                        Stands one = runs.get(random.nextInt(runs.size()));
                        same(
                                one,
                                predicted(one.before(), one.card()),
                                predicted(one.after(), one.card()));
                        held[0]++;
                    }
                });
        assertThat(held[0]).isGreaterThan(4);
    }
}
