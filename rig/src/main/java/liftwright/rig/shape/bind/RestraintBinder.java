package liftwright.rig.shape.bind;

import java.util.List;
import java.util.Optional;
import liftwright.quantity.Quantity;
import liftwright.rig.Fan;
import liftwright.rig.HoldingStand;
import liftwright.rig.PartId;
import liftwright.rig.Problem.Code;
import liftwright.rig.Restraint;
import liftwright.rig.Tether;
import liftwright.rig.shape.kind.Fields;
import liftwright.rig.shape.kind.Key;
import liftwright.rig.shape.kind.Measure;
import liftwright.rig.shape.words.HoldingStandKeys;
import liftwright.rig.shape.words.RestraintKeys;
import liftwright.rig.shape.words.TetherKeys;

/** What holds the rig. */
final class RestraintBinder {

    private final Ledger ledger;
    private final Parts parts;
    private final boolean worn;

    RestraintBinder(Ledger ledger, Parts parts, boolean worn) {
        this.ledger = ledger;
        this.parts = parts;
        this.worn = worn;
    }

    Restraint bind(Fields fields) {
        Optional<Restraint.Room> room = fields.get(RestraintKeys.ROOM).map(this::room);
        Optional<Tether> tether = fields.get(RestraintKeys.TETHER).map(this::tether);
        tether.ifPresent(line -> checkHeadroom(fields, line, room));
        return new Restraint(
                fields.get(RestraintKeys.STAND).map(this::stand),
                tether,
                room,
                fields.get(RestraintKeys.PLATFORM)
                        .map(own -> platform(own, fields.has(RestraintKeys.STAND))),
                fields.get(RestraintKeys.MATS));
    }

    private HoldingStand stand(Fields fields) {
        HoldingStand.Kind kind = ledger.value(fields, HoldingStandKeys.KIND);
        Quantity height = ledger.value(fields, HoldingStandKeys.HEIGHT);
        Quantity apart = ledger.value(fields, HoldingStandKeys.FEET);
        Quantity deep = likewise(fields, HoldingStandKeys.FEET_DEEP, apart, "as they are apart");
        boolean cart = kind == HoldingStand.Kind.CART;
        boolean carriesWearer = ledger.value(fields, HoldingStandKeys.WEARER);
        if (carriesWearer && !worn) {
            contradiction(
                    fields,
                    HoldingStandKeys.WEARER,
                    "a stand that carries a wearer, and nobody who wears the rig",
                    "“carries wearer: no”, or a wearer",
                    "");
        }
        return new HoldingStand(
                fields.spot().path(),
                kind,
                held(fields),
                Directions.plain(ledger.value(fields, HoldingStandKeys.THRUST)),
                height,
                ledger.value(fields, HoldingStandKeys.MASS),
                ledger.computed(
                        fields,
                        HoldingStandKeys.CENTRE,
                        Measure.HEIGHT.show(height.si() / 2),
                        "half the height"),
                apart,
                deep,
                ledger.computed(
                        fields,
                        HoldingStandKeys.FRICTION,
                        cart ? "0.02 ± 0.01 bound" : "0.4 ± 0.1 bound",
                        cart
                                ? "from memory: wheels that roll"
                                : "from memory: dry feet on concrete"),
                fields.get(HoldingStandKeys.BOLTS).map(count -> bolts(fields, count, apart, deep)),
                fields.get(HoldingStandKeys.CLAMPS)
                        .map(
                                count ->
                                        new HoldingStand.Clamps(
                                                count,
                                                ledger.value(
                                                        fields, HoldingStandKeys.CLAMP_FORCE))),
                carriesWearer);
    }

    private List<PartId> held(Fields fields) {
        if (!fields.has(HoldingStandKeys.FANS)) {
            ledger.note(fields, HoldingStandKeys.FANS, "all fans", "the whole rig is on it");
            return parts.fans().stream().map(Fan::id).toList();
        }
        return fields.get(HoldingStandKeys.FANS).orElse(List.of()).stream()
                .flatMap(name -> parts.fansOf(name).stream())
                .distinct()
                .toList();
    }

    private HoldingStand.Bolts bolts(Fields fields, int count, Quantity apart, Quantity deep) {
        boolean sized = fields.has(HoldingStandKeys.BOLT_SIZE);
        if (!sized && !fields.has(HoldingStandKeys.BOLT)) {
            ledger.problems()
                    .add(
                            Code.CONTRADICTION,
                            fields.spotOf(HoldingStandKeys.BOLTS),
                            "bolts with neither size nor strength",
                            "“bolt size” or “bolt strength” beside them",
                            "Add for instance “bolt size: M10” and “bolt class: 8.8”.");
        }
        return new HoldingStand.Bolts(
                fields.spotOf(HoldingStandKeys.BOLTS).path(),
                count,
                fields.get(HoldingStandKeys.BOLT),
                fields.get(HoldingStandKeys.BOLT_SIZE),
                sized
                        ? ledger.value(fields, HoldingStandKeys.BOLT_CLASS)
                        : HoldingStand.BoltClass.CLASS_4_6,
                likewise(fields, HoldingStandKeys.BOLTS_APART, apart, "as the feet"),
                likewise(fields, HoldingStandKeys.BOLTS_DEEP, deep, "as the feet"));
    }

