package liftwright.plant;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.data.Percentage.withPercentage;

import java.util.Arrays;
import java.util.List;
import java.util.random.RandomGenerator;
import liftwright.physics.FastEffects;
import liftwright.testkit.Seeded;
import org.hipparchus.ode.ODEState;
import org.hipparchus.ode.OrdinaryDifferentialEquation;
import org.hipparchus.ode.nonstiff.DormandPrince853Integrator;
import org.junit.jupiter.api.Test;

/** Leads and capacitors of a feed as one series circuit. */
class LeadLoopTest {

    private static final double FARAD = 940e-6;

    /** Equal packs, each with a trunk to one bus; equal branches. */
    private static RigSketch feed(
            int packs, int fans, double trunkM, double branchM, double trunkOhm) {
        RigSketch sketch = new RigSketch();
        for (int k = 1; k <= packs; k++) {
            sketch.packs.add(RigSketch.pack("p", k, RigSketch.cellType("C80"), 14, 1));
            sketch.wire(
                    "p." + k,
                    "bus",
                    RigSketch.run("t" + k, 4, trunkM),
                    RigSketch.joint("tj" + k, trunkOhm));
        }
        for (int k = 1; k <= fans; k++) {
            branch(sketch, k, branchM);
        }
        return sketch;
    }

    private static void branch(RigSketch sketch, int number, double lengthM) {
        sketch.fans.add(RigSketch.fan("f", number, RigSketch.fanType("F")));
        sketch.wire("bus", "f." + number, RigSketch.run("b" + number, 10, lengthM));
    }

    @Test
    void aTrunkCountsOnceAndBranchesSideBySide() {
        Plant plant = Plant.assemble(feed(1, 4, 0.5, 0.8, 0.001).rig());
        List<LeadLoop> loops = plant.pluggedIn(plant.parameters().nominal());
        assertThat(loops).hasSize(1);
        LeadLoop loop = loops.getFirst();
        assertThat(loop.fans()).containsExactly(0, 1, 2, 3);
        assertThat(loop.lengthM()).isCloseTo(0.5 + 0.8 / 4, within(1e-12));
        assertThat(loop.capacitanceF()).isCloseTo(4 * FARAD, within(1e-12));
        assertThat(loop.sourceV()).isCloseTo(14 * 4.20, within(1e-9));
        assertThat(loop.currentA()).isZero();
    }

    @Test
    void packsOnOneBusAreOneCircuitWhenCutAndEachItsOwnWhenPluggedIn() {
        Plant plant = Plant.assemble(feed(3, 4, 0.6, 0.8, 0.001).rig());
        double[] p = plant.parameters().nominal();
        SteadyState state = plant.state();
        plant.solve(p, Effects.ALL, plant.workspace(), state);
        assertThat(plant.pluggedIn(p))
                .hasSize(3)
                .allSatisfy(loop -> assertThat(loop.lengthM()).isCloseTo(0.6 + 0.2, within(1e-9)));
        List<LeadLoop> cut = plant.cut(p, state);
        assertThat(cut).hasSize(1);
        assertThat(cut.getFirst().lengthM()).isCloseTo(0.6 / 3 + 0.2, within(1e-9));
        assertThat(cut.getFirst().currentA()).isCloseTo(3 * state.packA(1), within(1e-6));
    }

    /** Every ampere out of a pack, and the power behind it, is in one circuit of the cut. */
    @Test
    void nothingIsLostOrCountedTwiceOnAnyWiring() {
        int[] circuits = {0};
        Seeded.check(
                300,
                random -> {
                    Plant plant = Plant.assemble(RandomRigs.exact(random));
                    double[] p = plant.parameters().nominal();
                    SteadyState state = plant.state();
                    plant.solve(p, Effects.ALL.withCharge(false), plant.workspace(), state);
                    List<LeadLoop> loops = plant.cut(p, state);
                    double ampere = 0;
                    double watt = 0;
                    double scale = 1;
                    for (int pack = 0; pack < plant.rig().packs().size(); pack++) {
                        ampere += state.packA(pack);
                        watt += state.packA(pack) * state.packRestV(pack);
                        scale += Math.abs(state.packA(pack));
                    }
                    assertThat(loops.stream().mapToDouble(LeadLoop::currentA).sum())
                            .isCloseTo(ampere, within(1e-6 * scale));
                    assertThat(loops.stream().mapToDouble(l -> l.currentA() * l.sourceV()).sum())
                            .isCloseTo(watt, within(1e-4 * scale));
                    List<Integer> fans = loops.stream().flatMap(l -> l.fans().stream()).toList();
                    assertThat(fans).doesNotHaveDuplicates();
                    circuits[0] += loops.size();
                });
        assertThat(circuits[0]).isPositive();
    }

    /**
     * Referee: every branch with its own current and capacitor, the trunks' inductance between
     * them, integrated by an adaptive method of order 8 (Dormand–Prince 8(5,3)).
     */
    @Test
    void peaksAgreeWithEveryBranchRunInTime() {
        Seeded.check(
                200,
                random -> {
                    int packs = random.nextInt(1, 4);
                    int fans = random.nextInt(1, 6);
                    double[] branchM = new double[fans];
                    Arrays.fill(branchM, random.nextDouble(0.05, 1.5));
                    againstRun(random, packs, branchM, 1);
                });
    }

