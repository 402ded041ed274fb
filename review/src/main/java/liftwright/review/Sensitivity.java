package liftwright.review;

import java.util.List;
import java.util.Optional;
import liftwright.rig.RigPath;

/**
 * What one declared value does to the judged number.
 *
 * @param at where it is declared
 * @param label what it is, in words
 * @param moves change of the judged number when the value goes from what is declared to the upper
 *     end of its 95 % band, by central difference over the band; of n parts with an error each,
 *     divided by √n
 * @param varianceShare share of the variance of the judged number that is due to it alone, from the
 *     draws; scatters about nought where it does nothing; empty where nothing varies
 * @param shareError standard error of that share
 * @param stops values over its band as they would stand in the file, equal steps from its lower end
 *     over what is declared, in the middle, to its upper end; empty where none can be set
 */
public record Sensitivity(
        RigPath at,
        String label,
        double moves,
        Optional<Double> varianceShare,
        double shareError,
        List<String> stops) {
    public Sensitivity {
        stops = List.copyOf(stops);
    }
}
