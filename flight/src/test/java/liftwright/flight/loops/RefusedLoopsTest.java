package liftwright.flight.loops;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.UnaryOperator;
import liftwright.plant.body.Inertia;
import liftwright.rig.Vec3;
import liftwright.testkit.Seeded;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * Random craft for which loops are granted, each spoiled in one way: loops are refused, the reason
 * is named first, and with the number that is told they are granted again.
 */
class RefusedLoopsTest {

    private static final int CRAFT = 8;

    /** A way to spoil a craft, with a value or with one that is told to do. */
    enum Spoiled {
        LIFT(
                Reason.HOVER_THROTTLE_TOO_HIGH,
                1.02,
                (craft, to) -> fans(craft, fan -> most(fan, beyond(to) / able(craft).liftShare()))),
        TRIM(Reason.NO_TRIM, 3, (craft, to) -> fans(craft, fan -> moved(fan, new Vec3(to, 0, 0)))),
        ROLL(
                Reason.ROLL_AUTHORITY_SHORT,
                0.1,
                (craft, to) -> inertia(craft, able(craft).rollRadps2() / beyond(to), 1, 1)),
        PITCH(
                Reason.PITCH_AUTHORITY_SHORT,
                0.1,
                (craft, to) -> inertia(craft, 1, able(craft).pitchRadps2() / beyond(to), 1)),
        YAW(
                Reason.NO_YAW_AUTHORITY,
                0.04,
                (craft, to) -> inertia(craft, 1, 1, able(craft).yawRadps2() / beyond(to))),
        SPOOL(
                Reason.SPOOL_LAG_TOO_LONG,
                1.5,
                (craft, to) -> fans(craft, fan -> fan.spooled(to / longestLagS(craft)))),
        ESC(Reason.CONTROLLER_DELAY_TOO_LONG, 0.5, lags(Lags::escS)),
        COMPUTER(Reason.COMPUTER_DELAY_TOO_LONG, 0.5, lags(Lags::computerS)),
        SENSOR(Reason.SENSOR_DELAY_TOO_LONG, 0.5, lags(Lags::gyroS)),
        FILTER(Reason.FILTER_TOO_LOW, 0.1, lags(Lags::filterHz)),
        RATE(Reason.RATE_TOO_LOW, 1, lags(Lags::controlHz)),
        VELOCITY(Reason.VELOCITY_ESTIMATE_TOO_LATE, 3, lags(Lags::velocityS)),
        LEGS(
                Reason.LEGS_TOO_NEAR,
                0.1,
                (craft, to) -> craft.with(new Flexible(Double.POSITIVE_INFINITY, 1, 0, 0, to))),
        ALIAS(Reason.GYRO_ALIASING, 2000 / (2 * Math.PI) + 1, lags(Lags::gyroHz));

        final Reason reason;
        final double value;
        private final Change change;

        Spoiled(Reason reason, double value, Change change) {
            this.reason = reason;
            this.value = value;
            this.change = change;
        }

        Craft with(Craft craft, double to) {
            return change.with(craft, to);
        }

        private interface Change {
            Craft with(Craft craft, double to);
        }

        private interface LagChange {
            Lags with(Lags lags, double to);
        }

        private static Change lags(LagChange change) {
            return (craft, to) -> craft.with(change.with(craft.lags(), to));
        }

        /** What is told to do does so just beyond it. */
        private static double beyond(double to) {
            return 1.0001 * to;
        }

        private static LoopDesign.Authority able(Craft craft) {
            return LoopMaking.authority(craft);
        }

        private static double longestLagS(Craft craft) {
            return craft.fans().stream().mapToDouble(fan -> fan.rotor().lagS()).max().orElse(1);
        }

        private static Craft fans(Craft craft, UnaryOperator<Lifter> change) {
            return craft.with(craft.fans().stream().map(change).toList());
        }

        private static Lifter most(Lifter fan, double times) {
            return new Lifter(
                    fan.id(),
                    fan.force(),
                    fan.moment(),
                    fan.axis(),
                    fan.spin(),
                    fan.hoverN(),
                    times * fan.mostN(),
                    fan.limitN(),
                    times * fan.idleN(),
                    fan.volts(),
                    fan.rotor());
        }

