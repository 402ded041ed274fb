package liftwright.flight.motion;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.random.RandomGenerator;
import liftwright.plant.body.Inertia;
import liftwright.rig.Vec3;
import liftwright.testkit.Seeded;
import org.junit.jupiter.api.Test;

/** What Newton says is kept, and what must not matter, on random bodies. */
class KeptQuantitiesTest {

    private static final double G = 9.80665;
    private static final double DT = 0.001;

    /** Momentum, angular momentum about the origin of the scene, energy. */
    private record Kept(Vec3 momentum, Vec3 turning, double energyJ) {}

    private static Vec3 turned(double[] s, Vec3 v) {
        Vec3 u = new Vec3(s[BodyState.QX], s[BodyState.QY], s[BodyState.QZ]);
        Vec3 t = u.cross(v).times(2);
        return v.plus(t.times(s[BodyState.QW])).plus(u.cross(t));
    }

    private static Vec3 at(double[] y, int from) {
        return new Vec3(y[from], y[from + 1], y[from + 2]);
    }

    /** Sums over the points that the body is made of: written again, in scene axes. */
    private static Kept kept(Airframe body, double[] y, Vec3 spin) {
        double kg = body.massKg();
        Vec3 moment = Vec3.ZERO;
        Inertia own = body.inertia();
        for (Airframe.Loose each : body.loose()) {
            kg -= each.massKg();
            moment = moment.minus(each.at().times(each.massKg()));
            own = Bodies.point(own, -each.massKg(), each.at());
        }
        Vec3 centre = moment.times(1 / kg);
        own = Bodies.point(own, -kg, centre);
        Vec3 w = at(y, BodyState.WX);
        Vec3 h =
                new Vec3(
                        own.xx() * w.x() + own.xy() * w.y() + own.xz() * w.z(),
                        own.xy() * w.x() + own.yy() * w.y() + own.yz() * w.z(),
                        own.xz() * w.x() + own.yz() * w.y() + own.zz() * w.z());
        double energy = MotionReferee.dot(h, w) / 2;
        Vec3 momentum = Vec3.ZERO;
        Vec3 turning = turned(y, h.plus(spin));
        List<Vec3> places = new ArrayList<>(List.of(centre));
        List<Vec3> speeds = new ArrayList<>(List.of(Vec3.ZERO));
        List<Double> masses = new ArrayList<>(List.of(kg));
        for (int k = 0; k < body.loose().size(); k++) {
            Airframe.Loose mass = body.loose().get(k);
            int from = BodyState.OWN + 6 * k;
            Vec3 s = at(y, from);
            Vec3 stretch = mass.on() < 0 ? s : s.minus(at(y, BodyState.OWN + 6 * mass.on()));
            Vec3 stiff = mass.stiffnessNpm();
            energy +=
                    (stiff.x() * stretch.x() * stretch.x()
                                    + stiff.y() * stretch.y() * stretch.y()
                                    + stiff.z() * stretch.z() * stretch.z())
                            / 2;
            // The load that the spring carries up in a hover: own weight and that of those on it.
            double upN = 0;
            for (int j = 0; j < body.loose().size(); j++) {
                if (j == k || body.loose().get(j).on() == k) {
                    upN += body.loose().get(j).massKg() * G;
                }
            }
            energy += upN * stretch.z();
            places.add(mass.at().plus(s));
            speeds.add(at(y, from + 3));
            masses.add(mass.massKg());
        }
        for (int k = 0; k < places.size(); k++) {
            Vec3 place = at(y, BodyState.PX).plus(turned(y, places.get(k)));
            Vec3 speed =
                    at(y, BodyState.VX).plus(turned(y, w.cross(places.get(k)).plus(speeds.get(k))));
            double m = masses.get(k);
            momentum = momentum.plus(speed.times(m));
            turning = turning.plus(place.cross(speed.times(m)));
            energy += m * MotionReferee.dot(speed, speed) / 2 - m * G * place.z();
        }
        return new Kept(momentum, turning, energy);
    }

    private static Vec3 middle(Airframe body, double[] y) {
        Vec3 sum = at(y, BodyState.PX).times(body.massKg());
        for (int k = 0; k < body.loose().size(); k++) {
            sum =
                    sum.plus(
                            turned(y, at(y, BodyState.OWN + 6 * k))
                                    .times(body.loose().get(k).massKg()));
        }
        return sum.times(1 / body.massKg());
    }

    private static Airframe bare(Airframe body) {
        return Bodies.with(body, body.fans(), body.loose(), List.of(), Airframe.Drag.NONE);
    }

