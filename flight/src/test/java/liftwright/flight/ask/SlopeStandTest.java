package liftwright.flight.ask;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import liftwright.flight.Examples;
import liftwright.flight.FlyingRigs;
import liftwright.flight.loops.LoopDesign;
import liftwright.flight.loops.RigLoops;
import liftwright.flight.motion.Airframe;
import liftwright.flight.motion.Airframes;
import liftwright.flight.motion.Give;
import liftwright.flight.run.ComputerCrew;
import liftwright.flight.run.FlightCase;
import liftwright.flight.run.FlightOutcome;
import liftwright.flight.run.FlightRun;
import liftwright.flight.run.FlightSeries;
import liftwright.plant.Plant;
import liftwright.plant.body.Inertia;
import liftwright.rig.Rig;
import liftwright.rig.Vec3;
import liftwright.testkit.Seeded;
import org.junit.jupiter.api.Test;

/** Curlew on sloping ground: what it is told to hold, and what it does in a flight. */
class SlopeStandTest {

    private static final String HOP =
            """
            liftwright profile: 1
            steps:
              - make live: 3 s
              - lift: {to: 0.5 m, at: 0.5 m/s}
              - hold: 3 s
              - land: 0.3 m/s
            wind: {mean: 0 m/s, rough: no}
            """;

    private static Rig curlew(String ground) {
        return Examples.rig("curlew", "gust: 5 m/s}", "gust: 5 m/s, " + ground + "}");
    }

    private static FlightOutcome flown(Rig rig, int number) {
        Plant plant = Plant.assembleHeated(rig);
        var loops = (LoopDesign.Granted) new RigLoops(plant.balancing()).design();
        return new FlightRun(plant, new ComputerCrew(rig, loops))
                .fly(FlightCase.of(plant, Examples.profile(rig, HOP), 5, number));
    }

    private static SlopeStand told(Rig rig) {
        Plant plant = Plant.assemble(rig);
        Airframe frame = new Airframes(plant).of(plant.parameters().nominal(), Give.USUAL);
        return SlopeStand.of(frame, rig.site().ground()).orElseThrow();
    }

    private static double wentM(FlightOutcome flown, double untilS) {
        double[] times = flown.series().timesS();
        int k = Arrays.binarySearch(times, untilS);
        int at = k < 0 ? -k - 2 : k;
        return flown.series().of(FlightSeries.Kind.RIGHT)[at];
    }

    /** On 5° that its feet hold it stays, rises plumb, holds, lands and stands. */
    @Test
    void whatTheGroundHoldsFliesFromItAndLands() {
        Rig rig = curlew("slope: 5°, slope to: 90°");
        assertThat(told(rig).finding()).isEmpty();
        FlightOutcome flown = flown(rig, 0);
        assertThat(flown.end()).isEqualTo(FlightOutcome.End.LANDED);
        assertThat(wentM(flown, 2.9)).isCloseTo(0, within(0.01));
        assertThat(flown.figures().driftM()).isLessThan(0.6);
        double[] roll = flown.series().of(FlightSeries.Kind.ROLL);
        assertThat(roll[0]).isCloseTo(Math.toRadians(5), within(0.01));
        assertThat(roll[roll.length - 1]).isCloseTo(Math.toRadians(5), within(0.03));
    }

    /** On what is too slippery it slides down to the right, g (sin s − μ cos s) t²/2 of it. */
    @Test
    void whatTheGroundDoesNotHoldSlidesBeforeItLifts() {
        Rig rig = curlew("slope: 10°, slope to: 90°, friction: 0.12");
        SlopeStand told = told(rig);
        assertThat(told.slidesRad()).isCloseTo(Math.atan(0.12), within(1e-12));
        assertThat(told.finding()).isPresent();
        double mps2 = 9.80665 * (Math.sin(Math.PI / 18) - 0.12 * Math.cos(Math.PI / 18));
        double[] lifts = flown(rig, 0).series().timesS();
        assertThat(lifts.length).isGreaterThan(10);
        double far = wentM(flown(rig, 0), 2);
        // Fans at idle take a little off its weight.
        assertThat(far).isCloseTo(0.5 * mps2 * 4 * Math.cos(Math.PI / 18), within(0.06));
    }

