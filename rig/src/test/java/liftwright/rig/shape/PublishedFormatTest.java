package liftwright.rig.shape;

import static java.util.Objects.requireNonNull;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import liftwright.rig.Beam;
import liftwright.rig.CellType;
import liftwright.rig.Contactor;
import liftwright.rig.Control;
import liftwright.rig.Covering;
import liftwright.rig.CrewMember;
import liftwright.rig.Demands;
import liftwright.rig.Element;
import liftwright.rig.Exertion;
import liftwright.rig.Fan;
import liftwright.rig.FanType;
import liftwright.rig.FuseOpening;
import liftwright.rig.HeatLimits;
import liftwright.rig.HoldingStand;
import liftwright.rig.Insulation;
import liftwright.rig.Kill;
import liftwright.rig.LimitName;
import liftwright.rig.Magnets;
import liftwright.rig.Mount;
import liftwright.rig.Pack;
import liftwright.rig.PartId;
import liftwright.rig.Rates;
import liftwright.rig.Restraint;
import liftwright.rig.Rig;
import liftwright.rig.RiskMatrix;
import liftwright.rig.Site;
import liftwright.rig.Supplies;
import liftwright.rig.Tether;
import liftwright.rig.Vec3;
import liftwright.rig.Wearer;
import liftwright.rig.Wiring;
import liftwright.rig.shape.kind.Either;
import liftwright.rig.shape.kind.Key;
import liftwright.rig.shape.kind.Kind;
import liftwright.rig.shape.kind.ListOf;
import liftwright.rig.shape.kind.MapOf;
import liftwright.rig.shape.kind.Section;
import liftwright.rig.text.Node;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Files saved when a version of the format was published are read for ever and mean the same. They
 * are never edited; a new version adds a file.
 */
class PublishedFormatTest {

    @ParameterizedTest
    @CsvSource({
        "v1-wearable, 24, 12, 36, 5",
        "v1-module, 8, 4, 12, 3",
        "v1-carrier, 4, 4, 8, 4",
        "v1-every-key, 24, 7, 24, 5",
        "v1-measured, 12, 4, 16, 3",
        "v1-lots, 12, 4, 16, 3",
        "v1-fast, 12, 4, 16, 3",
        "v1-steering, 12, 4, 16, 3",
        "v1-scales, 24, 12, 36, 5",
        "v1-beams, 15, 4, 19, 3",
        "v1-body, 24, 12, 36, 5",
        "v1-places, 4, 6, 8, 1",
        "v1-heat, 12, 4, 16, 3",
        "v1-failures, 12, 4, 16, 4",
        "v1-flight, 8, 4, 12, 3",
        "v1-ground, 4, 6, 8, 1"
    })
    void savedFilesAreReadForEver(String name, int fans, int packs, int chains, int parts) {
        Rig rig = Texts.rig(Good.resource("/format/" + name + ".yaml"));
        assertThat(rig.fans()).hasSize(fans);
        assertThat(rig.packs()).hasSize(packs);
        assertThat(rig.wiring().chains()).hasSize(chains);
        assertThat(rig.otherParts()).hasSize(parts);
    }

    @Test
    void whatIsOverWithinASecondIsBound() {
        Rig rig = Texts.rig(Good.resource("/format/v1-fast.yaml"));
        FanType type = rig.fanTypes().getFirst();
        FanType.Switching switching = type.controller().switching();
        assertThat(switching.braking()).contains(FanType.Braking.FREEWHEEL);
        assertThat(switching.frequency().orElseThrow().si()).isEqualTo(24_000);
        assertThat(switching.capacitorResistance().orElseThrow().si()).isEqualTo(0.004);
        assertThat(type.rotor().inertia().orElseThrow().si()).isCloseTo(110e-6, within(1e-12));
        assertThat(rig.limits().si(LimitName.KILL_TIME)).isEqualTo(0.4);
        assertThat(rig.limits().si(LimitName.RIPPLE_SHARE)).isEqualTo(0.04);
        Wiring.PreCharge path = rig.wiring().preCharge().orElseThrow();
        assertThat(path.resistance().si()).isEqualTo(50);
        assertThat(path.time().orElseThrow().si()).isEqualTo(3);
    }