    private static BodyState run(Airframe body, BodyState start, FanLoads loads, int steps) {
        return run(body, start, loads, steps, Wind.NONE);
    }

    private static BodyState run(
            Airframe body, BodyState start, FanLoads loads, int steps, Wind wind) {
        Motion motion = new Motion(body, new Air(wind, 7, 7));
        BodyState state = new BodyState();
        state.set(start);
        motion.begin(state);
        for (int k = 0; k < steps; k++) {
            motion.air(DT, state);
            motion.step(DT, loads, state);
        }
        return state;
    }

    @Test
    void weightAloneChangesMomentumAndNothingElseDoes() {
        Seeded.check(
                30,
                random -> {
                    Airframe body = bare(Bodies.random(random, false, random.nextInt(4)));
                    BodyState start = new BodyState();
                    Bodies.tumble(random, start, body.loose().size());
                    FanLoads loads = new FanLoads(body.fans().size());
                    Vec3 spin = Vec3.ZERO;
                    for (int k = 0; k < loads.fans; k++) {
                        double each = Bodies.between(random, -0.5, 0.5);
                        loads.steady(k, 0, 0, each, 0);
                        spin = spin.plus(body.fans().get(k).axis().times(each));
                    }
                    int steps = 1000;
                    BodyState end = run(body, start, loads, steps);
                    Kept before = kept(body, start.y, spin);
                    Kept after = kept(body, end.y, spin);
                    double t = steps * DT;
                    Vec3 weight = new Vec3(0, 0, body.massKg() * G);
                    Vec3 given = after.momentum.minus(before.momentum).minus(weight.times(t));
                    assertThat(given.length()).isLessThan(1e-7 * body.massKg());
                    // The moment of weight about the origin grows as the centre travels: m v0 t²/2.
                    Vec3 centre = middle(body, start.y);
                    Vec3 speed = before.momentum.times(1 / body.massKg());
                    Vec3 turned = centre.times(t).plus(speed.times(t * t / 2)).cross(weight);
                    Vec3 left = after.turning.minus(before.turning).minus(turned);
                    assertThat(left.length()).isLessThan(1e-6 * body.massKg());
                    assertThat(after.energyJ)
                            .isCloseTo(before.energyJ, within(1e-8 * body.massKg() * 100));
                });
    }

    @Test
    void dampersAndAirTakeEnergyAndNeverGiveIt() {
        Seeded.check(
                20,
                random -> {
                    Airframe any = Bodies.random(random, true, 1 + random.nextInt(3));
                    BodyState start = new BodyState();
                    Bodies.tumble(random, start, any.loose().size());
                    FanLoads loads = new FanLoads(any.fans().size());
                    for (int k = 0; k < loads.fans; k++) {
                        loads.steady(k, 0, 0, 0, 0.5);
                    }
                    Motion motion = new Motion(any, Air.still());
                    BodyState state = new BodyState();
                    state.set(start);
                    motion.begin(state);
                    double before = kept(any, state.y, Vec3.ZERO).energyJ;
                    for (int k = 0; k < 300; k++) {
                        motion.step(DT, loads, state);
                        double now = kept(any, state.y, Vec3.ZERO).energyJ;
                        assertThat(now).isLessThan(before + 1e-9 * Math.abs(before));
                        before = now;
                    }
                });
    }

    @Test
    void theMirrorOfABodyFliesTheMirrorOfItsFlight() {
        Seeded.check(
                20,
                random -> {
                    Airframe body = Bodies.random(random, true, random.nextInt(4));
                    BodyState start = new BodyState();
                    Bodies.tumble(random, start, body.loose().size());
                    FanLoads loads = loads(random, body, 1);
                    FanLoads other = new FanLoads(loads.fans);
                    for (int k = 0; k < loads.thrustN.length; k++) {
                        other.thrustN[k] = loads.thrustN[k];
                        other.reactionNm[k] = -loads.reactionNm[k];
                        other.spinNms[k] = -loads.spinNms[k];
                        other.flowKgps[k] = loads.flowKgps[k];
                    }
                    BodyState mirrored = new BodyState();
                    mirrored.set(start);
                    mirror(mirrored.y);
                    Wind wind = Wind.of(4, 0.7).smooth();
                    Wind back = Wind.of(4, -0.7).smooth();
                    double[] one = run(body, start, loads, 500, wind).y;
                    double[] two = run(mirror(body), mirrored, other, 500, back).y;
                    mirror(two);
                    assertThat(MotionReferee.apart(one, two)).isLessThan(1e-9);
                });
    }

