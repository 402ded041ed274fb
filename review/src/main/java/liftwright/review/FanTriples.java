package liftwright.review;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import liftwright.answer.Section;
import liftwright.answer.Value;
import liftwright.numerics.Draws;
import liftwright.numerics.Work;
import liftwright.plant.Plant;
import liftwright.plant.fault.Effect;
import liftwright.review.failures.FaultFate;
import liftwright.review.failures.FaultOutcome;
import liftwright.rig.Fan;

/** Every three fans that stop at once, at the declared values. */
final class FanTriples {

    private FanTriples() {}

    /** Three by their places in the rig's list. */
    @SuppressWarnings("ArrayRecordComponent") // never compared
    private record Triple(int[] fans, FaultFate fate) {}

    /** How many do what, and the worst of them; none when stopped. */
    static List<Section> of(Plant plant, FaultPanel panel, int shown, int threads, Work work) {
        int count = plant.rig().fans().size();
        List<int[]> chosen = new ArrayList<>();
        for (int a = 0; a < count; a++) {
            for (int b = a + 1; b < count; b++) {
                for (int c = b + 1; c < count; c++) {
                    chosen.add(new int[] {a, b, c});
                }
            }
        }
        if (chosen.isEmpty()) {
            return List.of();
        }
        work.stage("triples of fans", chosen.size());
        FaultPanel.Found[] told = new FaultPanel.Found[chosen.size()];
        double[] p = plant.parameters().nominal();
        int done =
                Draws.forEachKept(
                        work,
                        threads,
                        0,
                        told.length,
                        panel::worker,
                        (worker, k) -> told[k] = worker.found(p, Effect.dead(chosen.get(k))),
                        new KeptFates(k -> told[k], (found, k) -> told[k] = found));
        if (done < told.length) {
            return List.of();
        }
        Triple[] found = new Triple[told.length];
        Arrays.setAll(found, k -> new Triple(chosen.get(k), told[k].fate()));
        return List.of(counts(found), worst(plant.rig().fans(), found, shown));
    }

    private static Section counts(Triple[] found) {
        Map<FaultOutcome, Integer> counted = new EnumMap<>(FaultOutcome.class);
        for (Triple triple : found) {
            counted.merge(triple.fate.outcome(), 1, Integer::sum);
        }
        List<List<Value>> rows = new ArrayList<>();
        counted.forEach(
                (outcome, number) ->
                        rows.add(
                                List.of(
                                        Value.words("fault-outcome", outcome.words()),
                                        Value.of("count", number))));
        return new Section.Table(
                "triple-counts",
                "Every three fans that stop at once",
                List.of("fault-outcome", "count"),
                rows);
    }

    private static Section worst(List<Fan> fans, Triple[] found, int shown) {
        List<List<Value>> rows =
                Arrays.stream(found)
                        .sorted(Comparator.comparingDouble(triple -> triple.fate.margin()))
                        .limit(shown)
                        .map(triple -> row(fans, triple))
                        .toList();
        return new Section.Table(
                "triples",
                "The worst three",
                List.of("fails", "fault-outcome", "fault-margin"),
                rows);
    }

    private static List<Value> row(List<Fan> fans, Triple triple) {
        List<String> names = new ArrayList<>();
        for (int fan : triple.fans) {
            names.add(fans.get(fan).id().text());
        }
        return List.of(
                Value.words("fails", String.join(", ", names)),
                Value.words("fault-outcome", triple.fate.outcome().words()),
                Value.of("fault-margin", triple.fate.margin()));
    }
}
