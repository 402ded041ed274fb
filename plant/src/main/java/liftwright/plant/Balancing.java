package liftwright.plant;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import liftwright.physics.FanLaw;
import liftwright.physics.Gravity;
import liftwright.physics.LimbAngles;
import liftwright.plant.balance.ArmLoad;
import liftwright.plant.balance.FanAtWork;
import liftwright.plant.balance.JetStrike;
import liftwright.plant.balance.MomentLedger;
import liftwright.plant.body.Beams;
import liftwright.plant.body.FanPlace;
import liftwright.plant.body.Limb;
import liftwright.plant.body.MassProperties;
import liftwright.plant.parameters.ParameterTable;
import liftwright.plant.supply.Circuit;
import liftwright.plant.supply.NetworkState;
import liftwright.plant.thrust.FanUnits;
import liftwright.rig.Control;
import liftwright.rig.Fan;
import liftwright.rig.PartId;
import liftwright.rig.Rig;
import liftwright.rig.Vec3;

/**
 * Lift-off of a rig in numbers: the throttle at which lift is weight on full packs, and the moments
 * of all fans about the centre of mass there. Immutable; each thread brings its own {@link Worker}.
 *
 * <p>The rig stands upright in still air, motors are cold, cells settled. Wandering of held arms
 * counts here, and nowhere in lift.
 */
public final class Balancing {

    private final Assembler parts;
    private final Jets jets;

    /** Fans of a type and group have the number of the first of them: alike as declared. */
    private final int[] alike;

    Balancing(Assembler parts) {
        this.parts = parts;
        jets = new Jets(parts.rig, parts.ledger);
        Map<PartId, String> group = new HashMap<>();
        for (Control.Group each : parts.rig.control().groups()) {
            each.fans().forEach(fan -> group.put(fan, each.name()));
        }
        record Kind(String type, String group) {}
        Map<Kind, Integer> first = new HashMap<>();
        alike = new int[parts.rig.fans().size()];
        for (int k = 0; k < alike.length; k++) {
            Fan fan = parts.rig.fans().get(k);
            var kind = new Kind(fan.type().name(), group.getOrDefault(fan.id(), ""));
            first.putIfAbsent(kind, k);
            alike[k] = first.getOrDefault(kind, k);
        }
    }

    /**
     * Assembles a rig.
     *
     * @throws liftwright.plant.parameters.ImpossibleValueException as {@link Plant#assemble}
     */
    public static Balancing of(Rig rig) {
        return new Balancing(new Assembler(rig, Set.of(), false));
    }

    public Rig rig() {
        return parts.rig;
    }

    /** The same numbers in the same order as those of {@link Plant#parameters}. */
    public ParameterTable parameters() {
        return parts.table;
    }

    /** Whether arms carry fans. */
    public boolean armsSteer() {
        return parts.rig.fans().stream()
                .anyMatch(
                        fan ->
                                switch (fan.mount().on()) {
                                    case FRAME, TRUNK -> false;
                                    case LEFT_UPPER_ARM,
                                            RIGHT_UPPER_ARM,
                                            LEFT_FOREARM,
                                            RIGHT_FOREARM ->
                                            true;
                                });
    }

    /** The wearer alone, standing with hanging arms; empty without one. Allocates. */
    public Optional<MassProperties> standingWearer(double[] p) {
        return parts.ledger.standingWearer(p);
    }

    /** The segments of the wearer as posed, to be drawn; none without a wearer. Allocates. */
    public List<Limb> limbs(double[] p) {
        return parts.ledger.limbs(p);
    }

    /**
     * For one thread. Every search of its own starts from the throttle of the declared values, so
     * that what it finds depends on nothing it found before.
     */
    public Worker worker() {
        Worker declared = new Worker(Optional.empty());
        declared.liftOff(parts.table.nominal());
        return new Worker(Optional.of(declared.fans));
    }

    /** Solves lift-off with scratch of its own. */
    public final class Worker {

