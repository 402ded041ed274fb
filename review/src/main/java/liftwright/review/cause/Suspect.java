package liftwright.review.cause;

import java.util.List;
import java.util.function.Function;

/**
 * One thing that may be at fault, with what it is thought to be before anything was measured.
 *
 * @param blame its kind
 * @param place which fan, mount or joint; empty where there is only one
 * @param fans concerned, in the order of the rig's
 * @param weight of this place and octave of sizes among those of its kind; they sum to 1
 * @param expected size of the fault, one or several numbers
 * @param doubt standard deviations of these
 * @param fault the fault of a size
 * @param words a size and its doubt (k = 2) in words
 */
record Suspect(
        Blame blame,
        String place,
        List<Integer> fans,
        double weight,
        List<Double> expected,
        List<Double> doubt,
        Function<double[], Fault> fault,
        Sizing words) {

    /** Tells a size. */
    interface Sizing {
        String of(double[] size, double[] doubt);
    }

    Suspect {
        fans = List.copyOf(fans);
        expected = List.copyOf(expected);
        doubt = List.copyOf(doubt);
    }

    double[] mean() {
        return expected.stream().mapToDouble(Double::doubleValue).toArray();
    }
}
