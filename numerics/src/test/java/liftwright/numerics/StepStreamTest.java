package liftwright.numerics;

import static org.assertj.core.api.Assertions.assertThat;

import liftwright.testkit.Seeded;
import org.junit.jupiter.api.Test;

class StepStreamTest {

    @Test
    void tellsWhatIsToldOneByOneInWhateverOrder() {
        Seeded.check(
                50,
                random -> {
                    long seed = random.nextLong();
                    long channel = random.nextLong();
                    int draw = random.nextInt();
                    var stream = new StepStream(seed, channel, draw);
                    int step = random.nextInt();
                    for (int k = 0; k < 300; k++) {
                        // On, back a little, and at times far away; past the last number, too.
                        step += random.nextInt(100) == 0 ? random.nextInt() : random.nextInt(9) - 3;
                        assertThat(stream.uniform(step))
                                .isEqualTo(CounterStream.uniform(seed, channel, draw, step));
                        assertThat(stream.normal(step))
                                .isEqualTo(CounterStream.normal(seed, channel, draw, step));
                    }
                });
    }
}