    @Test
    void whereNorthIsAndHowFastTheAirMovesDoNotMatter() {
        Seeded.check(
                20,
                random -> {
                    Airframe body = Bodies.random(random, true, random.nextInt(4));
                    BodyState start = new BodyState();
                    Bodies.tumble(random, start, body.loose().size());
                    FanLoads loads = loads(random, body, 1);
                    double[] one = run(body, start, loads, 500, Wind.of(4, 0.3).smooth()).y;
                    double turn = Bodies.between(random, -3, 3);
                    BodyState other = new BodyState();
                    other.set(start);
                    yaw(other.y, turn);
                    double[] two = run(body, other, loads, 500, Wind.of(4, 0.3 + turn).smooth()).y;
                    yaw(two, -turn);
                    assertThat(MotionReferee.apart(one, two)).isLessThan(1e-9);
                    // The same air with the same body carried along by 4 m/s more.
                    other.set(start);
                    other.y[BodyState.VX] += 4 * Math.cos(0.3);
                    other.y[BodyState.VY] += 4 * Math.sin(0.3);
                    double[] three = run(body, other, loads, 500).y;
                    three[BodyState.VX] -= 4 * Math.cos(0.3);
                    three[BodyState.VY] -= 4 * Math.sin(0.3);
                    three[BodyState.PX] -= 4 * Math.cos(0.3) * 0.5;
                    three[BodyState.PY] -= 4 * Math.sin(0.3) * 0.5;
                    assertThat(MotionReferee.apart(one, three)).isLessThan(1e-9);
                });
    }

    private static FanLoads loads(RandomGenerator random, Airframe body, double flow) {
        FanLoads loads = new FanLoads(body.fans().size());
        for (int k = 0; k < loads.fans; k++) {
            loads.steady(
                    k,
                    body.massKg() * G / loads.fans,
                    Bodies.between(random, -0.5, 0.5),
                    Bodies.between(random, -0.5, 0.5),
                    flow);
        }
        return loads;
    }

    private static Vec3 mirror(Vec3 v) {
        return new Vec3(v.x(), -v.y(), v.z());
    }

    private static Airframe mirror(Airframe body) {
        Inertia i = body.inertia();
        List<Airframe.FanLine> fans = new ArrayList<>();
        for (Airframe.FanLine fan : body.fans()) {
            fans.add(
                    new Airframe.FanLine(
                            mirror(fan.at()), mirror(fan.intake()), mirror(fan.axis())));
        }
        List<Airframe.Loose> loose = new ArrayList<>();
        for (Airframe.Loose each : body.loose()) {
            loose.add(
                    new Airframe.Loose(
                            each.name(),
                            each.massKg(),
                            mirror(each.at()),
                            each.on(),
                            each.stiffnessNpm(),
                            each.dampingNspm()));
        }
        return new Airframe(
                body.massKg(),
                new Inertia(i.xx(), i.yy(), i.zz(), -i.xy(), i.xz(), -i.yz()),
                fans,
                loose,
                List.of(),
                body.ground(),
                new Airframe.Drag(body.drag().areaM2(), mirror(body.drag().at())),
                List.of(),
                body.densityKgpm3());
    }

    private static void mirror(double[] y) {
        y[BodyState.PY] *= -1;
        y[BodyState.VY] *= -1;
        y[BodyState.QX] *= -1;
        y[BodyState.QZ] *= -1;
        y[BodyState.WX] *= -1;
        y[BodyState.WZ] *= -1;
        for (int k = 0; k < BodyState.MOST_LOOSE; k++) {
            y[BodyState.OWN + 6 * k + 1] *= -1;
            y[BodyState.OWN + 6 * k + 4] *= -1;
        }
    }

    private static void yaw(double[] y, double turn) {
        double c = Math.cos(turn);
        double s = Math.sin(turn);
        for (int from : new int[] {BodyState.PX, BodyState.VX}) {
            double x = y[from];
            y[from] = c * x - s * y[from + 1];
            y[from + 1] = s * x + c * y[from + 1];
        }
        double w = y[BodyState.QW];
        double x = y[BodyState.QX];
        double yy = y[BodyState.QY];
        double z = y[BodyState.QZ];
        double cw = Math.cos(turn / 2);
        double sz = Math.sin(turn / 2);
        y[BodyState.QW] = cw * w - sz * z;
        y[BodyState.QX] = cw * x - sz * yy;
        y[BodyState.QY] = cw * yy + sz * x;
        y[BodyState.QZ] = cw * z + sz * w;
    }
}