    @Test
    void beamsAndSeatsAreBound() {
        Rig rig = Texts.rig(Good.resource("/format/v1-beams.yaml"));
        Beam right = mount(rig, "right boom").beam().orElseThrow();
        assertThat(right.runs()).isEqualTo(new Vec3(0, 1, 0));
        assertThat(right.length().si()).isEqualTo(0.35);
        Beam.Tube tube = (Beam.Tube) right.section();
        assertThat(tube.modulus().si()).isCloseTo(69e9, within(1.0));
        assertThat(tube.wall().tolerance().plus()).isCloseTo(1e-4, within(1e-12));
        Beam nose = mount(rig, "nose").beam().orElseThrow();
        assertThat(nose.runs()).isEqualTo(new Vec3(1, 0, 0));
        assertThat(((Beam.Rigidities) nose.section()).torsion().si()).isEqualTo(700);
        Fan one = fan(rig, "right.1");
        assertThat(one.seat()).hasSize(2);
        assertThat(one.seat().get(1).towards().y()).isEqualTo(1);
        assertThat(fan(rig, "right.2").seat()).hasSize(1);
        assertThat(fan(rig, "right.2").seat().getFirst().angle().si())
                .isCloseTo(Math.toRadians(2), within(1e-12));
        assertThat(fan(rig, "top.1").seat()).isEmpty();
    }

    private static Mount mount(Rig rig, String name) {
        return rig.mounts().stream().filter(m -> m.name().equals(name)).findFirst().orElseThrow();
    }

    private static Fan fan(Rig rig, String id) {
        return rig.fans().stream().filter(f -> f.id().text().equals(id)).findFirst().orElseThrow();
    }

    @Test
    void theMeasuredBodyItsStrengthAndStanceAreBound() {
        Wearer wearer = Texts.rig(Good.resource("/format/v1-body.yaml")).wearer().orElseThrow();
        Wearer.Centre centre = wearer.measured().centre().orElseThrow();
        assertThat(centre.down().si()).isEqualTo(0.430);
        assertThat(centre.forward().si()).isEqualTo(0.012);
        assertThat(centre.right().si()).isEqualTo(-0.002);
        Wearer.Sizes sizes = wearer.measured().sizes();
        assertThat(sizes.betweenShoulders().orElseThrow().si()).isEqualTo(0.364);
        assertThat(sizes.lengths()).hasSize(6);
        assertThat(requireNonNull(sizes.lengths().get(Wearer.Segment.THIGH)).si()).isEqualTo(0.381);
        assertThat(sizes.masses()).hasSize(7);
        assertThat(requireNonNull(sizes.masses().get(Wearer.Segment.FOREARM)).si()).isEqualTo(0.9);
        assertThat(wearer.strength().of(Exertion.ELBOW_EXTENSION).orElseThrow().si()).isEqualTo(24);
        Wearer.Stance stance = wearer.stance();
        assertThat(stance.leanForward().si()).isCloseTo(Math.toRadians(6), within(1e-12));
        assertThat(stance.leanRight().si()).isCloseTo(Math.toRadians(-1), within(1e-12));
        assertThat(stance.right().hipAbduction().si()).isCloseTo(Math.toRadians(6), within(1e-12));
        assertThat(stance.right().hipFlexion().si()).isCloseTo(Math.toRadians(12), within(1e-12));
        assertThat(stance.left().hipAbduction().si()).isCloseTo(Math.toRadians(4), within(1e-12));
        assertThat(stance.left().kneeFlexion().si()).isCloseTo(Math.toRadians(20), within(1e-12));
    }

    @Test
    void placesOfSinglePacksAreBound() {
        Rig rig = Texts.rig(Good.resource("/format/v1-places.yaml"));
        assertThat(pack(rig, "p.3").at()).isEqualTo(new Vec3(-0.08, 0, -0.12));
        assertThat(pack(rig, "p.3").charge().si()).isEqualTo(0.95);
        assertThat(pack(rig, "p.1").at().z()).isCloseTo(0.04, within(1e-12));
        assertThat(pack(rig, "q.1").at()).isEqualTo(new Vec3(0, 0, 0.03));
        assertThat(pack(rig, "r.1").at()).isEqualTo(new Vec3(0, 0.025, 0.04));
    }

