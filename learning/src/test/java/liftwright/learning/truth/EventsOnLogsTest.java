package liftwright.learning.truth;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import liftwright.answer.Sentence;
import liftwright.learning.replay.Event;
import liftwright.learning.replay.Replay;
import liftwright.numerics.Work;
import liftwright.plant.recording.Signal;
import liftwright.rig.Rig;
import liftwright.testkit.Seeded;
import org.junit.jupiter.api.Test;

/** Events told of logs that were not made by the model: false alarms and misses. */
class EventsOnLogsTest {

    private static final int LOGS = 8;

    /** Larger rigs take longer and tell nothing more. */
    private static final int MOST_FANS = 3;

    private static List<Event> faults(SimulatedTest test) {
        return Replay.of(test.rig(), test.recording(), 1, 2, Work.quiet())
                .orElseThrow()
                .events()
                .stream()
                .filter(event -> event.kind().isFault())
                .toList();
    }

    /** A part that did get hotter than its limit is rightly told, however healthy it is. */
    private static boolean isHot(SimulatedTest test, Event event) {
        return event.kind() == Event.Kind.LIMIT_REACHED
                && event.channel().startsWith("temperature")
                && test.hottestK(event.part()) > limitK(event) - 3;
    }

    /** The second amount of the evidence; the first is what was shown. */
    private static double limitK(Event event) {
        return event.evidence().parts().stream()
                .filter(Sentence.Part.Amount.class::isInstance)
                .map(Sentence.Part.Amount.class::cast)
                .skip(1)
                .findFirst()
                .orElseThrow()
                .si();
    }

    /** No more than one healthy log in ten is alarmed about; of a few, one. */
    @Test
    void nothingHappenedInHealthyLogs() {
        List<String> alarms = new ArrayList<>();
        int[] logs = new int[1];
        Seeded.check(
                LOGS,
                random -> {
                    var test =
                            SimulatedTest.draw(
                                    random.nextLong(), SimulatedTest.Sort.HEALTHY, MOST_FANS);
                    logs[0]++;
                    List<Event> told =
                            faults(test).stream().filter(event -> !isHot(test, event)).toList();
                    if (!told.isEmpty()) {
                        alarms.add(test + ": " + told);
                    }
                });
        assertThat(alarms.size())
                .as(String.join("\n", alarms))
                .isLessThanOrEqualTo(Math.max(1, logs[0] / 10));
    }

    /** A fan that stops in mid-run is seen within 2 s of its moment, on itself or on its pack. */
    @Test
    void aFanThatStopsIsSeen() {
        List<String> missed = new ArrayList<>();
        int[] logs = new int[1];
        Seeded.check(
                LOGS,
                random -> {
                    var test =
                            SimulatedTest.draw(
                                    random.nextLong(),
                                    one -> one.kind() == Hidden.Kind.DEAD_FAN && one.fromS() > 0,
                                    MOST_FANS);
                    Hidden dead = test.hidden().getFirst();
                    double lastS =
                            test.recording().all(Signal.CURRENT).getFirst().samples().lastS();
                    if (lastS < dead.fromS() + 1) {
                        return; // the log ends before anything can be seen
                    }
                    logs[0]++;
                    List<Event> told = faults(test);
                    if (told.stream().noneMatch(event -> isOf(test.rig(), event, dead))) {
                        missed.add(test + ": " + told);
                    }
                });
        assertThat(logs[0]).isGreaterThan(LOGS / 3);
        assertThat(missed.size())
                .as(String.join("\n", missed))
                .isLessThanOrEqualTo(Math.max(1, logs[0] / 10));
    }

    private static boolean isOf(Rig rig, Event event, Hidden dead) {
        boolean inTime = Math.abs(event.timeS() - dead.fromS()) < 2;
        boolean itself = event.part().equals(dead.part());
        boolean itsPack = rig.packs().stream().anyMatch(p -> p.id().text().equals(event.part()));
        return inTime && (itself || itsPack);
    }
}
