package liftwright.flight.motion;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.random.RandomGenerator;
import liftwright.flight.motion.MotionReferee.FanInTime;
import liftwright.rig.Vec3;
import liftwright.testkit.Seeded;
import org.junit.jupiter.api.Test;

/** The body against the same equations written again, integrated by a library. */
class MotionAgainstIntegratorTest {

    private static final double UNTIL_S = 1;

    private record Scene(
            Airframe body, List<FanInTime> fans, BodyState start, Wind wind, Vec3 air) {}

    private static Scene scene(RandomGenerator random) {
        int loose = random.nextInt(4);
        Airframe plain = Bodies.random(random, random.nextBoolean(), loose);
        Airframe.Line line =
                new Airframe.Line(
                        "line", new Vec3(0.3, 0.2, -14), Bodies.vector(random, 0.2), 2, 100, 0);
        Airframe body =
                Bodies.with(plain, plain.fans(), plain.loose(), List.of(line), plain.drag());
        List<FanInTime> fans = new ArrayList<>();
        int count = body.fans().size();
        for (int k = 0; k < count; k++) {
            double thrust = body.massKg() * 9.8 / count * Bodies.between(random, 0.7, 1.2);
            double swing = 0.3 * thrust;
            double rate = Bodies.between(random, 2, 8);
            double swirl = Bodies.between(random, -0.5, 0.5);
            double spin = Bodies.between(random, -0.6, 0.6);
            fans.add(
                    new FanInTime(
                            t -> thrust + swing * Math.sin(rate * t),
                            t -> swirl * Math.cos(rate * t),
                            t -> spin * (1 + 0.3 * Math.sin(rate * t)),
                            t -> spin * 0.3 * rate * Math.cos(rate * t),
                            Bodies.between(random, 0.3, 1.5)));
        }
        BodyState start = new BodyState();
        Bodies.tumble(random, start, loose);
        double speed = Bodies.between(random, 0, 8);
        double from = Bodies.between(random, -3, 3);
        Vec3 air = new Vec3(-speed * Math.cos(from), -speed * Math.sin(from), 0);
        return new Scene(body, fans, start, Wind.of(speed, from).smooth(), air);
    }

    private static double[] flown(Scene scene, double dtS) {
        Motion motion = new Motion(scene.body, new Air(scene.wind, 1, 1));
        BodyState state = new BodyState();
        state.set(scene.start);
        motion.begin(state);
        FanLoads loads = new FanLoads(scene.fans.size());
        int steps = Math.toIntExact(Math.round(UNTIL_S / dtS));
        for (int step = 0; step < steps; step++) {
            for (int moment = 0; moment < 3; moment++) {
                double t = (step + moment / 2.0) * dtS;
                for (int k = 0; k < scene.fans.size(); k++) {
                    FanInTime fan = scene.fans.get(k);
                    int at = moment * scene.fans.size() + k;
                    loads.thrustN[at] = fan.thrustN().applyAsDouble(t);
                    loads.reactionNm[at] =
                            fan.swirlNm().applyAsDouble(t) - fan.spinRateNm().applyAsDouble(t);
                    loads.spinNms[at] = fan.spinNms().applyAsDouble(t);
                    loads.flowKgps[at] = fan.flowKgps();
                }
            }
            motion.air(dtS, state);
            motion.step(dtS, loads, state);
        }
        return state.y;
    }

    @Test
    void agreesToAMillionthAtTheUsualStep() {
        Seeded.check(
                40,
                random -> {
                    Scene scene = scene(random);
                    double[] truth =
                            new MotionReferee(scene.body, scene.fans, scene.air)
                                    .run(scene.start.y, UNTIL_S);
                    assertThat(MotionReferee.apart(flown(scene, 0.001), truth)).isLessThan(1e-6);
                });
    }

    @Test
    void isOfFourthOrderWhereLoadsAreKnown() {
        // Slack, a line breaks the order of a step: here none is met.
        Seeded.check(
                10,
                random -> {
                    Scene any = scene(random);
                    Scene scene =
                            new Scene(
                                    any.body.withLines(List.of()),
                                    any.fans,
                                    any.start,
                                    any.wind,
                                    any.air);
                    double[] truth =
                            new MotionReferee(scene.body, scene.fans, scene.air)
                                    .run(scene.start.y, UNTIL_S);
                    double coarse = MotionReferee.apart(flown(scene, 0.004), truth);
                    double fine = MotionReferee.apart(flown(scene, 0.002), truth);
                    double order = Math.log(coarse / fine) / Math.log(2);
                    assertThat(order).isBetween(3.5, 4.5);
                });
    }
}
