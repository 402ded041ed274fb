package liftwright.plant.heat;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.random.RandomGenerator;
import liftwright.plant.Discharge;
import liftwright.plant.Order;
import liftwright.plant.Plant;
import liftwright.plant.supply.CellDraw;
import liftwright.rig.Rig;
import liftwright.testkit.Seeded;
import org.junit.jupiter.api.Test;

/**
 * The stepper of charge and heat converges to the reference at its order, two, on whole rigs: with
 * ever smaller errors allowed in a step, temperatures draw nearer as the square of the number of
 * steps.
 */
class HeatedStepOrderTest {

    private static final double[] ALLOWED = {1, 0.1, 0.01};

    @Test
    void temperaturesConvergeAtOrderTwo() {
        List<Double> orders = new ArrayList<>();
        Seeded.check(8, random -> observe(random, orders));
        Collections.sort(orders);
        if (orders.size() > 4) {
            assertThat(orders.get(orders.size() / 2)).as(orders.toString()).isBetween(1.6, 2.8);
        }
    }

    private static void observe(RandomGenerator random, List<Double> orders) {
        Rig rig = HeatedRigs.random(random);
        Plant plant = Plant.assembleHeated(rig);
        HeatedRigRun reference = new HeatedRigRun(rig, plant.heatParts(), RefereeGrid.SAME);
        reference.throttle(0.5);
        reference.go(20);
        double[] error = new double[ALLOWED.length];
        int[] steps = new int[ALLOWED.length];
        for (int k = 0; k < ALLOWED.length; k++) {
            int of = k;
            Discharge run = plant.discharge();
            run.load(plant.parameters().nominal(), new CellDraw.Expected());
            run.allowError(ALLOWED[k]);
            run.start();
            run.follow(new Order.Throttle(0.5), 20, at -> steps[of]++);
            assertThat(run.failed()).isFalse();
            for (int part = 0; part < plant.heatParts().size(); part++) {
                if (run.opened(part)) {
                    return; // an event has an error of its own
                }
                double miss = run.nowK(part) - reference.nowK(part);
                error[k] += miss * miss;
            }
            error[k] = Math.sqrt(error[k] / plant.heatParts().size());
        }
        assertThat(error[2]).isLessThan(error[0]);
        orders.add(Math.log(error[0] / error[1]) / Math.log((double) steps[1] / steps[0]));
    }
}
