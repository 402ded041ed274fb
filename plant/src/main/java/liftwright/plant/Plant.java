package liftwright.plant;

import java.util.List;
import java.util.Set;
import liftwright.physics.Air;
import liftwright.physics.Gravity;
import liftwright.plant.body.MassLedger;
import liftwright.plant.body.MassProperties;
import liftwright.plant.body.Pose;
import liftwright.plant.body.ThrustLines;
import liftwright.plant.heat.HeatBank;
import liftwright.plant.heat.HeatPart;
import liftwright.plant.hold.HoldMemory;
import liftwright.plant.parameters.ParameterTable;
import liftwright.plant.supply.CellDraw;
import liftwright.plant.supply.Cells;
import liftwright.plant.supply.Circuit;
import liftwright.plant.supply.Network;
import liftwright.plant.supply.NetworkState;
import liftwright.plant.supply.PackBank;
import liftwright.plant.supply.Wires;
import liftwright.plant.thrust.FanBank;
import liftwright.plant.thrust.FanUnits;
import liftwright.rig.Rig;
import liftwright.rig.Vec3;
import liftwright.rig.Wiring;

/**
 * A rig in numbers: its structure, assembled once, and its parameter table. Immutable and safe to
 * share; each thread brings its own {@link Workspace} and {@link SteadyState}.
 *
 * <p>Vectors {@code p} are those of {@link #parameters}. Fans, packs and chains count as in the
 * rig's lists.
 */
public final class Plant {

    private final Rig rig;
    private final ParameterTable table;
    private final SiteAir air;
    private final SiteGround ground;
    private final FanBank fans;
    private final PackBank packs;
    private final Wires wires;
    private final Network network;
    private final Pose pose;
    private final ThrustLines lines;
    private final MassLedger ledger;
    private final Assembler parts;

    Plant(Assembler parts) {
        this.parts = parts;
        rig = parts.rig;
        table = parts.table;
        air = parts.air;
        ground = parts.ground;
        fans = parts.fans;
        packs = parts.packs;
        wires = parts.wires;
        network = parts.network;
        pose = parts.pose;
        lines = parts.lines;
        ledger = parts.ledger;
    }

    /**
     * Assembles a rig.
     *
     * @throws liftwright.plant.parameters.ImpossibleValueException if a declared value is none that
     *     can be
     * @throws liftwright.plant.identify.NotToldException if a bench table makes no fan
     */
    public static Plant assemble(Rig rig) {
        return assemble(rig, Set.of());
    }

    /**
     * The same with contactors open: what hangs behind them alone is dead, and the rest goes on.
     *
     * @param opened names of contactors; a name that the rig lacks opens nothing
     */
    public static Plant assemble(Rig rig, Set<String> opened) {
        return new Plant(new Assembler(rig, opened, false));
    }

    /**
     * The same plant with all that warms: its table has the rows of heat as well, so that their
     * doubts take part, and its runs compute temperatures. Operating points are as before.
     */
    public static Plant assembleHeated(Rig rig) {
        return assembleHeated(rig, Set.of());
    }

    /**
     * The same with contactors open.
     *
     * @param opened as for {@link #assemble(Rig, Set)}
     */
    public static Plant assembleHeated(Rig rig, Set<String> opened) {
        return new Plant(new Assembler(rig, opened, true));
    }

    /**
     * The same plant with what holds the rig: its table has the rows of stand and tether as well.
     * Operating points are as before.
     */
    public static Plant assembleHeld(Rig rig) {
        return new Plant(new Assembler(rig, Set.of(), false, true));
    }

    /**
     * The same plant where other numbers count as declared, nothing assembled twice: everything
     * that is told of the declared values is then told of these, such as those of one draw.
     *
     * @param p a vector of {@link #parameters}
     * @param cells what its cells are; see {@link #cells}
     */
    public Plant declaring(double[] p, CellDraw cells) {
        return new Plant(new Assembler(parts, table.declaring(p), cells));
    }

