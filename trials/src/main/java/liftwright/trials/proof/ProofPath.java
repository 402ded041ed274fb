package liftwright.trials.proof;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import liftwright.review.runaway.KillPath.Source;
import liftwright.rig.Control;
import liftwright.rig.Control.LinkLoss;
import liftwright.rig.Kill;
import liftwright.rig.Rig;

/**
 * One way to stop that a rig declares and that is proved by itself.
 *
 * @param name as a log and a file call it
 * @param words what is done, for a reader
 * @param source what stops a runaway this way
 */
public record ProofPath(String name, String words, Source source) {

    /** As logs call the lost link of the throttle. */
    public static final String LINK_LOSS = "link loss";

    /** And the throttle that is let go. */
    public static final String THROTTLE = "throttle";

    private static final String WITHOUT_POWER = " without power";

    /**
     * All of a rig, in the order of the file: kills, those that act by themselves when their power
     * goes, throttle and link where they cut. What lowers the rig or holds the throttle takes no
     * thrust away, and is none.
     */
    public static List<ProofPath> of(Rig rig) {
        List<ProofPath> paths = new ArrayList<>();
        for (Kill kill : rig.wiring().kills()) {
            Source source = new Source.Declared(kill.id());
            paths.add(new ProofPath(kill.id(), words(kill), source));
            if (kill.opensOnLoss()) {
                paths.add(
                        new ProofPath(
                                kill.id() + WITHOUT_POWER,
                                "the supply of " + kill.id() + " is pulled",
                                source));
            }
        }
        Optional<Control.Stop> stop = rig.control().stop();
        if (stop.isPresent() && stop.get() != Control.Stop.LOWER) {
            paths.add(new ProofPath(THROTTLE, "the throttle is let go", new Source.Throttle()));
        }
        if (rig.control().linkLoss() == LinkLoss.CUT) {
            paths.add(
                    new ProofPath(
                            LINK_LOSS, "the sender of the throttle goes off", new Source.Link()));
        }
        return List.copyOf(paths);
    }

    private static String words(Kill kill) {
        String by =
                kill.by() == Kill.Means.SOFTWARE
                        ? "the watchdog or program is made to act"
                        : kill.by().name().toLowerCase(Locale.ROOT) + " is pressed";
        return kill.heldBy().map(who -> by + " by " + who).orElse(by);
    }
}
