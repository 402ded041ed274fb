package liftwright.plant.recording;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * What was recorded in a test: channels on one clock, each with samples of its own.
 *
 * @param tracks no two with the same name
 */
public record Recording(List<Track> tracks) {

    /**
     * @throws IllegalArgumentException when two tracks have one name
     */
    public Recording {
        tracks = List.copyOf(tracks);
        Set<String> names = new HashSet<>();
        for (Track track : tracks) {
            if (!names.add(track.name())) {
                throw new IllegalArgumentException("two tracks are called " + track.name());
            }
        }
    }

    /** A channel by what it measures and of what; empty where it was not recorded. */
    public Optional<Track> track(Signal signal, String of) {
        return tracks.stream()
                .filter(track -> track.signal() == signal && track.of().equals(of))
                .findFirst();
    }

    /** All channels that measure the same. */
    public List<Track> all(Signal signal) {
        return tracks.stream().filter(track -> track.signal() == signal).toList();
    }
}
