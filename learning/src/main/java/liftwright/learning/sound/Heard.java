package liftwright.learning.sound;

import java.util.ArrayList;
import java.util.List;

/**
 * What a recording told.
 *
 * @param fans speeds of those that were heard, in the order of the rig
 * @param separable how many lines of their own there are where they are told apart best
 * @param resolution least difference of speed that is told apart, relative; 0 where nothing was
 *     heard
 * @param unclaimed lines that are followed and belong to nobody in particular
 * @param events lines that ended while others went on, in order of time
 * @param notes what was found about the recording, sentences
 */
public record Heard(
        List<FanSpeed> fans,
        int separable,
        double resolution,
        int unclaimed,
        List<Event> events,
        List<String> notes) {

    public Heard {
        fans = List.copyOf(fans);
        events = List.copyOf(events);
        notes = List.copyOf(notes);
    }

    /**
     * The same on another clock.
     *
     * @param offsetS what it shows more, s
     */
    public Heard later(double offsetS) {
        return new Heard(
                StartUp.onLog(fans, offsetS),
                separable,
                resolution,
                unclaimed,
                events.stream()
                        .map(
                                one ->
                                        new Event(
                                                one.fans(),
                                                one.fromS() + offsetS,
                                                one.toS() + offsetS))
                        .toList(),
                notes);
    }

    /** The same with what else is to be said of the recording, first. */
    public Heard with(List<String> before) {
        var all = new ArrayList<>(before);
        all.addAll(notes);
        return new Heard(fans, separable, resolution, unclaimed, events, all);
    }
}
