package liftwright.plant.drive;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/** What reaches a fan of what its channel was told, and when. */
class CommandsTest {

    private static Commands of(double[] delayS, double[] slewPerS) {
        Commands commands = new Commands(delayS, slewPerS);
        for (int fan = 0; fan < delayS.length; fan++) {
            commands.full(fan, 1);
        }
        return commands;
    }

    private static final double FREE = Double.POSITIVE_INFINITY;

    @Test
    void aDelayIsWholeStepsAndNoLess() {
        Commands commands = of(new double[] {0, 0.003, 0.0031}, new double[] {FREE, FREE, FREE});
        int[] seen = {-1, -1, -1};
        for (int step = 0; step < 10; step++) {
            for (int fan = 0; fan < 3; fan++) {
                commands.tell(fan, 0.5);
            }
            commands.step(0.001);
            for (int fan = 0; fan < 3; fan++) {
                if (seen[fan] < 0 && commands.duty(fan) > 0) {
                    seen[fan] = step;
                }
            }
        }
        assertThat(seen).containsExactly(0, 3, 4);
        assertThat(commands.lateS(2)).isCloseTo(0.004, within(1e-12));
    }

    @Test
    void aSlewIsARamp() {
        Commands commands = of(new double[] {0}, new double[] {10});
        commands.tell(0, 0.25);
        for (int step = 1; step <= 40; step++) {
            commands.step(0.001);
            assertThat(commands.duty(0)).isCloseTo(Math.min(0.25, 0.01 * step), within(1e-12));
        }
        commands.tell(0, 0);
        commands.step(0.001);
        assertThat(commands.duty(0)).isCloseTo(0.24, within(1e-12));
    }

    @Test
    void whatLiesOutsideIsTheNearerEndOfTheFullShare() {
        Commands commands = of(new double[] {0, 0}, new double[] {FREE, FREE});
        commands.full(0, 0.8);
        commands.tell(0, 3);
        commands.tell(1, -1);
        commands.step(0.001);
        assertThat(commands.duty(0)).isEqualTo(0.8);
        assertThat(commands.duty(1)).isZero();
    }

    @Test
    void anotherStepKeepsWhatFansFollow() {
        Commands commands = of(new double[] {0.004}, new double[] {FREE});
        commands.tell(0, 0.6);
        commands.reach();
        commands.step(0.001);
        assertThat(commands.duty(0)).isEqualTo(0.6);
        commands.step(0.0005);
        assertThat(commands.duty(0)).isEqualTo(0.6);
    }

    @Test
    void exchangedChannelsReachEachOthersFan() {
        Commands commands = of(new double[] {0, 0.002}, new double[] {FREE, FREE});
        commands.exchange(0, 1);
        commands.tell(0, 0.2);
        commands.tell(1, 0.7);
        for (int step = 0; step < 5; step++) {
            commands.step(0.001);
        }
        assertThat(commands.duty(0)).isEqualTo(0.7);
        assertThat(commands.duty(1)).isEqualTo(0.2);
        commands.confine(1, 0.4, 0.4);
        commands.step(0.001);
        assertThat(commands.duty(1)).isEqualTo(0.4);
    }
}
