package liftwright.flight.ask;

import static org.assertj.core.api.Assertions.assertThat;

import liftwright.answer.Finding;
import liftwright.answer.Section;
import liftwright.flight.Examples;
import liftwright.flight.profile.Profile;
import liftwright.numerics.Work;
import liftwright.review.Settings;
import liftwright.review.Stage;
import org.junit.jupiter.api.Test;

/** Where no computer flies, the answer tells of the person who does. */
class SteeredAnswerTest {

    @Test
    void theAnswerOnMudlarkSaysWhetherItsWearerCanHoldIt() {
        var answer =
                FlightQuestion.staged(
                                Examples.rig("mudlark"),
                                "digest",
                                Profile.usual(),
                                Settings.standard())
                        .answer(Stage.NOMINAL, Work.quiet())
                        .orElseThrow();
        assertThat(answer.sections())
                .extracting(Section::id)
                .contains("pilot-motions", "pilot-axes");
        assertThat(answer.findings())
                .extracting(Finding::code)
                .contains("pilot-grows", "steered-by-a-person");
    }
}
