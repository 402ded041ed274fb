package liftwright.plant.body;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
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

    private final Rig rig;
    private final Pose pose;

    /** Number of each term, and what it is multiplied by. */
    private final List<Term> terms = new ArrayList<>();

    private final int[] row;
    private final double[] count;

    /** First term of each part, and one more: terms of a part stand together. */
    private final int[] startOf;

    private final Optional<MeasuredBody> measured;

    private record Term(int part, int row, double count) {}

    private MassLedger(Rig rig, Pose pose, ParameterRows table) {
        this.rig = rig;
        this.pose = pose;
        measured = rig.wearer().map(wearer -> MeasuredBody.declare(wearer, table));
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
        startOf = new int[part + 1];
        for (Term term : terms) {
            startOf[term.part + 1]++;
        }
        for (int k = 0; k < part; k++) {
            startOf[k + 1] += startOf[k];
        }
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

    /**
     * Mass, centre, inertia and parts. Allocates.
     *
     * <p>Packs count as points. A fan is a disk of its tip diameter across its jet, a part with a
     * box that box, evenly filled, with its edges along the axes of its mount.
     */
    public MassProperties properties(double[] p) {
        Pose.Placed placed = pose.placed(p);
        List<MassItem> items = new ArrayList<>();
        int part = 0;
        if (measured.isPresent()) {
            items.addAll(Person.posed(p, massOf(p, part++), measured.get(), pose.posture()));
        }
        for (Fan fan : rig.fans()) {
            double kg = massOf(p, part++);
            double radius = fan.type().tip().si() / 2;
            Vec3 axis = placed.turned(fan.mount(), fan.blows());
            items.add(
                    new MassItem(
                            MassItem.Kind.FAN,
                            fan.id().text(),
                            kg,
                            placed.at(fan.mount(), fan.at()),
                            Inertia.disk(kg, radius, axis)));
        }
        for (Pack pack : rig.packs()) {
            items.add(
                    new MassItem(
                            MassItem.Kind.PACK,
                            pack.id().text(),
                            massOf(p, part++),
                            placed.at(pack.mount(), pack.at()),
                            Inertia.ZERO));
        }
        for (OtherPart other : rig.otherParts()) {
            double kg = massOf(p, part++);
            Inertia own =
                    other.box().map(box -> placed.box(other.mount(), kg, box)).orElse(Inertia.ZERO);
            items.add(
                    new MassItem(
                            MassItem.Kind.OTHER_PART,
                            other.id().text(),
                            kg,
                            placed.at(other.mount(), other.at()),
                            own));
        }
        return MassProperties.of(items);
    }

    /** The wearer alone, standing with hanging arms; empty without one. Allocates. */
    public Optional<MassProperties> standingWearer(double[] p) {
        return measured.map(
                own -> MassProperties.of(Person.standing(p, massOf(p, 0), own, pose.posture())));
    }

    /** The segments of the wearer as posed, to be drawn; none without a wearer. Allocates. */
    public List<Limb> limbs(double[] p) {
        return measured.isPresent() ? Person.limbs(p, massOf(p, 0), pose.posture()) : List.of();
    }

    /** Parts with a box where they are. Allocates. */
    public List<PlacedBox> boxes(double[] p) {
        if (rig.otherParts().stream().allMatch(other -> other.box().isEmpty())) {
            return List.of();
        }
        Pose.Placed placed = pose.placed(p);
        List<PlacedBox> boxes = new ArrayList<>();
        for (OtherPart other : rig.otherParts()) {
            if (other.box().isPresent()) {
                boxes.add(
                        new PlacedBox(
                                other,
                                placed.at(other.mount(), other.at()),
                                placed.turned(other.mount(), new Vec3(1, 0, 0)),
                                placed.turned(other.mount(), new Vec3(0, 1, 0)),
                                placed.turned(other.mount(), new Vec3(0, 0, 1)),
                                other.box().get()));
            }
        }
        return boxes;
    }

    /**
     * A part with a box, rig axes.
     *
     * @param middle m
     * @param forward direction of its first edge
     * @param right of its second
     * @param down of its third
     * @param edgesM their lengths
     */
    public record PlacedBox(
            OtherPart part, Vec3 middle, Vec3 forward, Vec3 right, Vec3 down, Vec3 edgesM) {}

    private double massOf(double[] p, int part) {
        double sum = 0;
        for (int k = startOf[part]; k < startOf[part + 1]; k++) {
            sum += count[k] * p[row[k]];
        }
        return sum;
    }
}
