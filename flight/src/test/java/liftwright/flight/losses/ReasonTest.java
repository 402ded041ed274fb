package liftwright.flight.losses;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import liftwright.review.failures.FaultOutcome;
import org.junit.jupiter.api.Test;

/** Each way in which a flight comes better than statics say has a reason that says which. */
class ReasonTest {

    @Test
    void everyWayHasAReasonOfItsOwn() {
        assertThat(Reason.better(FaultOutcome.TIPS, Came.RECOVERED))
                .isEqualTo(Reason.LEVEL_WITHOUT);
        assertThat(Reason.better(FaultOutcome.TIPS, Came.CAME_DOWN)).isEqualTo(Reason.DOWN_FIRST);
        assertThat(Reason.better(FaultOutcome.SINKS, Came.RECOVERED)).isEqualTo(Reason.HELD_UP);
        assertThat(Reason.better(FaultOutcome.SINKS, Came.CAME_DOWN)).isEqualTo(Reason.SOFTER);
        assertThat(Reason.better(FaultOutcome.CLIMBS, Came.RECOVERED)).isEqualTo(Reason.HELD_DOWN);
        assertThat(Reason.better(FaultOutcome.UNSTEERED, Came.RECOVERED)).isEqualTo(Reason.SLOW);
        // What falls by statics and stays up is a contradiction, and no reason covers it up.
        assertThat(Reason.better(FaultOutcome.FALLS, Came.RECOVERED)).isEqualTo(Reason.UNEXPLAINED);
    }

    /** What statics call borne is never better than called, so that no reason is made up for it. */
    @Test
    void whatIsBorneHasNone() {
        Set<FaultOutcome> borne =
                EnumSet.of(FaultOutcome.NO_EFFECT, FaultOutcome.FLIES_ON, FaultOutcome.TURNS);
        for (FaultOutcome one : borne) {
            assertThat(Reason.better(one, Came.RECOVERED)).isEqualTo(Reason.UNEXPLAINED);
        }
    }

    @Test
    void noTwoReasonsSayTheSame() {
        List<String> words = Arrays.stream(Reason.values()).map(Reason::words).toList();
        assertThat(words).doesNotHaveDuplicates();
        assertThat(words.stream().filter(String::isEmpty).count()).isEqualTo(1);
    }
}