        private final NetworkState supply = parts.network.newState();
        private final FanUnits units = parts.fans.newUnits();
        private final FansUnderOrder fans =
                new FansUnderOrder(
                        new Circuit(parts.network, supply), units, parts.rig.control().kind());
        private final double[] held = new double[parts.table.size()];
        private final PosedRig posed = new PosedRig(parts);
        private final double[] thrustN = new double[parts.rig.fans().size()];
        private final double[] torqueNm = new double[parts.rig.fans().size()];
        private final double[] shaftW = new double[parts.rig.fans().size()];
        private final double[] copperW = new double[parts.rig.fans().size()];
        private double drawnW;
        private final double[] swirlNm = new double[parts.rig.fans().size()];
        private List<Beams.Give> gives = List.of();
        private List<JetStrike> strikes = List.of();

        /** The vector that jets were followed at last; empty before. */
        private double[] struckAt = {};

        private final Optional<FansUnderOrder> declared;

        private Worker(Optional<FansUnderOrder> declared) {
            this.declared = declared;
        }

        /** Lift-off at the values of {@code p}. Allocates. */
        public HoverPoint liftOff(double[] p) {
            return liftOff(p, NO_TURN);
        }

        /**
         * The same with the arms turned from where they are held.
         *
         * @param armTurnRad left flexion, abduction, rotation, elbow flexion, then right, rad
         */
        public HoverPoint liftOff(double[] p, double[] armTurnRad) {
            return point(p, armTurnRad, OptionalDouble.empty());
        }

        /**
         * The same at a given throttle, in place of that at which lift is weight: a rig held by a
         * stand that lets it turn about its centre of mass.
         *
         * @param throttle 0 to 1
         */
        public HoverPoint atThrottle(double[] p, double throttle) {
            return point(p, NO_TURN, OptionalDouble.of(throttle));
        }

        private HoverPoint point(double[] p, double[] armTurnRad, OptionalDouble throttle) {
            System.arraycopy(p, 0, held, 0, held.length);
            parts.pose.hold(held, armTurnRad);
            MassProperties mass = posed.mass(held);
            List<FanPlace> places = posed.places(held);
            double densityKgpm3 = parts.air.densityKgpm3(held);
            load(held, densityKgpm3);
            followJets(mass, places);
            for (int fan = 0; fan < places.size(); fan++) {
                fans.upShare()[fan] = -places.get(fan).actual().z() - strikes.get(fan).force().z();
            }
            fans.order(
                    throttle.isPresent()
                            ? new Order.Throttle(throttle.getAsDouble())
                            : new Order.Lift(mass.massKg() * Gravity.STANDARD_MPS2));
            boolean converged = fans.settle(0, supply);
            measure();
            List<FanAtWork> work = work(held, mass.centre(), places);
            for (int pass = 0; pass < MOST_BENDS && !parts.beams.none(); pass++) {
                if (!bendUpShares(work)) {
                    break;
                }
                converged &= fans.settle(0, supply);
                measure();
                work = work(held, mass.centre(), places);
            }
            MomentLedger ledger = MomentLedger.of(work, mass.inertia());
            return new HoverPoint(
                    converged,
                    fans.reached(),
                    fans.throttle(),
                    mass,
                    ledger,
                    yawDampingNms(work, densityKgpm3) / mass.inertia().zz(),
                    gives);
        }

        /**
         * What turns the rig with the arms turned and every fan at the thrust of the last {@link
         * #liftOff}. Allocates.
         */
        public MomentLedger turned(double[] p, double[] armTurnRad) {
            return turned(p, armTurnRad, true);
        }

        /**
         * The same with jets striking as they did when last followed: for slopes, since a jet is a
         * bundle of rays and each strikes or does not.
         */
        public MomentLedger nudged(double[] p, double[] armTurnRad) {
            return turned(p, armTurnRad, false);
        }

        private MomentLedger turned(double[] p, double[] armTurnRad, boolean follow) {
            System.arraycopy(p, 0, held, 0, held.length);
            parts.pose.hold(held, armTurnRad);
            MassProperties mass = posed.mass(held);
            List<FanPlace> places = posed.places(held);
            if (follow) {
                followJets(mass, places);
            }
            return MomentLedger.of(work(held, mass.centre(), places), mass.inertia());
        }

