package liftwright.rig;

import java.util.List;
import java.util.Optional;
import liftwright.quantity.Quantity;

/**
 * One way to make the rig dead.
 *
 * @param id as declared
 * @param opens names of the contactors that it opens; empty where it only commands zero
 * @param by how it acts
 * @param heldBy who holds it: {@value #WEARER} or one of the crew
 * @param reaction of that person, from a surprise to the press, s; where it is empty, that of the
 *     crew member counts, else the usual one
 * @param delay from the press to the signal at the contactor, s
 * @param order what happens first
 * @param radio name of the radio link it goes through; kills and throttle that name the same link
 *     share it
 * @param fedBy what feeds it: a pack, or {@value Supplies#OWN} (see {@link Supplies})
 * @param ground id of the signal ground that its signal returns through
 * @param through further things in its way, by names of the builder's own; the same name is the
 *     same thing
 * @param opensOnLoss whether the loss of its supply or link opens it by itself
 */
public record Kill(
        String id,
        RigPath declaredAt,
        List<String> opens,
        Means by,
        Optional<String> heldBy,
        Optional<Quantity> reaction,
        Quantity delay,
        Order order,
        Optional<String> radio,
        Optional<String> fedBy,
        Optional<String> ground,
        List<String> through,
        boolean opensOnLoss) {

    /** Who wears the rig, in {@code held by}. */
    public static final String WEARER = "wearer";

    public Kill {
        opens = List.copyOf(opens);
        through = List.copyOf(through);
    }

    /** How a kill acts. */
    public enum Means {
        WIRE,
        RADIO,
        /** A line that is torn out. */
        LANYARD,
        BUTTON,
        /** A command that a computer must carry out. */
        SOFTWARE
    }

    /** What happens first. */
    public enum Order {
        OPEN_AT_ONCE,
        COMMAND_ZERO_THEN_OPEN,
        COMMAND_ZERO_ONLY
    }
}
