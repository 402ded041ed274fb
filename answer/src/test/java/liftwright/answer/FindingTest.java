package liftwright.answer;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class FindingTest {

    private static final Value JUDGED = Value.of("thrust-to-weight", 1.04);
    private static final Finding.Limit LIMIT =
            new Finding.Limit(Value.of("thrust-to-weight-demand", 1.15), "declared");
    private static final Remedy REMEDY =
            new Remedy(
                    Sentence.words("carry less"),
                    List.of(),
                    new Remedy.Effect.Helps(JUDGED, Value.of("thrust-to-weight", 0.1)));

    private final Finding bare =
            Finding.of(Finding.Severity.WARNS, "lift-short", Sentence.words("short"), "it sags");

    /** Written out once by its nine components, which is what the short forms stand for. */
    @Test
    void eachStepSaysOneThingAndKeepsTheRest() {
        var whole =
                new Finding(
                        Finding.Severity.WARNS,
                        "lift-short",
                        Optional.of("left.3"),
                        Optional.of("fans/left"),
                        Sentence.words("short"),
                        Optional.of(JUDGED),
                        Optional.of(LIMIT),
                        "it sags",
                        List.of(REMEDY));

        assertThat(
                        bare.about("left.3")
                                .at("fans/left")
                                .against(JUDGED, LIMIT)
                                .mendedBy(List.of(REMEDY)))
                .isEqualTo(whole);
        assertThat(
                        bare.mendedBy(List.of(REMEDY))
                                .against(JUDGED, LIMIT)
                                .at("fans/left")
                                .about("left.3"))
                .isEqualTo(whole);
    }

    @Test
    void whatWasNotSaidIsEmpty() {
        assertThat(bare.part()).isEmpty();
        assertThat(bare.path()).isEmpty();
        assertThat(bare.value()).isEmpty();
        assertThat(bare.limit()).isEmpty();
        assertThat(bare.remedies()).isEmpty();
    }

    @Test
    void aNumberHeldAgainstNothingHasNoLimit() {
        assertThat(bare.judging(JUDGED).value()).contains(JUDGED);
        assertThat(bare.judging(JUDGED).limit()).isEmpty();
    }
}
