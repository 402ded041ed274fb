package liftwright.physics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.data.Percentage.withPercentage;

import liftwright.testkit.Seeded;
import org.junit.jupiter.api.Test;

class FastEffectsTest {

    /**
     * Critically damped, R = 2 √(L/C): 1 H, 1 F and 2 Ω from 1 V below with 3 A give (2 t − 1)
     * e^−t, whose highest is 2 e^−1.5 after 1.5 s (closed form, by hand).
     */
    @Test
    void theHighestOfACriticallyDampedCircuit() {
        assertThat(FastEffects.cutPeakV(10, 9, 3, 2, 1, 1))
                .isCloseTo(10 + 2 * Math.exp(-1.5), within(1e-12));
        // Started at rest below, it creeps up and never passes.
        assertThat(FastEffects.cutPeakV(10, 9, 0, 2, 1, 1)).isEqualTo(10);
    }

    /** 1 µH, 1 mF, 20 mΩ on 58.8 V peaks near 79 V: V (1 + exp(−πζ/√(1 − ζ²))), ζ = 0.3162. */
    @Test
    void pluggingInRings() {
        assertThat(FastEffects.damping(0.020, 1e-6, 1e-3)).isCloseTo(0.316228, within(1e-6));
        assertThat(FastEffects.plugInPeakV(58.8, 0.020, 1e-6, 1e-3)).isCloseTo(79.4, within(0.05));
        double zeta = 0.316227766;
        assertThat(FastEffects.plugInPeakV(58.8, 0.020, 1e-6, 1e-3))
                .isCloseTo(
                        58.8 * (1 + Math.exp(-Math.PI * zeta / Math.sqrt(1 - zeta * zeta))),
                        within(1e-6));
        // Enough resistance and nothing overshoots.
        assertThat(FastEffects.plugInPeakV(58.8, 0.2, 1e-6, 1e-3)).isEqualTo(58.8);
    }

    /** 300 A, same circuit: 63.9 V from a pack sagged to 52.8 V, 65.1 V from one held at 58.8 V. */
    @Test
    void cuttingACurrentPushesTheCapacitors() {
        assertThat(FastEffects.cutPeakV(58.8, 52.8, 300, 0.020, 1e-6, 1e-3))
                .isCloseTo(63.9, within(0.06));
        assertThat(FastEffects.cutPeakV(58.8, 58.8, 300, 0.020, 1e-6, 1e-3))
                .isCloseTo(65.1, within(0.05));
        assertThat(FastEffects.undampedCutPeakV(58.8, 300, 1e-6, 1e-3))
                .isCloseTo(58.8 + 9.4868, within(1e-3));
    }

    /** A pair of round wires, out and back: (μ₀/π)(ln(D/a) + 1/4); Grover 1946, from memory. */
    @Test
    void inductanceCountsTheLoopOfOutAndBack() {
        assertThat(FastEffects.LOW_LEAD_HPM).isCloseTo(loopHpm(3.5), withPercentage(0.5));
        assertThat(FastEffects.HIGH_LEAD_HPM).isCloseTo(loopHpm(9.5), withPercentage(0.5));
    }

    private static double loopHpm(double distanceOverRadius) {
        return 4e-7 * (Math.log(distanceOverRadius) + 0.25);
    }

    /** Referee: charge in and out of the capacitor, pulse by pulse, in 20,000 steps a period. */
    @Test
    void rippleIsTheChargeThatComesAndGoes() {
        Seeded.check(
                100,
                random -> {
                    double winding = random.nextDouble(1, 300);
                    double duty = random.nextDouble(0, 1);
                    double hertz = random.nextDouble(8e3, 100e3);
                    double farad = random.nextDouble(1e-4, 5e-3);
                    int steps = 20_000;
                    double step = 1 / hertz / steps;
                    double volt = 0;
                    double high = 0;
                    double low = 0;
                    double square = 0;
                    for (int k = 0; k < steps; k++) {
                        double taken = k < duty * steps ? winding : 0;
                        double into = duty * winding - taken;
                        square += into * into / steps;
                        volt += into * step / farad;
                        high = Math.max(high, volt);
                        low = Math.min(low, volt);
                    }
                    double coarse = 2 * winding / steps;
                    assertThat(FastEffects.rippleV(winding, duty, hertz, farad))
                            .isCloseTo(high - low, within(coarse / hertz / farad));
                    assertThat(FastEffects.rippleA(winding, duty))
                            .isCloseTo(Math.sqrt(square), within(winding * 0.02));
                });
        assertThat(FastEffects.rippleV(100, 0.5, 24e3, 940e-6))
                .as("the worst duty is a half")
                .isGreaterThan(FastEffects.rippleV(100, 0.49, 24e3, 940e-6))
                .isGreaterThan(FastEffects.rippleV(100, 0.51, 24e3, 940e-6));
    }

