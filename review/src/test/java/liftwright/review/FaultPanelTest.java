package liftwright.review;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.stream.IntStream;
import liftwright.plant.Plant;
import liftwright.plant.fault.Effect;
import liftwright.plant.fault.Fault;
import liftwright.review.failures.FaultFigures;
import liftwright.review.failures.FaultFigures.ByArms;
import liftwright.review.failures.FaultFigures.ByComputer;
import liftwright.review.failures.FaultGroup;
import liftwright.review.failures.FaultOutcome;
import liftwright.review.failures.FaultRule;
import liftwright.rig.Rig;
import org.junit.jupiter.api.Test;

/** What holds of failures whichever the rig. */
class FaultPanelTest {

    private static FaultFigures figures(Plant plant, Effect effect) {
        return new FaultPanel(plant)
                .worker()
                .found(plant.parameters().nominal(), effect)
                .figures()
                .orElseThrow();
    }

    /** The reserve of the whole rig is that of the question of balance. */
    @Test
    void losingNothingChangesNothingOfACurlew() {
        Plant plant = Plant.assemble(ExampleRigs.edited("curlew"));
        ByComputer can = (ByComputer) figures(plant, Effect.NONE).held();
        FaultFigures.Reserves left = can.yawHeld().atWeight();
        double ratio =
                Math.min(
                        left.yawRadps2() / 0.3,
                        Math.min(left.rollRadps2() / 2, left.pitchRadps2() / 2));
        double balance = BalanceJudge.nominal(plant.balancing());
        assertThat(ratio).isCloseTo(balance, within(1e-6 * balance));
    }

    /** So is the reach of the arms. */
    @Test
    void losingNothingChangesNothingOfAMudlark() {
        Plant plant = Plant.assemble(ExampleRigs.edited("mudlark"));
        ByArms arms = (ByArms) figures(plant, Effect.NONE).held();
        assertThat(arms.left()).isCloseTo(BalanceJudge.nominal(plant.balancing()), within(1e-4));
    }

    /** A pack takes both its fans with it, so it is never better than losing one of them. */
    @Test
    void aFaultThatContainsAnotherIsNeverBetter() {
        Rig rig = ExampleRigs.edited("curlew");
        Plant plant = Plant.assemble(rig);
        for (int pack = 0; pack < 4; pack++) {
            FaultFigures both = figures(plant, Effect.dead(pack, 7 - pack));
            for (int fan : new int[] {pack, 7 - pack}) {
                FaultFigures one = figures(plant, Effect.dead(fan));
                // The survivor on the same pack sags a little less.
                assertThat(both.fullLiftN()).isLessThan(one.fullLiftN());
                ByComputer more = (ByComputer) one.held();
                ByComputer less = (ByComputer) both.held();
                assertThat(less.yawFree().liftN()).isLessThan(more.yawFree().liftN() * 1.001);
            }
        }
    }

    /** Without its pods nobody's arms hold anything. */
    @Test
    void armsWithoutFansReachNothing() {
        Plant plant = Plant.assemble(ExampleRigs.edited("mudlark"));
        int[] pods = IntStream.range(8, 24).toArray();
        FaultPanel panel = new FaultPanel(plant);
        FaultPanel.Found found =
                panel.worker().found(plant.parameters().nominal(), Effect.dead(pods));
        assertThat(found.fate().outcome()).isEqualTo(FaultOutcome.TIPS);
        assertThat(found.fate().margin()).isLessThan(-1);
    }

    /**
     * One gyro is one too few, two disagree, three decide; a height sensor holds nobody upright.
     */
    @Test
    void sensorsCountAsManyAsThereAre() {
        assertThat(rule("gyro: {count: 1,")).isEqualTo(FaultRule.UNSTEERED);
        assertThat(rule("gyro: {count: 2,")).isEqualTo(FaultRule.DISAGREES);
        assertThat(rule("gyro: {count: 3,")).isEqualTo(FaultRule.NOTHING);
    }

    private static FaultRule rule(String gyro) {
        Rig rig = ExampleRigs.edited("curlew", "gyro: {count: 1,", gyro);
        return new FaultPanel(Plant.assemble(rig))
                .groups().stream()
                        .filter(
                                group ->
                                        group.members().stream()
                                                .anyMatch(
                                                        fault ->
                                                                fault.kind() == Fault.Kind.SENSOR
                                                                        && fault.part()
                                                                                .text()
                                                                                .contains("gyro")))
                        .map(FaultGroup::rule)
                        .findFirst()
                        .orElseThrow();
    }
}
