package liftwright.trials;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashSet;
import java.util.Set;
import liftwright.rig.Problem;
import liftwright.rig.Rig;
import liftwright.testkit.Seeded;
import org.junit.jupiter.api.Test;

/** What the random rigs of these tests are worth. */
class RandomTrialRigTest {

    @Test
    void theyReadWithoutProblemsAndDiffer() {
        Set<String> seen = new HashSet<>();
        Seeded.check(
                500,
                random -> {
                    String yaml = RandomTrialRig.yaml(random);
                    var reading = RandomTrialRig.reading(yaml);
                    assertThat(reading.problems().stream().map(Problem::code))
                            .as(yaml + reading.problems())
                            .isEmpty();
                    Rig rig = reading.rig().orElseThrow();
                    seen.add(rig.wearer().isPresent() ? "worn" : "module");
                    seen.add("types " + rig.fanTypes().size());
                    seen.add("mounts " + rig.mounts().size());
                    seen.add("kills " + rig.wiring().kills().size());
                    seen.add("stand " + rig.restraint().stand().isPresent());
                    seen.add("tether " + rig.restraint().tether().isPresent());
                    seen.add("scale " + rig.restraint().platform().isPresent());
                    seen.add("crew " + rig.crew().size());
                    seen.add(rig.control().kind().name());
                });
        assertThat(seen)
                .contains(
                        "worn",
                        "module",
                        "types 1",
                        "types 2",
                        "types 3",
                        "mounts 1",
                        "mounts 2",
                        "mounts 3",
                        "mounts 4",
                        "kills 0",
                        "kills 1",
                        "kills 2",
                        "kills 3",
                        "stand true",
                        "stand false",
                        "tether true",
                        "tether false",
                        "scale true",
                        "crew 0",
                        "crew 2",
                        "SHARED_THROTTLE",
                        "FLIGHT_COMPUTER");
    }

    @Test
    void theExamplesRead() {
        assertThat(TrialExamples.NAMES)
                .isNotEmpty()
                .allSatisfy(name -> assertThat(TrialExamples.rig(name).fans()).isNotEmpty());
    }
}