    private static Pack pack(Rig rig, String id) {
        return rig.packs().stream().filter(p -> p.id().text().equals(id)).findFirst().orElseThrow();
    }

    @Test
    void whatSteersIsBound() {
        Rig rig = Texts.rig(Good.resource("/format/v1-steering.yaml"));
        assertThat(rig.limits().si(LimitName.DRIFT)).isEqualTo(0.05);
        assertThat(rig.limits().si(LimitName.ARM_REACH))
                .isCloseTo(Math.toRadians(25), within(1e-12));
        assertThat(rig.limits().si(LimitName.ARM_REACH_LEFT)).isCloseTo(0.4, within(1e-12));
        assertThat(rig.limits().si(LimitName.YAW_RESERVE)).as("left out").isEqualTo(0.3);
    }

    @Test
    void whatWarmsIsBound() {
        Rig rig = Texts.rig(Good.resource("/format/v1-heat.yaml"));
        List<Element> trunk = elements(rig, "feed.p.1.trunk");
        List<Element> branch = elements(rig, "feed.p.1.to.top.1");
        Element.Joint worn = (Element.Joint) trunk.getFirst();
        assertThat(worn.wear().damage().si()).isEqualTo(2.5);
        assertThat(worn.wear().growthPerS().orElseThrow().si()).isCloseTo(0.02, within(1e-12));
        Element.Fuse fuse = (Element.Fuse) trunk.get(1);
        assertThat(fuse.speed()).isEqualTo(FuseOpening.Speed.SLOW);
        assertThat(fuse.points())
                .as("110 % for 100 h stands before what is published")
                .extracting(p -> p.current().si(), p -> p.time().si())
                .containsExactly(tuple(275.0, 360_000.0), tuple(350.0, 60.0), tuple(500.0, 5.0));
        assertThat(fuse.timeDoubt().tolerance().plus()).isCloseTo(0.25, within(1e-12));
        assertThat(fuse.timeConstant().si()).isEqualTo(50);
        assertThat(fuse.heatCapacity().si()).isEqualTo(20);
        assertThat(((Element.Pole) trunk.get(2)).contactor().heatCapacity().si()).isEqualTo(35);
        Covering own = ((Element.Run) branch.getFirst()).covering();
        assertThat(own.material()).isEqualTo(Insulation.SILICONE);
        assertThat(own.classK()).isCloseTo(473.15, within(1e-9));
        assertThat(own.wall().si()).isCloseTo(0.9e-3, within(1e-12));
        assertThat(own.bundle()).isEqualTo(6);
        assertThat(own.air().si()).isEqualTo(4);
        Covering book = ((Element.Run) branch.get(2)).covering();
        assertThat(book.classK()).isCloseTo(428.15, within(1e-9));
        assertThat(book.serviceClass().tolerance().minus()).isEqualTo(20);
        assertThat(book.bundle()).as("out and back").isEqualTo(2);
        assertThat(((Element.Joint) branch.get(1)).heatCapacity().si()).isEqualTo(5);
        assertThat(((Element.Fuse) branch.get(3)).speed()).isEqualTo(FuseOpening.Speed.VERY_FAST);
        FanType type = rig.fanTypes().getFirst();
        assertThat(type.motor().heating().windingClassK().orElseThrow().si())
                .isCloseTo(453.15, within(1e-9));
        assertThat(type.motor().heating().grade()).isEqualTo(Magnets.SH);
        assertThat(type.motor().heating().magnetFade().si()).isCloseTo(0.001, within(1e-12));
        assertThat(type.motor().heating().windingToCase().si()).isEqualTo(1.5);
        assertThat(type.controller().cooling().junctionToSink().si()).isEqualTo(14);
        assertThat(type.controller().cooling().toAir().si()).isEqualTo(2);
        CellType.Thermal cell = rig.cellTypes().getFirst().thermal();
        assertThat(cell.heatCapacity().si()).isEqualTo(170);
        assertThat(cell.toAir().si()).isCloseTo(0.09, within(1e-12));
        assertThat(rig.demands().runs()).isEqualTo(4);
        assertThat(rig.demands().pause().si()).isEqualTo(480);
        HeatLimits limits = new HeatLimits(rig.limits());
        assertThat(limits.wire(own).k()).as("200 °C less 15 K").isCloseTo(458.15, within(1e-9));
        assertThat(limits.joint().k()).isCloseTo(358.15, within(1e-9));
        assertThat(limits.winding(type.motor().heating()).k())
                .as("180 °C less 15 K")
                .isCloseTo(438.15, within(1e-9));
        assertThat(limits.magnets(type.motor().heating()).k())
                .as("what is declared counts before the grade")
                .isCloseTo(348.15, within(1e-9));
    }

