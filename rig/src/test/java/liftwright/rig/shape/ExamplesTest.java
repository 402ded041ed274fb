package liftwright.rig.shape;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import liftwright.rig.DefaultUsed;
import liftwright.rig.Element;
import liftwright.rig.Fan;
import liftwright.rig.FanType;
import liftwright.rig.Insulation;
import liftwright.rig.Magnets;
import liftwright.rig.PartId;
import liftwright.rig.Problem;
import liftwright.rig.Rig;
import liftwright.rig.text.YamlText;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

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

    /** Whoever built these knows the wire, the fuse and the motor that they bought. */
    @ParameterizedTest
    @ValueSource(strings = {"mudlark", "curlew", "sandpiper"})
    void theExamplesSayWhatWarms(String name) {
        Rig rig = rig(name);
        rig.wiring().chains().stream()
                .flatMap(chain -> chain.elements().stream())
                .filter(Element.Run.class::isInstance)
                .forEach(e -> assertThat(((Element.Run) e).covering().declared()).isTrue());
        assertThat(rig.defaults())
                .extracting(DefaultUsed::value)
                .doesNotContain("that of PVC, the least heat-proof");
        for (FanType type : rig.fanTypes()) {
            assertThat(type.motor().heating().grade()).isNotEqualTo(Magnets.UNKNOWN);
            assertThat(type.motor().heating().windingClassK()).isPresent();
        }
    }

    /**
     * The wire that gives out, by hand: at some 50 A a fan in hover, the adiabatic law of IEC 60949
     * for the copper alone is the soonest, copper and PVC together as one lump of wire that gives
     * nothing off is near the truth. Values typed anew: 16 AWG is 1.309 mm² (ASTM B258), stranded
     * 15 % above solid copper, PVC 1.7 MJ/(m³ K) (IEC 60853).
     */
    @Test
    void theThinWireOfARevisionOfMudlarkPassesItsLimitWithinAHover() throws IOException {
        Path file = EXAMPLES.resolve("mudlark").resolve("revisions").resolve("4.yaml");
        Rig rig = Texts.rig(Files.readString(file));
        Element.Run run =
                rig.wiring().chains().stream()
                        .filter(chain -> chain.to().equals("left.1"))
                        .flatMap(chain -> chain.elements().stream())
                        .filter(Element.Run.class::isInstance)
                        .map(Element.Run.class::cast)
                        .findFirst()
                        .orElseThrow();
        assertThat(run.gauge()).isEqualTo(16);
        assertThat(run.covering().material()).isEqualTo(Insulation.PVC);
        assertThat(run.covering().classK()).isCloseTo(378.15, within(1e-9));
        double limitC = 105 - 20; // the distance that is kept by default
        double amperes = 50;
        double areaMm2 = 1.309;
        double startC = rig.site().temperature().orElseThrow().si() - 273.15;
        double copperAloneS =
                Math.pow(226 * areaMm2, 2)
                        * Math.log((limitC + 234.5) / (startC + 234.5))
                        / (amperes * amperes);
        double wallMm = 1e3 * run.covering().wall().si();
        double insulationMm2 = Math.PI * (1.291 + wallMm) * wallMm;
        double wattsPerM =
                amperes
                        * amperes
                        * 1.15
                        * 17.241e-3
                        / areaMm2
                        * (1 + 0.00393 * ((startC + limitC) / 2 - 20));
        double lumpS = (limitC - startC) * (3.45 * areaMm2 + 1.7 * insulationMm2) / wattsPerM;
        assertThat(copperAloneS).isBetween(8.0, 11.0);
        assertThat(lumpS).isBetween(17.0, 24.0);
        assertThat(rig.demands().hover().si()).isGreaterThan(2 * lumpS);
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
