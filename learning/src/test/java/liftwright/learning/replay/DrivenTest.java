package liftwright.learning.replay;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Random;
import liftwright.plant.fault.Effect;
import liftwright.plant.recording.Recording;
import liftwright.plant.recording.Samples;
import liftwright.plant.supply.CellDraw;
import liftwright.rig.Rig;
import liftwright.testkit.Seeded;
import liftwright.trials.RandomTrialRig;
import liftwright.trials.TrialExamples;
import org.junit.jupiter.api.Test;

/** The plant under a recorded throttle. */
class DrivenTest {

    private static final int RIGS = 12;

    @Test
    void replaysWhatTheModelMadeToTheLastDigits() {
        int[] channels = new int[1];
        Seeded.check(
                RIGS,
                random -> {
                    Rig rig = RandomTrialRig.rig(random);
                    MadeRecording made =
                            new MadeRecording(rig, MadeRecording.course(random, 0.5, 60), true);
                    Driven driven =
                            Driven.of(rig, made.recording(), Effect.NONE, made.timesS.length);
                    double[][] out = driven.blocks();
                    driven.predict(
                            driven.plant().parameters().nominal(), new CellDraw.Expected(), out);
                    for (int k = 0; k < out.length; k++) {
                        Watched watched = driven.watched().get(k);
                        double[] measured = watched.blocks().meansSi();
                        double most = 1e-9;
                        for (double si : measured) {
                            most = Math.max(most, Math.abs(si));
                        }
                        for (int block = 0; block < measured.length; block++) {
                            double off = Math.abs(out[k][block] - measured[block]) / most;
                            assertThat(off)
                                    .as(
                                            "%s at %s s: %s for %s",
                                            watched.track().name(),
                                            watched.blocks().timesS()[block],
                                            out[k][block],
                                            measured[block])
                                    .isLessThan(1e-9);
                        }
                        channels[0]++;
                    }
                });
        assertThat(channels[0]).isGreaterThan(20 * RIGS);
    }

    @Test
    void aRunOfTenMinutesIsDrivenToItsEndAndTheSameAgain() {
        Rig rig = TrialExamples.rig("mudlark");
        MadeRecording made =
                new MadeRecording(rig, MadeRecording.course(new Random(3), 0.1, 600), true);
        Driven driven = Driven.of(rig, made.recording());
        double[] p = driven.plant().parameters().nominal();
        double[][] once = driven.blocks();
        double[][] again = driven.blocks();
        assertThat(driven.predict(p, new CellDraw.Expected(), once)).isEqualTo(600);
        assertThat(driven.predict(p, new CellDraw.Expected(), again)).isEqualTo(600);
        assertThat(again).isDeepEqualTo(once);
    }

    @Test
    void withoutThrottleItSaysWhatIsNeeded() {
        Rig rig = TrialExamples.rig("mudlark");
        Recording recording =
                new Recording(
                        List.of(
                                MadeRecording.track(
                                        "speed left.1",
                                        new Samples(
                                                new double[] {0, 1}, new double[] {900, 900}))));
        assertThatThrownBy(() -> Driven.of(rig, recording))
                .isInstanceOf(NotDrivenException.class)
                .hasMessageContaining("no throttle was recorded")
                .hasMessageContaining("speeds are recorded");
    }
}