    @Test
    void killsCrewAndControlRulesAreBound() {
        Rig rig = Texts.rig(Good.resource("/format/v1-failures.yaml"));
        assertThat(rig.wiring().kills())
                .extracting(Kill::id)
                .containsExactly("remote", "cord", "idle");
        Kill remote = rig.wiring().kills().getFirst();
        assertThat(remote.opens()).containsExactly("main");
        assertThat(remote.by()).isEqualTo(Kill.Means.RADIO);
        assertThat(remote.heldBy()).contains("watcher");
        assertThat(remote.reaction().orElseThrow().si()).isEqualTo(0.9);
        assertThat(remote.delay().si()).isEqualTo(0.03);
        assertThat(remote.order()).isEqualTo(Kill.Order.COMMAND_ZERO_THEN_OPEN);
        assertThat(remote.radio()).contains("kill radio");
        assertThat(remote.fedBy()).contains("p.1");
        assertThat(remote.ground()).contains("signal ground");
        assertThat(remote.through()).containsExactly("relay board", "hip plug");
        assertThat(remote.opensOnLoss()).isTrue();
        Kill cord = rig.wiring().kills().get(1);
        assertThat(cord.heldBy()).contains(Kill.WEARER);
        assertThat(cord.order()).isEqualTo(Kill.Order.OPEN_AT_ONCE);
        assertThat(cord.delay().si()).isEqualTo(0.05);
        assertThat(cord.opensOnLoss()).isFalse();
        Kill idle = rig.wiring().kills().get(2);
        assertThat(idle.opens()).isEmpty();
        assertThat(idle.order()).isEqualTo(Kill.Order.COMMAND_ZERO_ONLY);
        assertThat(idle.fedBy()).contains(Supplies.OWN);
        assertThat(rig.wiring().grounds().getFirst().to()).isEqualTo("top.1");
        assertThat(rig.wiring().grounds().getFirst().resistance().si()).isEqualTo(0.03);
        assertThat(rig.wiring().grounds().getLast().resistance().si()).isEqualTo(0.04);
        assertThat(rig.wiring().discharge().orElseThrow().resistance().si()).isEqualTo(1000);
        Contactor main = rig.wiring().contactors().getFirst();
        assertThat(main.opensIn().si()).isEqualTo(0.025);
        assertThat(main.coil()).contains("own battery of the frame");
        assertThat(main.normallyOpen()).isFalse();
        CrewMember watcher = rig.crew().getFirst();
        assertThat(watcher.reaction().orElseThrow().si()).isEqualTo(1.4);
        assertThat(watcher.distance().orElseThrow().si()).isEqualTo(6);
        assertThat(watcher.role()).isEqualTo("holds the remote kill");
        assertThat(rig.crew().get(1).reaction()).isEmpty();
        Control control = rig.control();
        assertThat(control.linkLoss()).isEqualTo(Control.LinkLoss.CUT);
        assertThat(control.lossTime().si()).isEqualTo(0.2);
        assertThat(control.rise().orElseThrow().si()).isEqualTo(0.5);
        assertThat(control.liveBelow().orElseThrow().si()).isEqualTo(0.03);
        assertThat(control.stop()).contains(Control.Stop.HOLD_TO_RUN);
        assertThat(control.computers()).isEqualTo(2);
        assertThat(control.fedBy()).contains("p.2");
        assertThat(control.lowering().si()).isEqualTo(0.85);
        assertThat(control.radio()).contains("throttle radio");
        assertThat(control.sensors())
                .extracting(Control.Sensor::name, Control.Sensor::count)
                .containsExactly(tuple("gyro", 2), tuple("tape", 1));
        assertThat(rig.demands().height().si()).isEqualTo(0.4);
        assertThat(rig.demands().yaw()).isEqualTo(Demands.Yaw.FREE);
        FanType type = rig.fanTypes().getFirst();
        assertThat(type.noise().si()).isEqualTo(104);
        assertThat(type.noise().tolerance().plus()).isEqualTo(3);
        assertThat(type.reversedThrust().si()).isEqualTo(0.4);
        assertThat(type.rotor().blades()).hasValue(12);
        assertThat(type.rotor().bladeCentre().orElseThrow().si()).isCloseTo(0.047, within(1e-12));
        assertThat(type.controller().signalLoss()).isEqualTo(FanType.SignalLoss.IDLE);
        assertThat(type.controller().startUpSurge().si()).isEqualTo(0.4);
    }

