package liftwright.plant;

import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import liftwright.physics.Gravity;
import liftwright.plant.motion.Body;
import liftwright.plant.motion.Flight;
import liftwright.plant.motion.RotorInertia;
import liftwright.plant.motion.RotorNumbers;
import liftwright.plant.motion.RunawayCase;
import liftwright.plant.motion.RunawayCase.Start;
import liftwright.plant.motion.RunawayCase.Trigger;
import liftwright.plant.motion.RunawayPath;
import liftwright.plant.motion.SolvedBefore;
import liftwright.plant.supply.Circuit;
import liftwright.plant.supply.NetworkState;
import liftwright.plant.thrust.FanUnits;
import liftwright.rig.Control;
import liftwright.rig.Element;
import liftwright.rig.Fan;
import liftwright.rig.PartId;
import liftwright.rig.Wiring;

/**
 * A rig that runs away upward: full packs, cells not yet settled, cold motors, upright in still air
 * that is not stirred by its own jets. One body in one dimension: that it would turn over as well
 * is asked elsewhere. For one thread.
 *
 * <pre>{@code
 * Runaway runaway = plant.runaway();
 * runaway.load(plant.parameters().nominal());
 * RunawayPath path = runaway.run(of);
 * }</pre>
 */
public final class Runaway {

    private final Assembler parts;
    private final NetworkState supply;
    private final FanUnits units;
    private final Circuit circuit;
    private final FansUnderOrder order;
    private final RotorNumbers rotors;
    private final RotorInertia inertia;
    private final Workspace own;
    private final SolvedBefore before = new SolvedBefore();
    private double[] fullDuty = {};
    private double massKg;
    private double dragAreaM2 = Body.USUAL_DRAG_AREA_M2;

    Runaway(Assembler parts) {
        this.parts = parts;
        units = parts.fans.newUnits();
        supply = parts.network.newState();
        own = new Workspace(supply, units, parts.pose.mounts());
        circuit = new Circuit(parts.network, supply);
        order = new FansUnderOrder(circuit, units, parts.rig.control().kind());
        rotors = new RotorNumbers(parts.rig.fans().size());
        inertia = RotorInertia.of(parts.rig);
        for (int fan = 0; fan < rotors.exitM2.length; fan++) {
            rotors.brakes[fan] = brakes(parts.rig.fans().get(fan));
            rotors.exitM2[fan] = parts.rig.fans().get(fan).type().exitArea().si();
        }
    }

    private static boolean brakes(Fan fan) {
        return fan.type()
                .controller()
                .switching()
                .braking()
                .map(
                        braking ->
                                switch (braking) {
                                    case COAST -> false;
                                    case SHORT, FREEWHEEL -> true;
                                })
                .orElse(false);
    }

    /** Inertias of the rotors, with a table of their own; see {@link #load(double[], double[])}. */
    public RotorInertia inertia() {
        return inertia;
    }

    /** Takes the numbers of a vector, rotors as declared. */
    public void load(double[] p) {
        load(p, inertia.table().nominal());
    }

    /**
     * Takes the numbers of two vectors.
     *
     * @param p of the plant's table
     * @param turning of the table of {@link #inertia}
     */
    public void load(double[] p, double[] turning) {
        double airK = parts.air.temperatureK(p);
        rotors.densityKgpm3 = parts.air.densityKgpm3(p);
        circuit.close();
        before.clear();
        parts.fans.load(p, rotors.densityKgpm3, true, true, true, units);
        order.loaded();
        parts.packs.rest(p, false, supply.emfV);
        parts.packs.resistance(p, airK, false, false, supply.packOhm);
        parts.wires.resistance(p, airK, supply.chainOhm);
        parts.pose.frames(p, own.frames, own.limb);
        fullDuty = new double[rotors.upShare.length];
        for (int fan = 0; fan < fullDuty.length; fan++) {
            fullDuty[fan] = units.orderedDuty(fan);
            rotors.upShare[fan] = parts.lines.upShare(p, own.frames, fan);
            order.upShare()[fan] = rotors.upShare[fan];
            rotors.loss[fan] = parts.fans.intakeLoss(p, fan);
            rotors.inertiaKgm2[fan] = inertia.kgm2(turning, fan);
        }
        massKg = parts.ledger.massKg(p);
    }

