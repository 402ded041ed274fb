package liftwright.learning.replay;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import liftwright.plant.recording.Recording;
import liftwright.plant.recording.Signal;
import liftwright.plant.recording.Track;
import liftwright.trials.Channel;
import liftwright.trials.predict.Gauge;

/**
 * Errors of instruments of which a log says nothing: those of usual ones. An instrument without
 * error would make a fault of every offset that it shows at rest.
 */
final class UsualErrors {

    private UsualErrors() {}

    /** 95 % of the errors are smaller: SI, and as a share of the reading, in quadrature. */
    private record Usual(double si, double share, String origin) {
        static Usual of(Gauge gauge) {
            Channel.Instrument usual = gauge.channel("").instrument();
            return new Usual(usual.errorSi(), usual.errorShare(), usual.origin());
        }
    }

    /**
     * The same with an error at every channel but the throttle, which is commanded.
     *
     * @param notes takes what was taken for granted, in words
     */
    static Recording in(Recording recording, List<String> notes) {
        List<Track> tracks = new ArrayList<>();
        var words = new TreeSet<String>();
        var origins = new TreeSet<String>();
        for (Track track : recording.tracks()) {
            Optional<Usual> usual = track.hasError() ? Optional.empty() : usual(track.signal());
            tracks.add(
                    usual.map(
                                    error ->
                                            new Track(
                                                    track.signal(),
                                                    track.of(),
                                                    error.si,
                                                    error.share,
                                                    track.samples()))
                            .orElse(track));
            usual.ifPresent(
                    error -> {
                        words.add(track.signal().word());
                        origins.add(error.origin);
                    });
        }
        if (!words.isEmpty()) {
            notes.add(
                    "no error is told of what measured "
                            + String.join(", ", words)
                            + ": that of usual instruments was taken ("
                            + String.join(", ", origins)
                            + ")");
        }
        return new Recording(tracks);
    }

    private static Optional<Usual> usual(Signal signal) {
        return switch (signal) {
            case THROTTLE -> Optional.empty();
            case THRUST -> Optional.of(Usual.of(Gauge.THRUST));
            case SCALE -> Optional.of(Usual.of(Gauge.SCALE));
            case TETHER_LOAD -> Optional.of(Usual.of(Gauge.TETHER));
            case CURRENT -> Optional.of(Usual.of(Gauge.PACK_CURRENT));
            case CELL_VOLTAGE -> Optional.of(Usual.of(Gauge.CELL_VOLTAGE));
            case SPEED -> Optional.of(Usual.of(Gauge.SPEED));
            case WINDING_CURRENT -> Optional.of(Usual.of(Gauge.WINDING_CURRENT));
            case TEMPERATURE -> Optional.of(Usual.of(Gauge.WIRE));
            case ROLL_MOMENT, PITCH_MOMENT, YAW_MOMENT ->
                    Optional.of(new Usual(1, 0.02, "from memory"));
            case VOLTAGE -> Optional.of(new Usual(0.1, 0.005, "from memory"));
            case CHARGE_USED -> Optional.of(new Usual(36, 0.02, "from memory"));
            case AIR_TEMPERATURE -> Optional.of(new Usual(1, 0, "common practice"));
            case AIR_PRESSURE -> Optional.of(new Usual(200, 0, "from memory"));
            case HUMIDITY -> Optional.of(new Usual(0.05, 0, "from memory"));
            case WIND -> Optional.of(new Usual(0.5, 0.1, "from memory"));
        };
    }
}
