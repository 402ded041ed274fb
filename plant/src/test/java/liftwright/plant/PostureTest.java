package liftwright.plant;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import liftwright.plant.body.MassItem;
import liftwright.plant.parameters.Parameter;
import liftwright.quantity.Quantity;
import liftwright.rig.Declaration;
import liftwright.rig.Declaration.Tree;
import liftwright.rig.Fan;
import liftwright.rig.Mount;
import liftwright.rig.Rig;
import liftwright.rig.RigPath;
import liftwright.rig.Vec3;
import liftwright.rig.Wearer;
import org.junit.jupiter.api.Test;

/** Where parts are and which way fans push, for postures whose geometry is plain. */
class PostureTest {

    private static final double QUARTER = Math.PI / 2;

    private static Wearer.Arm arm(double flexion, double abduction, double elbow) {
        return new Wearer.Arm(
                RigSketch.si(flexion),
                RigSketch.si(abduction),
                RigSketch.si(0),
                RigSketch.si(elbow));
    }

    private static Mount mount(String name, Mount.Carrier on, double along, double right) {
        return new Mount(
                name,
                on,
                Vec3.ZERO,
                RigSketch.si(along),
                RigSketch.si(0),
                RigSketch.about(right, 0.1));
    }

    private static RigSketch worn(Wearer.Arm left, Wearer.Arm right) {
        RigSketch sketch = new RigSketch();
        sketch.wearer =
                Optional.of(
                        new Wearer(
                                RigSketch.si(73),
                                RigSketch.si(1.741),
                                Wearer.Body.MALE,
                                left,
                                right));
        return sketch;
    }

    private static Fan on(Mount mount, int number) {
        return new Fan(
                liftwright.rig.PartId.of("f", number),
                RigPath.of("fans", "f"),
                RigSketch.fanType("F"),
                mount,
                Vec3.ZERO,
                new Vec3(0, 0, 1),
                List.of(),
                Fan.Spin.LEFT_HAND,
                Optional.empty(),
                new liftwright.rig.Declared<>(
                        RigPath.of("fan types", "F", "installation"), RigSketch.si(0.9)),
                Optional.empty());
    }

    private static void at(Vec3 actual, double x, double y, double z) {
        assertThat(actual.x()).isCloseTo(x, within(1e-12));
        assertThat(actual.y()).isCloseTo(y, within(1e-12));
        assertThat(actual.z()).isCloseTo(z, within(1e-12));
    }

    /** Lengths: de Leva 1996, Table 4, males of 1.741 m: upper arm 281.7, forearm 268.9 mm. */
    @Test
    void aForearmStretchedForwardCarriesItsFanForwardAndBlowsForward() {
        RigSketch sketch = worn(arm(0, 0, 0), arm(QUARTER, 0, 0));
        sketch.fans.add(on(mount("right", Mount.Carrier.RIGHT_FOREARM, 0.5, 0), 1));
        sketch.fans.add(on(mount("left", Mount.Carrier.LEFT_FOREARM, 0.5, 0), 2));
        Plant plant = Plant.assemble(sketch.rig());
        double[] p = plant.parameters().nominal();
        double reach = 0.2817 + 0.5 * 0.2689;
        double half = 0.1085 * 1.741;
        at(plant.fanPlace(p, 0), reach, half, 0);
        at(plant.fanPlace(p, 1), 0, -half, reach);
        assertThat(plant.upShare(p, 0)).isCloseTo(0, within(1e-12));
        assertThat(plant.upShare(p, 1)).isCloseTo(1, within(1e-12));
    }

    @Test
    void armsToTheSideMirrorEachOther() {
        RigSketch sketch = worn(arm(0, QUARTER, 0), arm(0, QUARTER, 0));
        sketch.fans.add(on(mount("right", Mount.Carrier.RIGHT_UPPER_ARM, 1, 0), 1));
        sketch.fans.add(on(mount("left", Mount.Carrier.LEFT_UPPER_ARM, 1, 0), 2));
        Plant plant = Plant.assemble(sketch.rig());
        double[] p = plant.parameters().nominal();
        double reach = 0.1085 * 1.741 + 0.2817;
        at(plant.fanPlace(p, 0), 0, reach, 0);
        at(plant.fanPlace(p, 1), 0, -reach, 0);
    }

    @Test
    void anElbowBendsTheHandForward() {
        RigSketch sketch = worn(arm(0, 0, 0), arm(0, 0, QUARTER));
        sketch.fans.add(on(mount("right", Mount.Carrier.RIGHT_FOREARM, 1, 0), 1));
        Plant plant = Plant.assemble(sketch.rig());
        at(plant.fanPlace(plant.parameters().nominal(), 0), 0.2689, 0.1085 * 1.741, 0.2817);
    }

