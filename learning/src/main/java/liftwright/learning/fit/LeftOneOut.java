package liftwright.learning.fit;

import java.util.List;
import java.util.Optional;

/**
 * A fit of several tests, with what each of some would show by what the others find.
 *
 * @param fitted of all
 * @param told tests that were left out, one after the other
 */
public record LeftOneOut(Fitted fitted, List<Told> told) {

    public LeftOneOut {
        told = List.copyOf(told);
    }

    /**
     * A test that was left out.
     *
     * @param test number of it, from 0
     * @param predicted block means of its channels; empty where the others do not settle without it
     */
    public record Told(int test, Optional<double[][]> predicted) {}
}
