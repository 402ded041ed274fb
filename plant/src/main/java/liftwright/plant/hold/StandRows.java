package liftwright.plant.hold;

import java.util.Optional;
import java.util.OptionalInt;
import liftwright.physics.Bolt;
import liftwright.plant.hold.StandHold.Bolts;
import liftwright.plant.hold.StandHold.Floor;
import liftwright.plant.parameters.ParameterRows;
import liftwright.plant.parameters.Range;
import liftwright.quantity.Quantity;
import liftwright.rig.HoldingStand;
import liftwright.rig.RigPath;
import liftwright.rig.Vec3;

/** The numbers of a stand as rows of a rig's parameter table. */
public final class StandRows {

    private final HoldingStand stand;
    private final int height;
    private final int mass;
    private final int apart;
    private final int deep;
    private final int friction;
    private final int boltsApart;
    private final int boltsDeep;
    private final OptionalInt boltStrength;
    private final OptionalInt clampForce;

    private StandRows(HoldingStand stand, ParameterRows table) {
        this.stand = stand;
        RigPath at = stand.declaredAt();
        height = row(table, at, "height", "height of the thrust on the stand", stand.height());
        mass = row(table, at, "mass", "mass of the stand", stand.mass());
        apart = row(table, at, "feet apart", "distance of the stand's feet", stand.feetApart());
        deep = row(table, at, "feet deep", "depth of the stand's feet", stand.feetDeep());
        friction =
                table.row(
                        at.child("friction"),
                        "friction of the stand's feet",
                        stand.friction(),
                        Range.NOT_NEGATIVE);
        Optional<HoldingStand.Bolts> bolts = stand.bolts();
        boltsApart =
                bolts.map(b -> row(table, at, "bolts apart", "distance of the bolts", b.apart()))
                        .orElse(-1);
        boltsDeep =
                bolts.map(b -> row(table, at, "bolts deep", "depth of the bolts", b.deep()))
                        .orElse(-1);
        boltStrength =
                index(
                        bolts.flatMap(HoldingStand.Bolts::strength)
                                .map(
                                        s ->
                                                row(
                                                        table,
                                                        at,
                                                        "bolt strength",
                                                        "strength of a bolt",
                                                        s)));
        clampForce =
                index(
                        stand.clamps()
                                .map(
                                        c ->
                                                row(
                                                        table,
                                                        at,
                                                        "clamp force",
                                                        "force of a clamp",
                                                        c.force())));
    }

    /** Declares them. */
    public static StandRows declare(HoldingStand stand, ParameterRows table) {
        return new StandRows(stand, table);
    }

    static OptionalInt index(Optional<Integer> row) {
        return row.map(OptionalInt::of).orElseGet(OptionalInt::empty);
    }

    static int row(ParameterRows table, RigPath at, String key, String label, Quantity value) {
        return table.row(at.child(key), label, value, Range.POSITIVE);
    }

    public HoldingStand stand() {
        return stand;
    }

    /** Height of the middle of thrust above the ground, m. */
    public double heightM(double[] p) {
        return p[height];
    }

    /**
     * What holds it.
     *
     * @param carriedKg mass of what of the rig is on it
     * @param offMiddle place of the centre of that mass from the middle of thrust, turned as on the
     *     stand, m
     * @param gravity m/s²
     */
    public Floor floor(double[] p, double carriedKg, Vec3 offMiddle, double gravity) {
        Vec3 above = new Vec3(0, 0, -p[height]);
        Push steady =
                Push.weight(p[mass] * gravity, Vec3.ZERO)
                        .plus(Push.weight(carriedKg * gravity, offMiddle.plus(above)))
                        .plus(Push.weight(clampsN(p), Vec3.ZERO));
        return new Floor(new Footprint(p[apart], p[deep]), steady, p[friction], bolts(p));
    }

    private double clampsN(double[] p) {
        return clampForce.isEmpty()
                ? 0
                : stand.clamps().map(HoldingStand.Clamps::count).orElse(0)
                        * p[clampForce.getAsInt()];
    }

    private Optional<Bolts> bolts(double[] p) {
        return stand.bolts()
                .map(
                        bolts ->
                                new Bolts(
                                        bolts.count(),
                                        new Footprint(p[boltsApart], p[boltsDeep]),
                                        strengthN(p, bolts)));
    }

    /** As declared, else the proof load of its size, at which it does not stretch yet. */
    private double strengthN(double[] p, HoldingStand.Bolts bolts) {
        return boltStrength.isPresent()
                ? p[boltStrength.getAsInt()]
                : bolts.size()
                        .map(
                                size ->
                                        Bolt.stressAreaM2(size.diameterM(), size.pitchM())
                                                * bolts.boltClass().proofPa())
                        .orElseThrow();
    }
}
