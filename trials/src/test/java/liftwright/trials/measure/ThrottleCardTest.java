package liftwright.trials.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Map;
import liftwright.rig.Rig;
import liftwright.testkit.Seeded;
import liftwright.trials.CardKind;
import liftwright.trials.RandomTrialRig;
import liftwright.trials.Reading;
import org.junit.jupiter.api.Test;

/** What is read of a throttle, from the records. */
class ThrottleCardTest {

    @Test
    void timesAndSharesAreThoseDeclared() {
        int[] rises = {0};
        Seeded.check(
                100,
                random -> {
                    Rig rig = RandomTrialRig.rig(random);
                    Map<String, Reading> read = Made.readings(rig, CardKind.THROTTLE);
                    double round = rig.control().rate().map(rate -> 1 / rate.si()).orElse(0.0);
                    double loss = rig.control().lossTime().si();
                    Reading lost =
                            Made.of(read, "from the loss of the signal to the changed command");
                    assertThat(lost.expectedSi()).isCloseTo(loss + round / 2, within(1e-12));
                    // A loss falls anywhere in a round; the log errs by 2 ms.
                    assertThat(lost.band().low()).isBetween(loss - 0.004, loss + round / 2);
                    assertThat(lost.band().high())
                            .isBetween(loss + round / 2, loss + round + 0.004);
                    rig.control()
                            .rise()
                            .ifPresent(
                                    rise -> {
                                        Reading full =
                                                Made.of(
                                                        read,
                                                        "from nothing to full throttle, stick"
                                                                + " thrown");
                                        assertThat(full.expectedSi())
                                                .isCloseTo(1 / rise.si(), within(1e-12));
                                        rises[0]++;
                                    });
                    rig.control()
                            .liveBelow()
                            .ifPresent(
                                    live ->
                                            assertThat(
                                                            Made.of(
                                                                            read,
                                                                            "greatest throttle at"
                                                                                    + " which it can be"
                                                                                    + " made live")
                                                                    .expectedSi())
                                                    .isEqualTo(live.si()));
                });
        assertThat(rises[0]).isGreaterThan(10);
    }
}