    /** Branches up to three times as long as others: single capacitors may ring a little higher. */
    @Test
    void unequalBranchesRingLittleHigher() {
        Seeded.check(
                200,
                random -> {
                    double[] branchM = new double[random.nextInt(2, 6)];
                    for (int k = 0; k < branchM.length; k++) {
                        branchM[k] = random.nextDouble(0.3, 0.9);
                    }
                    againstRun(random, random.nextInt(1, 3), branchM, 15);
                });
    }

    private static void againstRun(
            RandomGenerator random, int packs, double[] branchM, double percent) {
        int fans = branchM.length;
        double trunkM = random.nextDouble(0.05, 2);
        RigSketch sketch = feed(packs, 0, trunkM, 0, random.nextDouble(0, 0.01));
        for (int k = 0; k < fans; k++) {
            branch(sketch, k + 1, branchM[k]);
        }
        Plant plant = Plant.assemble(sketch.rig());
        double[] p = plant.parameters().nominal();
        SteadyState state = plant.state();
        plant.solve(p, Effects.ALL.withCharge(false), plant.workspace(), state);
        boolean plugIn = random.nextBoolean();
        // Cells at 285.15 K, B = 1000 K, and the interconnect of the sketch.
        double packOhm = 14 * 0.0009 * Math.exp(1000 * (1 / 285.15 - 1 / 298.15)) + 0.0015;
        int joined = plugIn ? 1 : packs;
        double trunkOhm = (packOhm + ohm(state, 0)) / joined;
        double[] branchOhm = new double[fans];
        double[] startA = new double[fans];
        double startV = 0;
        double source = 14 * 4.20;
        if (!plugIn) {
            for (int k = 0; k < fans; k++) {
                startA[k] = state.chainA(packs + k);
            }
        }
        double ampere = Arrays.stream(startA).sum();
        for (int k = 0; k < fans; k++) {
            branchOhm[k] = ohm(state, packs + k);
            startV += plugIn ? 0 : (source - ampere * trunkOhm - startA[k] * branchOhm[k]) / fans;
        }
        double expected =
                run(source, startV, startA, trunkOhm, branchOhm, 1e-6 * trunkM / joined, branchM);
        LeadLoop loop = plugIn ? plant.pluggedIn(p).getFirst() : plant.cut(p, state).getFirst();
        double henry = loop.lengthM() * FastEffects.HIGH_LEAD_HPM;
        double actual =
                plugIn
                        ? FastEffects.plugInPeakV(
                                loop.sourceV(), loop.resistanceOhm(), henry, loop.capacitanceF())
                        : FastEffects.cutPeakV(
                                loop.sourceV(),
                                loop.sourceV() - loop.currentA() * loop.resistanceOhm(),
                                loop.currentA(),
                                loop.resistanceOhm(),
                                henry,
                                loop.capacitanceF());
        assertThat(actual).isCloseTo(expected, withPercentage(percent));
    }

    private static double ohm(SteadyState state, int chain) {
        return state.chainLossW(chain) / (state.chainA(chain) * state.chainA(chain));
    }

    /** Highest voltage at any of the capacitors. */
    private static double run(
            double source,
            double startV,
            double[] startA,
            double trunkOhm,
            double[] branchOhm,
            double trunkH,
            double[] branchM) {
        int fans = branchM.length;
        double[] y = new double[2 * fans];
        for (int k = 0; k < fans; k++) {
            y[k] = startA[k];
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
                        // L_t S + l_k s_k = left_k and S = Σ s_k give the trunk's slope S first.
                        double over = 0;
                        double share = 1;
                        double[] left = new double[fans];
                        for (int k = 0; k < fans; k++) {
                            double branchH = 1e-6 * branchM[k];
                            left[k] =
                                    source - trunkOhm * trunkA - branchOhm[k] * y[k] - y[fans + k];
                            over += left[k] / branchH;
                            share += trunkH / branchH;
                        }
                        double trunkSlope = over / share;
                        double[] slope = new double[2 * fans];
                        for (int k = 0; k < fans; k++) {
                            slope[k] = (left[k] - trunkH * trunkSlope) / (1e-6 * branchM[k]);
                            slope[fans + k] = y[k] / FARAD;
                        }
                        return slope;
                    }
                };
        double[] peak = {Math.max(source, startV)};
        var integrator = new DormandPrince853Integrator(1e-12, 1e-3, 1e-8, 1e-8);
        integrator.addStepHandler(
                step -> {
                    double from = step.getPreviousState().getTime();
                    double to = step.getCurrentState().getTime();
                    for (int j = 0; j <= 20; j++) {
                        double[] at =
                                step.getInterpolatedState(from + (to - from) * j / 20)
                                        .getPrimaryState();
                        for (int k = 0; k < fans; k++) {
                            peak[0] = Math.max(peak[0], at[fans + k]);
                        }
                    }
                });
        double longest = Arrays.stream(branchM).max().orElseThrow();
        double period = 2 * Math.PI * Math.sqrt((trunkH + 1e-6 * longest) * fans * FARAD);
        integrator.integrate(circuit, new ODEState(0, y), 2 * period);
        return peak[0];
    }
}