    /**
     * What its cells are where nothing is drawn of them: as expected, unless a draw was declared.
     */
    public CellDraw cells() {
        return parts.cells;
    }

    /**
     * What holds the rig, for one thread.
     *
     * @throws IllegalStateException unless {@link #assembleHeld} made this plant
     */
    public Holding holding() {
        return holding(new HoldMemory());
    }

    /**
     * The same that shares what it computes.
     *
     * @param memory of plants of one rig, held otherwise
     */
    public Holding holding(HoldMemory memory) {
        return new Holding(
                parts,
                parts.hold.orElseThrow(
                        () -> new IllegalStateException("a plant that nothing holds")),
                memory);
    }

    /** Whether runs compute temperatures. */
    public boolean isHeated() {
        return parts.heat.isPresent();
    }

    /** All parts that warm, with their limits; none unless {@link #isHeated}. */
    public List<HeatPart> heatParts() {
        return parts.heat.map(HeatBank::parts).orElse(List.of());
    }

    /** Lift-off of the same rig with the same contactors, nothing assembled twice. */
    public Balancing balancing() {
        return new Balancing(parts);
    }

    /** Every fan at full duty alone, nothing assembled twice; for one thread. */
    public FullThrust fullThrust() {
        return new FullThrust(parts);
    }

    /** What losses leave of the same rig, nothing assembled twice. */
    public Losses losses(Losses.Charge charge) {
        return new Losses(parts, charge);
    }

    /** What a runaway of it does, for one thread. */
    public Runaway runaway() {
        return new Runaway(parts);
    }

    /** Which corrections of the rig count in it, and which do not. */
    public HeldCorrections corrections() {
        return parts.corrections;
    }

    /** The rig it was made from. */
    public Rig rig() {
        return rig;
    }

    public ParameterTable parameters() {
        return table;
    }

    /** New scratch for one thread. */
    public Workspace workspace() {
        return new Workspace(network.newState(), fans.newUnits(), pose.mounts());
    }

    /** A run on the packs, for one thread. */
    public Discharge discharge() {
        Workspace own = workspace();
        Circuit circuit = new Circuit(network, own.network);
        FansUnderOrder under = new FansUnderOrder(circuit, own.units, rig.control().kind());
        return new Discharge(
                this,
                own,
                circuit,
                under,
                packs.newCells(),
                parts.heat.map(bank -> new HeatRun(parts, bank, own, circuit)));
    }

    /** All rotors on the one supply at fixed steps, for one thread. */
    public Drive drive() {
        Workspace own = workspace();
        return new Drive(parts, own, new Circuit(network, own.network));
    }

    /** Turns the vector into what a run needs; see {@link Discharge#load}. */
    void load(double[] p, CellDraw draw, Workspace own, FansUnderOrder under, Cells cells) {
        double airK = air.temperatureK(p);
        fans.load(p, air.densityKgpm3(p), true, true, true, under.units());
        under.loaded();
        wires.resistance(p, airK, own.network.chainOhm);
        packs.load(p, table, draw, airK, cells);
        pose.frames(p, own.frames, own.limb);
        for (int fan = 0; fan < rig.fans().size(); fan++) {
            under.upShare()[fan] = lines.upShare(p, own.frames, fan);
        }
    }

    /** A new operating point to write into. */
    public SteadyState state() {
        return new SteadyState(rig.fans().size(), rig.packs().size(), rig.wiring().chains().size());
    }

    /**
     * The operating point at full throttle: every fan at the duty of its group (or 1), cold motors,
     * settled cells. Allocates nothing.
     *
     * @param out overwritten
     */
    public void solve(double[] p, Effects effects, Workspace workspace, SteadyState out) {
        load(p, effects, workspace);
        operate(p, effects, workspace, out);
    }