    /** Referee: a rotor slowed by a torque whose power goes into a capacitor, run in time. */
    @Test
    void brakingGivesTheRotorsEnergyToTheCapacitors() {
        Seeded.check(
                100,
                random -> {
                    double inertia = random.nextDouble(2e-5, 5e-3);
                    double from = random.nextDouble(300, 3000);
                    double farad = random.nextDouble(1e-4, 1e-2);
                    double start = random.nextDouble(12, 100);
                    double drag = random.nextInt(2) * random.nextDouble(1e-8, 1e-6);
                    double brakeNm = random.nextDouble(0.5, 5);
                    double step = inertia * from / brakeNm / 20_000;
                    double speed = from;
                    double volt = start;
                    double end = from * random.nextDouble(0.05, 0.9);
                    while (speed > end) {
                        double middle =
                                speed - (brakeNm + drag * speed * speed) / inertia * step / 2;
                        double power = brakeNm * middle;
                        speed -= (brakeNm + drag * middle * middle) / inertia * step;
                        volt += power * step / (farad * (volt + power * step / farad / volt / 2));
                    }
                    double bound = FastEffects.brakePeakV(start, inertia, from, speed, farad);
                    if (drag == 0) {
                        assertThat(bound).isCloseTo(volt, withPercentage(0.02));
                        double share = FastEffects.brakeShare(start, volt, inertia, from, farad);
                        assertThat(share)
                                .isCloseTo(1 - speed * speed / from / from, withPercentage(0.1));
                    } else {
                        assertThat(volt).isLessThan(bound);
                    }
                });
        assertThat(FastEffects.brakeShare(60, 50, 1e-4, 2000, 1e-3)).isZero();
    }

    /** Referee: the circuit run in time with fixed steps of order four. */
    @Test
    void peaksAgreeWithARunInTime() {
        int[] over = {0};
        Seeded.check(
                150,
                random -> {
                    double source = random.nextDouble(10, 100);
                    double current = random.nextInt(4) == 0 ? 0 : random.nextDouble(0, 500);
                    double ohm = Math.exp(random.nextDouble(-7, -1));
                    double henry = Math.exp(random.nextDouble(-15, -12));
                    double farad = Math.exp(random.nextDouble(-9, -5));
                    double start =
                            switch (random.nextInt(3)) {
                                case 0 -> source - current * ohm;
                                case 1 -> source * random.nextDouble(0, 1);
                                default -> source * random.nextDouble(1, 1.3);
                            };
                    over[0] += FastEffects.damping(ohm, henry, farad) > 1 ? 1 : 0;
                    double run = run(source, start, current, ohm, henry, farad);
                    assertThat(FastEffects.cutPeakV(source, start, current, ohm, henry, farad))
                            .isCloseTo(run, withPercentage(0.01));
                });
        if (System.getProperty("seed") == null) {
            assertThat(over[0]).as("overdamped cases").isBetween(20, 140);
        }
    }