    /** Random rigs that are granted loops, each on a slope of its own that it is told to hold. */
    @Test
    void randomRigsRiseFromASlopeAndLandOnIt() {
        int[] flown = {0};
        Seeded.check(
                8,
                random -> {
                    String text = FlyingRigs.text(random);
                    Rig level = Examples.read(text);
                    Plant plain = Plant.assemble(level);
                    if (flown[0] == 3
                            || !(new RigLoops(plain.balancing()).design()
                                    instanceof LoopDesign.Granted)) {
                        return;
                    }
                    Airframe frame =
                            new Airframes(plain).of(plain.parameters().nominal(), Give.USUAL);
                    double way = random.nextDouble(-Math.PI, Math.PI);
                    double tips =
                            Math.atan2(
                                    Stance.reachM(frame, Math.cos(way), Math.sin(way)),
                                    frame.soleDepthM().orElseThrow());
                    double slope = random.nextDouble(0.2, 0.5) * Math.min(tips, 0.3);
                    String ground =
                            String.format(
                                    Locale.ROOT,
                                    "site: {slope: %.4f°, slope to: %.3f°, ",
                                    Math.toDegrees(slope),
                                    Math.toDegrees(way));
                    Rig rig = Examples.read(text.replace("site: {", ground));
                    assertThat(rig.site().ground().slope().si()).isCloseTo(slope, within(1e-5));
                    assertThat(told(rig).finding()).isEmpty();
                    FlightOutcome one = flown(rig, 0);
                    assertThat(one.end())
                            .as("%s rad: %s", slope, one.events())
                            .isEqualTo(FlightOutcome.End.LANDED);
                    flown[0]++;
                });
        assertThat(flown[0]).isPositive();
    }

    /** Friction and slope with tolerances are drawn, and only those. */
    @Test
    void aDrawnFlightHasTheGroundOfItsDraw() {
        Rig rig = curlew("slope: 8° ± 3°, friction: 0.6 ± 0.2");
        Plant plant = Plant.assembleHeated(rig);
        double[] slopes = new double[200];
        double[] frictions = new double[200];
        double[] p = plant.parameters().nominal();
        Airframes frames = new Airframes(plant);
        for (int k = 0; k < slopes.length; k++) {
            plant.parameters().draw(3, k + 1, p);
            slopes[k] = plant.ground().slopeRad(p);
            frictions[k] = plant.ground().friction(p);
            if (k < 5) {
                Airframe.Ground ground = frames.of(p, Give.USUAL).ground();
                assertThat(ground.slopeRad()).isEqualTo(slopes[k]);
                assertThat(ground.friction()).isEqualTo(frictions[k]);
            }
        }
        double mean = Arrays.stream(slopes).average().orElseThrow();
        double spread =
                Math.sqrt(
                        Arrays.stream(slopes).map(s -> s * s).average().orElseThrow()
                                - mean * mean);
        assertThat(Math.toDegrees(mean)).isCloseTo(8, within(0.5));
        assertThat(Math.toDegrees(spread)).isCloseTo(1.5, within(0.25));
        assertThat(Arrays.stream(frictions).distinct().count()).isEqualTo(200);
        assertThat(told(rig).slidesRad()).isCloseTo(Math.atan(0.4), within(1e-9));
        assertThat(told(rig).steepestRad()).isCloseTo(Math.toRadians(11), within(1e-9));
    }

    /** The outline of a rectangle: to the nearer of two edges. */
    @Test
    void theReachOfAStanceIsThatToItsOutline() {
        Seeded.check(
                100,
                random -> {
                    double a = random.nextDouble(0.05, 1);
                    double b = random.nextDouble(0.05, 1);
                    double way = random.nextDouble(-Math.PI, Math.PI);
                    List<Airframe.Foot> feet = new ArrayList<>();
                    for (double x : new double[] {-a, a, 0.5 * a}) {
                        for (double y : new double[] {-b, b}) {
                            feet.add(new Airframe.Foot(new Vec3(x, y, 1), Airframe.FRAME));
                        }
                    }
                    Airframe frame =
                            new Airframe(
                                    1,
                                    new Inertia(1, 1, 1, 0, 0, 0),
                                    List.of(),
                                    List.of(),
                                    feet,
                                    new Airframe.Ground(1, 1, 1, 1, 1),
                                    Airframe.Drag.NONE,
                                    List.of(),
                                    0);
                    double byHand =
                            Math.min(a / Math.abs(Math.cos(way)), b / Math.abs(Math.sin(way)));
                    assertThat(Stance.reachM(frame, Math.cos(way), Math.sin(way)))
                            .isCloseTo(byHand, within(1e-9));
                });
    }
}
