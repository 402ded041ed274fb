package liftwright.flight.run;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import java.util.random.RandomGenerator;
import liftwright.flight.Examples;
import liftwright.flight.loops.LoopDesign;
import liftwright.flight.loops.RigLoops;
import liftwright.flight.profile.Profile;
import liftwright.plant.Plant;
import liftwright.rig.Rig;
import liftwright.rig.Vec3;
import liftwright.testkit.Seeded;
import org.junit.jupiter.api.Test;

/** Modules of one scene, kept apart from each other and from each other's jets. */
class NearnessTest {

    private static final double EXIT_M2 = 0.0128;

    /** One fan that blows down, 0.2 m across its tip. */
    private static final Shell SHELL =
            new Shell(
                    List.of(new Shell.Ball(Vec3.ZERO, 0.1)),
                    List.of(new Shell.Jet(Vec3.ZERO, new Vec3(0, 0, 1), EXIT_M2)));

    /** Straight from one place to another, upright. */
    private static FlightPath path(Vec3 from, Vec3 to, int moments) {
        double[] times = new double[moments];
        double[] place = new double[3 * moments];
        double[] turned = new double[4 * moments];
        double[] thrust = new double[moments];
        Arrays.fill(thrust, 30);
        for (int k = 0; k < moments; k++) {
            double share = k / (moments - 1.0);
            times[k] = k / (double) FlightPath.PER_S;
            place[3 * k] = from.x() + share * (to.x() - from.x());
            place[3 * k + 1] = from.y() + share * (to.y() - from.y());
            place[3 * k + 2] = from.z() + share * (to.z() - from.z());
            turned[4 * k] = 1;
        }
        return new FlightPath(times, place, turned, 1, thrust, List.of(), new double[0]);
    }

    private static Near pair(FlightPath one, FlightPath other, double right, double after) {
        return new Nearness(SHELL)
                .of(
                        List.of(
                                new Nearness.Member("one", one, 0, 0, 0),
                                new Nearness.Member("other", other, 0, right, after)))
                .getFirst();
    }

    private static double between(RandomGenerator random, double least, double most) {
        return least + (most - least) * random.nextDouble();
    }

    /** The least distance of two straight ways at the same times, by calculus. */
    @Test
    void distanceAndJetsAreThoseOfTheGeometry() {
        Seeded.check(
                50,
                random -> {
                    double crossM = between(random, -2, 2);
                    double up = between(random, 1, 8);
                    FlightPath still = path(new Vec3(0, 0, -1), new Vec3(0, 0, -1), 201);
                    FlightPath passes =
                            path(new Vec3(-4, 0, -1 - up), new Vec3(4, 0, -1 - up), 201);
                    Near near = pair(still, passes, crossM, 0);
                    assertThat(near.leastM()).isCloseTo(Math.hypot(crossM, up) - 0.2, within(1e-9));
                    assertThat(near.atS()).isCloseTo(4, within(1e-9));
                    // Nine tenths of the momentum of a Gaussian jet: r = 0.096 x √(ln 10/(2 ln 2)).
                    double core = 6.1 * Math.sqrt(4 * EXIT_M2 / Math.PI);
                    double wide = 0.096 * up * Math.sqrt(Math.log(10) / (2 * Math.log(2)));
                    if (up > core
                            && up < 3 * core
                            && Math.abs(Math.abs(crossM) - 0.1 - wide) > 0.02) {
                        assertThat(near.jetS().isPresent())
                                .isEqualTo(Math.abs(crossM) - 0.1 < wide);
                    }
                    if (up > 3 * core + 0.2) {
                        assertThat(near.jetS()).isEmpty();
                    }
                });
    }

    /** Ways that cross at 1 m/s: together they meet, 3 s apart they pass at 3/√2 m. */
    @Test
    void whoBeginsLaterIsSoMuchBehind() {
        FlightPath ahead = path(new Vec3(-4, 0, -2), new Vec3(4, 0, -2), 201);
        FlightPath across = path(new Vec3(0, -4, -2), new Vec3(0, 4, -2), 201);
        assertThat(pair(ahead, across, 0, 0).leastM()).isCloseTo(-0.2, within(1e-9));
        Near later = pair(ahead, across, 0, 3);
        assertThat(later.leastM()).isCloseTo(3 / Math.sqrt(2) - 0.2, within(1e-3));
        assertThat(later.atS()).isCloseTo(5.5, within(0.03));
    }

    private static FlightOutcome three(String right) {
        Rig rig = Examples.rig("curlew");
        Plant plant = Plant.assembleHeated(rig);
        var loops = (LoopDesign.Granted) new RigLoops(plant.balancing()).design();
        String text =
                Examples.profileText("curlew", "three-together").replace("2.5 m", right + " m");
        Profile profile = Examples.profile(rig, text);
        FlightOutcome flown =
                new FlightRun(plant, new ComputerCrew(rig, loops))
                        .fly(FlightCase.of(plant, profile, 1, 0));
        assertThat(flown.near()).hasSize(3);
        assertThat(flown.isWell(profile.limits()))
                .isEqualTo(
                        flown.near().stream().allMatch(pair -> pair.isClear(1))
                                && flown.end() == FlightOutcome.End.LANDED);
        return flown;
    }

    @Test
    void threeModulesKeepApartInStepAndNotWhereTheyStartTooNear() {
        FlightOutcome apart = three("2.5");
        assertThat(apart.end())
                .as("%s %s", apart.near(), apart.events())
                .isEqualTo(FlightOutcome.End.LANDED);
        assertThat(apart.near()).allMatch(pair -> pair.leastM() > 1 && pair.jetS().isEmpty());
        FlightOutcome near = three("0.9");
        assertThat(near.end()).as("%s", near.near()).isEqualTo(FlightOutcome.End.CLOSE);
        assertThat(near.events()).anyMatch(event -> event.words().contains("too near"));
    }
}