    /** The same with warm motors and controllers. */
    public void solve(
            double[] p, Effects effects, MotorHeat heat, Workspace workspace, SteadyState out) {
        load(p, effects, workspace);
        fans.warm(p, heat.magnetK(), heat.windingK(), heat.switchK(), workspace.units);
        operate(p, effects, workspace, out);
    }

    private void load(double[] p, Effects effects, Workspace workspace) {
        fans.load(
                p,
                effects.siteDensity() ? air.densityKgpm3(p) : Air.REFERENCE_DENSITY_KGPM3,
                effects.groupShare(),
                effects.intake(),
                effects.installation(),
                workspace.units);
    }

    private void operate(double[] p, Effects effects, Workspace workspace, SteadyState out) {
        NetworkState supply = workspace.network;
        double airK = air.temperatureK(p);
        packs.rest(p, effects.charge(), supply.emfV);
        packs.resistance(p, airK, effects.charge(), true, supply.packOhm);
        wires.resistance(p, airK, supply.chainOhm);
        if (effects.sag()) {
            network.solve(supply, workspace.units);
        } else {
            network.rest(supply);
        }
        supply(p, effects.sag(), supply, out);
        fans(p, effects.lean(), workspace, out);
        out.converged = supply.converged();
        out.iterations = supply.iterations();
        if (effects.sag()) {
            double account = out.shaftW + out.fanLossW + out.supplyLossW;
            out.closure = relative(out.sourceW - account, out.sourceW);
        } else {
            out.closure = relative(out.busPowerW - out.shaftW - out.fanLossW, out.busPowerW);
        }
    }

    private static double relative(double difference, double whole) {
        return whole == 0 ? Math.abs(difference) : Math.abs(difference / whole);
    }

    private void supply(double[] p, boolean sag, NetworkState supply, SteadyState out) {
        double source = 0;
        double loss = 0;
        for (int k = 0; k < out.packA.length; k++) {
            double current = sag ? supply.packA(k) : 0;
            double terminalV = sag ? supply.packTerminalV(k) : supply.emfV[k];
            out.packA[k] = current;
            out.packRestV[k] = supply.emfV[k];
            out.packTerminalV[k] = terminalV;
            out.cellUnderLoadV[k] = packs.cellV(p, k, terminalV, current);
            source += supply.emfV[k] * current;
            loss += current * current * supply.packOhm[k];
        }
        for (int k = 0; k < out.chainA.length; k++) {
            out.chainA[k] = sag ? supply.chainA(k) : 0;
            out.chainLossW[k] = sag ? supply.chainLossW(k) : 0;
            loss += out.chainLossW[k];
        }
        out.sourceW = source;
        out.supplyLossW = loss;
    }

    private void fans(double[] p, boolean lean, Workspace workspace, SteadyState out) {
        FanUnits units = workspace.units;
        pose.frames(p, workspace.frames, workspace.limb);
        double lift = 0;
        double bus = 0;
        double shaft = 0;
        double heat = 0;
        int unfed = 0;
        for (int k = 0; k < out.fanThrustN.length; k++) {
            boolean fed = network.isFed(k);
            out.fanFed[k] = fed;
            if (!fed) {
                unfed++;
                continue; // its figures were never written
            }
            double terminalV = workspace.network.loadTerminalV(k);
            units.operate(k, terminalV);
            units.account(k, terminalV);
            double thrust = units.thrustN();
            double upward = lean ? thrust * lines.upShare(p, workspace.frames, k) : thrust;
            out.fanTerminalV[k] = terminalV;
            out.fanDuty[k] = units.duty(k);
            out.fanSpeedRadps[k] = units.speedRadps(k);
            out.fanWindingA[k] = units.windingA(k);
            out.fanBusA[k] = units.currentA(k);
            out.fanThrustN[k] = thrust;
            out.fanUpwardThrustN[k] = upward;
            out.fanShaftW[k] = units.shaftW();
            out.fanLimited[k] = units.limited(k);
            lift += upward;
            bus += terminalV * units.currentA(k);
            shaft += units.shaftW();
            heat += units.heatW();
        }
        out.liftN = lift;
        out.busPowerW = bus;
        out.shaftW = shaft;
        out.fanLossW = heat;
        out.fansWithoutSupply = unfed;
    }

