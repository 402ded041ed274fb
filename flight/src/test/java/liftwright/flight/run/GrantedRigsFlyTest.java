package liftwright.flight.run;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.random.RandomGenerator;
import liftwright.flight.Examples;
import liftwright.flight.FlyingRigs;
import liftwright.flight.loops.LoopDesign;
import liftwright.flight.loops.RigLoops;
import liftwright.flight.profile.Profile;
import liftwright.plant.Plant;
import liftwright.rig.Rig;
import liftwright.rig.file.RigReading;
import liftwright.testkit.Seeded;
import org.junit.jupiter.api.Test;

/** Random rigs for which loops are granted fly a profile within its limits on the whole plant. */
class GrantedRigsFlyTest {

    private static double between(RandomGenerator random, double least, double most) {
        return least + (most - least) * random.nextDouble();
    }

    private static String put(String text, String from, String format, double value) {
        assertThat(text).contains(from);
        return text.replace(from, String.format(Locale.ROOT, format, value));
    }

    /** Curlew, larger or smaller, heavier, with other rotors, swirl and delays. */
    private static Rig rig(RandomGenerator random) {
        try {
            String text = Files.readString(Path.of("..", "examples", "curlew", "rig.yaml"));
            text = put(text, "spacing: 150 mm", "spacing: %.0f mm", between(random, 145, 220));
            text =
                    put(
                            text,
                            "row spacing: 170 mm",
                            "row spacing: %.0f mm",
                            between(random, 150, 300));
            text = put(text, "mass: 2.2 kg", "mass: %.2f kg", between(random, 1.5, 8));
            text = put(text, "swirl: 0.10", "swirl: %.2f", between(random, 0.1, 0.3));
            text = put(text, "inertia: 120 kg", "inertia: %.0f kg", between(random, 70, 200));
            text = put(text, "  delay: 3 ms", "  delay: %.1f ms", between(random, 1, 6));
            return RigReading.read("rig.yaml", text.getBytes(StandardCharsets.UTF_8))
                    .rig()
                    .orElseThrow();
        } catch (java.io.IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }

    /** Rings and rows of four to twelve fans from a hand's width to a forearm's length. */
    @Test
    void soDoGrantedRigsOfAnyShape() {
        int[] seen = {0, 0};
        Seeded.check(
                12,
                random -> {
                    Rig rig = FlyingRigs.draw(random);
                    Plant plant = Plant.assembleHeated(rig);
                    seen[0]++;
                    if (!(new RigLoops(plant.balancing()).design()
                            instanceof LoopDesign.Granted granted)) {
                        return;
                    }
                    seen[1]++;
                    Profile profile = Profile.usual();
                    FlightOutcome flown =
                            new FlightRun(plant, new ComputerCrew(rig, granted))
                                    .fly(FlightCase.of(plant, profile, 1, 0));
                    assertThat(flown.end())
                            .as("%s", flown.events())
                            .isEqualTo(FlightOutcome.End.LANDED);
                    assertThat(flown.isWell(profile.limits())).as("%s", flown.figures()).isTrue();
                });
        // One case alone, as a failure asks for it again, may be a refused one.
        assertThat(seen[1]).isGreaterThanOrEqualTo(seen[0] / 2);
    }

    @Test
    void aGrantedRigFliesItsProfile() {
        int[] seen = {0};
        Seeded.check(
                4,
                random -> {
                    Rig rig = rig(random);
                    Plant plant = Plant.assembleHeated(rig);
                    if (!(new RigLoops(plant.balancing()).design()
                            instanceof LoopDesign.Granted granted)) {
                        return;
                    }
                    seen[0]++;
                    Profile profile =
                            Examples.profile(rig, Examples.profileText("curlew", "to-the-wearer"));
                    FlightOutcome flown =
                            new FlightRun(plant, new ComputerCrew(rig, granted))
                                    .fly(FlightCase.of(plant, profile, 1, 0));
                    assertThat(flown.end())
                            .as("%s", flown.events())
                            .isEqualTo(FlightOutcome.End.LANDED);
                    assertThat(flown.isWell(profile.limits())).as("%s", flown.figures()).isTrue();
                });
        assertThat(seen[0]).isGreaterThan(1);
    }
}
