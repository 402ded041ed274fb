package liftwright.plant;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import liftwright.rig.CellType;
import liftwright.rig.Control;
import liftwright.rig.Element;
import liftwright.rig.Fan;
import liftwright.rig.FanType;
import liftwright.rig.Intake;
import liftwright.rig.Mount;
import liftwright.rig.OtherPart;
import liftwright.rig.Pack;
import liftwright.rig.Rig;
import liftwright.rig.Wearer;
import liftwright.rig.Wiring;
import org.ejml.simple.SimpleMatrix;

/**
 * The same rig computed in another way, straight from its records: node voltages, chain currents
 * and pack currents as unknowns of one dense system (so a wire of no resistance is an equation like
 * any other), fan units by bisection, slopes by differences, rotations as matrix products. Shares
 * no code with what it judges. Formulas: the published ones named beside the laws.
 */
final class Referee {

    final double[] terminalV;
    final double[] duty;
    final double[] speed;
    final double[] windingA;
    final double[] busA;
    final double[] thrustN;
    final double[] upwardN;
    final boolean[] fed;
    final double[] packA;
    final double[] chainA;
    double liftN;

    private final Rig rig;
    private final Effects effects;
    private final double airK;
    final double density;

    private record Unit(
            double thrust,
            double torque,
            double kv,
            double ohm,
            double noLoad,
            double switching,
            double fixed,
            double limit,
            double duty) {}

    private record Point(double busA, double windingA, double duty, double speed) {}

    Referee(Rig rig, Effects effects) {
        this.rig = rig;
        this.effects = effects;
        int fans = rig.fans().size();
        terminalV = new double[fans];
        duty = new double[fans];
        speed = new double[fans];
        windingA = new double[fans];
        busA = new double[fans];
        thrustN = new double[fans];
        upwardN = new double[fans];
        fed = new boolean[fans];
        packA = new double[rig.packs().size()];
        chainA = new double[rig.wiring().chains().size()];
        double z = rig.site().elevation().si();
        double h = 6356766.0 * z / (6356766.0 + z);
        double standardK = 288.15 - 0.0065 * h;
        airK = rig.site().temperature().map(q -> q.si()).orElse(standardK);
        double pascal =
                rig.site()
                        .pressure()
                        .map(q -> q.si())
                        .orElse(101325 * Math.pow(standardK / 288.15, 5.25588));
        double t = airK - 273.15;
        double vapour = rig.site().humidity().si() * 611.21 * Math.exp(17.502 * t / (240.97 + t));
        density =
                effects.siteDensity()
                        ? (pascal - vapour) / (287.05307 * airK) + vapour / (461.5 * airK)
                        : 1.225;
        solve();
    }

