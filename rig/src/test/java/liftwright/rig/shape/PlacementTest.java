package liftwright.rig.shape;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import liftwright.rig.Fan;
import liftwright.rig.Mount;
import liftwright.rig.Rig;
import liftwright.rig.RigPath;
import liftwright.rig.Vec3;
import org.junit.jupiter.api.Test;

/** Words of place and direction against places worked out by hand: x forward, y right, z down. */
class PlacementTest {

    private static final String FANS =
            "  - {id: left, type: F140, mount: left pod, rows: [2, 2], spacing: 150 mm, twin: right}\n";

    /**
     * The good rig with other entries in place of its pods; nothing but its fan group top is fed.
     */
    static Rig with(String fans) {
        String text =
                Good.text()
                        .replace(FANS, fans)
                        .replaceAll(", left\\.\\d, right\\.\\d", "")
                        .replaceAll("(?s)  groups:.*", "");
        return Texts.rig(text);
    }

    private static Fan fan(Rig rig, String id) {
        return rig.fans().stream()
                .filter(f -> f.id().text().equals(id))
                .findFirst()
                .orElseThrow(() -> new AssertionError(id));
    }

    private static void at(Rig rig, String id, double forward, double right, double down) {
        near(fan(rig, id).at(), forward, right, down);
    }

    private static void near(Vec3 v, double x, double y, double z) {
        assertThat(v.x()).isCloseTo(x, within(1e-12));
        assertThat(v.y()).isCloseTo(y, within(1e-12));
        assertThat(v.z()).isCloseTo(z, within(1e-12));
    }

    @Test
    void aSingleFanStandsWhereItIsSaid() {
        Rig rig =
                with(
                        "  - {id: a, type: F140, mount: back, at: {back: 10 mm, left: 20 mm, up: 30 mm}}\n");
        at(rig, "a.1", -0.010, -0.020, -0.030);
    }

    @Test
    void aRowRunsFromItsFirstFanToItsLast() {
        Rig rig =
                with(
                        "  - {id: a, type: F140, mount: back, row: 3, from: {left: 100 mm}, to: {right: 300 mm,"
                                + " up: 40 mm}}\n");
        at(rig, "a.1", 0, -0.100, 0);
        at(rig, "a.2", 0, 0.100, -0.020);
        at(rig, "a.3", 0, 0.300, -0.040);
    }

    @Test
    void rowsLieAroundTheirMiddleFirstRowLeftmostFirstFanInFront() {
        Rig rig =
                with(
                        "  - {id: a, type: F140, mount: back, rows: [2, 1], spacing: 100 mm, row spacing: 60 mm,"
                                + " at: {up: 10 mm}}\n");
        at(rig, "a.1", 0.050, -0.030, -0.010);
        at(rig, "a.2", -0.050, -0.030, -0.010);
        at(rig, "a.3", 0, 0.030, -0.010);
    }

    @Test
    void rowsMayRunAnotherWay() {
        Rig rig =
                with(
                        "  - {id: a, type: F140, mount: back, rows: [2, 2], spacing: 100 mm, runs: right,"
                                + " next row: back}\n");
        at(rig, "a.1", 0.050, -0.050, 0);
        at(rig, "a.2", 0.050, 0.050, 0);
        at(rig, "a.3", -0.050, -0.050, 0);
    }

    @Test
    void aRingIsCountedClockwiseFromAbove() {
        Rig rig =
                with(
                        "  - {id: a, type: F140, mount: back, ring: 4, radius: 200 mm, cant: {outward: 5°}}\n");
        at(rig, "a.1", 0.200, 0, 0);
        at(rig, "a.2", 0, 0.200, 0);
        at(rig, "a.3", -0.200, 0, 0);
        near(fan(rig, "a.2").leans().getFirst().towards(), 0, 1, 0);
        near(fan(rig, "a.3").leans().getFirst().towards(), -1, 0, 0);
    }

    @Test
    void outboardIsAwayFromTheMiddleOnEitherSide() {
        Rig rig = with("");
        near(fan(rig, "top.1").leans().getFirst().towards(), 0, -1, 0);
        near(fan(rig, "top.4").leans().getFirst().towards(), 0, 1, 0);
        assertThat(fan(rig, "top.1").leans().getFirst().declaredAt())
                .isEqualTo(RigPath.of("fans", "top", "cant", "outboard"));
    }

    @Test
    void onALimbOutboardIsTheLimbsSideAndAlongIsDown() {
        Rig rig =
                with(
                        "  - {id: a, type: F140, mount: left pod, at: {outboard: 10 mm, along: 20 mm}, blows: along,"
                                + " cant: {inboard: 3°, forward: -2°}, twin: b}\n");
        at(rig, "a.1", 0, -0.010, 0.020);
        at(rig, "b.1", 0, 0.010, 0.020);
        near(fan(rig, "a.1").blows(), 0, 0, 1);
        List<Fan.Lean> leans = fan(rig, "a.1").leans();
        near(leans.get(0).towards(), 1, 0, 0);
        assertThat(leans.get(0).angle().si()).isCloseTo(Math.toRadians(-2), within(1e-12));
        near(leans.get(1).towards(), 0, 1, 0);
        near(fan(rig, "b.1").leans().get(1).towards(), 0, -1, 0);
    }

