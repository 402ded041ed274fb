package liftwright.rig.shape.bind;

import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import liftwright.quantity.Dimension;
import liftwright.quantity.Quantity;
import liftwright.quantity.Tolerance;
import liftwright.rig.Beam;
import liftwright.rig.Mount;
import liftwright.rig.Problem.Code;
import liftwright.rig.Vec3;
import liftwright.rig.shape.kind.Fields;
import liftwright.rig.shape.kind.Key;
import liftwright.rig.shape.kind.Measure;
import liftwright.rig.shape.kind.Nearest;
import liftwright.rig.shape.kind.Problems;
import liftwright.rig.shape.kind.Spot;
import liftwright.rig.shape.kind.Stated;
import liftwright.rig.shape.words.BeamKeys;
import liftwright.rig.shape.words.MountKeys;
import liftwright.rig.shape.words.PlaceKeys;

/** The mounts with their twins, and who may find them by name. */
final class MountsBinder {

    private final Ledger ledger;
    private final Places places;
    private final boolean worn;
    private final Map<String, Mount> byName = new LinkedHashMap<>();
    private final Map<String, String> twins = new LinkedHashMap<>();

    /** Mounts whose twin could not be made, which has been reported. */
    private final Set<String> twinless = new HashSet<>();

    MountsBinder(Ledger ledger, boolean worn) {
        this.ledger = ledger;
        this.places = new Places(ledger);
        this.worn = worn;
    }

    void bind(Map<String, Stated<Fields>> declared) {
        declared.forEach((name, fields) -> byName.put(name, mount(name, fields.value())));
        declared.forEach((name, fields) -> addTwin(name, fields.value()));
    }

    Map<String, Mount> all() {
        return byName;
    }

    private Mount mount(String name, Fields fields) {
        Mount.Carrier on = ledger.value(fields, MountKeys.ON);
        needsWearer(on, fields.spotOf(MountKeys.ON));
        Fields at = Ledger.section(fields, MountKeys.AT);
        boolean onLimb = Side.of(on) != Side.NONE;
        if (!onLimb && at.has(MountKeys.ALONG)) {
            Places.notOnLimb(ledger, at.spotOf(MountKeys.ALONG));
        }
        Quantity along = at.get(MountKeys.ALONG).orElse(Quantity.exact(0, Dimension.NONE));
        Fields turn = Ledger.section(fields, MountKeys.TURN);
        return new Mount(
                name,
                on,
                places.one(at, Side.of(on), onLimb),
                along,
                angle(turn, MountKeys.FORWARD, MountKeys.BACK),
                sideways(turn, on),
                fields.get(BeamKeys.BEAM).map(beam -> beam(beam, on, at)));
    }

    private Beam beam(Fields fields, Mount.Carrier on, Fields at) {
        return new Beam(
                runs(fields, on, at), ledger.value(fields, BeamKeys.LENGTH), section(fields));
    }

    /** Outboard is away from the body on a limb, else from the middle to the mount's place. */
    private Vec3 runs(Fields fields, Mount.Carrier on, Fields at) {
        String word = ledger.value(fields, BeamKeys.RUNS);
        if (!word.equals("outboard") && !word.equals("inboard")) {
            return Directions.plain(word);
        }
        int limb = Side.of(on);
        int side = limb != Side.NONE ? limb : Side.of(places.one(at, limb, false).y());
        if (side == Side.NONE) {
            Places.ambiguous(ledger, fields.spotOf(BeamKeys.RUNS), word);
        }
        return new Vec3(0, word.equals("outboard") ? side : -side, 0);
    }

    private Beam.Section section(Fields fields) {
        if (fields.has(BeamKeys.BENDING)) {
            return new Beam.Rigidities(
                    ledger.value(fields, BeamKeys.BENDING), ledger.value(fields, BeamKeys.TORSION));
        }
        Quantity outside = ledger.value(fields, BeamKeys.OUTSIDE);
        Quantity wall = ledger.value(fields, BeamKeys.WALL);
        if (2 * wall.si() > outside.si()) {
            ledger.problems()
                    .add(
                            Code.CONTRADICTION,
                            fields.spotOf(BeamKeys.WALL),
                            "a wall thicker than half of the tube",
                            "at most half of “outside”",
                            "Half of it is a solid rod.");
        }
        return new Beam.Tube(
                outside,
                wall,
                ledger.value(fields, BeamKeys.MODULUS),
                ledger.value(fields, BeamKeys.SHEAR_MODULUS));
    }

    private Quantity sideways(Fields turn, Mount.Carrier on) {
        int side = Side.of(on);
        for (Key<Quantity> key : java.util.List.of(MountKeys.OUTBOARD, MountKeys.INBOARD)) {
            var stated = turn.stated(key);
            if (stated.isPresent()) {
                if (side == Side.NONE) {
                    Places.ambiguous(ledger, stated.get().spot(), key.name());
                }
                boolean right = key.equals(MountKeys.OUTBOARD) == (side >= 0);
                return right ? stated.get().value() : negative(stated.get().value());
            }
        }
        return angle(turn, MountKeys.RIGHT, MountKeys.LEFT);
    }