        /**
         * Every fan with the duty of its group at full throttle, as {@link #liftOff} left the
         * supply loaded: of the same {@code p}.
         *
         * @return empty where no operating point was found
         */
        public Optional<List<FanAtWork>> fullThrottle(double[] p, Vec3 centre) {
            return atThrottle(p, centre, 1);
        }

        /**
         * The same at any throttle.
         *
         * @param throttle 0 to 1, of the duty of each group
         */
        public Optional<List<FanAtWork>> atThrottle(double[] p, Vec3 centre, double throttle) {
            System.arraycopy(p, 0, held, 0, held.length);
            parts.pose.hold(held, NO_TURN);
            fans.order(new Order.Throttle(throttle));
            boolean converged = fans.settle(0, supply);
            measure();
            List<FanPlace> places = posed.places(held);
            if (!Arrays.equals(struckAt, held)) {
                followJets(posed.mass(held), places);
            }
            return converged ? Optional.of(work(held, centre, places)) : Optional.empty();
        }

        /** Where jets strike is settled by the vector alone, whatever the fans do. */
        private void followJets(MassProperties mass, List<FanPlace> places) {
            if (!Arrays.equals(struckAt, held)) {
                strikes = jets.strikes(held, mass, places);
                struckAt = held.clone();
            }
        }

        /**
         * What the wearer's arms hold with the fans at work as given; none on a rig that nobody
         * wears. Allocates.
         *
         * @param p the vector of the last {@link #liftOff}
         * @param mass of the whole as found there
         */
        public List<ArmLoad> armLoads(double[] p, MassProperties mass, List<FanAtWork> work) {
            if (parts.rig.wearer().isEmpty()) {
                return List.of();
            }
            System.arraycopy(p, 0, held, 0, held.length);
            parts.pose.hold(held, NO_TURN);
            List<ArmLoad> loads = new ArrayList<>();
            for (double side : new double[] {LimbAngles.LEFT, LimbAngles.RIGHT}) {
                loads.add(ArmLoad.of(parts.rig, parts.pose.arm(held, side), mass, work));
            }
            return loads;
        }

        /**
         * Every fan at a thrust of its own, on the supply as {@link #liftOff} left it loaded.
         *
         * @param orderedN along each fan's axis, ≥ 0, N
         * @return whether an operating point was found and no fan fell short
         */
        public boolean thrusts(double[] orderedN) {
            fans.order(new Order.Thrusts(orderedN.clone()));
            boolean converged = fans.settle(0, supply);
            measure();
            return converged && fans.reached();
        }

        /** Torque at the shaft of a fan at the point that was solved last, N·m. */
        public double torqueNm(int fan) {
            return torqueNm[fan];
        }

        /**
         * Shaft speed of a fan at the point that was solved last, rad/s; 0 where nothing feeds it.
         */
        public double speedRadps(int fan) {
            return parts.network.isFed(fan) ? units.speedRadps(fan) : 0;
        }

        /** Voltage at the controller of a fan there, V; 0 where nothing feeds it. */
        public double terminalV(int fan) {
            return parts.network.isFed(fan) ? supply.loadTerminalV(fan) : 0;
        }

        /**
         * One number of a fan's unit as {@link #liftOff} loaded it.
         *
         * @param which a place in the coefficient block of {@link liftwright.physics.FanUnit}
         */
        public double coefficient(int fan, int which) {
            return units.coefficient(fan, which);
        }

        /** Power at the shaft of a fan at the point that was solved last, W. */
        public double shaftW(int fan) {
            return shaftW[fan];
        }

        /** Heat of the current in winding and switches there, W. */
        public double copperW(int fan) {
            return copperW[fan];
        }

        /** Power at the terminals of all controllers there, W. */
        public double drawnW() {
            return drawnW;
        }

        /**
         * Takes thrusts and torques as a loss leaves them: what is asked of the arms then is asked
         * of these.
         *
         * @param atN thrust of each fan along its axis; below 0 where it blows the wrong way, N
         * @param atNm torque at each shaft; below 0 where it turns the wrong way, N·m
         */
        void take(double[] atN, double[] atNm) {
            System.arraycopy(atN, 0, thrustN, 0, thrustN.length);
            System.arraycopy(atNm, 0, torqueNm, 0, torqueNm.length);
        }

