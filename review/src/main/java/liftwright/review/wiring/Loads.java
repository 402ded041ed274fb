package liftwright.review.wiring;

import java.util.Arrays;
import liftwright.plant.Discharge;
import liftwright.plant.Effects;
import liftwright.plant.Order;
import liftwright.plant.Plant;
import liftwright.plant.SteadyState;

/**
 * What every chain carries, in the order of the wiring's chains.
 *
 * @param expectedA greatest current in the hover that is asked for, from the declared charge, A
 * @param worstA greatest of that and of full throttle, on full packs and at the charge that lift is
 *     judged at, A
 */
@SuppressWarnings("ArrayRecordComponent") // read, never compared
public record Loads(double[] expectedA, double[] worstA) {

    public Loads {
        if (expectedA.length != worstA.length) {
            throw new IllegalArgumentException("every chain has both currents");
        }
    }

    /** At the declared values. A rig that cannot hover carries what full throttle draws. */
    public static Loads of(Plant plant) {
        int chains = plant.rig().wiring().chains().size();
        double[] expected = new double[chains];
        double[] p = plant.parameters().nominal();
        Discharge run = plant.discharge();
        run.load(p, plant.cells());
        run.start();
        run.follow(
                new Order.Lift(plant.weightN(p)),
                plant.rig().demands().hover().si(),
                at -> {
                    for (int chain = 0; chain < chains; chain++) {
                        expected[chain] =
                                Math.max(expected[chain], Math.abs(at.network().chainA(chain)));
                    }
                });
        double[] worst = expected.clone();
        for (boolean charge : new boolean[] {true, false}) {
            SteadyState full = plant.state();
            plant.solve(p, Effects.ALL.withCharge(charge), plant.workspace(), full);
            if (!full.converged()) {
                continue; // the question itself says that it did not
            }
            for (int chain = 0; chain < chains; chain++) {
                worst[chain] = Math.max(worst[chain], Math.abs(full.chainA(chain)));
            }
        }
        if (Arrays.stream(expected).allMatch(ampere -> ampere == 0)) {
            System.arraycopy(worst, 0, expected, 0, chains);
        }
        return new Loads(expected, worst);
    }
}
