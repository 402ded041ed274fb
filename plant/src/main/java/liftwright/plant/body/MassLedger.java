package liftwright.plant.body;

import java.util.ArrayList;
import java.util.List;
import liftwright.physics.BodySegment;
import liftwright.physics.LimbAngles;
import liftwright.plant.parameters.ParameterRows;
import liftwright.plant.parameters.Range;
import liftwright.rig.Fan;
import liftwright.rig.OtherPart;
import liftwright.rig.Pack;
import liftwright.rig.PartId;
import liftwright.rig.Rig;
import liftwright.rig.RigPath;
import liftwright.rig.Vec3;
import liftwright.rig.Wearer;

/**
 * The masses of a rig: wearer, fans with their controllers, packs, other parts. A pack is its cells
 * plus its extra mass, or what it was weighed. Wires are not in it: declare them as a part.
 */
public final class MassLedger {

    /** Height of the ankle over stature (from memory). */
    private static final double ANKLE_HEIGHT = 0.039;

    /** Share of the foot's length that lies behind the ankle (from memory). */
    private static final double HEEL_SHARE = 0.25;

    private final Rig rig;
    private final Pose pose;

    /** Number of each term, and what it is multiplied by. */
    private final List<Term> terms = new ArrayList<>();

    private final int[] row;
    private final double[] count;

    private record Term(int part, int row, double count) {}

    private MassLedger(Rig rig, Pose pose, ParameterRows table) {
        this.rig = rig;
        this.pose = pose;
        int part = 0;
        if (rig.wearer().isPresent()) {
            Wearer wearer = rig.wearer().get();
            int mass =
                    table.row(
                            RigPath.of("wearer", "mass"),
                            "mass of the wearer",
                            wearer.mass(),
                            Range.NOT_NEGATIVE);
            terms.add(new Term(part++, mass, 1));
        }
        for (Fan fan : rig.fans()) {
            fan(part++, fan, table);
        }
        for (Pack pack : rig.packs()) {
            pack(part++, pack, table);
        }
        for (OtherPart other : rig.otherParts()) {
            int mass =
                    table.row(
                            other.declaredAt().child("mass"),
                            "mass of " + other.declaredAt(),
                            other.id(),
                            other.mass(),
                            Range.NOT_NEGATIVE);
            terms.add(new Term(part++, mass, 1));
        }
        row = terms.stream().mapToInt(Term::row).toArray();
        count = terms.stream().mapToDouble(Term::count).toArray();
    }

    /** Declares the masses of a rig. */
    public static MassLedger declare(Rig rig, Pose pose, ParameterRows table) {
        return new MassLedger(rig, pose, table);
    }

    private void fan(int part, Fan fan, ParameterRows table) {
        RigPath type = RigPath.of("fan types", fan.type().name());
        String of = " of fan " + fan.type().name();
        int unit =
                table.row(
                        type.child("mass"),
                        "mass" + of,
                        fan.id(),
                        fan.type().mass(),
                        Range.NOT_NEGATIVE);
        int controller =
                table.row(
                        type.child("controller").child("mass"),
                        "mass of the controller" + of,
                        fan.id(),
                        fan.type().controller().mass(),
                        Range.NOT_NEGATIVE);
        terms.add(new Term(part, unit, 1));
        terms.add(new Term(part, controller, 1));
    }

    private void pack(int part, Pack pack, ParameterRows table) {
        RigPath at = pack.declaredAt();
        PartId id = pack.id();
        if (pack.mass().isPresent()) {
            int weighed =
                    table.row(
                            at.child("mass"),
                            "mass of pack " + at,
                            id,
                            pack.mass().get(),
                            Range.NOT_NEGATIVE);
            terms.add(new Term(part, weighed, 1));
            return;
        }
        int cells = pack.series() * pack.parallel();
        int cell =
                table.meanRow(
                        RigPath.of("cells", pack.cell().name(), "mass"),
                        "mass of cell " + pack.cell().name(),
                        id,
                        cells,
                        pack.cell().mass(),
                        Range.NOT_NEGATIVE);
        int extra =
                table.row(
                        at.child("extra mass"),
                        "extra mass of pack " + at,
                        id,
                        pack.extraMass(),
                        Range.NOT_NEGATIVE);
        terms.add(new Term(part, cell, cells));
        terms.add(new Term(part, extra, 1));
    }

    /** Mass of the whole rig, kg. */
    public double massKg(double[] p) {
        double sum = 0;
        for (int k = 0; k < row.length; k++) {
            sum += count[k] * p[row[k]];
        }
        return sum;
    }

