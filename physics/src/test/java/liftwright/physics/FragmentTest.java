package liftwright.physics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import liftwright.testkit.Seeded;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Broken pieces against worked numbers and against flights integrated one by one. */
class FragmentTest {

    private static final double G = 9.80665;

    /** ½ m v², worked by hand, to the printed digit. */
    @ParameterizedTest
    @CsvSource({"5, 177.8, 77.5", "10, 125.7, 54.8", "20, 88.9, 38.7", "50, 56.2, 24.5"})
    void speedsThatCarryAnEnergy(double massG, double hazardousMps, double lowerMps) {
        assertThat(Fragment.speedForMps(79, massG / 1000)).isCloseTo(hazardousMps, within(0.0501));
        assertThat(Fragment.speedForMps(15, massG / 1000)).isCloseTo(lowerMps, within(0.0501));
        assertThat(Fragment.energyJ(massG / 1000, Fragment.speedForMps(33, massG / 1000)))
                .isCloseTo(33, within(1e-9));
    }

    /** Worked by hand: 8 g at 45 mm, 40 000 rpm. */
    @Test
    void aBladeOfASmallFan() {
        double omega = 40_000 * 2 * Math.PI / 60;
        double speed = Fragment.speedMps(0.045, omega);
        assertThat(speed).isCloseTo(188.5, within(0.05));
        assertThat(Fragment.energyJ(0.008, speed)).isCloseTo(142.1, within(0.05));
        assertThat(Fragment.rootLoadN(0.008, 0.045, omega)).isCloseTo(6317, within(0.5));
    }

    /** Points of mass in three equal thirds: the centre of a third is never faster than told. */
    @Test
    void noThirdOfARotorIsFasterThanItsGyration() {
        Seeded.check(
                200,
                random -> {
                    int points = 1 + random.nextInt(5);
                    double mass = 0;
                    double inertia = 0;
                    double x = 0;
                    double y = 0;
                    for (int k = 0; k < points; k++) {
                        double m = random.nextDouble(0.001, 0.02);
                        double r = random.nextDouble(0.001, 0.06);
                        double at = random.nextDouble(0, 2 * Math.PI / 3);
                        mass += m;
                        inertia += m * r * r;
                        x += m * r * Math.cos(at);
                        y += m * r * Math.sin(at);
                    }
                    double omega = random.nextDouble(500, 5000);
                    double told = Fragment.sectorMps(3 * inertia, 3 * mass, omega);
                    double centre = omega * Math.hypot(x, y) / mass;
                    assertThat(told).isGreaterThanOrEqualTo(centre * (1 - 1e-12));
                    if (points == 1) {
                        assertThat(told).isCloseTo(centre, within(1e-9 * centre));
                    }
                });
    }

    /** A ball of 1 kg and 2.7 g/cm³ has 89.1 mm; a plate's mean shadow by turning it at random. */
    @Test
    void dragAreasOfBallsAndPlates() {
        double diameter = 0.0891;
        assertThat(Fragment.compactDragM2(1, 2700))
                .isCloseTo(0.47 * Math.PI / 4 * diameter * diameter, within(1e-5));
        int n = 4000;
        double sum = 0;
        for (int k = 0; k < n; k++) {
            // The cosine of an even spread over the sphere is even.
            sum += Math.abs(-1 + (k + 0.5) * 2 / n);
        }
        assertThat(Fragment.tumblingDragM2(0.02)).isCloseTo(1.17 * 0.02 * sum / n, within(1e-6));
    }

    /** Parabola: v/g √(v² + 2 g h), the farthest throw of all. */
    @Test
    void withoutAirItIsTheParabola() {
        Seeded.check(
                50,
                random -> {
                    double v = random.nextDouble(2, 150);
                    double h = random.nextDouble(0, 2);
                    double expected = v / G * Math.sqrt(v * v + 2 * G * h);
                    assertThat(Fragment.farthestM(v, h, 1, 0, 1.2))
                            .isCloseTo(expected, within(1e-6 * expected));
                    double angle = random.nextDouble(-0.15, 1.4);
                    double up = v * Math.sin(angle);
                    double reach = v * Math.cos(angle) / G * (up + Math.sqrt(up * up + 2 * G * h));
                    if (reach > 0.05) {
                        assertThat(Fragment.reachM(v, angle, h, 0))
                                .isCloseTo(reach, within(1e-6 * reach));
                    }
                });
    }