        private static Lifter moved(Lifter fan, Vec3 by) {
            return new Lifter(
                    fan.id(),
                    fan.force(),
                    fan.moment().plus(by.cross(fan.force())),
                    fan.axis(),
                    fan.spin(),
                    fan.hoverN(),
                    fan.mostN(),
                    fan.limitN(),
                    fan.idleN(),
                    fan.volts(),
                    fan.rotor());
        }

        private static Craft inertia(Craft craft, double roll, double pitch, double yaw) {
            Inertia i = craft.inertia();
            return new Craft(
                    craft.massKg(),
                    new Inertia(roll * i.xx(), pitch * i.yy(), yaw * i.zz(), 0, 0, 0),
                    craft.fans(),
                    craft.hoverV(),
                    craft.lags(),
                    craft.flexible(),
                    craft.yawHeld());
        }
    }

    private static final List<Craft> ABLE = found();

    private static List<Craft> able() {
        return ABLE;
    }

    private static List<Craft> found() {
        List<Craft> found = new ArrayList<>();
        Seeded.check(
                40,
                random -> {
                    Craft craft = RandomCraft.able(random);
                    if (found.size() < CRAFT
                            && LoopDesign.of(craft) instanceof LoopDesign.Granted) {
                        found.add(craft);
                    }
                });
        assertThat(found).hasSize(CRAFT);
        return found;
    }

    /** What would do is enough for that reason; another may stand behind it, and is named then. */
    @ParameterizedTest
    @EnumSource
    void aPlantedReasonIsNamed(Spoiled how) {
        int granted = 0;
        for (Craft craft : able()) {
            LoopDesign found = LoopDesign.of(how.with(craft, how.value));
            assertThat(found).as("%s", how).isInstanceOf(LoopDesign.Refused.class);
            var refused = (LoopDesign.Refused) found;
            assertThat(refused.reason()).as("%s", refused).isEqualTo(how.reason);
            assertThat(refused.words()).isNotBlank();
            if (how == Spoiled.TRIM) {
                granted++;
                continue;
            }
            LoopDesign.Would would = refused.would().getFirst();
            assertThat(would.now()).isNotEqualTo(would.to());
            switch (LoopDesign.of(how.with(craft, would.to()))) {
                case LoopDesign.Granted _ -> granted++;
                case LoopDesign.Refused next ->
                        assertThat(next.reason())
                                .as("%s with %s", how, would)
                                .isNotEqualTo(how.reason);
            }
        }
        assertThat(granted).as("%s", how).isGreaterThanOrEqualTo(able().size() * 3 / 4);
    }

    /**
     * A reason that is added has to be planted somewhere too; those of files in RefusedRigsTest.
     */
    @Test
    void everyReasonIsPlanted() {
        EnumSet<Reason> planted =
                EnumSet.of(
                        Reason.HARNESS_MODE_TOO_NEAR,
                        Reason.DECLARED_CROSSOVER_TOO_HIGH,
                        Reason.DECLARED_MARGIN_NOT_REACHED,
                        Reason.DECLARED_WITHOUT_INTEGRAL,
                        Reason.NO_ESTIMATE,
                        Reason.NO_FLIGHT_COMPUTER);
        for (Spoiled how : Spoiled.values()) {
            planted.add(how.reason);
        }
        assertThat(planted).containsExactlyInAnyOrder(Reason.values());
    }

    /** Where the declared margin is what is not reached, the margin that is told would do. */
    @Test
    void aMarginThatIsNotReachedIsToldWithOneThatIs() {
        List<String> refused = new ArrayList<>();
        for (Craft craft : able()) {
            var free = (LoopDesign.Granted) LoopDesign.of(craft);
            double at = 0.99 * Math.min(rate(free, Axis.ROLL), rate(free, Axis.PITCH));
            double margin = Math.toRadians(85);
            Optional<LoopDesign.Would> would = wouldMargin(craft, at, margin);
            assertThat(would).isPresent();
            // One axis is told of at a time: each may lie lower than the one before.
            for (int round = 0; round < 8 && would.isPresent(); round++) {
                assertThat(would.get().now()).isEqualTo(margin);
                assertThat(would.get().to()).isLessThan(margin);
                margin = 0.99 * would.get().to();
                would = wouldMargin(craft, at, margin);
            }
            if (LoopDesign.of(craft, declared(at, margin)) instanceof LoopDesign.Refused why) {
                refused.add(at + " with " + margin + ": " + why.would());
            }
        }
        assertThat(refused).isEmpty();
    }

