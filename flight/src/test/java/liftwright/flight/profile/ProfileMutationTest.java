package liftwright.flight.profile;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import liftwright.flight.Examples;
import liftwright.rig.Problem;
import liftwright.rig.Rig;
import org.junit.jupiter.api.Test;

/** Every slip of a single token gives a profile or located problems, and never an exception. */
class ProfileMutationTest {

    private static final Pattern TOKEN =
            Pattern.compile("\\R *|[\\p{L}\\p{N}.°²·µΩ√/+−%-]+|[^\\s]");

    private static final List<String> JUNK =
            List.of(
                    "",
                    "@",
                    "{",
                    "]",
                    ": ",
                    "- ",
                    "\"",
                    "\t",
                    "#",
                    "|",
                    "99999 kg",
                    "\u0000",
                    "\uFEFF",
                    "\u202E",
                    "&a",
                    "zz",
                    "1e308",
                    "-0",
                    "[]",
                    "{}",
                    "null",
                    "9999999999999999999");

    @Test
    void noMutantThrows() {
        Rig curlew = Examples.rig("curlew");
        int valid = 0;
        int told = 0;
        List<String> texts =
                List.of(ProfileReadingTest.GOOD, Examples.profileText("curlew", "to-the-wearer"));
        for (String text : texts) {
            for (String mutant : mutants(text)) {
                ProfileReading reading =
                        ProfileReading.read("p.yaml", mutant.getBytes(UTF_8), curlew);
                assertThat(reading.profile().isPresent())
                        .as(mutant)
                        .isEqualTo(reading.problems().stream().noneMatch(p -> p.code().isError()));
                for (Problem problem : reading.problems()) {
                    assertThat(problem.at().line()).as(mutant).isPositive();
                    assertThat(problem.found()).as(mutant).isNotBlank();
                    assertThat(problem.expected()).as(mutant).isNotBlank();
                }
                valid += reading.profile().isPresent() ? 1 : 0;
                told += reading.profile().isPresent() ? 0 : 1;
            }
        }
        assertThat(valid).isGreaterThan(300);
        assertThat(told).isGreaterThan(3000);
    }

    private static List<String> mutants(String text) {
        var mutants = new ArrayList<String>();
        var matcher = TOKEN.matcher(text);
        int from = 0;
        while (matcher.find(from)) {
            from = matcher.end();
            String before = text.substring(0, matcher.start());
            String after = text.substring(matcher.end());
            mutants.add(before + matcher.group() + " " + matcher.group() + after);
            for (String junk : JUNK) {
                mutants.add(before + junk + after);
            }
            if (matcher.group().length() > 1) {
                mutants.add(before + matcher.group().substring(1) + after);
            }
        }
        return mutants;
    }
}