    @Test
    void whatBlowsIsBound() {
        Site.Wind wind =
                Texts.rig(Good.resource("/format/v1-flight.yaml")).site().wind().orElseThrow();
        assertThat(wind.mean().si()).isEqualTo(3);
        assertThat(wind.gust().orElseThrow().si()).isEqualTo(5);
        assertThat(wind.gustLength().orElseThrow().si()).isEqualTo(25);
        assertThat(wind.from().orElseThrow().si()).isCloseTo(Math.PI / 2, within(1e-12));
        assertThat(Texts.rig(Good.resource("/format/v1-wearable.yaml")).site().wind()).isEmpty();
    }

    @Test
    void howControllersFollowIsBound() {
        FanType type = Texts.rig(Good.resource("/format/v1-flight.yaml")).fanTypes().getFirst();
        FanType.Switching switching = type.controller().switching();
        assertThat(switching.delay().orElseThrow().si()).isEqualTo(0.004);
        assertThat(switching.slew().orElseThrow().si()).isEqualTo(30);
    }

    @Test
    void sensorsEstimatorAndLoopsAreBound() {
        Control control = Texts.rig(Good.resource("/format/v1-flight.yaml")).control();
        assertThat(control.sensors())
                .extracting(Control.Sensor::name, s -> s.measures().orElse(null))
                .containsExactly(
                        tuple("gyro", Control.Measures.TURN_RATE),
                        tuple("accelerometer", Control.Measures.ACCELERATION),
                        tuple("beam down", Control.Measures.HEIGHT),
                        tuple("position", Control.Measures.POSITION),
                        tuple("velocity", Control.Measures.VELOCITY),
                        tuple("heading", Control.Measures.HEADING),
                        tuple("tape", null));
        Control.Sensor gyro = control.sensor(Control.Measures.TURN_RATE).orElseThrow();
        double degree = Math.toRadians(1);
        assertThat(gyro.count()).isEqualTo(2);
        assertThat(gyro.noise().orElseThrow().si()).isCloseTo(0.005 * degree, within(1e-15));
        assertThat(gyro.noise().orElseThrow().tolerance().plus())
                .isCloseTo(0.001 * degree, within(1e-15));
        assertThat(gyro.rate().orElseThrow().si()).isEqualTo(2000);
        assertThat(gyro.delay().orElseThrow().si()).isEqualTo(0.001);
        assertThat(gyro.misalignment().orElseThrow().si()).isCloseTo(degree, within(1e-15));
        assertThat(gyro.dropout().orElseThrow().si()).isCloseTo(0.001, within(1e-15));
        assertThat(gyro.filter().orElseThrow().si()).isEqualTo(90);
        assertThat(gyro.bias().orElseThrow().si()).isZero();
        assertThat(gyro.bias().orElseThrow().tolerance().plus())
                .isCloseTo(0.5 * degree, within(1e-15));
        assertThat(gyro.range().orElseThrow().si()).isCloseTo(2000 * degree, within(1e-9));
        Control.Sensor felt = control.sensor(Control.Measures.ACCELERATION).orElseThrow();
        assertThat(felt.bias().orElseThrow().si()).isEqualTo(0.02);
        assertThat(felt.bias().orElseThrow().tolerance().minus()).isEqualTo(0.1);
        assertThat(felt.delay()).isEmpty();
        Control.Sensor down = control.sensor(Control.Measures.HEIGHT).orElseThrow();
        assertThat(down.noise().orElseThrow().si()).isEqualTo(0.005);
        assertThat(down.range().orElseThrow().si()).isEqualTo(12);
        assertThat(control.estimator().kind()).contains(Control.EstimatorKind.KALMAN);
        assertThat(control.estimator().bandwidth().orElseThrow().si()).isEqualTo(0.3);
        assertThat(control.loops()).containsOnlyKeys(Control.LoopName.values());
        Control.Loop rate = requireNonNull(control.loops().get(Control.LoopName.RATE));
        assertThat(rate.crossover().orElseThrow().si()).isEqualTo(6);
        assertThat(rate.margin().orElseThrow().si()).isCloseTo(50 * degree, within(1e-12));
        assertThat(rate.integral()).contains(true);
        Control.Loop position = requireNonNull(control.loops().get(Control.LoopName.POSITION));
        assertThat(position.integral()).contains(false);
        assertThat(position.crossover()).isEmpty();
    }