    /** Mass of the whole rig, wearer included, kg. */
    public double massKg(double[] p) {
        return ledger.massKg(p);
    }

    /** Weight of the whole rig under standard gravity, N. */
    public double weightN(double[] p) {
        return massKg(p) * Gravity.STANDARD_MPS2;
    }

    /** Mass, centre and parts as declared. For reports, not for loops. */
    public MassProperties mass() {
        return ledger.properties(table.nominal());
    }

    /** Place of a fan in rig axes ({@link Pose}), m. For reports, not for loops. */
    public Vec3 fanPlace(double[] p, int fan) {
        return pose.place(p, rig.fans().get(fan).mount(), rig.fans().get(fan).at());
    }

    /** Upward share of a fan's thrust, −1 to 1. For reports, not for loops. */
    public double upShare(double[] p, int fan) {
        Workspace scratch = workspace();
        pose.frames(p, scratch.frames, scratch.limb);
        return lines.upShare(p, scratch.frames, fan);
    }

    /**
     * Added intake loss K of one fan, over the exit dynamic pressure; outside its law beyond {@link
     * liftwright.physics.FanLaw#GREATEST_INTAKE_LOSS}.
     */
    public double intakeLoss(double[] p, int fan) {
        return fans.intakeLoss(p, fan);
    }

    /** Density of the air of the site, kg/m³. */
    public double siteDensityKgpm3(double[] p) {
        return air.densityKgpm3(p);
    }

    /** What the rig stands on. */
    public SiteGround ground() {
        return ground;
    }

    /** Air temperature of the site, K. */
    public double siteTemperatureK(double[] p) {
        return air.temperatureK(p);
    }

    /**
     * Chains whose current nothing determines, because chains without resistance form a loop: the
     * states give them as zero. Declare what little resistance they have.
     */
    public List<Wiring.Chain> undeterminedChains() {
        return network.undeterminedChains().stream().map(wires.chains()::get).toList();
    }

    /**
     * Every part that has a limit, against it.
     *
     * @param state an operating point solved at the same vector
     */
    public List<OperatingLimit> limits(double[] p, SteadyState state) {
        return new OperatingLimits(rig, air, fans, packs, wires, network).of(p, state);
    }

    /**
     * For each pack that feeds a fan, the circuit in which it rings when it is plugged onto empty
     * capacitors. For reports, not for loops.
     */
    public List<LeadLoop> pluggedIn(double[] p) {
        return leadLoops(p).pluggedIn();
    }

    /**
     * The circuits whose fans all stop at once, packs full.
     *
     * @param before the currents until then, solved at the same vector
     */
    public List<LeadLoop> cut(double[] p, SteadyState before) {
        return leadLoops(p).cut(before);
    }

    /** What a full pack stores, slowly drawn to nothing, J. For reports, not for loops. */
    public double storedJ(double[] p, int pack) {
        return packs.storedJ(p, pack);
    }

    /** The supply at its strongest. For reports, not for loops. */
    public FaultSupply faultSupply(double[] p) {
        double airK = air.temperatureK(p);
        double[] fullV = new double[rig.packs().size()];
        packs.rest(p, false, fullV);
        double[] packOhm = new double[fullV.length];
        packs.resistance(p, airK, false, false, packOhm);
        double[] chainOhm = new double[wires.chains().size()];
        wires.resistance(p, airK, chainOhm);
        return new FaultSupply(fullV, packOhm, chainOhm, airK + Wires.ASSUMED_RISE_K);
    }

    private LeadLoops leadLoops(double[] p) {
        FaultSupply strong = faultSupply(p);
        return new LeadLoops(rig, strong.packOhm(), strong.chainOhm(), strong.fullV());
    }
}
