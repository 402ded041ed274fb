package liftwright.review.compare;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import liftwright.answer.Answer;
import liftwright.answer.Value;
import liftwright.answer.Value.Figure;
import liftwright.numerics.Draws;
import liftwright.numerics.Work;
import liftwright.quantity.Band;
import liftwright.review.Bands;
import liftwright.review.Settings;
import org.jspecify.annotations.Nullable;

/**
 * The differences of all figures of two answers, draw by draw: what both rigs share is the same in
 * both and cancels.
 */
final class Paired {

    private final Map<Place, double[]> byPlace = new HashMap<>();
    private final boolean[] computed;

    private Paired(List<Place> places, int draws) {
        places.forEach(place -> byPlace.put(place, nothing(draws)));
        computed = new boolean[draws];
    }

    private static double[] nothing(int draws) {
        double[] none = new double[draws];
        Arrays.fill(none, Double.NaN); // "not there in this draw", and never shown
        return none;
    }

    /**
     * @param places figures to be told of
     * @return empty when stopped
     */
    static Optional<Paired> of(Put put, List<Place> places, Settings settings, Work work) {
        var paired = new Paired(places, put.figureDraws());
        work.stage(put.question() + " compared", put.figureDraws());
        int done =
                Draws.forEach(
                        work,
                        settings.threads(),
                        put.figureDraws(),
                        () -> 0,
                        (_, draw) -> paired.draw(put, draw));
        return done < put.figureDraws() ? Optional.empty() : Optional.of(paired);
    }

    private void draw(Put put, int draw) {
        Optional<? extends Answer> before = put.before().drawn(draw);
        Optional<? extends Answer> after =
                before.isEmpty() ? Optional.empty() : put.after().drawn(draw);
        if (before.isEmpty() || after.isEmpty()) {
            return;
        }
        computed[draw] = true;
        Map<Place, Value> was = Figures.of(before.get());
        Map<Place, Value> is = Figures.of(after.get());
        byPlace.forEach(
                (place, differences) -> {
                    if (amount(was.get(place)) instanceof Figure.Amount(double from, var _)
                            && amount(is.get(place)) instanceof Figure.Amount(double to, var _)) {
                        differences[draw] = to - from;
                    }
                });
    }

    private static Figure amount(@Nullable Value value) {
        return value == null ? new Figure.Never() : value.figure();
    }

    /** Draws in which both rigs could be computed. */
    int draws() {
        int draws = 0;
        for (boolean one : computed) {
            draws += one ? 1 : 0;
        }
        return draws;
    }

    /** Of the difference; empty where some draw that could be computed lacks the figure. */
    Optional<Band> band(Place place) {
        double[] all = byPlace.get(place);
        if (all == null) {
            return Optional.empty();
        }
        List<Double> there = new ArrayList<>();
        for (int draw = 0; draw < all.length; draw++) {
            if (computed[draw]) {
                if (Double.isNaN(all[draw])) {
                    return Optional.empty();
                }
                there.add(all[draw]);
            }
        }
        return there.size() < LEAST_DRAWS
                ? Optional.empty()
                : Optional.of(Bands.of(there.stream().mapToDouble(d -> d).toArray()));
    }

    /** Fewer say nothing of an end at 2.5 %. */
    private static final int LEAST_DRAWS = 40;
}