        /** Takes over what points up now that beams give; whether that changes anything. */
        private boolean bendUpShares(List<FanAtWork> work) {
            boolean changes = false;
            for (int k = 0; k < work.size(); k++) {
                double up = -work.get(k).actual().z() - work.get(k).strike().force().z();
                changes |= Math.abs(up - fans.upShare()[k]) > LEAST_UP_SHARE;
                fans.upShare()[k] = up;
            }
            return changes;
        }

        private void load(double[] p, double densityKgpm3) {
            double airK = parts.air.temperatureK(p);
            parts.fans.load(p, densityKgpm3, true, true, true, units);
            fans.loaded();
            declared.ifPresent(fans::startAs);
            parts.packs.rest(p, false, supply.emfV);
            parts.packs.resistance(p, airK, false, true, supply.packOhm);
            parts.wires.resistance(p, airK, supply.chainOhm);
        }

        /** Thrusts and torques of the point that was solved last. */
        private void measure() {
            drawnW = 0;
            for (int k = 0; k < thrustN.length; k++) {
                thrustN[k] = 0;
                torqueNm[k] = 0;
                shaftW[k] = 0;
                copperW[k] = 0;
                if (parts.network.isFed(k) && units.speedRadps(k) > 0) {
                    units.account(k, supply.loadTerminalV(k));
                    thrustN[k] = units.thrustN();
                    torqueNm[k] = units.shaftW() / units.speedRadps(k);
                    shaftW[k] = units.shaftW();
                    copperW[k] = units.copperW();
                    drawnW += units.shaftW() + units.heatW();
                }
            }
        }

        private List<FanAtWork> work(double[] p, Vec3 centre, List<FanPlace> places) {
            int count = places.size();
            double[] sumN = new double[count];
            int[] members = new int[count];
            for (int k = 0; k < count; k++) {
                sumN[alike[k]] += thrustN[k];
                members[alike[k]]++;
            }
            for (int k = 0; k < count; k++) {
                swirlNm[k] = parts.swirls.momentNm(p, k, torqueNm[k]);
            }
            Beams.Loaded loaded = parts.beams.under(p, places, thrustN, swirlNm);
            gives = loaded.gives();
            List<FanAtWork> work = new ArrayList<>();
            for (int k = 0; k < count; k++) {
                FanPlace place = places.get(k);
                work.add(
                        new FanAtWork(
                                parts.rig.fans().get(k).id(),
                                thrustN[k],
                                sumN[alike[k]] / members[alike[k]],
                                swirlNm[k],
                                place.held(),
                                place.canted(),
                                place.seated(),
                                new FanAtWork.Line(place.at().minus(centre), place.actual()),
                                line(loaded.fans().get(k).twisted(), centre),
                                line(loaded.fans().get(k).bent(), centre),
                                strikes.get(k)));
            }
            return work;
        }

        private static FanAtWork.Line line(Beams.Pushed pushed, Vec3 centre) {
            return new FanAtWork.Line(pushed.at().minus(centre), pushed.direction());
        }

        /** Σ ṁ r² about the upright axis through the centre of mass, ṁ = √(T ρ A_e). */
        private double yawDampingNms(List<FanAtWork> work, double densityKgpm3) {
            double sum = 0;
            for (int k = 0; k < work.size(); k++) {
                FanAtWork fan = work.get(k);
                double exitAreaM2 = parts.rig.fans().get(k).type().exitArea().si();
                double flowKgps =
                        FanLaw.massFlowKgps(Math.max(0, fan.thrustN()), densityKgpm3, exitAreaM2);
                Vec3 arm = fan.arm();
                sum += flowKgps * (arm.x() * arm.x() + arm.y() * arm.y());
            }
            return sum;
        }
    }

    private static final double[] NO_TURN = new double[8];

    /** Rounds of thrust and bending; each gains two digits or more. */
    private static final int MOST_BENDS = 8;

    /** Change of what points up that is worth another round. */
    private static final double LEAST_UP_SHARE = 1e-10;
}
