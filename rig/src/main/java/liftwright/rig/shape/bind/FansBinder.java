package liftwright.rig.shape.bind;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import liftwright.quantity.Quantity;
import liftwright.rig.Declared;
import liftwright.rig.Fan;
import liftwright.rig.FanType;
import liftwright.rig.Intake;
import liftwright.rig.Mount;
import liftwright.rig.PartId;
import liftwright.rig.Problem.Code;
import liftwright.rig.RigPath;
import liftwright.rig.Vec3;
import liftwright.rig.shape.kind.Fields;
import liftwright.rig.shape.kind.Key;
import liftwright.rig.shape.kind.Nearest;
import liftwright.rig.shape.kind.Problems;
import liftwright.rig.shape.kind.Requirements;
import liftwright.rig.shape.kind.Spot;
import liftwright.rig.shape.kind.Stated;
import liftwright.rig.shape.words.FanKeys;
import liftwright.rig.shape.words.FanTypeKeys;
import liftwright.rig.shape.words.RigKeys;

/** The fans, one by one, from the groups that declare them. */
final class FansBinder {

    /** How many fans there are. */
    private static final List<Key<?>> COUNTS = List.of(FanKeys.ROW, FanKeys.ROWS, FanKeys.RING);

    private final Ledger ledger;
    private final Map<String, FanType> types;
    private final MountsBinder mounts;
    private final Parts parts;
    private final Pattern pattern;
    private final Directions directions;
    private final Serials serials;

    FansBinder(
            Ledger ledger,
            Map<String, FanType> types,
            MountsBinder mounts,
            Parts parts,
            Serials serials) {
        this.ledger = ledger;
        this.types = types;
        this.mounts = mounts;
        this.parts = parts;
        this.serials = serials;
        this.pattern = new Pattern(ledger);
        this.directions = new Directions(ledger);
    }

    void bind(List<Stated<Fields>> groups) {
        var merged = new LinkedHashMap<String, Fields>();
        for (Stated<Fields> stated : groups) {
            Fields own = stated.value();
            Optional<String> id = own.get(FanKeys.ID);
            Optional<Fields> group = Likeness.merge(ledger, own, merged);
            if (id.isEmpty()) {
                continue;
            }
            group.ifPresent(g -> merged.putIfAbsent(id.get(), g));
            if (group.isEmpty() || !make(id.get(), group.get())) {
                parts.broken(id.get());
                own.get(FanKeys.TWIN).ifPresent(parts::broken);
            }
        }
    }

    /** Makes the fans of a group; false when that could not be done, which has been reported. */
    private boolean make(String id, Fields group) {
        Requirements.check(group, FanKeys.WHOLE, ledger.problems());
        boolean free = parts.take(id, group.spotOf(FanKeys.ID));
        Optional<FanType> type = type(group);
        Optional<Mount> mount = group.stated(FanKeys.MOUNT).flatMap(mounts::find);
        boolean counted = COUNTS.stream().noneMatch(group::failed);
        if (!free || !counted || type.isEmpty() || mount.isEmpty()) {
            return false;
        }
        Exceptions exceptions = new Exceptions(ledger, group);
        List<Fan> made = fans(id, group, type.get(), mount.get(), exceptions);
        parts.addFans(id, made);
        group.stated(FanKeys.TWIN).ifPresent(t -> makeTwin(t, made, mount.get(), exceptions));
        exceptions.reportUnused();
        return true;
    }

    private void makeTwin(
            Stated<String> twin, List<Fan> originals, Mount mount, Exceptions exceptions) {
        Optional<Mount> other = mounts.twinOf(mount, twin.spot());
        if (!parts.take(twin.value(), twin.spot()) || other.isEmpty()) {
            parts.broken(twin.value());
            return;
        }
        var made = new ArrayList<Fan>();
        for (Fan fan : originals) {
            String number = fan.id().text().substring(fan.id().text().lastIndexOf('.') + 1);
            var id = new PartId(twin.value() + "." + number);
            Fan mirrored = Mirror.of(fan, id, other.get(), serials.of(id));
            changed(mirrored, exceptions, Vec3.ZERO).ifPresent(made::add);
        }
        parts.addFans(twin.value(), made);
    }