    @Test
    void theGroundIsBound() {
        Site.Ground ground = Texts.rig(Good.resource("/format/v1-ground.yaml")).site().ground();
        assertThat(ground.friction().si()).isEqualTo(0.4);
        assertThat(ground.friction().tolerance().minus()).isCloseTo(0.1, within(1e-12));
        assertThat(ground.slope().si()).isCloseTo(Math.toRadians(4), within(1e-12));
        assertThat(ground.slopeTo().si()).isCloseTo(Math.toRadians(270), within(1e-12));
        Rig other = Texts.rig(Good.resource("/format/v1-places.yaml"));
        assertThat(other.site().ground()).isEqualTo(Site.Ground.USUAL);
        assertThat(other.defaults().stream().map(used -> used.at().toString()))
                .contains("site/friction", "site/slope", "site/slope to");
    }

    @Test
    void sensorsOfOldFilesMeasureWhatTheirNamesSay() {
        Control old = Texts.rig(Good.resource("/format/v1-failures.yaml")).control();
        assertThat(old.sensors().get(0).measures()).contains(Control.Measures.TURN_RATE);
        assertThat(old.sensors().get(1).measures()).isEmpty();
        Control every = Texts.rig(Good.resource("/format/v1-every-key.yaml")).control();
        assertThat(every.estimator().kind()).contains(Control.EstimatorKind.COMPLEMENTARY);
        assertThat(every.loops()).containsOnlyKeys(Control.LoopName.RATE);
    }

