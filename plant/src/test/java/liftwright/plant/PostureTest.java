package liftwright.plant;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import liftwright.plant.body.MassItem;
import liftwright.plant.parameters.Parameter;
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
