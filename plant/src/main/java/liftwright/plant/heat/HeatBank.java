package liftwright.plant.heat;

import java.util.List;
import liftwright.plant.parameters.ParameterRows;
import liftwright.rig.Rig;

/**
 * All that warms in a rig: its lines of wiring, controllers, motors and cells, the parts that they
 * belong to, and where they take their numbers from the parameter vector. Immutable.
 */
public final class HeatBank {

    private final LineRows lines;
    private final BodyRows bodies;
    private final HeatParts parts;
    private final int chains;
    private final int fans;
    private final int packs;

    private HeatBank(Rig rig, LineRows lines, BodyRows bodies) {
        this.lines = lines;
        this.bodies = bodies;
        chains = rig.wiring().chains().size();
        fans = rig.fans().size();
        packs = rig.packs().size();
        parts = new HeatParts(rig, lines, bodies, newNumbers());
    }

    /** Declares the parameters of all that warms. */
    public static HeatBank declare(Rig rig, ParameterRows table) {
        return new HeatBank(rig, LineRows.declare(rig, table), BodyRows.declare(rig, table));
    }

    /** The parts, chain by chain, then fan by fan, then packs. */
    public List<HeatPart> parts() {
        return parts.list;
    }

    HeatParts index() {
        return parts;
    }

    /** New numbers for one thread. */
    public HeatNumbers newNumbers() {
        return lines.newNumbers(bodies.count(), fans);
    }

    public HeatLoad newLoad(HeatNumbers n) {
        return n.newLoad(chains, packs);
    }

    /**
     * Turns the vector into numbers.
     *
     * @param airK air of the site, K
     * @param pascal its pressure, Pa
     */
    public void load(double[] p, double airK, double pascal, HeatNumbers n) {
        lines.load(p, airK, pascal, n);
        bodies.load(p, n);
    }

    public int fans() {
        return fans;
    }

    public int packs() {
        return packs;
    }

    /** Body of a fan's controller: junction and sink. */
    public int controller(int fan) {
        return bodies.controller(fan);
    }

    /** Body of a fan's motor: winding and case. */
    public int motor(int fan) {
        return bodies.motor(fan);
    }

    /** Body of a pack's mean cell: core and surface. */
    public int meanCell(int pack) {
        return bodies.meanCell(pack);
    }

    /** Body of the cell of a pack that has most resistance. */
    public int warmestCell(int pack) {
        return bodies.warmestCell(pack);
    }
}