    /** A cant of 20° leaves cos 20° of the thrust upward; a tilted mount likewise. */
    @Test
    void cantAndTiltTakeTheirCosine() {
        RigSketch sketch = new RigSketch();
        double cant = Math.toRadians(20);
        RigPath declared = RigPath.of("fans", "f", "cant", "right");
        sketch.fans.add(
                RigSketch.fan(
                        "f",
                        1,
                        RigSketch.fanType("F"),
                        RigSketch.FRAME,
                        List.of(new Fan.Lean(declared, RigSketch.si(cant), new Vec3(0, 1, 0))),
                        Optional.empty()));
        sketch.fans.add(on(mount("tilted", Mount.Carrier.FRAME, 0, cant), 2));
        Plant plant = Plant.assemble(sketch.rig());
        double[] p = plant.parameters().nominal();
        assertThat(plant.upShare(p, 0)).isCloseTo(Math.cos(cant), within(1e-12));
        assertThat(plant.upShare(p, 1)).isCloseTo(Math.cos(cant), within(1e-12));
    }

    /**
     * A standing man of the table's mean, arms hanging: centre of mass 58 % of stature above the
     * floor (de Leva 1996 gives 57.8 % to 59 % for stacked segments; standing 55 % to 57 % by
     * reaction board, with the trunk's soft parts lower). Loose on purpose: it catches a segment in
     * the wrong place.
     */
    @Test
    void aStandingManBalancesALittleAboveHalfHisHeight() {
        RigSketch sketch = worn(arm(0, 0, 0), arm(0, 0, 0));
        Plant plant = Plant.assemble(sketch.rig());
        assertThat(plant.mass().massKg()).isCloseTo(73, within(1e-9));
        double toFloor = 0.5319 + 0.4222 + 0.4340 + 0.039 * 1.741;
        double height = (toFloor - plant.mass().centre().z()) / 1.741;
        assertThat(height).isBetween(0.54, 0.60);
        assertThat(plant.mass().centre().y()).isCloseTo(0, within(1e-12));
        assertThat(plant.mass().items())
                .hasSize(14)
                .allMatch(item -> item.kind() == MassItem.Kind.WEARER);
    }

    private static RigSketch held(Wearer.Stance stance, Wearer.Sizes sizes) {
        RigSketch sketch = new RigSketch();
        Optional<Quantity> no = Optional.empty();
        var measured =
                new Wearer.Measured(
                        no,
                        no,
                        no,
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        sizes);
        sketch.wearer =
                Optional.of(
                        new Wearer(
                                RigSketch.si(73),
                                RigSketch.si(1.741),
                                Wearer.Body.MALE,
                                arm(0, 0, 0),
                                arm(0, 0, 0),
                                RigSketch.si(0),
                                measured,
                                stance,
                                Wearer.Strength.UNMEASURED,
                                Optional.empty()));
        return sketch;
    }

    private static Wearer.Leg leg(double hip, double abduction, double knee) {
        return new Wearer.Leg(RigSketch.si(hip), RigSketch.si(abduction), RigSketch.si(knee));
    }

    private static Vec3 segment(RigSketch sketch, String name) {
        return Plant.assemble(sketch.rig()).mass().items().stream()
                .filter(item -> item.name().equals(name))
                .findFirst()
                .orElseThrow()
                .at();
    }

    /**
     * Hips and knees at a right angle: the thigh points forward, the shank down, the foot forward.
     * Segments of de Leva's male: trunk 531.9, thigh 422.2 (centre 40.95 %), shank 434.0 (44.59 %),
     * foot 258.1 (44.15 %), heel a quarter of it behind the ankle, sole 0.039 of stature below.
     */
    @Test
    void aSeatedPersonSits() {
        Wearer.Leg seated = leg(QUARTER, 0, QUARTER);
        var stance = new Wearer.Stance(seated, seated, RigSketch.si(0), RigSketch.si(0));
        RigSketch sketch = held(stance, Wearer.Sizes.UNMEASURED);
        double y = 0.0525 * 1.741;
        at(segment(sketch, "right thigh"), 0.4095 * 0.4222, y, 0.5319);
        at(segment(sketch, "left shank"), 0.4222, -y, 0.5319 + 0.4459 * 0.4340);
        at(
                segment(sketch, "right foot"),
                0.4222 + (0.4415 - 0.25) * 0.2581,
                y,
                0.5319 + 0.4340 + 0.039 * 1.741);
    }

    /** Legs to the side mirror each other; a knee bends to the back. */
    @Test
    void legsSpreadAndKneesBendToTheBack() {
        var stance =
                new Wearer.Stance(
                        leg(0, QUARTER, 0), leg(0, 0, QUARTER), RigSketch.si(0), RigSketch.si(0));
        RigSketch sketch = held(stance, Wearer.Sizes.UNMEASURED);
        double y = 0.0525 * 1.741;
        at(segment(sketch, "left thigh"), 0, -y - 0.4095 * 0.4222, 0.5319);
        at(segment(sketch, "right shank"), -0.4459 * 0.4340, y, 0.5319 + 0.4222);
    }

