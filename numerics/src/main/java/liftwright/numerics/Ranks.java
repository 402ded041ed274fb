package liftwright.numerics;

import java.util.Arrays;
import java.util.Comparator;

/** Order of numbers. */
final class Ranks {

    private Ranks() {}

    /** Places of the numbers, least first; equal ones in the order of their places. */
    static int[] order(double[] values) {
        Integer[] places = new Integer[values.length];
        Arrays.setAll(places, i -> i);
        Arrays.sort(places, Comparator.comparingDouble(i -> values[i]));
        return Arrays.stream(places).mapToInt(Integer::intValue).toArray();
    }
}
