package liftwright.plant;

import java.util.List;
import java.util.Optional;
import liftwright.quantity.Quantity;
import liftwright.rig.CellType;
import liftwright.rig.Fan;
import liftwright.rig.FanType;
import liftwright.rig.Mount;
import liftwright.rig.Pack;
import liftwright.rig.PartId;
import liftwright.rig.Vec3;

/** Fans and packs like another, but for what is named. */
final class Copies {

    private Copies() {}

    static OfFan of(Fan fan) {
        return new OfFan(fan);
    }

    static OfPack of(Pack pack) {
        return new OfPack(pack);
    }

    static final class OfFan {

        private final Fan fan;
        private PartId id;
        private FanType type;
        private Mount mount;
        private Vec3 at;
        private Vec3 blows;
        private List<Fan.Lean> leans;
        private List<Fan.Lean> seat;
        private Fan.Spin spin;
        private Optional<String> serial;

        private OfFan(Fan fan) {
            this.fan = fan;
            id = fan.id();
            type = fan.type();
            mount = fan.mount();
            at = fan.at();
            blows = fan.blows();
            leans = fan.leans();
            seat = fan.seat();
            spin = fan.spin();
            serial = fan.serial();
        }

        OfFan id(PartId other) {
            id = other;
            return this;
        }

        OfFan type(FanType other) {
            type = other;
            return this;
        }

        OfFan mount(Mount other) {
            mount = other;
            return this;
        }

        OfFan at(Vec3 other) {
            at = other;
            return this;
        }

        OfFan blows(Vec3 other) {
            blows = other;
            return this;
        }

        OfFan leans(List<Fan.Lean> other) {
            leans = other;
            return this;
        }

        OfFan seat(List<Fan.Lean> other) {
            seat = other;
            return this;
        }

        OfFan spin(Fan.Spin other) {
            spin = other;
            return this;
        }

        /** One that bears no serial. */
        OfFan unmarked() {
            serial = Optional.empty();
            return this;
        }

        Fan made() {
            return new Fan(
                    id,
                    fan.declaredAt(),
                    type,
                    mount,
                    at,
                    blows,
                    leans,
                    seat,
                    spin,
                    fan.intake(),
                    fan.installation(),
                    serial);
        }
    }

    static final class OfPack {

        private final Pack pack;
        private PartId id;
        private CellType cell;
        private Mount mount;
        private Vec3 at;
        private Quantity charge;
        private Optional<Quantity> mass;
        private Optional<String> serial;

        private OfPack(Pack pack) {
            this.pack = pack;
            id = pack.id();
            cell = pack.cell();
            mount = pack.mount();
            at = pack.at();
            charge = pack.charge();
            mass = pack.mass();
            serial = pack.serial();
        }

        OfPack id(PartId other) {
            id = other;
            return this;
        }

        OfPack cell(CellType other) {
            cell = other;
            return this;
        }

        OfPack mount(Mount other) {
            mount = other;
            return this;
        }

        OfPack at(Vec3 other) {
            at = other;
            return this;
        }

        OfPack charge(Quantity other) {
            charge = other;
            return this;
        }

        OfPack mass(Quantity other) {
            mass = Optional.of(other);
            return this;
        }

        /** One that bears no serial. */
        OfPack unmarked() {
            serial = Optional.empty();
            return this;
        }

        Pack made() {
            return new Pack(
                    id,
                    pack.declaredAt(),
                    cell,
                    pack.series(),
                    pack.parallel(),
                    pack.extraMass(),
                    mass,
                    pack.interconnect(),
                    mount,
                    at,
                    charge,
                    pack.temperature(),
                    serial);
        }
    }
}
