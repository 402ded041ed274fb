package liftwright.review.kill;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Percentage.withPercentage;

import java.util.List;
import java.util.Optional;
import liftwright.plant.Plant;
import liftwright.review.kill.KillRigs.Switch;
import liftwright.rig.Kill;
import org.junit.jupiter.api.Test;

class KillTimesTest {

    private static KillTimes curlew(String... replacements) {
        return KillTimes.of(Plant.assemble(KillRigs.curlew(replacements)));
    }

    /**
     * By hand: κ = 4.6 kW / (26000 rpm)³, at 1.2345 kg/m³ of the site. A rotor that coasts steps
     * through its equation of motion here.
     */
    @Test
    void delayContactorAndCoastingAddUp() {
        KillTimes times = curlew("breaks: 4000 A,", "breaks: 4000 A, opens in: 20 ms,");
        double density = 1.2385; // 12 °C, 80 % humidity, 4 m: within 0.3 %
        double kappa = 4600 / Math.pow(26_000 * Math.PI / 30, 3) * density / 1.225;
        double speed = times.full().fanSpeedRadps(0);
        double least = speed;
        for (int fan = 0; fan < 8; fan++) {
            least = Math.min(least, times.full().fanSpeedRadps(fan));
        }
        double now = least;
        double time = 0;
        double step = 1e-6;
        while (now * now > 0.1 * least * least) {
            now -= step * kappa * now * now / 120e-6;
            time += step;
        }
        var one = new Switch("remote");
        one.opens = List.of("main");
        assertThat(times.pressToStillS(one.kill(), List.of()).orElseThrow())
                .isCloseTo(0.05 + 0.02 + time, withPercentage(0.5));

        one.order = Kill.Order.COMMAND_ZERO_THEN_OPEN;
        assertThat(times.pressToStillS(one.kill(), List.of()).orElseThrow())
                .isCloseTo(0.05 + time, withPercentage(0.5));
    }

    @Test
    void withoutInertiaNoTimeIsTold() {
        KillTimes times = curlew(", inertia: 120 kg·mm²", "");
        var one = new Switch("remote");
        one.opens = List.of("main");
        assertThat(times.pressToStillS(one.kill(), List.of())).isEmpty();
        assertThat(times.withoutInertia()).isPresent();
    }

    @Test
    void theReactionIsThatOfTheKillElseOfThePersonElseTheLimit() {
        KillTimes times =
                curlew(
                        "watcher: {reaction: 1.5 s}",
                        "watcher: {reaction: 0.9 s}\n  helper: {role: looks on}");
        var one = new Switch("remote");
        assertThat(times.reactionS(one.kill())).isEqualTo(1.5);
        one.heldBy = Optional.of("watcher");
        assertThat(times.reactionS(one.kill())).isEqualTo(0.9);
        one.heldBy = Optional.of("helper");
        assertThat(times.reactionS(one.kill())).isEqualTo(1.5);
        one.heldBy = Optional.of("wearer");
        assertThat(times.reactionS(one.kill())).isEqualTo(2);
        Kill declared =
                KillRigs.curlew("held by: watcher", "held by: watcher, reaction: 0.7 s")
                        .wiring()
                        .kills()
                        .getFirst();
        assertThat(times.reactionS(declared)).isEqualTo(0.7);
    }
}
