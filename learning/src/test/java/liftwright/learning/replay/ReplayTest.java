package liftwright.learning.replay;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import liftwright.answer.Sentence;
import liftwright.learning.truth.SimulatedTest;
import liftwright.numerics.Work;
import liftwright.plant.recording.Recording;
import liftwright.plant.recording.Signal;
import liftwright.plant.recording.Track;
import liftwright.rig.Rig;
import liftwright.testkit.Seeded;
import liftwright.trials.RandomTrialRig;
import org.junit.jupiter.api.Test;

/**
 * Recordings of the simulator of {@link SimulatedTest}, which shares no line with the product and
 * has effects that the model lacks, beside the bands of a replay.
 */
class ReplayTest {

    private static final int LOGS = Seeded.deep() ? 100 : 20;
    private static final int RIGS = 3;

    @Test
    void bandsHoldWhatHealthyRigsOfARicherModelShow() {
        Map<Signal, int[]> tallies = new TreeMap<>();
        int[] whole = new int[2];
        int[] lift = new int[2];
        List<String> falsely = new ArrayList<>();
        for (int log = 0; log < LOGS; log++) {
            SimulatedTest test =
                    SimulatedTest.draw(9_100_000L + log, SimulatedTest.Sort.HEALTHY, 6);
            Replay replay =
                    Replay.of(test.rig(), test.recording(), 7, 2, Work.quiet()).orElseThrow();
            for (Replayed channel : replay.channels()) {
                int[] tally =
                        tallies.computeIfAbsent(
                                channel.watched().track().signal(), any -> new int[2]);
                for (int block = 0; block < channel.blocks(); block++) {
                    tally[0] += channel.isInside(block) ? 1 : 0;
                    tally[1]++;
                }
            }
            if (replay.lift().isPresent()) {
                lift[0] += replay.lift().get().isWithin() ? 1 : 0;
                lift[1]++;
            }
            for (Event event : replay.events()) {
                if (event.kind().isFault()
                        && event.kind() != Event.Kind.SAG
                        && event.kind() != Event.Kind.LIMIT_REACHED) {
                    falsely.add(log + " " + event.kind() + " " + words(event));
                }
            }
        }
        StringBuilder told = new StringBuilder();
        tallies.forEach(
                (signal, tally) -> {
                    whole[0] += tally[0];
                    whole[1] += tally[1];
                    told.append(
                            String.format(
                                    Locale.ROOT,
                                    "%n%-16s %6d blocks, %.1f %% inside",
                                    signal.word(),
                                    tally[1],
                                    100.0 * tally[0] / tally[1]));
                });
        assertThat((double) whole[0] / whole[1]).as("inside%s", told).isBetween(0.90, 0.99);
        assertThat((double) lift[0] / lift[1]).as("lift within").isGreaterThan(0.88);
        // Events are told of no healthy rig but in one log of fifty.
        assertThat(falsely.size())
                .as("false events: %s", falsely)
                .isLessThanOrEqualTo(LOGS / 50 + 1);
    }

    @Test
    void threadsChangeNoBit() {
        Rig rig = RandomTrialRig.rig(new Random(4));
        Recording recording =
                new MadeRecording(rig, MadeRecording.course(new Random(5), 0.5, 40), false)
                        .recording();
        Replay one = Replay.of(rig, recording, 3, 1, Work.quiet()).orElseThrow();
        Replay three = Replay.of(rig, recording, 3, 3, Work.quiet()).orElseThrow();
        for (int k = 0; k < one.channels().size(); k++) {
            assertThat(three.channels().get(k).lowSi()).isEqualTo(one.channels().get(k).lowSi());
            assertThat(three.channels().get(k).highSi()).isEqualTo(one.channels().get(k).highSi());
        }
        assertThat(one.draws()).isGreaterThan(200);
    }

    @Test
    void theOrderOfChannelsChangesNothing() {
        Seeded.check(
                RIGS,
                random -> {
                    Rig rig = RandomTrialRig.rig(random);
                    Recording recording =
                            new MadeRecording(rig, MadeRecording.course(random, 0.5, 40), false)
                                    .recording();
                    List<Track> shuffled = new ArrayList<>(recording.tracks());
                    Collections.shuffle(shuffled, new Random(8));
                    Replay one = Replay.of(rig, recording, 3, 2, Work.quiet()).orElseThrow();
                    Replay other =
                            Replay.of(rig, new Recording(shuffled), 3, 2, Work.quiet())
                                    .orElseThrow();
                    for (Replayed channel : one.channels()) {
                        Replayed same =
                                other.channels().stream()
                                        .filter(
                                                of ->
                                                        of.watched()
                                                                .track()
                                                                .name()
                                                                .equals(
                                                                        channel.watched()
                                                                                .track()
                                                                                .name()))
                                        .findFirst()
                                        .orElseThrow();
                        assertThat(same.expectedSi()).isEqualTo(channel.expectedSi());
                        assertThat(same.lowSi()).isEqualTo(channel.lowSi());
                    }
                });
    }

    static String words(Event event) {
        StringBuilder told = new StringBuilder();
        for (var part : event.evidence().parts()) {
            told.append(
                    switch (part) {
                        case Sentence.Part.Words words -> words.text();
                        case Sentence.Part.Amount amount ->
                                String.format(Locale.ROOT, "%.4g", amount.si());
                    });
        }
        return told.toString();
    }
}
