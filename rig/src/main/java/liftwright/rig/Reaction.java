package liftwright.rig;

import java.util.Optional;
import liftwright.quantity.Quantity;

/**
 * How soon a person presses, from a surprise on.
 *
 * @param declared for the kill, else for who holds it, s; empty where neither is
 * @param at where that is declared, or would be
 * @param usualS the limit that stands in for it, s
 */
public record Reaction(Optional<Quantity> declared, RigPath at, double usualS) {

    private static final String KEY = "reaction";
    private static final RigPath OF_WEARER = RigPath.of("wearer", KEY);

    /** Of whoever holds a kill. */
    public static Reaction of(Rig rig, Kill kill) {
        boolean worn = kill.heldBy().filter(Kill.WEARER::equals).isPresent();
        Reaction own = worn ? ofWearer(rig) : ofCrew(rig, kill);
        return kill.reaction().isPresent()
                ? new Reaction(kill.reaction(), kill.declaredAt().child(KEY), own.usualS)
                : own;
    }

    /** Of who lets go of the throttle: the wearer, where there is one. */
    public static Reaction atThrottle(Rig rig) {
        return rig.wearer().isPresent()
                ? ofWearer(rig)
                : new Reaction(
                        Optional.empty(),
                        RigPath.of("limits"),
                        rig.limits().si(LimitName.WATCHER_REACTION));
    }

    private static Reaction ofWearer(Rig rig) {
        return new Reaction(
                rig.wearer().flatMap(Wearer::reaction),
                OF_WEARER,
                rig.limits().si(LimitName.WEARER_REACTION));
    }

    private static Reaction ofCrew(Rig rig, Kill kill) {
        Optional<CrewMember> holder =
                rig.crew().stream()
                        .filter(one -> kill.heldBy().filter(one.name()::equals).isPresent())
                        .findFirst();
        return new Reaction(
                holder.flatMap(CrewMember::reaction),
                holder.map(CrewMember::declaredAt).orElse(kill.declaredAt()).child(KEY),
                rig.limits().si(LimitName.WATCHER_REACTION));
    }

    /** The slow end, 95 %, of what is declared, since people are slower than their mean; s. */
    public double slowS() {
        return declared.map(one -> one.si() + one.tolerance().plus()).orElse(usualS);
    }

    /** As declared, or the usual one, s. */
    public double middleS() {
        return declared.map(Quantity::si).orElse(usualS);
    }
}