    private static Quantity angle(Fields turn, Key<Quantity> one, Key<Quantity> other) {
        return turn.get(one)
                .or(() -> turn.get(other).map(MountsBinder::negative))
                .orElse(Quantity.exact(0, Measure.ANGLE.dimension()));
    }

    /** The same value seen the other way round: its upper doubt is the lower one of the first. */
    static Quantity negative(Quantity q) {
        Tolerance t = q.tolerance();
        return new Quantity(
                0.0 - q.si(),
                q.dimension(),
                new Tolerance(/* plus= */ t.minus(), /* minus= */ t.plus(), t.form(), t.scope()));
    }

    private void needsWearer(Mount.Carrier on, Spot spot) {
        if (on.onWearer() && !worn) {
            ledger.problems()
                    .add(
                            Code.CONTRADICTION,
                            spot,
                            "a place on a body in a rig without wearer",
                            "“frame”, or a wearer in the file",
                            "Write “on: frame”, or add the section “wearer”.");
        }
    }

    private void addTwin(String name, Fields fields) {
        var twin = fields.stated(MountKeys.TWIN);
        if (twin.isEmpty()) {
            return;
        }
        String twinName = twin.get().value();
        Mount mount = byName.get(name);
        if (mount == null) {
            return;
        }
        if (byName.containsKey(twinName)) {
            twinless.add(name);
            ledger.problems()
                    .add(
                            Code.DUPLICATE_ID,
                            twin.get().spot(),
                            Problems.quote(twinName),
                            "a name that no other mount has",
                            "The twin is made from this mount and needs no entry of its own.");
            return;
        }
        if (Side.of(mount) == Side.NONE) {
            ledger.problems()
                    .add(
                            Code.CONTRADICTION,
                            twin.get().spot(),
                            "a twin of a mount in the middle",
                            "a mount on a limb, or left or right of the middle",
                            "Its mirror image is itself: parts may have twins on it.");
            return;
        }
        twins.put(name, twinName);
        twins.put(twinName, name);
        byName.put(
                twinName,
                new Mount(
                        twinName,
                        mount.on().twin(),
                        mount.at().mirrored(),
                        mount.along(),
                        mount.turnForward(),
                        negative(mount.turnRight()),
                        mount.beam()
                                .map(
                                        beam ->
                                                new Beam(
                                                        beam.runs().mirrored(),
                                                        beam.length(),
                                                        beam.section()))));
    }

    /** The mount of that name; reported and empty when there is none. */
    Optional<Mount> find(Stated<String> name) {
        Mount mount = byName.get(name.value());
        if (mount == null) {
            ledger.problems()
                    .add(
                            Code.NO_SUCH_PART,
                            name.spot(),
                            Problems.quote(name.value()),
                            "the name of a mount",
                            byName.isEmpty() ? "No mounts are declared." : advice(name.value()));
        }
        return Optional.ofNullable(mount);
    }

    private String advice(String given) {
        String near = Nearest.advice(given, byName.keySet());
        return near.isEmpty() ? "There are: " + String.join(", ", byName.keySet()) + "." : near;
    }

    /** What a part with a carried place is on; reported and empty when that is nothing. */
    Optional<Mount> carrierOf(Fields at) {
        var mount = at.stated(PlaceKeys.MOUNT);
        if (mount.isPresent()) {
            return find(mount.get());
        }
        var on = at.stated(PlaceKeys.ON);
        on.ifPresent(carrier -> needsWearer(carrier.value(), carrier.spot()));
        return on.map(carrier -> bare(carrier.value()));
    }

    /** A carrier itself as a mount, for parts that are on it directly. */
    private static Mount bare(Mount.Carrier on) {
        Quantity none = Quantity.exact(0, Measure.ANGLE.dimension());
        return new Mount(
                on.name().toLowerCase(java.util.Locale.ROOT).replace('_', ' '),
                on,
                Vec3.ZERO,
                Quantity.exact(0, Dimension.NONE),
                none,
                none);
    }

    /**
     * What carries the mirror image of a part on {@code mount}: its twin, or itself in the middle.
     * Reported and empty when there is neither.
     */
    Optional<Mount> twinOf(Mount mount, Spot spot) {
        String twin = twins.get(mount.name());
        if (twin != null) {
            return Optional.ofNullable(byName.get(twin));
        }
        if (Side.of(mount) == Side.NONE) {
            return Optional.of(mount);
        }
        if (twinless.contains(mount.name())) {
            return Optional.empty();
        }
        if (!byName.containsKey(mount.name())) {
            return Optional.of(bare(mount.on().twin()));
        }
        ledger.problems()
                .add(
                        Code.CONTRADICTION,
                        spot,
                        "a twin on the mount " + Problems.quote(mount.name()) + ", which has none",
                        "a mount with a twin",
                        "Give the mount a twin too: “twin: NAME”.");
        return Optional.empty();
    }
}
