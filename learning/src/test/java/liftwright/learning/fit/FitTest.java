package liftwright.learning.fit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import liftwright.numerics.Work;
import liftwright.plant.recording.Signal;
import org.junit.jupiter.api.Test;

/** Fits plants of a formula whose truth is drawn, with drifts and wild samples that it lacks. */
class FitTest {

    private static final int LOGS = 60;

    private static Optional<Estimate> of(Fitted fitted, String row) {
        return fitted.estimates().stream().filter(one -> one.row().equals(row)).findFirst();
    }

    @Test
    void ninetyInAHundredIntervalsHoldTheTruth() {
        int held = 0;
        int all = 0;
        int converged = 0;
        for (int seed = 0; seed < LOGS; seed++) {
            CurveModel model = new CurveModel(seed, 40, 1);
            Fitted fitted = Fit.of(List.of(model), 1, Work.quiet());
            converged += fitted.converged() ? 1 : 0;
            for (int k = 0; k < 5; k++) {
                Optional<Estimate> found = of(fitted, "thing/n" + k);
                if (found.isPresent()) {
                    all++;
                    double truth = model.truth[k];
                    held +=
                            truth >= found.get().at(-1.645) && truth <= found.get().at(1.645)
                                    ? 1
                                    : 0;
                }
            }
        }
        assertThat(all).isGreaterThan(4 * LOGS);
        assertThat((double) held / all).as(held + " of " + all).isBetween(0.84, 0.96);
        assertThat(converged).isGreaterThanOrEqualTo(LOGS - 2);
    }

    /** Without a discrepancy term the same intervals would hold far fewer. */
    @Test
    void driftsThatAreTwiceTheUsualAreSeen() {
        double larger = 0;
        for (int seed = 100; seed < 120; seed++) {
            Fitted usual = Fit.of(List.of(new CurveModel(seed, 40, 1)), 1, Work.quiet());
            Fitted twice = Fit.of(List.of(new CurveModel(seed, 40, 2.5)), 1, Work.quiet());
            for (int c = 0; c < 3; c++) {
                larger += twice.residuals().get(c).leftOut() / usual.residuals().get(c).leftOut();
            }
        }
        assertThat(larger / 60).isGreaterThan(1.3);
    }

    @Test
    void twoTestsTellMoreThanOne() {
        CurveModel one = new CurveModel(7, 40, 1);
        Fitted alone = Fit.of(List.of(one), 1, Work.quiet());
        Fitted twice = Fit.of(List.of(one, new CurveModel(7, 40, 1)), 1, Work.quiet());
        assertThat(of(twice, "thing/n3").orElseThrow().deviation())
                .isLessThan(0.95 * of(alone, "thing/n3").orElseThrow().deviation());
    }

    /** Gain of thrust and of current only count times what both share. */
    @Test
    void whatTheTestDoesNotTellIsNamed() {
        Fitted fitted = Fit.of(List.of(new CurveModel(3, 40, 1)), 1, Work.quiet());
        assertThat(fitted.untold()).isNotEmpty();
        assertThat(fitted.untold().getFirst().leftOpen()).isGreaterThan(Fit.OPEN);
        assertThat(fitted.untold().getFirst().rows()).contains("thing/n2");
        assertThat(fitted.untold().getFirst().words()).contains(" against ");
        // What no reading depends on is no estimate at all.
        assertThat(of(fitted, "thing/n5")).isEmpty();
    }

    @Test
    void aRunThatWasNotFittedIsPredictedBetter() {
        double before = 0;
        double after = 0;
        for (int seed = 40; seed < 52; seed++) {
            CurveModel model = new CurveModel(seed, 40, 0.5);
            Fitted fitted = Fit.of(List.of(model), 1, Work.quiet());
            double[] p = CurveModel.NOMINAL.clone();
            for (int k = 0; k < p.length; k++) {
                Optional<Estimate> found = of(fitted, "thing/n" + k);
                if (found.isPresent()) {
                    p[k] = found.get().si();
                }
            }
            double[] times = {3, 20, 45, 90, 150};
            double[][] truth = new double[3][times.length];
            double[][] declared = new double[3][times.length];
            double[][] now = new double[3][times.length];
            CurveModel.shape(model.truth, times, truth);
            CurveModel.shape(CurveModel.NOMINAL, times, declared);
            CurveModel.shape(p, times, now);
            for (int c = 0; c < 3; c++) {
                for (int k = 0; k < times.length; k++) {
                    before += Math.pow((declared[c][k] - truth[c][k]) / truth[c][k], 2);
                    after += Math.pow((now[c][k] - truth[c][k]) / truth[c][k], 2);
                }
            }
        }
        assertThat(Math.sqrt(after / before)).isLessThan(0.5);
    }

    @Test
    void aPlantThatFlatlyDisobeysIsNotCalledConverged() {
        CurveModel model = new CurveModel(5, 30, 1);
        Model wild =
                new Model() {
                    @Override
                    public List<Compared> channels() {
                        return model.channels();
                    }

                    @Override
                    public liftwright.plant.parameters.ParameterTable parameters() {
                        return model.parameters();
                    }

                    // Its rows jump about as the first number moves: there is no least to find.
                    @Override
                    public Predictor predictor() {
                        return (p, out) -> {
                            CurveModel.shape(p, model.channels().getFirst().timesS(), out);
                            double jump = Math.sin(1e4 * p[0]) + Math.sin(7e3 * p[3]);
                            for (double[] channel : out) {
                                for (int k = 0; k < channel.length; k++) {
                                    channel[k] *= 1 + 0.2 * jump;
                                }
                            }
                            return true;
                        };
                    }
                };
        assertThat(Fit.of(List.of(wild), 1, Work.quiet()).converged()).isFalse();
    }

    @Test
    void noChannelIsRefused() {
        assertThatThrownBy(() -> Fit.of(List.of(), 1, Work.quiet()))
                .isInstanceOf(IllegalArgumentException.class);
    }

    private static Compared warming(double lastS, double timeS) {
        int n = 40;
        double[] times = new double[n];
        double[] kelvin = new double[n];
        double[] noise = new double[n];
        for (int k = 0; k < n; k++) {
            times[k] = lastS * (k + 0.5) / n;
            kelvin[k] = 293 + 40 * (1 - Math.exp(-times[k] / timeS)) + 0.1 * Math.sin(5 * k);
        }
        return new Compared(Signal.TEMPERATURE, "wire", times, kelvin, noise, 1, 0, 0.25, 1.5, 293);
    }

    /** A run of half a time constant fits any end; one of four tells it. */
    @Test
    void aRiseThatGoesOnTellsNoEnd() {
        assertThat(Settling.note(warming(300, 600)))
                .hasValueSatisfying(
                        note -> assertThat(note).contains("wire").contains("had not settled"));
        assertThat(Settling.note(warming(60, 600))).isPresent();
        assertThat(Settling.note(warming(2400, 600))).isEmpty();
    }

    @Test
    void estimatesGiveValuesAndWhatIsLeftOpen() {
        Estimate one =
                new Estimate(
                        "a",
                        "b",
                        liftwright.quantity.Dimension.NONE,
                        2,
                        true,
                        Math.log(2.2),
                        0.01,
                        0.05);
        assertThat(one.si()).isCloseTo(2.2, within(1e-12));
        assertThat(one.leftOpen()).isCloseTo(0.2, within(1e-12));
        assertThat(one.moved()).isCloseTo(Math.log(1.1) / 0.05, within(1e-12));
    }
}
