package liftwright.review.restraint;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import liftwright.answer.Finding;
import liftwright.plant.Plant;
import liftwright.plant.hold.Held;
import liftwright.rig.Rig;
import liftwright.rig.file.RigReading;
import org.junit.jupiter.api.Test;

/** A scale under the invented rig Mudlark. */
class ScaleReadingTest {

    private static ScaleReading reading(String platform) throws IOException {
        String text =
                Files.readString(Path.of("..", "examples", "mudlark", "rig.yaml"))
                        .replaceAll("(?s)\nrestraint:.*?(?=\n\\S|\\z)", "");
        text += "\nrestraint:\n  platform: {" + platform + "}\n";
        Rig rig =
                RigReading.read("rig.yaml", text.getBytes(StandardCharsets.UTF_8))
                        .rig()
                        .orElseThrow();
        Plant plant = Plant.assembleHeld(rig);
        Held held = plant.holding().at(plant.parameters().nominal(), false).orElseThrow();
        return ScaleReading.of(rig, held).orElseThrow();
    }

    /** A platform that takes all jets shows no lift at all: momentum in is momentum out. */
    @Test
    void jetsOnThePlatformHideTheLift() throws IOException {
        ScaleReading all = reading("length: 20 m, width: 20 m");
        assertThat(all.hidden()).isCloseTo(1, within(0.02));
        assertThat(all.findings())
                .extracting(Finding::code)
                .containsExactly("scale-cannot-resolve");
        ScaleReading some = reading("length: 0.8 m, width: 0.8 m");
        assertThat(some.hidden()).isBetween(0.01, 0.9);
        ScaleReading fine = reading("length: 0.2 m, width: 0.15 m, resolution: 10 g");
        assertThat(fine.hidden()).isLessThan(some.hidden());
    }

    /** Half of the lift hidden: half told, the doubt 0.3 of as much again. */
    @Test
    void whatIsHiddenIsDoubtOfWhatIsTold() {
        var half = new ScaleReading(1000, 800, 400, 0.001);
        assertThat(half.doubt(1)).isCloseTo(0.3, within(1e-3));
        var coarse = new ScaleReading(1000, 800, 0, 10);
        assertThat(coarse.doubt(1)).isCloseTo(10 * 9.80665 / 800, within(1e-12));
        assertThat(coarse.findings()).hasSize(1);
        assertThat(new ScaleReading(1000, 800, 8, 0.1).findings()).isEmpty();
    }
}
