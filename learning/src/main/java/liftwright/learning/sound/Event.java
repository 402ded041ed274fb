package liftwright.learning.sound;

import java.util.List;

/**
 * A line ends while the others go on: its fan stopped, slowed or lost synchronism.
 *
 * @param fans to one of which the line belongs
 * @param fromS last moment at which it still turned with the others, s
 * @param toS first at which it did not; the true moment lies between in 95 % of such events
 */
public record Event(List<String> fans, double fromS, double toS) {

    public Event {
        fans = List.copyOf(fans);
    }
}
