package liftwright.plant;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.data.Percentage.withPercentage;

import liftwright.physics.FastEffects;
import liftwright.testkit.Seeded;
import org.hipparchus.ode.ODEState;
import org.hipparchus.ode.OrdinaryDifferentialEquation;
import org.hipparchus.ode.nonstiff.DormandPrince853Integrator;
import org.hipparchus.ode.sampling.ODEStateInterpolator;
import org.hipparchus.ode.sampling.ODEStepHandler;
import org.junit.jupiter.api.Test;

/** Leads and capacitors of a feed as one series circuit. */
class LeadLoopTest {

    private static final double FARAD = 940e-6;

    /** One pack, a trunk, equal branches. */
    private static RigSketch feed(int fans, double trunkM, double branchM, double trunkOhm) {
        RigSketch sketch = new RigSketch();
        sketch.packs.add(RigSketch.pack("p", 1, RigSketch.cellType("C80"), 14, 1));
        sketch.wire(
                "p.1", "bus", RigSketch.run("t", 4, trunkM), RigSketch.joint("tj", trunkOhm));
        for (int k = 1; k <= fans; k++) {
            sketch.fans.add(RigSketch.fan("f", k, RigSketch.fanType("F")));
            sketch.wire("bus", "f." + k, RigSketch.run("b" + k, 10, branchM));
        }
        return sketch;
    }

    @Test
    void aTrunkCountsOnceAndBranchesSideBySide() {
        Plant plant = Plant.assemble(feed(4, 0.5, 0.8, 0.001).rig());
        var loops = plant.leadLoops(plant.parameters().nominal());
        assertThat(loops).hasSize(1);
        LeadLoop loop = loops.getFirst();
        assertThat(loop.fans()).containsExactly(0, 1, 2, 3);
        assertThat(loop.lengthM()).isCloseTo(0.5 + 0.8 / 4, within(1e-12));
        assertThat(loop.capacitanceF()).isCloseTo(4 * FARAD, within(1e-12));
        assertThat(loop.sourceV()).isCloseTo(14 * 4.20, within(1e-9));
    }

    /**
     * Referee: every branch with its own current and capacitor, the trunk's inductance between them,
     * integrated by an adaptive method of order 8 (Dormand–Prince 8(5,3)).
     */
    @Test
    void peaksAgreeWithEveryBranchRunInTime() {
        Seeded.check(
                200,
                random -> {
                    int fans = random.nextInt(1, 6);
                    double trunkM = random.nextDouble(0.05, 2);
                    double branchM = random.nextDouble(0.05, 1.5);
                    Plant plant =
                            Plant.assemble(
                                    feed(fans, trunkM, branchM, random.nextDouble(0, 0.01)).rig());
                    double[] p = plant.parameters().nominal();
                    SteadyState state = plant.state();
                    plant.solve(p, Effects.ALL, plant.workspace(), state);
                    // Cells at 285.15 K, B = 1000 K, and the interconnect of the sketch.
                    double packOhm =
                            14 * 0.0009 * Math.exp(1000 * (1 / 285.15 - 1 / 298.15)) + 0.0015;
                    double trunkOhm = packOhm + ohm(state, 0);
                    double branchOhm = ohm(state, 1);
                    double ampere = random.nextInt(2) == 0 ? 0 : random.nextDouble(0, 500);
                    LeadLoop loop = plant.leadLoops(p).getFirst();
                    double perM = FastEffects.HIGH_LEAD_HPM;
                    double source = 14 * 4.20;
                    boolean plugIn = ampere == 0;
                    double start =
                            plugIn ? 0 : source - ampere * (trunkOhm + branchOhm / fans);
                    double expected =
                            run(
                                    fans,
                                    source,
                                    start,
                                    ampere / fans,
                                    trunkOhm,
                                    branchOhm,
                                    1e-6 * trunkM,
                                    1e-6 * branchM);
                    double actual =
                            plugIn
                                    ? FastEffects.plugInPeakV(
                                            loop.sourceV(),
                                            loop.resistanceOhm(),
                                            loop.lengthM() * perM,
                                            loop.capacitanceF())
                                    : FastEffects.cutPeakV(
                                            loop.sourceV(),
                                            start,
                                            ampere,
                                            loop.resistanceOhm(),
                                            loop.lengthM() * perM,
                                            loop.capacitanceF());
                    assertThat(actual).isCloseTo(expected, withPercentage(1));
                });
    }

    private static double ohm(SteadyState state, int chain) {
        return state.chainLossW(chain) / (state.chainA(chain) * state.chainA(chain));
    }

    private static double run(
            int fans,
            double source,
            double startV,
            double startA,
            double trunkOhm,
            double branchOhm,
            double trunkH,
            double branchH) {
        double[] y = new double[2 * fans];
        for (int k = 0; k < fans; k++) {
            y[k] = startA;
            y[fans + k] = startV;
        }
        OrdinaryDifferentialEquation circuit =
                new OrdinaryDifferentialEquation() {
                    @Override
                    public int getDimension() {
                        return 2 * fans;
                    }

                    @Override
                    public double[] computeDerivatives(double t, double[] y) {
                        double trunkA = 0;
                        for (int k = 0; k < fans; k++) {
                            trunkA += y[k];
                        }
                        double[] left = new double[fans];
                        double sum = 0;
                        for (int k = 0; k < fans; k++) {
                            left[k] = source - trunkOhm * trunkA - branchOhm * y[k] - y[fans + k];
                            sum += left[k];
                        }
                        double trunkSlope = sum / (fans * trunkH + branchH);
                        double[] slope = new double[2 * fans];
                        for (int k = 0; k < fans; k++) {
                            slope[k] = (left[k] - trunkH * trunkSlope) / branchH;
                            slope[fans + k] = y[k] / FARAD;
                        }
                        return slope;
                    }
                };
        double[] peak = {Math.max(source, startV)};
        DormandPrince853Integrator integrator =
                new DormandPrince853Integrator(1e-12, 1e-3, 1e-8, 1e-8);
        integrator.addStepHandler(
                new ODEStepHandler() {
                    @Override
                    public void handleStep(ODEStateInterpolator step) {
                        double from = step.getPreviousState().getTime();
                        double to = step.getCurrentState().getTime();
                        for (int k = 0; k <= 20; k++) {
                            double[] at =
                                    step.getInterpolatedState(from + (to - from) * k / 20)
                                            .getPrimaryState();
                            peak[0] = Math.max(peak[0], at[fans]);
                        }
                    }
                });
        double period =
                2 * Math.PI * Math.sqrt((trunkH + branchH / fans) * fans * FARAD);
        integrator.integrate(circuit, new ODEState(0, y), 2 * period);
        return peak[0];
    }
}