    /** Every angle of a dense sweep, each flight integrated until it meets the ground. */
    @Test
    void theFarthestThrowIsThatOfADenseSweep() {
        Seeded.check(
                25,
                random -> {
                    double v = Math.exp(random.nextDouble(Math.log(3), Math.log(250)));
                    double h = random.nextDouble(0.05, 3);
                    double mass = Math.exp(random.nextDouble(Math.log(0.001), Math.log(3)));
                    double k = Math.exp(random.nextDouble(Math.log(1e-4), Math.log(0.5)));
                    double density = random.nextDouble(0.9, 1.3);
                    double area = 2 * mass * k / density;
                    double most = 0;
                    double hard = random.nextDouble(0.2, 0.9) * v;
                    double mostHard = 0;
                    double[] before = {0, 0, 0, 0};
                    for (int i = 0; i <= 170; i++) {
                        double angle = Math.toRadians(-80 + i);
                        double[] end = flown(v, angle, h, k);
                        most = Math.max(most, end[0]);
                        if (i % 10 == 0 && end[0] > 0.05) {
                            assertThat(Fragment.reachM(v, angle, h, k))
                                    .isCloseTo(end[0], within(1e-6 * end[0]));
                            double fast = Math.hypot(end[2], end[3]);
                            assertThat(Fragment.impactMps(v, angle, h, k))
                                    .isCloseTo(fast, within(1e-5 * fast));
                        }
                        if (i >= 70 && i <= 140) {
                            boolean fell = Math.hypot(end[2], end[3]) >= hard;
                            mostHard = fell ? Math.max(mostHard, end[0]) : mostHard;
                            if (i > 70 && fell != Math.hypot(before[2], before[3]) >= hard) {
                                mostHard =
                                        Math.max(
                                                mostHard, justHard(v, angle, !fell, h, k, hard)[0]);
                            }
                        }
                        before = end;
                    }
                    double told = Fragment.farthestM(v, h, mass, area, density);
                    assertThat(told).isBetween(most * (1 - 1e-7), most * (1 + 5e-4));
                    double toldHard =
                            Fragment.farthestWithM(
                                    v, h, mass, area, density, mass * hard * hard / 2);
                    assertThat(toldHard).isCloseTo(mostHard, within(0.01 * most + 1e-9));
                });
    }

    /** The throw within the degree before an angle that just ends fast enough, by halving. */
    private static double[] justHard(
            double v, double angle, boolean below, double h, double k, double hard) {
        double low = angle - Math.toRadians(1);
        double high = angle;
        for (int n = 0; n < 20; n++) {
            double middle = (low + high) / 2;
            double[] end = flown(v, middle, h, k);
            if (Math.hypot(end[2], end[3]) >= hard == below) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return flown(v, below ? low : high, h, k);
    }

    private static double[] flown(double v, double angle, double h, double k) {
        double[] start = {0, h, v * Math.cos(angle), v * Math.sin(angle)};
        return Marched.until(
                        s -> s[1],
                        200,
                        start,
                        s -> {
                            double speed = Math.hypot(s[2], s[3]);
                            return new double[] {
                                s[2], s[3], -k * speed * s[2], -G - k * speed * s[3]
                            };
                        })
                .getPrimaryState();
    }

    /** Drag alone over the way told leaves the energy told. */
    @Test
    void energyIsLostAlongTheWay() {
        Seeded.check(
                50,
                random -> {
                    double mass = random.nextDouble(0.002, 0.5);
                    double v = random.nextDouble(80, 250);
                    double area = random.nextDouble(1e-4, 3e-3);
                    double k = 1.2 * area / (2 * mass);
                    double time = random.nextDouble(0.01, 1);
                    double[] end =
                            Marched.after(
                                    time,
                                    new double[] {0, v},
                                    s -> new double[] {s[1], -k * s[1] * s[1]});
                    assertThat(
                                    Fragment.wayToEnergyM(
                                            mass * v * v / 2,
                                            mass * end[1] * end[1] / 2,
                                            mass,
                                            area,
                                            1.2))
                            .isCloseTo(end[0], within(1e-7 * end[0]));
                });
        assertThat(Fragment.wayToEnergyM(10, 79, 1, 1, 1)).isZero();
    }

    @Test
    void throwsFromNowhereAreRefused() {
        assertThat(Fragment.farthestM(0, 1, 1, 1, 1)).isZero();
        assertThatThrownBy(() -> Fragment.reachM(1, 0, -0.1, 0))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> Fragment.reachM(0, 0, 1, 0))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> Fragment.reachM(1, 0, 1, -1))
                .isInstanceOf(IllegalArgumentException.class);
    }
}
