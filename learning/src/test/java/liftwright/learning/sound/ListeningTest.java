package liftwright.learning.sound;

import static org.assertj.core.api.Assertions.assertThat;

import liftwright.testkit.Seeded;
import org.junit.jupiter.api.Test;

/** Held against sound of fans whose speeds are known. */
class ListeningTest {

    @Test
    void oneFanIsFollowedWithAnIntervalThatHolds() {
        var tally = new Tally();
        Seeded.check(
                24,
                random -> {
                    var scene = new Scene(random, 1);
                    Heard heard = Listening.to(scene.together(), scene.voices, scene.doubt());
                    assertThat(heard.events()).isEmpty();
                    tally.add(scene, heard);
                });
        assertThat(tally.heldShare()).isBetween(0.90, 0.985);
        assertThat(tally.heardShare()).isGreaterThan(0.8);
        assertThat(tally.medianError()).isLessThan(0.001);
    }
}
