package liftwright.flight.profile;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import liftwright.flight.Examples;
import liftwright.rig.Problem;
import liftwright.rig.Rig;
import liftwright.testkit.Slips;
import org.junit.jupiter.api.Test;

/** Every slip of a single token gives a profile or located problems, and never an exception. */
class ProfileMutationTest {

    @Test
    void noMutantThrows() {
        Rig curlew = Examples.rig("curlew");
        int valid = 0;
        int told = 0;
        List<String> texts =
                List.of(ProfileReadingTest.GOOD, Examples.profileText("curlew", "to-the-wearer"));
        for (String text : texts) {
            Slips slips = new Slips(text);
            for (int i = 0; i < slips.tokens(); i++) {
                for (int way = 0; way < Slips.WAYS; way++) {
                    boolean read = check(slips.slip(i, way), curlew);
                    valid += read ? 1 : 0;
                    told += read ? 0 : 1;
                }
            }
        }
        assertThat(valid).isGreaterThan(300);
        assertThat(told).isGreaterThan(3000);
    }

    /** Whether there is a profile. */
    private static boolean check(String mutant, Rig curlew) {
        ProfileReading reading = ProfileReading.read("p.yaml", mutant.getBytes(UTF_8), curlew);
        assertThat(reading.profile().isPresent())
                .as(mutant)
                .isEqualTo(reading.problems().stream().noneMatch(p -> p.code().isError()));
        for (Problem problem : reading.problems()) {
            assertThat(problem.at().line()).as(mutant).isPositive();
            assertThat(problem.found()).as(mutant).isNotBlank();
            assertThat(problem.expected()).as(mutant).isNotBlank();
        }
        return reading.profile().isPresent();
    }
}
