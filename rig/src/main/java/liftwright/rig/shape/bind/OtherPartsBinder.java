package liftwright.rig.shape.bind;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import liftwright.quantity.Quantity;
import liftwright.rig.Mount;
import liftwright.rig.OtherPart;
import liftwright.rig.PartId;
import liftwright.rig.Vec3;
import liftwright.rig.shape.kind.Fields;
import liftwright.rig.shape.kind.Stated;
import liftwright.rig.shape.words.OtherPartKeys;

/** Whatever else has mass. */
final class OtherPartsBinder {

    private final Ledger ledger;
    private final MountsBinder mounts;
    private final Parts parts;
    private final Places places;
    private final List<OtherPart> made = new ArrayList<>();

    OtherPartsBinder(Ledger ledger, MountsBinder mounts, Parts parts) {
        this.ledger = ledger;
        this.mounts = mounts;
        this.parts = parts;
        this.places = new Places(ledger);
    }

    List<OtherPart> bind(List<Stated<Fields>> declared) {
        declared.forEach(stated -> make(stated.value()));
        return made;
    }

    private void make(Fields fields) {
        String id = ledger.value(fields, OtherPartKeys.ID);
        Quantity mass = ledger.value(fields, OtherPartKeys.MASS);
        Fields at = Ledger.section(fields, OtherPartKeys.AT);
        Mount mount = mounts.carrierOf(at).orElse(null);
        if (mount == null
                || fields.get(OtherPartKeys.ID).isEmpty()
                || !parts.take(id, fields.spotOf(OtherPartKeys.ID))) {
            return;
        }
        Vec3 place = places.one(at, Side.of(mount), Side.of(mount.on()) != Side.NONE);
        Optional<Vec3> box = fields.get(OtherPartKeys.BOX).map(this::box);
        var part = new OtherPart(new PartId(id), fields.spot().path(), mass, mount, place, box);
        made.add(part);
        fields.stated(OtherPartKeys.TWIN).ifPresent(twin -> makeTwin(twin, part));
    }

    private void makeTwin(Stated<String> twin, OtherPart part) {
        Optional<Mount> other = mounts.twinOf(part.mount(), twin.spot());
        if (parts.take(twin.value(), twin.spot()) && other.isPresent()) {
            made.add(
                    new OtherPart(
                            new PartId(twin.value()),
                            part.declaredAt(),
                            part.mass(),
                            other.get(),
                            part.at().mirrored(),
                            part.box()));
        }
    }

    private Vec3 box(List<Stated<Quantity>> edges) {
        return new Vec3(edge(edges.get(0)), edge(edges.get(1)), edge(edges.get(2)));
    }

    private double edge(Stated<Quantity> edge) {
        return ledger.middle(edge.value(), edge.spot());
    }
}