    /** Mass, centre and parts. For reports, not for loops. */
    public MassProperties properties(double[] p) {
        List<MassItem> items = new ArrayList<>();
        int part = 0;
        if (rig.wearer().isPresent()) {
            Wearer wearer = rig.wearer().get();
            wearer(p, massOf(p, part++), wearer, items);
        }
        for (Fan fan : rig.fans()) {
            Vec3 at = pose.place(p, fan.mount(), fan.at());
            items.add(new MassItem(MassItem.Kind.FAN, fan.id().text(), massOf(p, part++), at));
        }
        for (Pack pack : rig.packs()) {
            Vec3 at = pose.place(p, pack.mount(), pack.at());
            items.add(new MassItem(MassItem.Kind.PACK, pack.id().text(), massOf(p, part++), at));
        }
        for (OtherPart other : rig.otherParts()) {
            Vec3 at = pose.place(p, other.mount(), other.at());
            items.add(
                    new MassItem(
                            MassItem.Kind.OTHER_PART, other.id().text(), massOf(p, part++), at));
        }
        return MassProperties.of(items);
    }

    private double massOf(double[] p, int part) {
        return terms.stream()
                .filter(term -> term.part == part)
                .mapToDouble(term -> term.count * p[term.row])
                .sum();
    }

    /** Segments of a person who stands straight on hanging legs, arms as declared. */
    private void wearer(double[] p, double massKg, Wearer wearer, List<MassItem> items) {
        BodySegment.Reference body = Arms.reference(wearer.body());
        Arms arms = pose.arms();
        double stature = wearer.stature().si();
        double hip = BodySegment.TRUNK.lengthM(body, stature);
        double knee = hip + BodySegment.THIGH.lengthM(body, stature);
        double ankle = knee + BodySegment.SHANK.lengthM(body, stature);
        double floor = ankle + ANKLE_HEIGHT * stature;
        double crown = floor - stature;
        Segments segments = new Segments(body, stature, massKg, items);
        Vec3 down = new Vec3(0, 0, 1);
        segments.add(BodySegment.HEAD, "head", new Vec3(0, 0, crown), down);
        segments.add(BodySegment.TRUNK, "trunk", Vec3.ZERO, down);
        for (double side : new double[] {LimbAngles.LEFT, LimbAngles.RIGHT}) {
            String name = side == LimbAngles.LEFT ? "left " : "right ";
            double y = side * BodySegment.HIP_HALF_SPACING * stature;
            segments.add(BodySegment.THIGH, name + "thigh", new Vec3(0, y, hip), down);
            segments.add(BodySegment.SHANK, name + "shank", new Vec3(0, y, knee), down);
            double heel = -HEEL_SHARE * BodySegment.FOOT.lengthM(body, stature);
            segments.add(
                    BodySegment.FOOT, name + "foot", new Vec3(heel, y, floor), new Vec3(1, 0, 0));
            Vec3 shoulder = arms.shoulder(p, side);
            Vec3 elbow = arms.elbow(p, side);
            Vec3 forearm = arms.forearm(p, side);
            Vec3 upper = arms.upperArm(p, side);
            segments.add(BodySegment.UPPER_ARM, name + "upper arm", shoulder, upper);
            segments.add(BodySegment.FOREARM, name + "forearm", elbow, forearm);
            Vec3 wrist = elbow.plus(forearm.times(BodySegment.FOREARM.lengthM(body, stature)));
            segments.add(BodySegment.HAND, name + "hand", wrist, forearm);
        }
    }

    private record Segments(
            BodySegment.Reference body, double statureM, double massKg, List<MassItem> items) {

        /** The table's percentages, rounded one by one, add up to 99.99 or 100. */
        private static double wholeShare(BodySegment.Reference body) {
            double pairs = 0;
            for (BodySegment each :
                    List.of(
                            BodySegment.THIGH,
                            BodySegment.SHANK,
                            BodySegment.FOOT,
                            BodySegment.UPPER_ARM,
                            BodySegment.FOREARM,
                            BodySegment.HAND)) {
                pairs += each.massShare(body);
            }
            return BodySegment.HEAD.massShare(body) + BodySegment.TRUNK.massShare(body) + 2 * pairs;
        }

        void add(BodySegment segment, String name, Vec3 from, Vec3 along) {
            double reach = segment.centreShare(body) * segment.lengthM(body, statureM);
            items.add(
                    new MassItem(
                            MassItem.Kind.WEARER,
                            name,
                            segment.massShare(body) / wholeShare(body) * massKg,
                            from.plus(along.times(reach))));
        }
    }
}