    /** Lying on the front, then on the right side: the head goes first where it leans to. */
    @Test
    void aLeanCarriesBodyAndFrame() {
        for (boolean forward : new boolean[] {true, false}) {
            var stance =
                    new Wearer.Stance(
                            leg(0, 0, 0),
                            leg(0, 0, 0),
                            RigSketch.si(forward ? QUARTER : 0),
                            RigSketch.si(forward ? 0 : QUARTER));
            RigSketch sketch = held(stance, Wearer.Sizes.UNMEASURED);
            sketch.fans.add(on(mount("back", Mount.Carrier.FRAME, 0, 0), 1));
            double below = 0.4486 * 0.5319;
            at(segment(sketch, "trunk"), forward ? -below : 0, forward ? 0 : -below, 0);
            Plant plant = Plant.assemble(sketch.rig());
            assertThat(plant.upShare(plant.parameters().nominal(), 0)).isCloseTo(0, within(1e-12));
        }
    }

    /** A tape and a scale go before the table; the trunk has what the others leave. */
    @Test
    void measuredSegmentsGoBeforeTheTable() {
        var sizes =
                new Wearer.Sizes(
                        Optional.of(RigSketch.si(0.40)),
                        Optional.of(RigSketch.si(0.20)),
                        Map.of(
                                Wearer.Segment.UPPER_ARM,
                                RigSketch.si(0.30),
                                Wearer.Segment.FOREARM,
                                RigSketch.si(0.25)),
                        Map.of(Wearer.Segment.THIGH, RigSketch.si(12)));
        RigSketch sketch = held(Wearer.Stance.STRAIGHT, sizes);
        sketch.fans.add(on(mount("right", Mount.Carrier.RIGHT_FOREARM, 1, 0), 1));
        Plant plant = Plant.assemble(sketch.rig());
        at(plant.fanPlace(plant.parameters().nominal(), 0), 0, 0.20, 0.55);
        at(segment(sketch, "left thigh"), 0, -0.10, 0.5319 + 0.4095 * 0.4222);
        double person = 0;
        for (MassItem item : plant.mass().items()) {
            if (item.kind() == MassItem.Kind.WEARER) {
                person += item.massKg();
            }
            if (item.name().equals("trunk")) {
                assertThat(item.massKg()).isCloseTo(73 * (0.4346 + 2 * 0.1416) - 24, within(1e-9));
            }
        }
        assertThat(person).isCloseTo(73, within(1e-9));
    }

    @Test
    void segmentsThatLeaveTheTrunkNothingAreRefused() {
        var sizes =
                new Wearer.Sizes(
                        Optional.empty(),
                        Optional.empty(),
                        Map.of(),
                        Map.of(Wearer.Segment.THIGH, RigSketch.si(33)));
        Plant plant = Plant.assemble(held(Wearer.Stance.STRAIGHT, sizes).rig());
        org.assertj.core.api.Assertions.assertThatThrownBy(plant::mass)
                .isInstanceOf(liftwright.plant.parameters.ImpossibleValueException.class)
                .hasMessageContaining("trunk mass");
    }

    @Test
    void aTwinMountHasTheErrorOfItsOriginalInTheMirror() {
        // Spread arms: with hanging ones a tilt counts the same to either side.
        RigSketch sketch = worn(arm(0, 0.4, 0), arm(0, 0.4, 0));
        Mount left = mount("left pod", Mount.Carrier.LEFT_FOREARM, 0.5, 0.1);
        Mount right = mount("right pod", Mount.Carrier.RIGHT_FOREARM, 0.5, -0.1);
        sketch.fans.add(on(left, 1));
        sketch.fans.add(on(right, 2));
        Map<String, Tree> pod = new LinkedHashMap<>();
        pod.put("turn", new Tree.Entries(Map.of("outboard", new Tree.Text("-5.7° ± 0.6°"))));
        pod.put("twin", new Tree.Text("right pod"));
        Map<String, Tree> root =
                Map.of("mounts", new Tree.Entries(Map.of("left pod", new Tree.Entries(pod))));
        Rig rig = sketch.rig(new Declaration(new Tree.Entries(root)));
        Plant plant = Plant.assemble(rig);
        assertThat(plant.parameters().rows())
                .extracting(Parameter::name)
                .contains("mounts/left pod/turn/outboard")
                .noneMatch(name -> name.contains("right pod"));
        double[] p = new double[plant.parameters().size()];
        for (int draw = 0; draw < 20; draw++) {
            plant.parameters().draw(3, draw, p);
            assertThat(plant.upShare(p, 1)).isCloseTo(plant.upShare(p, 0), within(1e-12));
        }
    }
}
