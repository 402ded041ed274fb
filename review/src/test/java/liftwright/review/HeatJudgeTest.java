package liftwright.review;

import static org.assertj.core.api.Assertions.assertThat;

import liftwright.numerics.Work;
import liftwright.plant.Plant;
import org.junit.jupiter.api.Test;

/** What a change that keeps parts cool may cost. */
class HeatJudgeTest {

    private static final Settings SETTINGS = new Settings(5, 256, 256, 2, false);

    private static Plant plant(String frame) {
        return Plant.assembleHeated(
                ExampleRigs.edited(
                        "mudlark", "{id: frame, mass: 5.8 kg", "{id: frame, mass: " + frame));
    }

    private static Judging.SideEffect cost(String frame) {
        return HeatJudge.of(HeatCase.of(new Task.Hover()), SETTINGS)
                .sideEffect(plant("5.8 kg"), plant(frame), Work.quiet())
                .orElseThrow();
    }

    @Test
    void liftThatNoLongerSufficesIsARefusal() {
        assertThat(cost("16 kg").refusal())
                .hasValueSatisfying(
                        why -> assertThat(why.toString()).contains("lift over weight would be"));
    }

    @Test
    void liftThatStillSufficesIsTold() {
        Judging.SideEffect cost = cost("5.9 kg");
        assertThat(cost.refusal()).isEmpty();
        assertThat(cost.told().toString()).contains("lift over weight");
    }
}
