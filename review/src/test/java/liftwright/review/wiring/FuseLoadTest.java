package liftwright.review.wiring;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import liftwright.physics.FuseCurve;
import liftwright.plant.Plant;
import liftwright.rig.Rig;
import liftwright.testkit.Seeded;
import org.junit.jupiter.api.Test;

/** Heat that a fuse carries from one current to the next. */
class FuseLoadTest {

    /** dθ/dt = (g − θ)/τ in small steps, the greatest θ on the way. */
    @Test
    void theStateIsThatOfSmallSteps() {
        Seeded.check(
                100,
                random -> {
                    double tau = random.nextDouble(2, 80);
                    var curve =
                            new FuseCurve(
                                    new double[] {60, 90, 180}, new double[] {500, 20, 1}, tau);
                    List<FuseLoad.Step> steps = new ArrayList<>();
                    double theta = 0;
                    double most = 0;
                    for (int k = random.nextInt(1, 6); k > 0; k--) {
                        double ampere = random.nextDouble(0, 120);
                        double forS = random.nextDouble(0.1, 60);
                        steps.add(new FuseLoad.Step(ampere, forS));
                        double g = curve.gain(ampere);
                        double h = forS / 20_000;
                        for (int n = 0; n < 20_000; n++) {
                            theta += h * (g - theta) / tau;
                            most = Math.max(most, theta);
                        }
                    }
                    assertThat(new FuseLoad(steps).greatestState(curve))
                            .isCloseTo(most, within(2e-3 * Math.max(1, most)));
                });
    }

    /** Half loaded for an hour, a burst opens it sooner than from cold: it comes nearer to 1. */
    @Test
    void heatOfTheHoverIsStillInItWhenTheBurstComes() {
        var curve = new FuseCurve(new double[] {60, 90, 180}, new double[] {500, 20, 1}, 40);
        double cold = new FuseLoad(List.of(new FuseLoad.Step(80, 10))).greatestState(curve);
        double warm =
                new FuseLoad(List.of(new FuseLoad.Step(40, 3600), new FuseLoad.Step(80, 10)))
                        .greatestState(curve);
        double left = curve.gain(40) * Math.exp(-10 / 40.0);
        assertThat(warm).isCloseTo(cold + left, within(1e-9)).isGreaterThan(1.1 * cold);
    }

    @Test
    void everyRunAndItsBurstIsAskedFor() {
        Rig rig = Sketch.example("mudlark");
        assertThat(Plant.assemble(rig).rig()).isSameAs(rig);
        FuseLoad load = FuseLoad.of(rig, 50, 100);
        assertThat(load.mostA()).isEqualTo(100);
        assertThat(load.steps()).hasSize(3 * rig.demands().runs() - 1);
    }
}
