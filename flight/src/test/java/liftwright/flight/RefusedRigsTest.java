package liftwright.flight;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import liftwright.flight.loops.LoopDesign;
import liftwright.flight.loops.Reason;
import liftwright.flight.loops.RigLoops;
import liftwright.plant.Plant;
import liftwright.rig.Rig;
import liftwright.rig.file.RigReading;
import liftwright.testkit.Seeded;
import org.junit.jupiter.api.Test;

/** What no loop can mend is planted in the file of a rig that flies, and named. */
class RefusedRigsTest {

    private static LoopDesign design(Rig rig) {
        return new RigLoops(Plant.assemble(rig).balancing()).design();
    }

    private static Rig read(String text) {
        RigReading reading = RigReading.read("rig.yaml", text.getBytes(StandardCharsets.UTF_8));
        return reading.rig()
                .orElseThrow(() -> new IllegalStateException(reading.problems().toString()));
    }

    @Test
    void withoutAnEstimateNothingIsGrantedAndTheReasonIsNamed() {
        int[] seen = {0};
        Seeded.check(
                4,
                random -> {
                    String text = FlyingRigs.text(random);
                    if (!(design(read(text)) instanceof LoopDesign.Granted)) {
                        return;
                    }
                    seen[0]++;
                    for (String estimator :
                            new String[] {
                                "{kind: none}",
                                "{kind: Kalman}",
                                "{kind: complementary, bandwidth: 20 Hz}"
                            }) {
                        String blind =
                                text.replace(
                                        "  computers:",
                                        "  estimator: " + estimator + "\n  computers:");
                        assertThat(blind).isNotEqualTo(text);
                        var refused = (LoopDesign.Refused) design(read(blind));
                        assertThat(refused.reason()).as(estimator).isEqualTo(Reason.NO_ESTIMATE);
                        assertThat(refused.words()).isNotBlank();
                    }
                });
        assertThat(seen[0]).isPositive();
    }

    @Test
    void aSharedThrottleIsRefusedByItsName() {
        var refused = (LoopDesign.Refused) design(Examples.rig("mudlark"));
        assertThat(refused.reason()).isEqualTo(Reason.NO_FLIGHT_COMPUTER);
        assertThat(refused.words()).contains("throttle");
    }
}
