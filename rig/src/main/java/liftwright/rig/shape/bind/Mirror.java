package liftwright.rig.shape.bind;

import java.util.List;
import java.util.Optional;
import liftwright.rig.Fan;
import liftwright.rig.Mount;
import liftwright.rig.PartId;

/** The mirror image of a fan in the middle plane of the body. */
final class Mirror {

    private Mirror() {}

    /**
     * @param serial that of the new fan; a serial number has no mirror image
     */
    static Fan of(Fan fan, PartId id, Mount mount, Optional<String> serial) {
        return new Fan(
                id,
                fan.declaredAt(),
                fan.type(),
                mount,
                fan.at().mirrored(),
                fan.blows().mirrored(),
                mirrored(fan.leans()),
                mirrored(fan.seat()),
                of(fan.spin()),
                fan.intake(),
                fan.installation(),
                serial);
    }

    private static List<Fan.Lean> mirrored(List<Fan.Lean> leans) {
        return leans.stream()
                .map(
                        lean ->
                                new Fan.Lean(
                                        lean.declaredAt(), lean.angle(), lean.towards().mirrored()))
                .toList();
    }

    private static Fan.Spin of(Fan.Spin spin) {
        return switch (spin) {
            case LEFT_HAND -> Fan.Spin.RIGHT_HAND;
            case RIGHT_HAND -> Fan.Spin.LEFT_HAND;
        };
    }
}
