package liftwright.learning.ask;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import liftwright.answer.Finding;
import liftwright.answer.Finding.Severity;
import liftwright.answer.Sentence;
import liftwright.testkit.Seeded;
import org.junit.jupiter.api.Test;

class FoldedTest {

    private static Finding finding(Severity severity, String code, int number) {
        return Finding.of(severity, code, Sentence.words("number " + number), "none");
    }

    /** What stops and what is told nowhere else stays; the rest is counted, none is lost. */
    @Test
    void foldsTheRestAndLosesNone() {
        List<String> codes =
                List.of("event-sag", "channel-outside", "channel-not-predicted", "cause-note");
        Seeded.check(
                300,
                random -> {
                    List<Finding> found = new ArrayList<>();
                    for (Severity severity : Severity.values()) {
                        int many = random.nextInt(12);
                        for (int k = 0; k < many; k++) {
                            String code = codes.get(random.nextInt(codes.size()));
                            found.add(finding(severity, code, found.size()));
                        }
                    }
                    List<Finding> told = Folded.of(found);
                    List<Finding> kept =
                            told.stream()
                                    .filter(one -> !one.code().equals("findings-folded"))
                                    .toList();
                    assertThat(kept).isSubsetOf(found).doesNotHaveDuplicates();
                    assertThat(kept)
                            .isSortedAccordingTo((a, b) -> found.indexOf(a) - found.indexOf(b));
                    assertThat(told)
                            .containsAll(
                                    found.stream()
                                            .filter(
                                                    one ->
                                                            one.severity() == Severity.STOPS
                                                                    || one.code()
                                                                            .equals("cause-note"))
                                            .toList());
                    int folded = found.size() - kept.size();
                    assertThat(told.size() - kept.size()).isEqualTo(folded > 0 ? 1 : 0);
                    if (folded > 0) {
                        assertThat(told.getLast().sentence().toString()).contains(folded + " more");
                    }
                    long plain =
                            IntStream.range(0, kept.size())
                                    .mapToObj(kept::get)
                                    .filter(one -> one.severity() != Severity.STOPS)
                                    .filter(one -> !one.code().equals("cause-note"))
                                    .count();
                    assertThat(plain).isLessThanOrEqualTo(Folded.MOST);
                });
    }
}
