package liftwright.review;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import liftwright.answer.Section;
import liftwright.answer.Value;
import liftwright.plant.HoverPoint;
import liftwright.plant.balance.FanAtWork;
import liftwright.plant.body.Frames;
import liftwright.plant.body.Limb;
import liftwright.plant.body.MassItem;
import liftwright.rig.Fan;
import liftwright.rig.Mount;
import liftwright.rig.Rig;
import liftwright.rig.Vec3;

/** The rig in space at lift-off, as numbers: whoever draws it needs nothing else. */
final class RigDrawing {

    private static final List<String> PLACE = List.of("place-forward", "place-right", "place-up");
    private static final List<String> END = List.of("end-forward", "end-right", "end-up");
    private static final List<String> PUSH = List.of("push-forward", "push-right", "push-up");

    private RigDrawing() {}

    static Section of(Rig rig, HoverPoint point, List<Limb> limbs) {
        List<Section.Table> layers = new ArrayList<>();
        layers.add(fans(rig, point));
        if (!limbs.isEmpty()) {
            layers.add(wearer(limbs));
        }
        layers.add(parts(point));
        layers.add(mounts(rig));
        layers.add(centre(point));
        if (point.ledger().force().length() > 0) {
            layers.add(lift(point));
        }
        layers.addAll(JetLayers.of(rig, point, limbs));
        return new Section.Drawing("rig-drawn", "The rig at lift-off", layers);
    }

    private static Section.Table fans(Rig rig, HoverPoint point) {
        List<List<Value>> rows = new ArrayList<>();
        List<FanAtWork> work = point.ledger().fans();
        for (int k = 0; k < work.size(); k++) {
            FanAtWork at = work.get(k);
            Fan fan = rig.fans().get(k);
            List<Value> row = new ArrayList<>();
            row.add(Value.words("part", at.id().text()));
            row.add(spin(fan));
            row.addAll(lengths(PLACE, at.arm().plus(point.mass().centre())));
            row.add(Value.of("tip-diameter", fan.type().tip().si()));
            row.add(Value.of("fan-thrust-at-lift-off", at.thrustN()));
            row.addAll(vector(PUSH, at.actual()));
            rows.add(row);
        }
        List<String> columns = new ArrayList<>(List.of("part", "spin"));
        columns.addAll(PLACE);
        columns.addAll(List.of("tip-diameter", "fan-thrust-at-lift-off"));
        columns.addAll(PUSH);
        return new Section.Table("drawn-fans", "Fans in place", columns, rows);
    }

    private static Value spin(Fan fan) {
        return switch (fan.spin()) {
            case LEFT_HAND -> Value.words("spin", "left-hand");
            case RIGHT_HAND -> Value.words("spin", "right-hand");
        };
    }

    private static Section.Table wearer(List<Limb> limbs) {
        List<List<Value>> rows = new ArrayList<>();
        for (Limb limb : limbs) {
            List<Value> row = new ArrayList<>();
            row.add(Value.words("segment", limb.name()));
            row.addAll(lengths(PLACE, limb.from()));
            row.addAll(lengths(END, limb.to()));
            rows.add(row);
        }
        List<String> columns = new ArrayList<>(List.of("segment"));
        columns.addAll(PLACE);
        columns.addAll(END);
        return new Section.Table("drawn-wearer", "Segments of the wearer in place", columns, rows);
    }

    private static Section.Table parts(HoverPoint point) {
        List<List<Value>> rows = new ArrayList<>();
        for (MassItem item : point.mass().items()) {
            switch (item.kind()) {
                case WEARER, FAN -> {}
                case PACK, OTHER_PART -> {
                    List<Value> row = new ArrayList<>();
                    row.add(Value.words("part", item.name()));
                    row.add(
                            Value.words(
                                    "part-kind",
                                    item.kind().name().toLowerCase(Locale.ROOT).replace('_', ' ')));
                    row.add(Value.of("part-mass", item.massKg()));
                    row.addAll(lengths(PLACE, item.at()));
                    rows.add(row);
                }
            }
        }
        List<String> columns = new ArrayList<>(List.of("part", "part-kind", "part-mass"));
        columns.addAll(PLACE);
        return new Section.Table("drawn-parts", "Packs and other parts in place", columns, rows);
    }

    /** Origins of the mounts, by what an edit of the file calls them. */
    private static Section.Table mounts(Rig rig) {
        Frames frames = Frames.of(rig);
        List<List<Value>> rows = new ArrayList<>();
        for (Mount mount : rig.mounts()) {
            List<Value> row = new ArrayList<>();
            row.add(Value.words("part", "mounts/" + mount.name()));
            row.addAll(lengths(PLACE, frames.mount(mount).origin()));
            rows.add(row);
        }
        List<String> columns = new ArrayList<>(List.of("part"));
        columns.addAll(PLACE);
        return new Section.Table("drawn-mounts", "Mounts in place", columns, rows);
    }

    private static Section.Table centre(HoverPoint point) {
        List<Value> row = new ArrayList<>(List.of(Value.of("mass", point.mass().massKg())));
        row.addAll(lengths(PLACE, point.mass().centre()));
        List<String> columns = new ArrayList<>(List.of("mass"));
        columns.addAll(PLACE);
        return new Section.Table("drawn-centre", "Centre of mass", columns, List.of(row));
    }

    /** The line along which all thrusts together act: its point nearest the centre of mass. */
    private static Section.Table lift(HoverPoint point) {
        Vec3 force = point.ledger().force();
        double size = force.length();
        Vec3 along = force.times(1 / size);
        Vec3 from = force.cross(point.ledger().moment()).times(1 / (size * size));
        List<Value> row = new ArrayList<>(List.of(Value.of("lift-at-lift-off", size)));
        row.addAll(lengths(PLACE, point.mass().centre().plus(from)));
        row.addAll(vector(PUSH, along));
        List<String> columns = new ArrayList<>(List.of("lift-at-lift-off"));
        columns.addAll(PLACE);
        columns.addAll(PUSH);
        return new Section.Table(
                "drawn-lift", "Line along which the lift acts", columns, List.of(row));
    }

    private static List<Value> lengths(List<String> fields, Vec3 v) {
        return vector(
                fields,
                new Vec3(
                        Rounding.off(v.x(), Rounding.M),
                        Rounding.off(v.y(), Rounding.M),
                        Rounding.off(v.z(), Rounding.M)));
    }

    /** Inside axes to those of the rig file: up is against z. */
    private static List<Value> vector(List<String> fields, Vec3 v) {
        return List.of(
                Value.of(fields.get(0), v.x()),
                Value.of(fields.get(1), v.y()),
                Value.of(fields.get(2), 0.0 - v.z()));
    }
}
