package liftwright.review;

import static org.assertj.core.api.Assertions.assertThat;

import liftwright.plant.Plant;
import org.junit.jupiter.api.Test;

/** What no remedy may break, and what was broken before. */
class HardLimitsTest {

    private static final String[] LONG_LEADS = {
        "length: 700 mm", "length: 20 m", "capacitance: 2 mF", "capacitance: 100 µF"
    };

    private static final String[] MORE_CAPACITANCE = {
        "length: 700 mm", "length: 20 m", "capacitance: 2 mF", "capacitance: 110 µF"
    };

    private static Plant plant(String... replacements) {
        return Plant.assemble(ExampleRigs.edited("sandpiper", replacements));
    }

    @Test
    void aChangeMayNotLetACutPassARating() {
        assertThat(HardLimits.newlyBroken(plant(), plant(LONG_LEADS)))
                .hasValueSatisfying(
                        why ->
                                assertThat(why.toString())
                                        .contains("cutting all fans", "against its rating"));
    }

    @Test
    void whatWasBrokenBeforeAndGetsNoWorseIsNoReason() {
        assertThat(HardLimits.newlyBroken(plant(LONG_LEADS), plant(LONG_LEADS))).isEmpty();
        assertThat(HardLimits.newlyBroken(plant(LONG_LEADS), plant(MORE_CAPACITANCE))).isEmpty();
        assertThat(HardLimits.newlyBroken(plant(MORE_CAPACITANCE), plant(LONG_LEADS))).isPresent();
    }
}
