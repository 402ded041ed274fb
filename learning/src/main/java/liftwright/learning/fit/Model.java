package liftwright.learning.fit;

import java.util.List;
import liftwright.plant.parameters.ParameterTable;

/**
 * A plant driven by one recording, as a fit sees it: what each channel would show, were the numbers
 * of the rig these. The measured values of the channels do not drive it.
 */
public interface Model {

    /** What is compared. */
    List<Compared> channels();

    /** The numbers and their declared doubt. */
    ParameterTable parameters();

    /** Scratch of its own for one thread. */
    Predictor predictor();

    /** Predicts, for one thread. */
    @FunctionalInterface
    interface Predictor {
        /**
         * @param p in: a vector of the table
         * @param out takes the block means of every channel, in their order
         * @return false where the plant has no operating point or ends too early; {@code out} then
         *     means nothing
         */
        boolean predict(double[] p, double[][] out);
    }
}
