package liftwright.learning.turning;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import liftwright.plant.recording.Recording;
import liftwright.plant.recording.Samples;
import liftwright.plant.recording.Signal;
import liftwright.plant.recording.Track;

/**
 * Times over which all fans were told the same throttle, which stood still.
 *
 * @param fromS when rotors have settled, s
 * @param toS when it moves again, s
 * @param throttle 0 to 1
 */
record Holds(double fromS, double toS, double throttle) {

    /** Rotors take so long to settle, s; from memory. */
    private static final double SETTLES_S = 0.8;

    private static final double SHORTEST_S = 1;

    /** Below this a jet is too weak to tell anything. */
    private static final double LEAST = 0.25;

    private static final double STILL = 0.01;

    static List<Holds> in(Recording recording) {
        List<Holds> holds = new ArrayList<>();
        common(recording)
                .ifPresent(
                        told -> {
                            int from = 0;
                            for (int k = 1; k <= told.size(); k++) {
                                boolean moves =
                                        k == told.size()
                                                || Math.abs(told.si(k) - told.si(from)) > STILL;
                                if (moves) {
                                    add(holds, told, from, k - 1);
                                    from = k;
                                }
                            }
                        });
        return holds;
    }

    private static void add(List<Holds> holds, Samples told, int from, int to) {
        double begins = told.timeS(from) + SETTLES_S;
        if (told.si(from) >= LEAST && told.timeS(to) - begins >= SHORTEST_S) {
            holds.add(new Holds(begins, told.timeS(to), told.si(from)));
        }
    }

    /** The throttle of all, or of every fan where they are told the same all the time. */
    private static Optional<Samples> common(Recording recording) {
        List<Samples> told =
                recording.tracks().stream()
                        .filter(track -> track.signal() == Signal.THROTTLE)
                        .map(Track::samples)
                        .toList();
        if (told.isEmpty()) {
            return Optional.empty();
        }
        Samples first = told.getFirst();
        for (Samples other : told) {
            for (int k = 0; k < first.size(); k++) {
                if (Math.abs(other.at(first.timeS(k)) - first.si(k)) > STILL) {
                    return Optional.empty();
                }
            }
        }
        return Optional.of(first);
    }

    /** Mean and standard deviation of the mean; empty where fewer than two samples lie in it. */
    Optional<double[]> mean(Samples samples) {
        double sum = 0;
        double squares = 0;
        int count = 0;
        for (int k = 0; k < samples.size(); k++) {
            if (samples.timeS(k) >= fromS && samples.timeS(k) <= toS) {
                sum += samples.si(k);
                squares += samples.si(k) * samples.si(k);
                count++;
            }
        }
        if (count < 2) {
            return Optional.empty();
        }
        double mean = sum / count;
        double variance = Math.max(0, squares / count - mean * mean);
        // Samples follow each other: no more than one a second is new (from memory).
        double fresh = Math.max(1, Math.min(count, toS - fromS));
        return Optional.of(new double[] {mean, Math.sqrt(variance / fresh)});
    }
}
