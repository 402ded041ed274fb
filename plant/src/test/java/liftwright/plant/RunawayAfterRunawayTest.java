package liftwright.plant;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Set;
import java.util.random.RandomGenerator;
import liftwright.plant.motion.RunawayCase;
import liftwright.plant.motion.RunawayCase.Start;
import liftwright.plant.motion.RunawayCase.Trigger;
import liftwright.plant.motion.RunawayPath;
import liftwright.plant.motion.Stop;
import liftwright.plant.motion.Surroundings;
import liftwright.testkit.Seeded;
import org.junit.jupiter.api.Test;

/** What one run solved serves the next; each must be what it is alone, to the last bit. */
class RunawayAfterRunawayTest {

    private static final double NEVER = Double.POSITIVE_INFINITY;
    private static final double HORIZON_S = 1.5;

    @Test
    void aRunDependsOnNoRunBeforeIt() {
        Seeded.check(25, RunawayAfterRunawayTest::oneRig);
    }

    private static void oneRig(RandomGenerator random) {
        Plant plant = Plant.assemble(RandomRigs.doubtful(random));
        Runaway shared = plant.runaway();
        double[] p = new double[plant.parameters().size()];
        for (int draw = 0; draw < 2; draw++) {
            plant.parameters().draw(random.nextLong(), draw, p);
            shared.load(p);
            for (int run = 0; run < 4; run++) {
                RunawayCase of = drawn(random);
                Runaway alone = plant.runaway();
                alone.load(p);
                RunawayPath expected = alone.run(of, false);

                assertThat(shared.run(of, false)).isEqualTo(expected);
            }
        }
    }

    /** Mostly the same start, so that runs have much in common. */
    private static RunawayCase drawn(RandomGenerator random) {
        double atS = random.nextDouble(0.1, 1.2);
        Stop stop =
                switch (random.nextInt(3)) {
                    case 0 -> new Stop(atS, 0, NEVER, Set.of());
                    case 1 -> new Stop(NEVER, 0, atS, Set.of("main"));
                    default -> Stop.NEVER;
                };
        Start start =
                random.nextInt(4) == 0
                        ? new Start.Hover(random.nextDouble(0.5, 3))
                        : new Start.Ground();
        return new RunawayCase(new Trigger.AllFull(), start, stop, Surroundings.OPEN, HORIZON_S);
    }
}