    private void solve() {
        Set<String> live = live();
        List<String> node = List.copyOf(live);
        List<Integer> liveChains = new ArrayList<>();
        List<Wiring.Chain> chains = rig.wiring().chains();
        for (int c = 0; c < chains.size(); c++) {
            if (live.contains(chains.get(c).from())) {
                liveChains.add(c);
            }
        }
        int nodes = node.size();
        int packs = rig.packs().size();
        int size = nodes + liveChains.size() + packs;
        Unit[] units = new Unit[rig.fans().size()];
        for (int f = 0; f < units.length; f++) {
            units[f] = unit(rig.fans().get(f));
            fed[f] = live.contains(rig.fans().get(f).id().text());
        }
        double top = 0;
        for (Pack pack : rig.packs()) {
            top = Math.max(top, rest(pack));
        }
        double[] x = new double[size];
        for (int n = 0; n < nodes; n++) {
            x[n] = top;
        }
        // As if a capacitor hung at every fan, discharging from the top: what is left standing when
        // its current has died is the state that a rig switched on from rest arrives at.
        double capacitorS = 100;
        boolean settled = size == 0;
        for (int step = 0; !settled && step < 5000; step++) {
            SimpleMatrix jacobian = new SimpleMatrix(size, size);
            SimpleMatrix error = new SimpleMatrix(size, 1);
            for (int k = 0; k < liveChains.size(); k++) {
                Wiring.Chain chain = chains.get(liveChains.get(k));
                int row = nodes + k;
                int from = node.indexOf(chain.from());
                int to = node.indexOf(chain.to());
                double ohm = ohm(chain);
                add(jacobian, error, from, row, 1, x);
                add(jacobian, error, to, row, -1, x);
                if (from != to) {
                    add(jacobian, error, row, from, 1, x);
                    add(jacobian, error, row, to, -1, x);
                    add(jacobian, error, row, row, -ohm, x);
                } else {
                    add(jacobian, error, row, row, 1, x);
                }
            }
            for (int k = 0; k < packs; k++) {
                Pack pack = rig.packs().get(k);
                int row = nodes + liveChains.size() + k;
                int at = node.indexOf(pack.id().text());
                add(jacobian, error, at, row, -1, x);
                add(jacobian, error, row, at, 1, x);
                add(jacobian, error, row, row, ohm(pack), x);
                error.set(row, 0, error.get(row, 0) - rest(pack));
            }
            for (int f = 0; f < units.length; f++) {
                if (fed[f] && effects.sag()) {
                    int at = node.indexOf(rig.fans().get(f).id().text());
                    double h = 1e-6 * Math.abs(x[at]);
                    double slope =
                            (point(units[f], x[at] + h).busA - point(units[f], x[at] - h).busA)
                                    / (2 * h);
                    jacobian.set(at, at, jacobian.get(at, at) + slope + capacitorS);
                    error.set(at, 0, error.get(at, 0) + point(units[f], x[at]).busA);
                }
            }
            SimpleMatrix move = jacobian.solve(error);
            double most = 0;
            for (int n = 0; n < nodes; n++) {
                most = Math.max(most, Math.abs(move.get(n, 0)));
            }
            for (int i = 0; i < size; i++) {
                x[i] -= move.get(i, 0);
            }
            capacitorS = most < 0.3 ? capacitorS / 2 : Math.min(100, capacitorS * 1.5);
            settled = most < 1e-13 * top && capacitorS < 1e-9;
        }
        if (!settled) {
            throw new AssertionError("the referee did not settle");
        }
        for (int k = 0; k < liveChains.size(); k++) {
            chainA[liveChains.get(k)] = x[nodes + k];
        }
        for (int k = 0; k < packs; k++) {
            packA[k] = x[nodes + liveChains.size() + k];
        }
        for (int f = 0; f < units.length; f++) {
            if (fed[f]) {
                fan(f, units[f], x[node.indexOf(rig.fans().get(f).id().text())]);
            }
        }
    }

    private static void add(
            SimpleMatrix jacobian, SimpleMatrix error, int row, int column, double v, double[] x) {
        jacobian.set(row, column, jacobian.get(row, column) + v);
        error.set(row, 0, error.get(row, 0) + v * x[column]);
    }

    private Set<String> live() {
        Set<String> live = new HashSet<>();
        rig.packs().forEach(pack -> live.add(pack.id().text()));
        for (boolean grew = true; grew; ) {
            grew = false;
            for (Wiring.Chain chain : rig.wiring().chains()) {
                if (live.contains(chain.from()) || live.contains(chain.to())) {
                    grew |= live.add(chain.from());
                    grew |= live.add(chain.to());
                }
            }
        }
        return live;
    }

    private void fan(int f, Unit unit, double volt) {
        Point point = point(unit, volt);
        terminalV[f] = volt;
        duty[f] = point.duty;
        speed[f] = point.speed;
        windingA[f] = point.windingA;
        busA[f] = point.busA;
        thrustN[f] = unit.thrust * point.speed * point.speed;
        upwardN[f] = thrustN[f] * (effects.lean() ? upShare(rig.fans().get(f)) : 1);
        liftN += upwardN[f];
    }

    private static Point point(Unit u, double volt) {
        double speed = 0;
        double winding = u.duty * volt / u.ohm;
        if (u.duty * volt > u.noLoad * u.ohm) {
            double low = 0;
            double high = u.kv * u.duty * volt;
            for (int k = 0; k < 100; k++) {
                double middle = (low + high) / 2;
                double amps = u.noLoad + u.torque * u.kv * middle * middle;
                if (u.duty * volt - u.ohm * amps - middle / u.kv > 0) {
                    low = middle;
                } else {
                    high = middle;
                }
            }
            speed = (low + high) / 2;
            winding = u.noLoad + u.torque * u.kv * speed * speed;
        }
        double duty = u.duty;
        if (winding > u.limit) {
            winding = u.limit;
            double low = 0;
            double high = speed;
            for (int k = 0; k < 100; k++) {
                double middle = (low + high) / 2;
                if (u.noLoad + u.torque * u.kv * middle * middle < u.limit) {
                    low = middle;
                } else {
                    high = middle;
                }
            }
            speed = (low + high) / 2;
            duty = (winding * u.ohm + speed / u.kv) / volt;
        }
        double bus = duty * winding + u.switching * winding * (1 - duty) + u.fixed / volt;
        return new Point(bus, winding, duty, speed);
    }

