package liftwright.rig.shape;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import liftwright.rig.Fan;
import liftwright.rig.PartId;
import liftwright.rig.Problem;
import liftwright.rig.Rig;
import liftwright.rig.text.YamlText;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The rigs that ship with the product read without errors and mean what they say. */
class ExamplesTest {

    private static final Path EXAMPLES = Path.of("..", "examples");

    static Read read(String name) {
        Path file = EXAMPLES.resolve(name).resolve("rig.yaml");
        try {
            var reading = YamlText.read("rig.yaml", Files.readAllBytes(file));
            assertThat(reading.problems()).isEmpty();
            return RigReader.read("rig.yaml", reading.root().orElseThrow());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static Rig rig(String name) {
        Read read = read(name);
        assertThat(read.problems()).extracting(Problem::code).doesNotContain(errors());
        return read.rig().orElseThrow();
    }

    private static Problem.Code[] errors() {
        return java.util.Arrays.stream(Problem.Code.values())
                .filter(Problem.Code::isError)
                .toArray(Problem.Code[]::new);
    }

    @ParameterizedTest
    @CsvSource({
        "mudlark, 24, 12, 36",
        "curlew, 8, 4, 12",
        "sandpiper, 4, 4, 8",
        "measured, 5, 5, 10"
    })
    void everyExampleBindsToItsParts(String name, int fans, int packs, int chains) {
        Rig rig = rig(name);
        assertThat(rig.fans()).hasSize(fans);
        assertThat(rig.packs()).hasSize(packs);
        assertThat(rig.wiring().chains()).hasSize(chains);
    }

    @Test
    void theRightPodIsTheMirrorImageOfTheLeftOne() {
        Rig rig = rig("mudlark");
        for (int i = 1; i <= 8; i++) {
            Fan left = fan(rig, PartId.of("left", i));
            Fan right = fan(rig, PartId.of("right", i));
            assertThat(right.mount().on()).isEqualTo(left.mount().on().twin());
            assertThat(right.at().x()).isEqualTo(left.at().x());
            assertThat(right.at().y()).isEqualTo(-left.at().y());
            assertThat(right.at().z()).isEqualTo(left.at().z());
            assertThat(right.spin()).isNotEqualTo(left.spin());
        }
        var pod = rig.mounts().stream().filter(m -> m.name().equals("right pod")).findFirst();
        assertThat(pod.orElseThrow().at().y()).isCloseTo(0.040, within(1e-12));
    }

    @Test
    void packsAreSpreadEvenlyBetweenTheEnds() {
        Rig rig = rig("mudlark");
        for (int i = 0; i < 12; i++) {
            // −40 mm to 180 mm up in eleven steps of 20 mm, z down
            assertThat(rig.packs().get(i).at().z()).isCloseTo(0.040 - 0.020 * i, within(1e-12));
        }
    }

    private static Fan fan(Rig rig, PartId id) {
        return rig.fans().stream().filter(f -> f.id().equals(id)).findFirst().orElseThrow();
    }
}
