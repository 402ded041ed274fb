package liftwright.learning.replay;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import liftwright.plant.recording.Recording;
import liftwright.plant.recording.Track;
import liftwright.plant.supply.CellDraw;
import liftwright.rig.Rig;

/**
 * A recording in which nothing comes later than its throttle. The plant's fans follow at once; real
 * rotors spool up, and clocks differ. Held against such a plant, every step of the throttle would
 * look like newtons and amperes that no number of the rig explains.
 */
public final class InStep {

    private InStep() {}

    /**
     * @param rig as declared
     * @return the same recording, channels put back by as much as they come later; itself where
     *     none does
     * @throws NotDrivenException where no throttle was recorded
     */
    public static Recording of(Rig rig, Recording recording) {
        Driven driven = Driven.of(rig, recording);
        driven.go(driven.parameters().nominal(), new CellDraw.Expected());
        Map<String, Double> lagS = new HashMap<>();
        for (Optional<Lag> lag : Replay.lags(driven)) {
            lag.ifPresent(one -> lagS.put(one.channel(), one.lagS()));
        }
        if (lagS.isEmpty()) {
            return recording;
        }
        List<Track> tracks = new ArrayList<>();
        for (Track track : recording.tracks()) {
            double byS = lagS.getOrDefault(track.name(), 0.0);
            tracks.add(track.showing(track.samples().later(-byS)));
        }
        return new Recording(tracks);
    }
}