    /** Mass of the whole, kg, after {@link #load}. */
    public double massKg() {
        return massKg;
    }

    /** What moves, after {@link #load}. */
    public Body body() {
        return new Body(massKg, dragAreaM2, rotors.densityKgpm3);
    }

    /** Another drag area than {@link Body#USUAL_DRAG_AREA_M2}, m². */
    public void dragArea(double squareMetre) {
        dragAreaM2 = squareMetre;
    }

    /** Follows a runaway, with all its moments. Allocates. */
    public RunawayPath run(RunawayCase of) {
        return run(of, true);
    }

    /**
     * Follows a runaway.
     *
     * @param keep whether to keep its moments, and not its figures alone
     * @throws IllegalArgumentException if it names a control group that the rig has not
     */
    public RunawayPath run(RunawayCase of, boolean keep) {
        circuit.close();
        double[] duty = new double[fullDuty.length];
        double[] speed = new double[fullDuty.length];
        double heightM = 0;
        switch (of.start()) {
            case Start.Ground _ -> {
                // at rest, nothing told
            }
            case Start.Hover(double atM) -> {
                heightM = atM;
                hover(1, duty, speed);
            }
        }
        switch (of.trigger()) {
            case Trigger.AllFull _ -> System.arraycopy(fullDuty, 0, duty, 0, duty.length);
            case Trigger.GroupFull(String group) -> {
                for (int fan : members(group)) {
                    duty[fan] = fullDuty[fan];
                }
            }
            case Trigger.FrozenHover(double excess) -> hover(1 + excess, duty, new double[0]);
        }
        double[] lowered = new double[duty.length];
        if (of.stop().share() > 0 && of.stop().commandAtS() < Double.POSITIVE_INFINITY) {
            hover(of.stop().share(), lowered, new double[0]);
        }
        Flight.Told told =
                new Flight.Told(speed, duty, lowered, of.stop(), opens(of.stop().contactors()));
        return Flight.follow(
                body(),
                circuit,
                units,
                rotors,
                told,
                before,
                heightM,
                of.around(),
                of.horizonS(),
                keep);
    }

    /** Duties and speeds at so much of the weight; those of full throttle where it is too much. */
    private void hover(double share, double[] duty, double[] speed) {
        order.order(new Order.Lift(share * massKg * Gravity.STANDARD_MPS2));
        order.settle(0, supply);
        for (int fan = 0; fan < duty.length; fan++) {
            boolean fed = circuit.plan().isFed(fan);
            duty[fan] = fed ? units.duty(fan) : 0;
            if (speed.length > 0) {
                speed[fan] = fed ? units.speedRadps(fan) : 0;
            }
        }
    }

    private int[] members(String group) {
        Set<PartId> fans =
                parts.rig.control().groups().stream()
                        .filter(each -> each.name().equals(group))
                        .map(Control.Group::fans)
                        .findFirst()
                        .map(Set::copyOf)
                        .orElseThrow(
                                () -> new IllegalArgumentException("no control group " + group));
        List<Fan> all = parts.rig.fans();
        return IntStream.range(0, all.size())
                .filter(fan -> fans.contains(all.get(fan).id()))
                .toArray();
    }

    private int[] opens(Set<String> contactors) {
        List<Wiring.Chain> chains = parts.rig.wiring().chains();
        return IntStream.range(0, chains.size())
                .filter(
                        chain ->
                                chains.get(chain).elements().stream()
                                        .anyMatch(
                                                element ->
                                                        element instanceof Element.Pole pole
                                                                && contactors.contains(
                                                                        pole.contactor().name())))
                .toArray();
    }
}
