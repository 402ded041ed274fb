package liftwright.trials.predict;

import java.util.Comparator;
import java.util.Optional;
import liftwright.review.runaway.KillPath;
import liftwright.rig.LimitName;
import liftwright.rig.Rig;

/**
 * How long it takes from a reading that says stop until nothing drives the fans: the slowest of the
 * declared ways in which a person stops them. Rotors coast on after it, which warms nothing and
 * draws nothing, but lifts.
 *
 * @param reactionS until somebody presses, s
 * @param killS from the press until the fans are told or cut off, s
 * @param words which way, in words
 */
public record Stopping(double reactionS, double killS, String words) {

    public Stopping {
        if (!(reactionS >= 0) || !(killS >= 0)) {
            throw new IllegalArgumentException("a stop follows its reading");
        }
    }

    /** From the reading until nothing drives the fans, s. */
    public double totalS() {
        return reactionS + killS;
    }

    /** The slowest of a rig. */
    static Stopping of(Rig rig) {
        Optional<KillPath> slowest =
                KillPath.of(rig).stream()
                        .filter(path -> path.acts() != KillPath.Acts.NOTHING)
                        .filter(path -> path.share() == 0 && path.reactionS() > 0)
                        .max(Comparator.comparingDouble(KillPath::totalS));
        return slowest.map(
                        path ->
                                new Stopping(
                                        path.detectionS() + path.reactionS(),
                                        path.switchS(),
                                        path.label() + ", " + path.reactionFrom()))
                .orElseGet(
                        () ->
                                new Stopping(
                                        rig.limits().si(LimitName.WATCHER_REACTION),
                                        rig.limits().si(LimitName.KILL_TIME),
                                        "no kill is declared: a watcher who reacts as usual and the limit of a kill's time"));
    }
}
