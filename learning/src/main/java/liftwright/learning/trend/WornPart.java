package liftwright.learning.trend;

import liftwright.learning.explain.Cause;
import liftwright.rig.Element;
import liftwright.rig.Rig;
import liftwright.rig.Wiring;

/**
 * A part with what it may wear by. A part with another serial number is another part.
 *
 * @param cause what may change of it
 * @param serial of a fan or a pack; empty where none is told
 */
public record WornPart(Cause cause, String serial) {

    static WornPart of(Cause cause, Rig rig) {
        return new WornPart(
                cause,
                switch (cause.kind().group()) {
                    case FANS ->
                            rig.fans().stream()
                                    .filter(fan -> fan.id().text().equals(cause.part()))
                                    .flatMap(fan -> fan.serial().stream())
                                    .findFirst()
                                    .orElse("");
                    case PACKS ->
                            rig.packs().stream()
                                    .filter(pack -> pack.id().text().equals(cause.part()))
                                    .flatMap(pack -> pack.serial().stream())
                                    .findFirst()
                                    .orElse("");
                    default -> "";
                });
    }

    /** What was declared of it: Ω of a joint or fuse; 0 where a departure is a share. */
    double declaredSi(Rig rig) {
        return rig.wiring().chains().stream()
                .map(Wiring.Chain::elements)
                .flatMap(java.util.List::stream)
                .filter(element -> element.id().text().equals(cause.part()))
                .mapToDouble(WornPart::ohm)
                .findFirst()
                .orElse(0);
    }

    private static double ohm(Element element) {
        return switch (element) {
            case Element.Joint joint -> joint.resistance().si();
            case Element.Fuse fuse -> fuse.resistance().si();
            case Element.Run _, Element.Pole _ -> 0;
        };
    }
}
