package liftwright.trials.measure;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.TreeSet;
import java.util.random.RandomGenerator;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import liftwright.numerics.Work;
import liftwright.rig.Rig;
import liftwright.testkit.Seeded;
import liftwright.trials.Planned;
import liftwright.trials.RandomTrialRig;
import liftwright.trials.evidence.Inputs;
import liftwright.trials.programme.Programme;
import org.junit.jupiter.api.Test;

/** What a measuring card predicts does not change while its pass stands. */
class NumbersRestOnTheirInputsTest {

    private static final Pattern NUMBER = Pattern.compile("(?<=[ :\\[])\\d+(?:\\.\\d+)?(?= )");

    @Test
    void anInputThatNoPassRestsOnChangesNoNumber() {
        int[] seen = {0, 0};
        TreeSet<String> kinds = new TreeSet<>();
        Seeded.check(
                60,
                random -> {
                    String text = RandomTrialRig.yaml(random);
                    Rig rig = RandomTrialRig.rig(text);
                    Optional<Rig> other = RandomTrialRig.reading(changed(text, random)).rig();
                    if (other.isEmpty()) {
                        return;
                    }
                    List<String> differing = differing(Inputs.of(rig), Inputs.of(other.get()));
                    for (Planned card : Programme.of(rig).cards()) {
                        boolean rests =
                                differing.stream()
                                        .anyMatch(path -> Inputs.rests(card.basis(), path));
                        seen[1]++;
                        if (!rests && !differing.isEmpty()) {
                            Optional<Measured> was = made(rig, card);
                            if (was.isPresent()) {
                                assertThat(made(other.get(), card).orElseThrow().readings())
                                        .as(card.id() + " after " + differing)
                                        .isEqualTo(was.get().readings());
                                seen[0]++;
                                kinds.add(card.id().kind().id());
                            }
                        }
                    }
                });
        assertThat(seen[0]).isGreaterThan(150);
        assertThat(kinds).hasSizeGreaterThan(6);
    }

    private static Optional<Measured> made(Rig rig, Planned card) {
        return Measuring.of(rig, card, 11, 1, Work.quiet());
    }

    /** The text with one number seven per cent greater. */
    private static String changed(String text, RandomGenerator random) {
        List<MatchResult> numbers = new ArrayList<>(NUMBER.matcher(text).results().toList());
        MatchResult one = numbers.get(random.nextInt(numbers.size()));
        String greater = String.format(Locale.ROOT, "%.4f", 1.07 * Double.parseDouble(one.group()));
        return text.substring(0, one.start()) + greater + text.substring(one.end());
    }

    private static List<String> differing(Inputs one, Inputs other) {
        TreeSet<String> paths = new TreeSet<>(one.byPath().keySet());
        paths.addAll(other.byPath().keySet());
        return paths.stream()
                .filter(
                        path ->
                                !one.byPath()
                                        .getOrDefault(path, "")
                                        .equals(other.byPath().getOrDefault(path, "")))
                .toList();
    }
}
