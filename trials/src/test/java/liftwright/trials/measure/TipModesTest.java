package liftwright.trials.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.Optional;
import java.util.random.RandomGenerator;
import liftwright.plant.body.Beams;
import liftwright.plant.body.Inertia;
import liftwright.quantity.Dimension;
import liftwright.quantity.Quantity;
import liftwright.rig.Mount;
import liftwright.rig.Vec3;
import liftwright.testkit.Seeded;
import org.hipparchus.linear.EigenDecompositionNonSymmetric;
import org.hipparchus.linear.LUDecomposition;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.RealMatrix;
import org.junit.jupiter.api.Test;

/** Modes of a stiff body at the tip of a beam, against stiffness matrices and closed forms. */
class TipModesTest {

    private static final Quantity NONE = Quantity.exact(0, Dimension.NONE);

    private static Beams.Standing beam(
            Vec3 tip, Vec3 along, double length, double bending, double torsion) {
        Mount mount =
                new Mount("m", Mount.Carrier.FRAME, Vec3.ZERO, NONE, NONE, NONE, Optional.empty());
        return new Beams.Standing(mount, tip, along, length, bending, torsion);
    }

    private static Vec3 unit(RandomGenerator random) {
        Vec3 v = new Vec3(random.nextGaussian(), random.nextGaussian(), random.nextGaussian());
        return v.times(1 / v.length());
    }

    @Test
    void aWeightAtTheTipSwingsAsTextbooksSay() {
        // f = √(3 E I/(m l³))/2π, [TIMOSHENKO]; a point bends two ways alike and twists not at all.
        double[] modes =
                TipModes.radps(
                        beam(new Vec3(0.1, 0.2, 0.3), new Vec3(0, 1, 0), 0.5, 300, 200),
                        2,
                        new Vec3(0.1, 0.2, 0.3),
                        Inertia.ZERO);
        assertThat(modes).hasSize(2);
        double expected = Math.sqrt(3 * 300 / (2 * 0.125));
        assertThat(modes[0]).isCloseTo(expected, within(1e-9 * expected));
        assertThat(modes[1]).isCloseTo(expected, within(1e-9 * expected));
    }

    @Test
    void aWheelAtTheTipTwistsAsTextbooksSay() {
        // ω = √(G J/(l I)), the wheel centred on the beam.
        double[] modes =
                TipModes.radps(
                        beam(Vec3.ZERO, new Vec3(1, 0, 0), 0.4, 5000, 12),
                        1,
                        Vec3.ZERO,
                        new Inertia(0.02, 1e-9, 1e-9, 0, 0, 0));
        double expected = Math.sqrt(12 / (0.4 * 0.02));
        assertThat(modes[0]).isCloseTo(expected, within(1e-9 * expected));
    }

    @Test
    void agreesWithStiffnessAndAnotherSolver() {
        Seeded.check(
                200,
                random -> {
                    double l = 0.2 + random.nextDouble();
                    double ei = 50 + 2000 * random.nextDouble();
                    double gj = 20 + 1000 * random.nextDouble();
                    double kg = 0.5 + 10 * random.nextDouble();
                    Vec3 along = unit(random);
                    Vec3 tip = unit(random).times(0.4);
                    Vec3 offset = unit(random).times(0.3 * random.nextDouble());
                    // Inertia of four points about their centre: always one that can be.
                    Vec3[] points = new Vec3[4];
                    Vec3 middle = Vec3.ZERO;
                    for (int k = 0; k < 4; k++) {
                        points[k] = unit(random).times(0.2 * random.nextDouble());
                        middle = middle.plus(points[k].times(0.25));
                    }
                    Inertia inertia = Inertia.ZERO;
                    for (int k = 0; k < 4; k++) {
                        points[k] = points[k].minus(middle);
                        inertia = inertia.plus(Bodies.point(kg / 4, points[k]));
                    }
                    double[] modes =
                            TipModes.radps(
                                    beam(tip, along, l, ei, gj), kg, tip.plus(offset), inertia);
                    double[] referee = referee(along, l, ei, gj, kg, offset, points);
                    assertThat(modes).hasSize(5);
                    for (int k = 0; k < 5; k++) {
                        assertThat(modes[k]).isCloseTo(referee[k], within(1e-8 * referee[k]));
                    }
                });
    }

    /** Kinetic energy of four points by finite turns, the usual stiffness matrix, M⁻¹ K. */
    private static double[] referee(
            Vec3 along, double l, double ei, double gj, double kg, Vec3 offset, Vec3[] points) {
        Vec3 helper = Math.abs(along.z()) < 0.8 ? new Vec3(0, 0, 1) : new Vec3(1, 0, 0);
        Vec3 y = helper.cross(along);
        y = y.times(1 / y.length());
        Vec3 z = along.cross(y);
        Vec3[] turn = {along, y, z};
        RealMatrix mass = MatrixUtils.createRealMatrix(5, 5);
        for (Vec3 point : points) {
            Vec3 r = offset.plus(point);
            // Velocity of this point for a unit rate of each coordinate.
            Vec3[] rate = {y, z, turn[0].cross(r), turn[1].cross(r), turn[2].cross(r)};
            for (int i = 0; i < 5; i++) {
                for (int j = 0; j < 5; j++) {
                    mass.addToEntry(i, j, kg / 4 * MassAndCentreTest.dot(rate[i], rate[j]));
                }
            }
        }
        double[][] k = new double[5][5];
        k[0][0] = 12 * ei / (l * l * l);
        k[1][1] = k[0][0];
        k[0][4] = -6 * ei / (l * l);
        k[4][0] = k[0][4];
        k[1][3] = 6 * ei / (l * l);
        k[3][1] = k[1][3];
        k[3][3] = 4 * ei / l;
        k[4][4] = 4 * ei / l;
        k[2][2] = gj / l;
        RealMatrix product =
                new LUDecomposition(mass).getSolver().solve(MatrixUtils.createRealMatrix(k));
        double[] square =
                Arrays.stream(new EigenDecompositionNonSymmetric(product).getEigenvalues())
                        .mapToDouble(value -> value.getReal())
                        .toArray();
        Arrays.sort(square);
        return Arrays.stream(square).map(Math::sqrt).toArray();
    }
}