    @Test
    void whatHoldsAndWhatIsRiskedIsBound() {
        Rig rig = Texts.rig(Good.resource("/format/v1-failures.yaml"));
        HoldingStand stand = rig.restraint().stand().orElseThrow();
        assertThat(stand.kind()).isEqualTo(HoldingStand.Kind.BENCH);
        assertThat(stand.fans())
                .extracting(PartId::text)
                .containsExactly("left.1", "left.2", "left.3", "left.4", "top.1");
        assertThat(stand.thrustPoints()).isEqualTo(new Vec3(1, 0, 0));
        assertThat(stand.centreHeight().si()).isEqualTo(0.5);
        assertThat(stand.feetDeep().si()).isEqualTo(0.8);
        assertThat(stand.friction().si()).isEqualTo(0.5);
        HoldingStand.Bolts bolts = stand.bolts().orElseThrow();
        assertThat(bolts.size()).contains(HoldingStand.BoltSize.M10);
        assertThat(bolts.boltClass()).isEqualTo(HoldingStand.BoltClass.CLASS_8_8);
        assertThat(bolts.deep().si()).isEqualTo(0.7);
        assertThat(stand.clamps().orElseThrow().force().si()).isEqualTo(1000);
        Tether tether = rig.restraint().tether().orElseThrow();
        assertThat(tether.anchorHeight().si()).isEqualTo(4);
        assertThat(tether.lineStrength().orElseThrow().si()).isEqualTo(15_000);
        assertThat(tether.gantry().orElseThrow().feetDeep().si()).isEqualTo(2.2);
        assertThat(tether.downLines().orElseThrow().count()).isEqualTo(3);
        assertThat(tether.downLines().orElseThrow().spread().si()).isEqualTo(0.6);
        assertThat(tether.gettingDown()).contains("the watcher lowers the winch");
        Restraint.Room room = rig.restraint().room().orElseThrow();
        assertThat(room.beam().orElseThrow().si()).isEqualTo(4.2);
        Restraint.Platform platform = rig.restraint().platform().orElseThrow();
        assertThat(platform.under()).isEqualTo(Restraint.Under.WEARER);
        assertThat(platform.resolution().si()).isCloseTo(0.05, within(1e-12));
        assertThat(rig.restraint().mats().orElseThrow().si()).isCloseTo(0.2, within(1e-12));
        assertThat(rig.rates().exposure().si()).isEqualTo(36_000);
        assertThat(rig.rates().byKind()).hasSize(11);
        assertThat(rig.rates().of(Rates.PartKind.CONTROLLER).orElseThrow().si())
                .isCloseTo(5e-5 / 3600, within(1e-20));
        assertThat(rig.riskMatrix().declared()).isTrue();
        assertThat(
                        rig.riskMatrix()
                                .risk(RiskMatrix.Severity.MARGINAL, RiskMatrix.Likelihood.PROBABLE))
                .isEqualTo("ask");
        assertThat(rig.limits().si(LimitName.NOISE)).isEqualTo(83);
        assertThat(rig.limits().si(LimitName.ANCHOR)).isEqualTo(25_000);
        assertThat(rig.limits().si(LimitName.WEARER_REACTION)).isEqualTo(1.8);
    }

    private static List<Element> elements(Rig rig, String chain) {
        return rig.wiring().chains().stream()
                .filter(c -> c.id().text().equals(chain))
                .findFirst()
                .orElseThrow()
                .elements();
    }

    @Test
    void savedFilesUseEveryKeyOfTheFormat() {
        var used = new TreeSet<String>();
        for (String name :
                List.of(
                        "v1-every-key",
                        "v1-measured",
                        "v1-lots",
                        "v1-fast",
                        "v1-scales",
                        "v1-beams",
                        "v1-body",
                        "v1-steering",
                        "v1-places",
                        "v1-heat",
                        "v1-failures",
                        "v1-flight",
                        "v1-ground")) {
            walk(Shape.root(), Texts.node(Good.resource("/format/" + name + ".yaml")), used);
        }
        var all = new TreeSet<String>();
        for (Section section : Shape.sections().values()) {
            section.keys().forEach(k -> all.add(section.name() + ": " + k.name()));
        }
        all.removeAll(used);
        assertThat(all).as("keys that the saved files leave out").isEmpty();
    }

    private static void walk(Kind<?> kind, Node node, Set<String> used) {
        if (kind instanceof Either<?, ?> either) {
            walk(node instanceof Node.Scalar ? either.one() : either.other(), node, used);
        } else if (kind instanceof Section section
                && node instanceof Node.Entries(var entries, var _)) {
            for (Node.Entry entry : entries) {
                Key<?> key = requireNonNull(section.byName().get(entry.key()), entry.key());
                used.add(section.name() + ": " + key.name());
                walk(key.kind(), entry.value(), used);
            }
        } else if (kind instanceof MapOf<?> map
                && node instanceof Node.Entries(var entries, var _)) {
            entries.forEach(e -> walk(map.value(), e.value(), used));
        } else if (kind instanceof ListOf<?> list && node instanceof Node.Items(var items, var _)) {
            items.forEach(item -> walk(list.item(), item, used));
        }
    }
}