    @Test
    void aTwinMirrorsPlaceJetAndSpin() {
        Rig rig =
                with(
                        "  - {id: a, type: F140, mount: left pod, row: 2, spacing: 200 mm, at: {right: 30 mm},"
                                + " blows: outboard, spin: [left-hand, left-hand], twin: b}\n");
        at(rig, "a.1", 0.100, 0.030, 0);
        at(rig, "b.1", 0.100, -0.030, 0);
        near(fan(rig, "a.1").blows(), 0, -1, 0);
        near(fan(rig, "b.1").blows(), 0, 1, 0);
        assertThat(fan(rig, "b.2").spin()).isEqualTo(Fan.Spin.RIGHT_HAND);
        assertThat(fan(rig, "b.2").mount().on()).isEqualTo(Mount.Carrier.RIGHT_FOREARM);
        assertThat(fan(rig, "b.2").declaredAt()).isEqualTo(RigPath.of("fans", "a"));
    }

    @Test
    void aTwinOnAMountInTheMiddleStaysOnIt() {
        Rig rig = with("  - {id: a, type: F140, mount: back, at: {left: 70 mm}, twin: b}\n");
        at(rig, "b.1", 0, 0.070, 0);
        assertThat(fan(rig, "b.1").mount().name()).isEqualTo("back");
    }

    @Test
    void mountsTurnAndMirror() {
        String text =
                Good.text()
                        .replace(
                                "twin: right pod}",
                                "turn: {forward: 2° ± 1°, outboard: 3° +2/−1°}, twin: right pod}");
        Rig rig = Texts.rig(text);
        Mount left = rig.mounts().get(1);
        Mount right = rig.mounts().get(2);
        assertThat(left.turnForward().si()).isCloseTo(Math.toRadians(2), within(1e-12));
        assertThat(left.turnRight().si()).isCloseTo(Math.toRadians(-3), within(1e-12));
        assertThat(left.turnRight().tolerance().minus())
                .isCloseTo(Math.toRadians(2), within(1e-12));
        assertThat(right.turnRight().si()).isCloseTo(Math.toRadians(3), within(1e-12));
        assertThat(right.turnRight().tolerance().plus())
                .isCloseTo(Math.toRadians(2), within(1e-12));
        assertThat(left.along().si()).isEqualTo(0.6);
        near(left.at(), 0, -0.040, 0);
        near(right.at(), 0, 0.040, 0);
    }

    @Test
    void aGroupLikeAnotherTakesItsKeysAndMayMove() {
        Rig rig = with("  - {id: a, like: top, shift: {down: 300 mm}, cant: {left: 1°}}\n");
        at(rig, "a.1", 0, -0.240, 0.300);
        near(fan(rig, "a.4").leans().getFirst().towards(), 0, -1, 0);
        assertThat(fan(rig, "a.1").type().name()).isEqualTo("F140");
        assertThat(fan(rig, "a.1").declaredAt()).isEqualTo(RigPath.of("fans", "a"));
    }

    @Test
    void aGroupLikeAnotherMayHaveAPatternOfItsOwn() {
        Rig rig = with("  - {id: a, like: top, ring: 3, radius: 1 m, cant: {outward: 2°}}\n");
        at(rig, "a.1", 1, 0, 0);
        assertThat(rig.fans()).hasSize(4 + 3);
    }

    @Test
    void exceptionsChangeSingleFansOfAGroupOrItsTwin() {
        Rig rig =
                with(
                        "  - {id: a, type: F140, mount: left pod, row: 3, spacing: 150 mm, twin: b, serials: {b.1: X9},"
                                + " except: {a.2: {spin: right-hand, installation: 0.8, serial: X7}, b.3: {absent: yes},"
                                + " b.1: {at: {up: 5 mm}}}}\n");
        assertThat(fan(rig, "a.2").spin()).isEqualTo(Fan.Spin.RIGHT_HAND);
        assertThat(fan(rig, "a.2").serial()).contains("X7");
        assertThat(fan(rig, "a.2").installation().value().si()).isEqualTo(0.8);
        assertThat(fan(rig, "a.2").installation().at())
                .isEqualTo(RigPath.of("fans", "a", "except", "a.2", "installation"));
        assertThat(fan(rig, "a.1").installation().at())
                .isEqualTo(RigPath.of("fan types", "F140", "installation"));
        at(rig, "b.1", 0, 0, -0.005);
        assertThat(fan(rig, "b.1").serial()).contains("X9");
        assertThat(rig.fans()).extracting(f -> f.id().text()).contains("b.2").doesNotContain("b.3");
    }

    @Test
    void packsHaveTwinsAndExceptionsToo() {
        String text =
                Good.text()
                        .replace(
                                "wiring:\n",
                                "  - {id: q, count: 2, cell: C80, series: 14, mass: 2.5 kg, at: {mount: left pod, forward:"
                                        + " 0…100 mm, right: 5 mm}, twin: r, except: {r.2: {charge: 80 %}}}\n"
                                        + "wiring:\n");
        Rig rig = Texts.rig(text);
        var r2 =
                rig.packs().stream()
                        .filter(p -> p.id().text().equals("r.2"))
                        .findFirst()
                        .orElseThrow();
        near(r2.at(), 0.100, -0.005, 0);
        assertThat(r2.charge().si()).isEqualTo(0.8);
        assertThat(r2.mount().name()).isEqualTo("right pod");
        assertThat(r2.mass().orElseThrow().si()).isEqualTo(2.5);
        assertThat(r2.extraMass().si()).isZero();
    }
}