    /** A length that is another one where nothing is said; its doubt is its own. */
    private Quantity likewise(Fields fields, Key<Quantity> key, Quantity other, String origin) {
        return ledger.computed(fields, key, Measure.HEIGHT.show(other.si()), origin);
    }

    private Tether tether(Fields fields) {
        ledger.note(
                fields,
                TetherKeys.HARNESS_POINT,
                worn ? "at the shoulders" : "at the top of the rig",
                "common practice");
        return new Tether(
                fields.spot().path(),
                ledger.value(fields, TetherKeys.ANCHOR_HEIGHT),
                fields.get(TetherKeys.ANCHOR_STRENGTH),
                ledger.value(fields, TetherKeys.LINE),
                ledger.value(fields, TetherKeys.STIFFNESS),
                ledger.value(fields, TetherKeys.DAMPING),
                fields.get(TetherKeys.LINE_STRENGTH),
                fields.get(TetherKeys.GANTRY).map(this::gantry),
                fields.get(TetherKeys.SIDE_REACH),
                fields.get(TetherKeys.HARNESS_POINT),
                fields.get(TetherKeys.DOWN_LINES)
                        .filter(count -> count > 0)
                        .map(count -> downLines(fields, count)),
                fields.get(TetherKeys.GETTING_DOWN),
                fields.get(TetherKeys.HARNESS_LIMIT));
    }

    private Tether.Gantry gantry(Fields fields) {
        Quantity apart = ledger.value(fields, TetherKeys.GANTRY_FEET);
        return new Tether.Gantry(
                fields.spot().path(),
                ledger.value(fields, TetherKeys.GANTRY_MASS),
                apart,
                likewise(fields, TetherKeys.GANTRY_DEEP, apart, "as they are apart"),
                ledger.value(fields, TetherKeys.GANTRY_FRICTION));
    }

    private Tether.DownLines downLines(Fields fields, int count) {
        return new Tether.DownLines(
                count,
                ledger.value(fields, TetherKeys.DOWN_LENGTH),
                ledger.value(fields, TetherKeys.DOWN_SPREAD),
                ledger.value(fields, TetherKeys.DOWN_STIFFNESS),
                fields.get(TetherKeys.DOWN_STRENGTH));
    }

    private Restraint.Room room(Fields fields) {
        Optional<Quantity> ceiling = fields.get(RestraintKeys.CEILING);
        Optional<Quantity> beam = fields.get(RestraintKeys.BEAM);
        if (ceiling.isPresent() && beam.isPresent() && beam.get().si() > ceiling.get().si()) {
            contradiction(
                    fields,
                    RestraintKeys.BEAM,
                    "a beam above the ceiling",
                    "a beam at or below " + Measure.HEIGHT.show(ceiling.get().si()),
                    "");
        }
        return new Restraint.Room(
                fields.spot().path(),
                ceiling,
                beam,
                fields.get(RestraintKeys.ROOM_LENGTH),
                fields.get(RestraintKeys.ROOM_WIDTH),
                fields.get(RestraintKeys.FLOOR));
    }

    private Restraint.Platform platform(Fields fields, boolean onStand) {
        Restraint.Under under =
                ledger.computed(
                        fields,
                        RestraintKeys.UNDER,
                        onStand || !worn ? "stand" : "wearer",
                        onStand ? "a stand is declared" : "no stand is declared");
        boolean missing = under == Restraint.Under.WEARER ? !worn : !onStand;
        if (missing) {
            contradiction(
                    fields,
                    RestraintKeys.UNDER,
                    under == Restraint.Under.WEARER
                            ? "a scale under a wearer, and nobody who wears the rig"
                            : "a scale under a stand, and no stand",
                    "something that stands on it",
                    "");
        }
        return new Restraint.Platform(
                fields.spot().path(),
                ledger.value(fields, RestraintKeys.PLATFORM_LENGTH),
                ledger.value(fields, RestraintKeys.PLATFORM_WIDTH),
                ledger.value(fields, RestraintKeys.RESOLUTION),
                under);
    }

    private void checkHeadroom(Fields restraint, Tether tether, Optional<Restraint.Room> room) {
        room.flatMap(Restraint.Room::ceiling)
                .filter(ceiling -> tether.anchorHeight().si() > ceiling.si())
                .ifPresent(
                        ceiling ->
                                contradiction(
                                        Ledger.section(restraint, RestraintKeys.TETHER),
                                        TetherKeys.ANCHOR_HEIGHT,
                                        "an anchor above the ceiling",
                                        "an anchor at or below "
                                                + Measure.HEIGHT.show(ceiling.si()),
                                        ""));
    }

    private void contradiction(
            Fields fields, Key<?> key, String found, String expected, String advice) {
        ledger.problems().add(Code.CONTRADICTION, fields.spotOf(key), found, expected, advice);
    }
}