    private Unit unit(Fan fan) {
        FanType type = fan.type();
        double thrust;
        double torque;
        switch (type.performance()) {
            case FanType.Performance.AtSpeed at -> {
                thrust = at.thrust().si() / Math.pow(at.speed().si(), 2);
                torque = at.shaftPower().si() / Math.pow(at.speed().si(), 3);
            }
            case FanType.Performance.Coefficients at -> {
                thrust = at.thrust().si();
                torque = at.torque().si();
            }
            case FanType.Performance.Measured _ ->
                    throw new IllegalArgumentException("the referee reads no tables");
        }
        if (effects.intake() && fan.intake().isPresent()) {
            Intake intake = fan.intake().get();
            double f = intake.freeArea().si();
            double zeta =
                    intake.screen() == Intake.Screen.WIRE
                            ? 1.3 * (1 - f) + Math.pow(1 / f - 1, 2)
                            : Math.pow(0.707 * Math.pow(1 - f, 0.375) + 1 - f, 2) / (f * f);
            double exits = intake.sharedBy() * type.exitArea().si();
            double loss = zeta * Math.pow(exits / intake.face().si(), 2);
            thrust /= Math.cbrt((1 + loss) * (1 + loss));
        }
        if (effects.installation()) {
            thrust *= fan.installation().value().si();
            thrust *= type.data() == FanType.Data.SELLER ? 0.9 : 1;
        }
        double share = 1;
        for (Control.Group group : rig.control().groups()) {
            if (effects.groupShare() && group.fans().contains(fan.id())) {
                share = group.share().si();
            }
        }
        FanType.Controller controller = type.controller();
        return new Unit(
                thrust * type.scatter().si() * density / 1.225,
                torque * density / 1.225,
                type.motor().speedConstant().orElseThrow().si(),
                type.motor().windingResistance().orElseThrow().si()
                        + controller.onResistance().si(),
                type.motor().noLoadCurrent().orElseThrow().si(),
                controller.switchingLoss().si(),
                controller.fixedPower().si(),
                controller.currentLimit().map(q -> q.si()).orElse(1e9),
                share);
    }

    private double charge(Pack pack) {
        return effects.charge()
                ? Math.min(rig.demands().judgedAtCharge().si(), pack.charge().si())
                : 1;
    }

    /** Straight lines as a sum of hinges. */
    private static double factor(CellType.Shape shape, double charge) {
        double sum = shape.factor().getFirst();
        for (int k = 1; k < shape.charge().size(); k++) {
            double from = shape.charge().get(k - 1);
            double to = shape.charge().get(k);
            double gone = Math.max(0, Math.min(charge, to) - from);
            sum += gone / (to - from) * (shape.factor().get(k) - shape.factor().get(k - 1));
        }
        return sum;
    }

    private double rest(Pack pack) {
        double charge = charge(pack);
        List<Double> share = pack.cell().openCircuit().orElseThrow().charge();
        List<Double> volt = pack.cell().openCircuit().orElseThrow().volt();
        int k = 1;
        while (k < share.size() - 1 && share.get(k) < charge) {
            k++;
        }
        double slope = (volt.get(k) - volt.get(k - 1)) / (share.get(k) - share.get(k - 1));
        double cell = volt.get(k - 1) + slope * (charge - share.get(k - 1));
        return pack.series() * (cell + pack.cell().openCircuitDoubt().si());
    }

    private double ohm(Pack pack) {
        double cell = pack.cell().resistance().orElseThrow().si();
        for (var pair : pack.cell().settling()) {
            cell += pair.resistance().si();
        }
        cell *= pack.cell().ageing().resistanceGrowth().map(q -> q.si()).orElse(1.0);
        cell *= pack.cell().resistanceOverCharge().map(s -> factor(s, charge(pack))).orElse(1.0);
        double kelvin = pack.temperature().map(q -> q.si()).orElse(airK);
        double warm =
                Math.exp(pack.cell().temperatureCoefficient().si() * (1 / kelvin - 1 / 298.15));
        return pack.series() * cell * warm / pack.parallel() + pack.interconnect().si();
    }

