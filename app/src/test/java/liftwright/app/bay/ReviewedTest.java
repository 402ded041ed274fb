package liftwright.app.bay;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.util.Optional;
import liftwright.answer.Answer;
import liftwright.app.JsonOfReview;
import liftwright.app.bay.Reviewed.Kept;
import liftwright.review.Stage;
import liftwright.rig.Rig;
import liftwright.rig.correction.Corrections;
import liftwright.rig.correction.CorrectionsRead;
import liftwright.rig.file.RigReading;
import liftwright.trials.ask.NotAsked;
import org.junit.jupiter.api.Test;

class ReviewedTest {

    private final Reviewed reviewed = new Reviewed();
    private final Rig rig = sandpiper();
    private final Answer one = new NotAsked("lift");
    private final Answer other = new NotAsked("lift");

    private static Rig sandpiper() {
        try {
            byte[] bytes = Files.readAllBytes(JsonOfReview.example("sandpiper"));
            return RigReading.read("rig.yaml", bytes).rig().orElseThrow();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private Optional<Answer> known(String digest, Rig of) {
        return reviewed.of(digest, of, "lift").map(Kept::answer);
    }

    @Test
    void aLesserStageTakesNothingAway() {
        reviewed.keep("a", rig, Stage.BANDED, one);
        assertThat(known("a", rig)).containsSame(one);
        assertThat(reviewed.forCards("a", rig, "lift")).as("no gate opens on half").isEmpty();
        reviewed.keep("a", rig, Stage.WHOLE, other);
        reviewed.keep("a", rig, Stage.NOMINAL, one);
        assertThat(known("a", rig)).containsSame(other);
        assertThat(reviewed.forCards("a", rig, "lift")).containsSame(other);
    }

    /** The file is the same text, and yet another rig is computed. */
    @Test
    void otherCorrectionsMakeAnotherState() {
        reviewed.keep("a", rig, Stage.WHOLE, one);
        Rig corrected = rig.with(new CorrectionsRead(Corrections.NONE, "sha256:1", false));
        Rig older = rig.with(new CorrectionsRead(Corrections.NONE, "sha256:1", true));
        assertThat(known("a", corrected)).isEmpty();
        reviewed.keep("a", corrected, Stage.WHOLE, other);
        assertThat(known("a", older)).isEmpty();
        assertThat(known("a", corrected)).containsSame(other);
        assertThat(known("a", rig)).containsSame(one);
    }

    @Test
    void whatIsAskedForCardsIsNotToldAsTheAnswer() {
        reviewed.keepForCards("a", rig, one);
        assertThat(reviewed.forCards("a", rig, "lift")).containsSame(one);
        assertThat(known("a", rig)).isEmpty();
    }

    @Test
    void theStateThatLayLongestIsForgotten() {
        for (int i = 0; i < 8; i++) {
            reviewed.keep("state " + i, rig, Stage.WHOLE, one);
        }
        assertThat(known("state 0", rig)).isPresent();
        reviewed.keep("state 8", rig, Stage.WHOLE, one);
        assertThat(known("state 0", rig)).as("looked at since").isPresent();
        assertThat(known("state 1", rig)).isEmpty();
        assertThat(known("state 8", rig)).isPresent();
    }
}