    private static Asked declared(double radps, double marginRad) {
        return declared(
                Loop.Level.RATE,
                new Asked.Declared(
                        OptionalDouble.of(radps), OptionalDouble.of(marginRad), Optional.empty()));
    }

    private static Optional<LoopDesign.Would> wouldMargin(
            Craft craft, double radps, double marginRad) {
        return LoopDesign.of(craft, declared(radps, marginRad)) instanceof LoopDesign.Refused not
                ? not.would().stream()
                        .filter(one -> one.reason() == Reason.DECLARED_MARGIN_NOT_REACHED)
                        .findFirst()
                : Optional.empty();
    }

    private static Craft worn(Craft craft, double hz, double share) {
        return craft.with(new Flexible(hz, 0.1, share, share, Double.POSITIVE_INFINITY));
    }

    /**
     * Nearly all inertia in a harness that is a little too soft: its frequency is what would have
     * to change least, and with the one that is told loops are granted.
     */
    @Test
    void aHarnessThatIsALittleTooSoftIsNamed() {
        int named = 0;
        for (Craft craft : able()) {
            if (named == 2) {
                break;
            }
            double hz = 60;
            while (hz > 2
                    && LoopDesign.of(worn(craft, hz / 1.4, 0.88)) instanceof LoopDesign.Granted) {
                hz /= 1.4;
            }
            double low = hz / 1.4;
            while (hz / low > 1.06) {
                double middle = Math.sqrt(low * hz);
                if (LoopDesign.of(worn(craft, middle, 0.88)) instanceof LoopDesign.Granted) {
                    hz = middle;
                } else {
                    low = middle;
                }
            }
            if (hz < 2 || hz == 60) {
                continue;
            }
            var refused = (LoopDesign.Refused) LoopDesign.of(worn(craft, low, 0.88));
            assertThat(refused.reason()).as("%s", refused).isEqualTo(Reason.HARNESS_MODE_TOO_NEAR);
            assertThat(refused.words()).contains("harness");
            double to = refused.would().getFirst().to();
            assertThat(to).isBetween(low, hz * 1.001);
            assertThat(LoopDesign.of(worn(craft, to, 0.88))).isInstanceOf(LoopDesign.Granted.class);
            named++;
        }
        assertThat(named).isEqualTo(2);
    }

    /** A declared crossover with margins enough for a rigid body, and not for one that gives. */
    @Test
    void aDeclaredCrossoverThatTheHarnessDoesNotBearIsRefusedByItsName() {
        int named = 0;
        for (Craft rigid : able()) {
            Craft craft = worn(rigid, 3, 0.6);
            if (!(LoopDesign.of(craft) instanceof LoopDesign.Granted free)) {
                continue;
            }
            double bare =
                    Math.min(
                            rate((LoopDesign.Granted) LoopDesign.of(rigid), Axis.ROLL),
                            rate((LoopDesign.Granted) LoopDesign.of(rigid), Axis.PITCH));
            double borne = Math.min(rate(free, Axis.ROLL), rate(free, Axis.PITCH));
            if (bare < 1.15 * borne) {
                continue;
            }
            named++;
            Asked fast = crossover(Loop.Level.RATE, 0.99 * bare);
            assertThat(LoopDesign.of(rigid, fast)).isInstanceOf(LoopDesign.Granted.class);
            var refused = (LoopDesign.Refused) LoopDesign.of(craft, fast);
            assertThat(refused.reason()).as("%s", refused).isEqualTo(Reason.HARNESS_MODE_TOO_NEAR);
            double hz = refused.would().getFirst().to();
            assertThat(LoopDesign.of(craft, crossover(Loop.Level.RATE, 2 * Math.PI * hz * 0.999)))
                    .isInstanceOf(LoopDesign.Granted.class);
        }
        assertThat(named).isPositive();
    }

