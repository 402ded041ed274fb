package liftwright.flight.run;

import java.util.Arrays;
import java.util.BitSet;
import java.util.List;
import liftwright.flight.loops.Craft;
import liftwright.flight.loops.Lifter;
import liftwright.flight.loops.Standing;
import liftwright.flight.loops.Wanted;
import liftwright.flight.motion.BodyState;

/**
 * A crew of the tests' own that knows the truth: proportional and differential, and a share-out by
 * the normal equations. It shares nothing with the loops but the set point.
 */
final class PlainCrew implements Crew {

    private final Craft craft;
    private final double rateGain;

    /**
     * @param rateGain angular acceleration over rate error, 1/s
     */
    PlainCrew(Craft craft, double rateGain) {
        this.craft = craft;
        this.rateGain = rateGain;
    }

    @Override
    public Steersman steersman() {
        return new Plain();
    }

    @Override
    public Lookout lookout(FlightCase flight, double tickS) {
        return new Truth();
    }

    private static final class Truth implements Lookout {
        private final double[] now = new double[BodyState.OWN];

        @Override
        public void begin(BodyState state, double[] specificForceMps2) {
            System.arraycopy(state.y, 0, now, 0, now.length);
        }

        @Override
        public void look(
                long tick, BodyState state, double[] specificForceMps2, double[] rotorRadps) {
            System.arraycopy(state.y, 0, now, 0, now.length);
        }

        @Override
        public void felt(double[] out) {
            System.arraycopy(now, 0, out, 0, out.length);
        }

        @Override
        public void lose(String sensor) {}
    }

    private final class Plain implements Steersman {

        private final int fans = craft.fans().size();
        private final boolean[] dead = new boolean[fans];
        private final double[][] share = new double[fans][4];
        private final double[] want = new double[4];
        private double upIntegral;
        private double xIntegral;
        private double yIntegral;

        @Override
        public void begin() {
            forget();
            solve();
        }

        @Override
        public void pushesOn(int fan, double thrustN) {}

        @Override
        public void lost(BitSet lost) {
            for (int f = 0; f < fans; f++) {
                dead[f] = lost.get(f);
            }
            solve();
        }

        private void forget() {
            upIntegral = 0;
            xIntegral = 0;
            yIntegral = 0;
        }

        /** Columns of Bᵀ (B Bᵀ)⁻¹: the least sum of squares of thrusts. */
        private void solve() {
            double[][] b = new double[4][fans];
            List<Lifter> all = craft.fans();
            for (int f = 0; f < fans; f++) {
                if (!dead[f]) {
                    b[0][f] = -all.get(f).force().z();
                    b[1][f] = all.get(f).moment().x();
                    b[2][f] = all.get(f).moment().y();
                    b[3][f] = all.get(f).moment().z();
                }
            }
            double[][] inverse = inverse(b);
            for (int f = 0; f < fans; f++) {
                for (int j = 0; j < 4; j++) {
                    share[f][j] = 0;
                    for (int i = 0; i < 4; i++) {
                        share[f][j] += b[i][f] * inverse[i][j];
                    }
                }
            }
        }

        private double[][] inverse(double[][] b) {
            double[][] m = new double[4][4];
            for (int i = 0; i < 4; i++) {
                for (int j = 0; j < 4; j++) {
                    for (int f = 0; f < fans; f++) {
                        m[i][j] += b[i][f] * b[j][f];
                    }
                }
                m[i][i] += 1e-9;
            }
            double[][] inverse = new double[4][4];
            for (int i = 0; i < 4; i++) {
                inverse[i][i] = 1;
            }
            for (int i = 0; i < 4; i++) {
                double pivot = m[i][i];
                for (int j = 0; j < 4; j++) {
                    m[i][j] /= pivot;
                    inverse[i][j] /= pivot;
                }
                for (int k = 0; k < 4; k++) {
                    double by = k == i ? 0 : m[k][i];
                    for (int j = 0; j < 4; j++) {
                        m[k][j] -= by * m[i][j];
                        inverse[k][j] -= by * inverse[i][j];
                    }
                }
            }
            return inverse;
        }

        @Override
        public void steer(
                double dtS,
                double[] y,
                Standing standing,
                Wanted wanted,
                double[] fanV,
                double[] duty) {
            if (wanted.kind() == Wanted.Kind.IDLE) {
                Arrays.fill(duty, 0);
                forget();
                return;
            }
            ask(dtS, y, standing, wanted);
            for (int f = 0; f < fans; f++) {
                double thrust = 0;
                for (int i = 0; i < 4; i++) {
                    thrust += share[f][i] * want[i];
                }
                double volt = craft.fans().get(f).volts().at(thrust);
                duty[f] = dead[f] || fanV[f] <= 0 ? 0 : Math.clamp(volt / fanV[f], 0.02, 1);
            }
        }

        private void ask(double dtS, double[] y, Standing standing, Wanted wanted) {
            double attitude = rateGain / 3;
            double across = attitude / 4;
            double live = standing == Standing.FREE ? dtS : 0;
            double offX = Math.clamp(across / 2 * (wanted.x() - y[0]), -2, 2) - y[3];
            double offY = Math.clamp(across / 2 * (wanted.y() - y[1]), -2, 2) - y[4];
            xIntegral += across * across / 4 * offX * live;
            yIntegral += across * across / 4 * offY * live;
            double ax = across * offX + xIntegral;
            double ay = across * offY + yIntegral;
            double off = wanted.up() + y[2];
            upIntegral += 0.5 * off * live;
            double up = 9.80665 + 3 * (Math.clamp(1.5 * off, -1.5, 1.5) + y[5]) + upIntegral;
            double w = y[6];
            double roll =
                    Math.atan2(2 * (w * y[7] + y[8] * y[9]), 1 - 2 * (y[7] * y[7] + y[8] * y[8]));
            double pitch = Math.asin(Math.clamp(2 * (w * y[8] - y[9] * y[7]), -1, 1));
            double yaw =
                    Math.atan2(2 * (w * y[9] + y[7] * y[8]), 1 - 2 * (y[8] * y[8] + y[9] * y[9]));
            double cos = Math.cos(yaw);
            double sin = Math.sin(yaw);
            double wantPitch = Math.clamp(-(cos * ax + sin * ay) / 9.8, -0.25, 0.25);
            double wantRoll = Math.clamp((-sin * ax + cos * ay) / 9.8, -0.25, 0.25);
            double turn = Math.IEEEremainder(wanted.headingRad() - yaw, 2 * Math.PI);
            want[0] = craft.massKg() * up / Math.max(0.7, Math.cos(roll) * Math.cos(pitch));
            want[1] = craft.inertia().xx() * rateGain * (attitude * (wantRoll - roll) - y[10]);
            want[2] = craft.inertia().yy() * rateGain * (attitude * (wantPitch - pitch) - y[11]);
            want[3] = craft.inertia().zz() * rateGain / 4 * (attitude / 6 * turn - y[12]);
        }
    }
}