    private List<Fan> fans(
            String id, Fields group, FanType type, Mount mount, Exceptions exceptions) {
        RigPath path = group.spot().path();
        List<Pattern.Place> places = pattern.of(group, mount);
        List<Fan.Spin> spins = Spins.of(ledger, group, places.size());
        String blows = ledger.value(group, FanKeys.BLOWS);
        Optional<Fields> cant = group.get(FanKeys.CANT);
        Optional<Fields> seat = group.get(FanKeys.SEAT);
        Optional<Intake> intake =
                group.get(FanKeys.INTAKE)
                        .map(own -> FanTypesBinder.intake(ledger, own))
                        .or(type::intake);
        Declared<Quantity> installation =
                group.stated(FanKeys.INSTALLATION)
                        .map(FansBinder::declared)
                        .orElseGet(() -> installation(type));
        var made = new ArrayList<Fan>(places.size());
        for (int i = 0; i < places.size(); i++) {
            Pattern.Place place = places.get(i);
            var partId = PartId.of(id, i + 1);
            Vec3 way = directions.of(blows, group.spotOf(FanKeys.BLOWS), mount, place.at().y());
            List<Fan.Lean> leans =
                    cant.map(c -> directions.leans(c, way, mount, place)).orElse(List.of());
            var fan =
                    new Fan(
                            partId,
                            path,
                            type,
                            mount,
                            place.at(),
                            way,
                            leans,
                            seat.map(s -> directions.leans(s, way, mount, place)).orElse(List.of()),
                            spins.get(i),
                            intake,
                            installation,
                            serials.of(partId));
            changed(fan, exceptions, place.outward()).ifPresent(made::add);
        }
        return made;
    }

    /** The fan with what its exception says; empty when that says it is absent. */
    private Optional<Fan> changed(Fan fan, Exceptions exceptions, Vec3 outward) {
        Fields except = exceptions.of(fan.id()).orElse(null);
        if (except == null) {
            return Optional.of(fan);
        }
        if (except.get(FanKeys.EXCEPT_ABSENT).orElse(false)) {
            return Optional.empty();
        }
        Mount mount = fan.mount();
        FanType type = except.has(FanKeys.TYPE) ? type(except).orElse(fan.type()) : fan.type();
        Vec3 at =
                except.get(FanKeys.EXCEPT_AT)
                        .map(
                                p ->
                                        new Places(ledger)
                                                .one(
                                                        p,
                                                        Side.of(mount),
                                                        Side.of(mount.on()) != Side.NONE))
                        .orElse(fan.at());
        Vec3 blows =
                except.stated(FanKeys.BLOWS)
                        .map(b -> directions.of(b.value(), b.spot(), mount, at.y()))
                        .orElse(fan.blows());
        Pattern.Place place = new Pattern.Place(at, outward);
        List<Fan.Lean> leans =
                except.get(FanKeys.CANT)
                        .map(c -> directions.leans(c, blows, mount, place))
                        .orElse(fan.leans());
        List<Fan.Lean> seat =
                except.get(FanKeys.SEAT)
                        .map(s -> directions.leans(s, blows, mount, place))
                        .orElse(fan.seat());
        boolean newType = !type.equals(fan.type());
        return Optional.of(
                new Fan(
                        fan.id(),
                        fan.declaredAt(),
                        type,
                        mount,
                        at,
                        blows,
                        leans,
                        seat,
                        except.get(FanKeys.EXCEPT_SPIN).orElse(fan.spin()),
                        except.get(FanKeys.INTAKE)
                                .map(own -> FanTypesBinder.intake(ledger, own))
                                .or(() -> newType ? type.intake() : fan.intake()),
                        except.stated(FanKeys.INSTALLATION)
                                .map(FansBinder::declared)
                                .orElseGet(() -> newType ? installation(type) : fan.installation()),
                        except.stated(FanKeys.EXCEPT_SERIAL)
                                .map(s -> serials.given(fan.id(), s))
                                .orElse(fan.serial())));
    }

    private Optional<FanType> type(Fields fields) {
        Stated<String> name = fields.stated(FanKeys.TYPE).orElse(null);
        if (name == null) {
            return Optional.empty();
        }
        FanType type = types.get(name.value());
        if (type == null) {
            noType(name.spot(), name.value());
        }
        return Optional.ofNullable(type);
    }

    private void noType(Spot spot, String name) {
        String near = Nearest.advice(name, types.keySet());
        ledger.problems()
                .add(
                        Code.NO_SUCH_PART,
                        spot,
                        Problems.quote(name),
                        "the name of a fan type",
                        near.isEmpty()
                                ? "There are: " + String.join(", ", types.keySet()) + "."
                                : near);
    }

    private static Declared<Quantity> declared(Stated<Quantity> stated) {
        return new Declared<>(stated.spot().path(), stated.value());
    }

    private static Declared<Quantity> installation(FanType type) {
        return new Declared<>(
                RigPath.of(RigKeys.FAN_TYPES.name(), type.name(), FanTypeKeys.INSTALLATION.name()),
                type.installation());
    }
}
