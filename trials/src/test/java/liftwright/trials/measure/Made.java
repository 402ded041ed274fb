package liftwright.trials.measure;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.random.RandomGenerator;
import java.util.stream.Stream;
import liftwright.answer.Section;
import liftwright.answer.Value;
import liftwright.numerics.Work;
import liftwright.plant.RandomRigs;
import liftwright.quantity.Quantity;
import liftwright.quantity.Tolerance;
import liftwright.rig.Rig;
import liftwright.trials.Basis;
import liftwright.trials.CardId;
import liftwright.trials.CardKind;
import liftwright.trials.Planned;
import liftwright.trials.RandomTrialRig;
import liftwright.trials.Reading;

/** Cards made for tests, and rigs and draws for their referees. */
final class Made {

    private Made() {}

    static Planned planned(CardKind kind) {
        return new Planned(
                CardId.of(kind),
                "for a test",
                List.of(),
                Set.of(),
                false,
                new Basis(Set.of(), Optional.empty()),
                Optional.empty(),
                30,
                1,
                Optional.empty());
    }

    static Measured card(Rig rig, CardKind kind) {
        return Measuring.of(rig, planned(kind), 7, 1, Work.quiet()).orElseThrow();
    }

    /** Readings by what they are of. */
    static Map<String, Reading> readings(Rig rig, CardKind kind) {
        return readings(card(rig, kind));
    }

    static Map<String, Reading> readings(Measured card) {
        Map<String, Reading> byPart = new LinkedHashMap<>();
        for (Reading reading : card.readings()) {
            assertThat(byPart.put(reading.channel().part(), reading)).isNull();
        }
        return byPart;
    }

    static Reading of(Map<String, Reading> readings, String part) {
        return Objects.requireNonNull(readings.get(part), () -> part + " of " + readings.keySet());
    }

    static Section.Table table(Measured card, String id) {
        return card.blocks().stream()
                .flatMap(
                        block ->
                                block instanceof Section.Card.Block.Rows rows
                                        ? Stream.of(rows.table())
                                        : Stream.empty())
                .filter(table -> table.id().equals(id))
                .findFirst()
                .orElseThrow();
    }

    static double amount(Value value) {
        return ((Value.Figure.Amount) value.figure()).si();
    }

    /** A rig of one of both makers, with doubts. */
    static Rig anyRig(RandomGenerator random) {
        return random.nextBoolean() ? RandomTrialRig.rig(random) : RandomRigs.doubtful(random);
    }

    /** One deviation of a tolerance, by a generator of the test's own. */
    static double deviation(Tolerance tolerance, RandomGenerator random) {
        if (tolerance.form() == Tolerance.Form.BOUND) {
            return -tolerance.minus()
                    + random.nextDouble() * (tolerance.plus() + tolerance.minus());
        }
        double sum = tolerance.plus() + tolerance.minus();
        if (sum == 0) {
            return 0;
        }
        double size = Math.abs(random.nextGaussian()) / 2;
        return random.nextDouble() * sum < tolerance.plus()
                ? size * tolerance.plus()
                : -size * tolerance.minus();
    }

    static double drawn(Quantity value, RandomGenerator random) {
        return value.si() + deviation(value.tolerance(), random);
    }

    static boolean isEach(Quantity value) {
        return value.tolerance().scope() == Tolerance.Scope.EACH;
    }
}
