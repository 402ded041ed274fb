package liftwright.review;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import liftwright.numerics.Work;
import liftwright.plant.Plant;
import liftwright.plant.parameters.DeclaredInput;

/**
 * Which declared input's halved doubt would narrow the band of the judged number most. Each input
 * is halved in turn and the whole sample is made again on the same draws; a few draws sort out the
 * many that hardly matter, more draws decide between the rest.
 */
final class DoubtRanking {

    private static final int FINALISTS = 4;
    private static final int SORTING_DRAWS = 256;

    private DoubtRanking() {}

    /**
     * @param input declared input
     * @param bandShare width of the band with its doubt halved over the width as declared
     */
    record Ranked(DeclaredInput input, double bandShare) {}

    /** Draws with one input in doubt alone: enough to tell the many that hardly matter. */
    private static final int ALONE_DRAWS = 8;

    /**
     * Most telling first; empty where nothing is in doubt or the work was stopped.
     *
     * @param maker makes a sample whose doubt is scaled, one factor for each declared input
     * @param dear whether draws are so dear that each input is first drawn alone, a few times
     */
    static List<Ranked> rank(
            Plant plant,
            Function<double[], ? extends Sample<?>> maker,
            Settings settings,
            boolean dear,
            Work work) {
        List<DeclaredInput> inputs = plant.parameters().inputs();
        List<Integer> all = new ArrayList<>();
        for (int i = 0; i < inputs.size(); i++) {
            all.add(i);
        }
        Optional<List<Shrink>> first =
                dear
                        ? alone(maker, all, work)
                        : sorted(
                                plant,
                                maker,
                                all,
                                Math.min(SORTING_DRAWS, settings.firstDraws()),
                                work);
        List<Integer> finalists =
                first.map(ranked -> ranked.stream().limit(FINALISTS).map(Shrink::input).toList())
                        .orElse(List.of());
        return sorted(plant, maker, finalists, settings.firstDraws(), work)
                .map(
                        ranked ->
                                ranked.stream()
                                        .map(
                                                shrink ->
                                                        new Ranked(
                                                                inputs.get(shrink.input),
                                                                shrink.share))
                                        .toList())
                .orElse(List.of());
    }

    private record Shrink(int input, double share) {}

    /** By the spread that each makes when nothing else is in doubt, widest first. */
    private static Optional<List<Shrink>> alone(
            Function<double[], ? extends Sample<?>> maker, List<Integer> inputs, Work work) {
        if (inputs.isEmpty()) {
            return Optional.empty();
        }
        work.stage("which measurement would tell", inputs.size());
        List<Shrink> spreads = new ArrayList<>();
        for (int input : inputs) {
            double[] scale = new double[inputs.size()];
            scale[input] = 1;
            Sample<?> only = maker.apply(scale);
            if (!only.extendTo(ALONE_DRAWS, Work.within(work))) {
                return Optional.empty();
            }
            work.done(1);
            spreads.add(new Shrink(input, -spread(only.values(ALONE_DRAWS))));
        }
        spreads.sort(Comparator.comparingDouble(Shrink::share).thenComparingInt(Shrink::input));
        return Optional.of(spreads);
    }

    private static double spread(double[] values) {
        double least = Double.POSITIVE_INFINITY;
        double most = Double.NEGATIVE_INFINITY;
        for (double value : values) {
            least = Math.min(least, value);
            most = Math.max(most, value);
        }
        return most - least;
    }

    private static Optional<List<Shrink>> sorted(
            Plant plant,
            Function<double[], ? extends Sample<?>> maker,
            List<Integer> inputs,
            int draws,
            Work work) {
        Sample<?> declared = maker.apply(Sample.asDeclared(plant));
        if (inputs.isEmpty()) {
            return Optional.empty();
        }
        work.stage("which measurement would tell", inputs.size());
        Work within = Work.within(work);
        if (!declared.extendTo(draws, within)) {
            return Optional.empty();
        }
        double width = Bands.width(declared.values(draws));
        if (width == 0) {
            return Optional.empty();
        }
        List<Shrink> shrinks = new ArrayList<>();
        for (int input : inputs) {
            double[] scale = Sample.asDeclared(plant);
            scale[input] = 0.5;
            Sample<?> halved = maker.apply(scale);
            if (!halved.extendTo(draws, within)) {
                return Optional.empty();
            }
            work.done(1);
            shrinks.add(new Shrink(input, Bands.width(halved.values(draws)) / width));
        }
        shrinks.sort(Comparator.comparingDouble(Shrink::share).thenComparingInt(Shrink::input));
        return Optional.of(shrinks);
    }
}