    private static double run(
            double source, double start, double current, double ohm, double henry, double farad) {
        double fastest = Math.min(henry / ohm, Math.sqrt(henry * farad));
        double slowest = Math.max(ohm * farad, Math.sqrt(henry * farad));
        double step = fastest / 100;
        double v = start;
        double i = current;
        double peak = Math.max(source, start);
        for (double t = 0; t < 8 * slowest && t < 2e6 * step; t += step) {
            double di1 = (source - v - ohm * i) / henry;
            double dv1 = i / farad;
            double di2 = (source - v - dv1 * step / 2 - ohm * (i + di1 * step / 2)) / henry;
            double dv2 = (i + di1 * step / 2) / farad;
            double di3 = (source - v - dv2 * step / 2 - ohm * (i + di2 * step / 2)) / henry;
            double dv3 = (i + di2 * step / 2) / farad;
            double di4 = (source - v - dv3 * step - ohm * (i + di3 * step)) / henry;
            double dv4 = (i + di3 * step) / farad;
            i += step / 6 * (di1 + 2 * di2 + 2 * di3 + di4);
            v += step / 6 * (dv1 + 2 * dv2 + 2 * dv3 + dv4);
            peak = Math.max(peak, v);
        }
        return peak;
    }

    @Test
    void criticalDampingJoinsBothSides() {
        double critical = 2 * Math.sqrt(1e-6 / 1e-3);
        double at = FastEffects.cutPeakV(50, 50, 300, critical, 1e-6, 1e-3);
        assertThat(FastEffects.cutPeakV(50, 50, 300, critical * (1 - 1e-6), 1e-6, 1e-3))
                .isCloseTo(at, within(1e-4));
        assertThat(FastEffects.cutPeakV(50, 50, 300, critical * (1 + 1e-6), 1e-6, 1e-3))
                .isCloseTo(at, within(1e-4));
        assertThat(at).isGreaterThan(52);
    }

    @Test
    void simpleShares() {
        assertThat(FastEffects.rippleA(100, 0.5)).isEqualTo(50);
        assertThat(FastEffects.rippleA(100, 0.2)).isCloseTo(40, within(1e-12));
        assertThat(FastEffects.rippleA(100, 1)).isZero();
        assertThat(FastEffects.prospectiveA(50, 0.02)).isEqualTo(2500);
        assertThat(FastEffects.groundBounceV(100, 2e-3)).isCloseTo(0.2, within(1e-12));
        assertThat(FastEffects.LOW_LEAD_HPM).isEqualTo(0.6e-6);
        assertThat(FastEffects.HIGH_LEAD_HPM).isEqualTo(1.0e-6);
    }

    /** Every damping: the circuit from rest in small steps, and the ceiling without inductance. */
    @Test
    void inrushAgainstARunInTime() {
        for (double ohm : new double[] {1e-3, 0.02, 0.0632, 0.2, 2}) {
            double henry = 1e-6;
            double farad = 1e-3;
            double step = Math.min(henry / ohm, Math.sqrt(henry * farad)) / 1e4;
            double ampere = 0;
            double volt = 0;
            double most = 0;
            for (int k = 0; k < 200_000; k++) {
                ampere += step * (58.8 - volt - ampere * ohm) / henry;
                volt += step * ampere / farad;
                most = Math.max(most, ampere);
            }
            double peak = FastEffects.inrushPeakA(58.8, ohm, henry, farad);
            assertThat(peak).isCloseTo(most, within(1e-3 * most));
            assertThat(peak).isLessThan(Inrush.peakA(58.8, ohm));
        }
    }

    /** V (V − E) = R P by its own terms, and the most power of a motor by trial of currents. */
    @Test
    void powerGivenBackToAPack() {
        double volt = FastEffects.fedBackV(50.4, 0.02, 6000);
        assertThat(volt * (volt - 50.4) / 0.02).isCloseTo(6000, within(1e-6));
        double best = 0;
        double limited = 0;
        for (double ampere = 0; ampere < 4000; ampere += 0.5) {
            double power = 45 * ampere - 0.014 * ampere * ampere;
            best = Math.max(best, power);
            limited = ampere <= 130 ? Math.max(limited, power) : limited;
        }
        assertThat(FastEffects.mostBrakingW(45, 0.014, Double.POSITIVE_INFINITY))
                .isCloseTo(best, within(1e-2));
        assertThat(FastEffects.mostBrakingW(45, 0.014, 130)).isCloseTo(limited, within(1e-9));
    }
}