    private double ohm(Wiring.Chain chain) {
        // Ω per 1000 ft at 20 °C: FAA AC 43.13-1B Table 11-9.
        Map<Integer, Double> table = new HashMap<>();
        table.put(4, 0.28);
        table.put(8, 0.70);
        table.put(10, 1.26);
        table.put(12, 2.02);
        double sum = 0;
        for (Element element : chain.elements()) {
            sum +=
                    switch (element) {
                        case Element.Run run ->
                                2
                                        * run.length().si()
                                        * table.getOrDefault(run.gauge(), Double.NaN)
                                        / 304.8
                                        / run.conductors()
                                        * (1 + 0.00393 * (airK + 30 - 293.15));
                        case Element.Joint joint -> joint.resistance().si();
                        case Element.Fuse fuse -> fuse.resistance().si();
                        case Element.Pole pole -> pole.contactor().resistance().si();
                    };
        }
        return sum;
    }

    private double upShare(Fan fan) {
        SimpleMatrix jet = vector(fan.blows().x(), fan.blows().y(), fan.blows().z());
        for (Fan.Lean lean : fan.leans()) {
            jet =
                    jet.plus(
                            vector(lean.towards().x(), lean.towards().y(), lean.towards().z())
                                    .scale(Math.tan(lean.angle().si())));
        }
        jet = jet.divide(jet.normF());
        Mount mount = fan.mount();
        SimpleMatrix turn =
                limb(mount.on())
                        .mult(aboutRight(mount.turnForward().si()))
                        .mult(aboutForward(-mount.turnRight().si()));
        return turn.mult(jet).get(2, 0);
    }

    private SimpleMatrix limb(Mount.Carrier on) {
        SimpleMatrix lean =
                rig.wearer()
                        .map(Wearer::stance)
                        .map(
                                stance ->
                                        aboutRight(-stance.leanForward().si())
                                                .mult(aboutForward(stance.leanRight().si())))
                        .orElseGet(() -> SimpleMatrix.identity(3));
        return lean.mult(onBody(on));
    }

    private SimpleMatrix onBody(Mount.Carrier on) {
        return switch (on) {
            case FRAME, TRUNK -> SimpleMatrix.identity(3);
            case RIGHT_UPPER_ARM -> upper(rig.wearer().orElseThrow().right());
            case RIGHT_FOREARM -> forearm(rig.wearer().orElseThrow().right());
            case LEFT_UPPER_ARM -> mirrored(upper(rig.wearer().orElseThrow().left()));
            case LEFT_FOREARM -> mirrored(forearm(rig.wearer().orElseThrow().left()));
        };
    }

    private static SimpleMatrix upper(Wearer.Arm arm) {
        return aboutRight(arm.shoulderFlexion().si())
                .mult(aboutForward(-arm.shoulderAbduction().si()))
                .mult(aboutDown(arm.shoulderRotation().si()));
    }

    private static SimpleMatrix forearm(Wearer.Arm arm) {
        return upper(arm).mult(aboutRight(arm.elbowFlexion().si()));
    }

    private static SimpleMatrix mirrored(SimpleMatrix turn) {
        SimpleMatrix mirror = SimpleMatrix.diag(1, -1, 1);
        return mirror.mult(turn).mult(mirror);
    }

    private static SimpleMatrix aboutForward(double a) {
        double c = Math.cos(a);
        double s = Math.sin(a);
        return new SimpleMatrix(new double[][] {{1, 0, 0}, {0, c, -s}, {0, s, c}});
    }

    private static SimpleMatrix aboutRight(double a) {
        double c = Math.cos(a);
        double s = Math.sin(a);
        return new SimpleMatrix(new double[][] {{c, 0, s}, {0, 1, 0}, {-s, 0, c}});
    }

    private static SimpleMatrix aboutDown(double a) {
        double c = Math.cos(a);
        double s = Math.sin(a);
        return new SimpleMatrix(new double[][] {{c, -s, 0}, {s, c, 0}, {0, 0, 1}});
    }

    private static SimpleMatrix vector(double x, double y, double z) {
        return new SimpleMatrix(new double[][] {{x}, {y}, {z}});
    }

    double densityRatio() {
        return density / 1.225;
    }

    double massKg() {
        double sum = rig.wearer().map(wearer -> wearer.mass().si()).orElse(0.0);
        for (Fan fan : rig.fans()) {
            sum += fan.type().mass().si() + fan.type().controller().mass().si();
        }
        for (Pack pack : rig.packs()) {
            double cells = pack.series() * pack.parallel() * pack.cell().mass().si();
            sum += pack.mass().map(q -> q.si()).orElse(cells + pack.extraMass().si());
        }
        for (OtherPart part : rig.otherParts()) {
            sum += part.mass().si();
        }
        return sum;
    }
}
