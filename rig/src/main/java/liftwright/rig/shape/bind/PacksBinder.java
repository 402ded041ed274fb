package liftwright.rig.shape.bind;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import liftwright.quantity.Quantity;
import liftwright.rig.CellType;
import liftwright.rig.Mount;
import liftwright.rig.Pack;
import liftwright.rig.PartId;
import liftwright.rig.Problem.Code;
import liftwright.rig.Vec3;
import liftwright.rig.shape.kind.Fields;
import liftwright.rig.shape.kind.Measure;
import liftwright.rig.shape.kind.Nearest;
import liftwright.rig.shape.kind.Problems;
import liftwright.rig.shape.kind.Stated;
import liftwright.rig.shape.words.PackKeys;

/** The packs, one by one, from the groups that declare them. */
final class PacksBinder {

    private static final double EXTRA_MASS_SHARE = 0.10;
    private static final double LINK_OHM = 0.1e-3;

    private final Ledger ledger;
    private final Map<String, CellType> cells;
    private final MountsBinder mounts;
    private final Parts parts;
    private final Serials serials;
    private final Places places;

    PacksBinder(
            Ledger ledger,
            Map<String, CellType> cells,
            MountsBinder mounts,
            Parts parts,
            Serials serials) {
        this.ledger = ledger;
        this.cells = cells;
        this.mounts = mounts;
        this.parts = parts;
        this.serials = serials;
        this.places = new Places(ledger);
    }

    void bind(List<Stated<Fields>> groups) {
        for (Stated<Fields> stated : groups) {
            Fields group = stated.value();
            group.get(PackKeys.ID).ifPresent(id -> make(id, group));
        }
    }

    private void make(String id, Fields group) {
        boolean free = parts.take(id, group.spotOf(PackKeys.ID));
        Stated<String> twin = group.stated(PackKeys.TWIN).orElse(null);
        Optional<CellType> cell = group.stated(PackKeys.CELL).flatMap(this::cell);
        Fields at = Ledger.section(group, PackKeys.AT);
        Optional<Mount> mount = mounts.carrierOf(at);
        if (!free || group.failed(PackKeys.COUNT) || cell.isEmpty() || mount.isEmpty()) {
            parts.broken(id);
            if (twin != null) {
                parts.broken(twin.value());
            }
            return;
        }
        var exceptions = new Exceptions(ledger, group, PackKeys.EXCEPT);
        List<Pack> made = packs(id, group, cell.get(), mount.get(), at, exceptions);
        parts.addPacks(id, made);
        if (twin != null) {
            makeTwin(twin, made, mount.get(), exceptions);
        }
        exceptions.reportUnused();
    }

    private List<Pack> packs(
            String id, Fields group, CellType cell, Mount mount, Fields at, Exceptions exceptions) {
        int count = ledger.value(group, PackKeys.COUNT);
        int series = ledger.value(group, PackKeys.SERIES);
        int parallel = ledger.value(group, PackKeys.PARALLEL);
        Optional<Quantity> mass = group.get(PackKeys.MASS);
        Quantity extraMass = extraMass(group, cell, series * parallel);
        Quantity interconnect =
                ledger.computed(
                        group,
                        PackKeys.INTERCONNECT,
                        Measure.RESISTANCE.show(series * LINK_OHM)
                                + " ± "
                                + Measure.RESISTANCE.show(series * LINK_OHM / 2)
                                + " bound",
                        "0.1 mΩ for each cell in series; from memory, measure yours");
        Quantity charge = ledger.value(group, PackKeys.CHARGE);
        ledger.note(group, PackKeys.TEMPERATURE, "that of the air", "common practice");
        Optional<Quantity> temperature = group.get(PackKeys.TEMPERATURE);
        boolean onLimb = Side.of(mount.on()) != Side.NONE;
        var made = new ArrayList<Pack>(count);
        for (int i = 0; i < count; i++) {
            var partId = PartId.of(id, i + 1);
            Vec3 place = places.spread(at, Side.of(mount), onLimb, i, count);
            var pack =
                    new Pack(
                            partId,
                            group.spot().path(),
                            cell,
                            series,
                            parallel,
                            extraMass,
                            mass,
                            interconnect,
                            mount,
                            place,
                            charge,
                            temperature,
                            serials.of(partId));
            made.add(changed(pack, exceptions));
        }
        return made;
    }

    private Quantity extraMass(Fields group, CellType cell, int cellCount) {
        if (group.has(PackKeys.MASS)) {
            return Quantity.exact(0, Measure.MASS.dimension());
        }
        double massKg = EXTRA_MASS_SHARE * cellCount * cell.mass().si();
        return ledger.computed(
                group,
                PackKeys.EXTRA_MASS,
                Measure.MASS.show(massKg) + " ± " + Measure.MASS.show(massKg / 2) + " bound",
                "common practice: 10 % of the cells' mass");
    }

    private void makeTwin(
            Stated<String> twin, List<Pack> originals, Mount mount, Exceptions exceptions) {
        Optional<Mount> other = mounts.twinOf(mount, twin.spot());
        if (!parts.take(twin.value(), twin.spot()) || other.isEmpty()) {
            parts.broken(twin.value());
            return;
        }
        var made = new ArrayList<Pack>();
        for (int i = 0; i < originals.size(); i++) {
            Pack pack = originals.get(i);
            var id = PartId.of(twin.value(), i + 1);
            var mirrored =
                    new Pack(
                            id,
                            pack.declaredAt(),
                            pack.cell(),
                            pack.series(),
                            pack.parallel(),
                            pack.extraMass(),
                            pack.mass(),
                            pack.interconnect(),
                            other.get(),
                            pack.at().mirrored(),
                            pack.charge(),
                            pack.temperature(),
                            serials.of(id));
            made.add(changed(mirrored, exceptions));
        }
        parts.addPacks(twin.value(), made);
    }

    private Pack changed(Pack base, Exceptions exceptions) {
        Fields except = exceptions.of(base.id()).orElse(null);
        if (except == null) {
            return base;
        }
        return new Pack(
                base.id(),
                base.declaredAt(),
                base.cell(),
                base.series(),
                base.parallel(),
                base.extraMass(),
                except.get(PackKeys.MASS).or(base::mass),
                base.interconnect(),
                base.mount(),
                except.get(PackKeys.EXCEPT_AT)
                        .map(
                                at ->
                                        places.one(
                                                at,
                                                Side.of(base.mount()),
                                                Side.of(base.mount().on()) != Side.NONE))
                        .orElse(base.at()),
                except.get(PackKeys.CHARGE).orElse(base.charge()),
                except.get(PackKeys.TEMPERATURE).or(base::temperature),
                base.serial());
    }

    private Optional<CellType> cell(Stated<String> name) {
        CellType cell = cells.get(name.value());
        if (cell == null) {
            String near = Nearest.advice(name.value(), cells.keySet());
            ledger.problems()
                    .add(
                            Code.NO_SUCH_PART,
                            name.spot(),
                            Problems.quote(name.value()),
                            "the name of a cell type",
                            near.isEmpty()
                                    ? "There are: " + String.join(", ", cells.keySet()) + "."
                                    : near);
        }
        return Optional.ofNullable(cell);
    }
}