    private static double rate(LoopDesign.Granted granted, Axis axis) {
        return granted.loop(axis, Loop.Level.RATE).crossoverRadps();
    }

    /** Two reasons at once: no number alone would do, and what would do together is told. */
    @Test
    void lagsTogether() {
        for (Craft craft : able()) {
            Craft spoiled = Spoiled.ESC.with(Spoiled.COMPUTER.with(craft, 0.4), 0.5);
            var refused = (LoopDesign.Refused) LoopDesign.of(spoiled);
            assertThat(refused.reason()).isEqualTo(Reason.CONTROLLER_DELAY_TOO_LONG);
            LoopDesign.Would all = refused.would().getFirst();
            assertThat(LoopDesign.of(spoiled.with(all.to() / all.now())))
                    .isInstanceOf(LoopDesign.Granted.class);
            assertThat(LoopDesign.of(spoiled.with(1.02 * all.to() / all.now())))
                    .isInstanceOf(LoopDesign.Refused.class);
        }
    }

    private static Asked declared(Loop.Level level, Asked.Declared what) {
        Map<Loop.Level, Asked.Declared> map = new EnumMap<>(Loop.Level.class);
        map.put(level, what);
        return new Asked(Math.toRadians(50), 2, 2.5, map);
    }

    /** Declared crossovers: those of the design are granted, twice as fast ones are not. */
    @Test
    void declaredCrossoversAreChecked() {
        for (Craft craft : able()) {
            var free = (LoopDesign.Granted) LoopDesign.of(craft);
            double at = free.loop(Axis.ROLL, Loop.Level.RATE).crossoverRadps();
            double pitch = free.loop(Axis.PITCH, Loop.Level.RATE).crossoverRadps();
            Asked same = crossover(Loop.Level.RATE, Math.min(at, pitch) * 0.99);
            assertThat(LoopDesign.of(craft, same)).isInstanceOf(LoopDesign.Granted.class);
            Asked fast = crossover(Loop.Level.RATE, 2.5 * Math.max(at, pitch));
            var refused = (LoopDesign.Refused) LoopDesign.of(craft, fast);
            assertThat(refused.reason()).isEqualTo(Reason.DECLARED_CROSSOVER_TOO_HIGH);
            double hz = refused.would().getFirst().to();
            assertThat(LoopDesign.of(craft, crossover(Loop.Level.RATE, 2 * Math.PI * hz * 0.999)))
                    .isInstanceOf(LoopDesign.Granted.class);
        }
    }

    private static Asked crossover(Loop.Level level, double radps) {
        return declared(
                level,
                new Asked.Declared(
                        OptionalDouble.of(radps), OptionalDouble.empty(), Optional.empty()));
    }

    /** A velocity loop without its integral is refused; a greater margin slows the loops. */
    @Test
    void declaredIntegralAndMarginCount() {
        for (Craft craft : able()) {
            Asked without =
                    declared(
                            Loop.Level.VELOCITY,
                            new Asked.Declared(
                                    OptionalDouble.empty(),
                                    OptionalDouble.empty(),
                                    Optional.of(false)));
            var refused = (LoopDesign.Refused) LoopDesign.of(craft, without);
            assertThat(refused.reason()).isEqualTo(Reason.DECLARED_WITHOUT_INTEGRAL);
            Asked wide =
                    declared(
                            Loop.Level.RATE,
                            new Asked.Declared(
                                    OptionalDouble.empty(),
                                    OptionalDouble.of(Math.toRadians(60)),
                                    Optional.empty()));
            if (LoopDesign.of(craft, wide) instanceof LoopDesign.Granted slow) {
                Loop rate = slow.loop(Axis.ROLL, Loop.Level.RATE);
                assertThat(rate.phaseMarginRad()).isGreaterThan(Math.toRadians(60) - 1e-5);
            }
        }
    }
}
