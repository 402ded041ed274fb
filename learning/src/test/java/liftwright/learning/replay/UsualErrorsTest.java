package liftwright.learning.replay;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import liftwright.plant.recording.Recording;
import liftwright.plant.recording.Samples;
import liftwright.plant.recording.Signal;
import liftwright.plant.recording.Track;
import org.junit.jupiter.api.Test;

class UsualErrorsTest {

    private static Track track(Signal signal, double errorSi, double errorShare) {
        Samples samples = new Samples(new double[] {0, 1}, new double[] {1, 2});
        return new Track(signal, Track.ALL, errorSi, errorShare, samples);
    }

    @Test
    void everyInstrumentHasAnErrorAndWhatIsTakenForGrantedIsTold() {
        List<String> notes = new ArrayList<>();
        List<Track> all = new ArrayList<>();
        for (Signal signal : Signal.values()) {
            all.add(track(signal, 0, 0));
        }
        for (Track told : UsualErrors.in(new Recording(all), notes).tracks()) {
            assertThat(told.hasError()).as(told.name()).isEqualTo(told.signal() != Signal.THROTTLE);
        }
        assertThat(notes).hasSize(1);
        assertThat(notes.getFirst())
                .contains("speed", "common practice")
                .doesNotContain("throttle");
    }

    @Test
    void whatALogTellsStands() {
        List<String> notes = new ArrayList<>();
        Recording told =
                new Recording(
                        List.of(track(Signal.SPEED, 4, 0), track(Signal.AIR_PRESSURE, 0, 0.01)));
        assertThat(UsualErrors.in(told, notes)).isEqualTo(told);
        assertThat(notes).isEmpty();
    }
}
