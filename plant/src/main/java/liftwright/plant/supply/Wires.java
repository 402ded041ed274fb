package liftwright.plant.supply;

import java.util.Arrays;
import java.util.List;
import liftwright.physics.AircraftWire;
import liftwright.physics.Conductor;
import liftwright.plant.parameters.ParameterRows;
import liftwright.plant.parameters.Range;
import liftwright.quantity.Quantity;
import liftwright.rig.Element;
import liftwright.rig.RigPath;
import liftwright.rig.Wiring;

/**
 * Resistance of the chains of the wiring, out and back.
 *
 * <p>Runs take the table of stranded aircraft wire at a temperature of {@link #ASSUMED_RISE_K}
 * above the air. Joints, fuses and poles keep their declared resistance.
 */
public final class Wires {

    /**
     * Wires are taken this much warmer than the air, K: between the start of a run (0 K) and the
     * full load of a wire used to its rating (common practice); 10 K more raise their resistance by
     * 3.9 %.
     */
    public static final double ASSUMED_RISE_K = 30;

    private final List<Wiring.Chain> chains;

    /** First element of each chain in the arrays below, and one more. */
    private final int[] start;

    private final int[] row;

    /** Ω per unit of the parameter, cold, as new. */
    private final double[] factor;

    /** Row of the factor by which a joint is worse than new; −1 for what is as new. */
    private final int[] damage;

    private final boolean[] copper;
    private final boolean[] without;

    private Wires(List<Wiring.Chain> chains) {
        this.chains = chains;
        int elements = chains.stream().mapToInt(chain -> chain.elements().size()).sum();
        start = new int[chains.size() + 1];
        row = new int[elements];
        factor = new double[elements];
        damage = new int[elements];
        Arrays.fill(damage, -1);
        copper = new boolean[elements];
        without = new boolean[chains.size()];
    }

    /** Declares the parameters of all chains. */
    public static Wires declare(Wiring wiring, ParameterRows table) {
        Wires wires = new Wires(wiring.chains());
        int next = 0;
        for (int chain = 0; chain < wires.chains.size(); chain++) {
            boolean nothing = true;
            for (Element element : wires.chains.get(chain).elements()) {
                Quantity value = wires.put(next++, element, table);
                nothing &= value.si() == 0 && value.tolerance().isNone();
            }
            wires.start[chain + 1] = next;
            wires.without[chain] = nothing;
        }
        return wires;
    }

    private Quantity put(int at, Element element, ParameterRows table) {
        String place = element.declaredAt().toString();
        factor[at] = 1;
        return switch (element) {
            case Element.Run run -> {
                factor[at] =
                        Conductor.outAndBackOhm(
                                AircraftWire.of(run.gauge()).ohmpm(), 1, run.conductors());
                copper[at] = true;
                row[at] =
                        table.row(
                                run.declaredAt().child("length"),
                                "length of the wire at " + place,
                                run.id(),
                                run.length(),
                                Range.NOT_NEGATIVE);
                yield run.length();
            }
            case Element.Joint joint -> {
                Quantity worse = joint.wear().damage();
                if (worse.si() != 1 || !worse.tolerance().isNone()) {
                    damage[at] =
                            table.row(
                                    joint.declaredAt().child("damage"),
                                    "damage of the joint at " + place,
                                    joint.id(),
                                    worse,
                                    Range.POSITIVE);
                }
                row[at] =
                        table.row(
                                joint.declaredAt().child("resistance"),
                                "resistance of the joint at " + place,
                                joint.id(),
                                joint.resistance(),
                                Range.NOT_NEGATIVE);
                yield joint.resistance();
            }
            case Element.Fuse fuse -> {
                row[at] =
                        table.row(
                                fuse.declaredAt().child("resistance"),
                                "resistance of the fuse at " + place,
                                fuse.id(),
                                fuse.resistance(),
                                Range.NOT_NEGATIVE);
                yield fuse.resistance();
            }
            case Element.Pole pole -> {
                row[at] =
                        table.row(
                                RigPath.of(
                                        "wiring",
                                        "contactors",
                                        pole.contactor().name(),
                                        "resistance"),
                                "resistance of a pole of contactor " + pole.contactor().name(),
                                pole.id(),
                                pole.contactor().resistance(),
                                Range.NOT_NEGATIVE);
                yield pole.contactor().resistance();
            }
        };
    }

    public List<Wiring.Chain> chains() {
        return chains;
    }

    /** Whether a chain is declared without any resistance. */
    boolean[] without() {
        return without;
    }

    /**
     * Resistances of the chains, Ω.
     *
     * @param airK air temperature, K
     * @param ohm takes one value per chain
     */
    public void resistance(double[] p, double airK, double[] ohm) {
        double warm = Conductor.copperFactor(airK + ASSUMED_RISE_K);
        for (int chain = 0; chain < without.length; chain++) {
            double sum = 0;
            for (int k = start[chain]; k < start[chain + 1]; k++) {
                sum += elementOhm(p, k, warm);
            }
            ohm[chain] = sum;
        }
    }

    /**
     * Resistance of the first elements of a chain, Ω.
     *
     * @param count how many of them
     */
    public double leadingOhm(double[] p, double airK, int chain, int count) {
        double warm = Conductor.copperFactor(airK + ASSUMED_RISE_K);
        double sum = 0;
        for (int k = start[chain]; k < start[chain] + count; k++) {
            sum += elementOhm(p, k, warm);
        }
        return sum;
    }

    private double elementOhm(double[] p, int k, double warm) {
        double ohm = p[row[k]] * factor[k];
        if (damage[k] >= 0) {
            ohm *= p[damage[k]];
        }
        return copper[k] ? ohm * warm : ohm;
    }
}
