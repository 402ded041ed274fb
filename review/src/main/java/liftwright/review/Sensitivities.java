package liftwright.review;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import liftwright.answer.CompareFields;
import liftwright.answer.Fields;
import liftwright.answer.Section;
import liftwright.answer.Value;
import liftwright.numerics.FirstOrderIndices;
import liftwright.numerics.Work;
import liftwright.plant.Plant;
import liftwright.plant.parameters.DeclaredInput;
import liftwright.plant.parameters.ImpossibleValueException;
import liftwright.plant.parameters.Parameter;
import liftwright.plant.parameters.ParameterTable;

/**
 * Which declared values move the judged number most: for each the number anew at both ends of its
 * band, everything else as declared, and its share of the variance over the draws of the verdict.
 *
 * @param field of the judged number
 * @param inputs the most telling, first
 */
public record Sensitivities(String field, List<Sensitivity> inputs) {

    /** As many as a reader looks at. */
    public static final int TOLD = 5;

    public Sensitivities {
        inputs = List.copyOf(inputs);
    }

    /** A table for whoever has no sliders. */
    public Section section() {
        String moved = CompareFields.change(Fields.of(field).measure());
        List<List<Value>> rows = new ArrayList<>();
        for (Sensitivity one : inputs) {
            rows.add(
                    List.of(
                            Value.words("sensitivity-input", one.label()),
                            Value.words("file-place", one.at().toString()),
                            Value.words("sensitivity-low", end(one, true)),
                            Value.words("sensitivity-high", end(one, false)),
                            Value.of(moved, one.moves()),
                            one.varianceShare()
                                    .map(share -> Value.of("sensitivity-share", share))
                                    .orElseGet(() -> Value.words("sensitivity-share", "none"))));
        }
        return new Section.Table(
                "sensitivities",
                "What moves the " + Fields.of(field).label() + " most",
                List.of(
                        "sensitivity-input",
                        "file-place",
                        "sensitivity-low",
                        "sensitivity-high",
                        moved,
                        "sensitivity-share"),
                rows);
    }

    private static String end(Sensitivity one, boolean low) {
        return one.stops().isEmpty()
                ? "not set by itself"
                : low ? one.stops().getFirst() : one.stops().getLast();
    }

    /** Empty when stopped. */
    static <J extends Judgement, S extends Sample<?>> Optional<Sensitivities> of(
            Plant plant, Judging<J, S> judging, S sample, Work work) {
        Optional<Judged> judged = judging.told(sample, work);
        if (judged.isEmpty()) {
            return Optional.empty();
        }
        List<DeclaredInput> inputs = plant.parameters().inputs();
        work.stage("sensitivities", inputs.size());
        List<Moved> moved = new ArrayList<>();
        for (DeclaredInput input : inputs) {
            if (work.stopped()) {
                return Optional.empty();
            }
            moved.add(new Moved(input, moves(plant, judging, input)));
            work.done(1);
        }
        moved.sort(Comparator.comparingDouble((Moved one) -> -Math.abs(one.by)));
        List<Moved> told = moved.stream().filter(one -> one.by != 0).limit(TOLD).toList();
        List<FirstOrderIndices.Index> shares =
                shares(plant, judging.settings(), judged.get().values(), told);
        List<Sensitivity> found = new ArrayList<>();
        for (int k = 0; k < told.size(); k++) {
            Moved one = told.get(k);
            found.add(
                    new Sensitivity(
                            one.input.at(),
                            one.input.label(),
                            one.by,
                            shares.isEmpty()
                                    ? Optional.empty()
                                    : Optional.of(shares.get(k).share()),
                            shares.isEmpty() ? 0 : shares.get(k).standardError(),
                            Stops.of(plant, one.input)));
        }
        return Optional.of(new Sensitivities(judging.field(), found));
    }

    private record Moved(DeclaredInput input, double by) {}

    /** Half of what lies between the ends of the band. */
    private static <J extends Judgement> double moves(
            Plant plant, Judging<J, ?> judging, DeclaredInput input) {
        double parts = Math.sqrt(input.rows().size());
        return Stream.of(1, -1)
                        .mapToDouble(
                                side ->
                                        side
                                                * at(plant, input, side)
                                                        .map(judging::nominal)
                                                        .orElseGet(() -> judging.nominal(plant)))
                        .sum()
                / (2 * parts);
    }

    /** Its rows at one end of their band; empty where nothing can be. */
    private static Optional<Plant> at(Plant plant, DeclaredInput input, int side) {
        ParameterTable table = plant.parameters();
        double[] p = table.nominal();
        for (int row : input.rows()) {
            Parameter one = table.rows().get(row);
            p[row] += side > 0 ? one.tolerance().plus() : -one.tolerance().minus();
        }
        try {
            table.check(p);
        } catch (ImpossibleValueException beyond) {
            return Optional.empty();
        }
        return Optional.of(plant.declaring(p, plant.cells()));
    }

    private static List<FirstOrderIndices.Index> shares(
            Plant plant, Settings settings, double[] outcome, List<Moved> told) {
        if (told.isEmpty() || outcome.length < FirstOrderIndices.FEWEST) {
            return List.of();
        }
        double[][] drivers = new double[told.size()][outcome.length];
        double[] p = new double[plant.parameters().size()];
        double[] wide = Sample.asDeclared(plant);
        for (int draw = 0; draw < outcome.length; draw++) {
            try {
                plant.parameters().draw(settings.seed(), draw, wide, p);
            } catch (ImpossibleValueException beyond) {
                p = plant.parameters().nominal(); // counted as failed by the verdict
            }
            for (int k = 0; k < drivers.length; k++) {
                for (int row : told.get(k).input.rows()) {
                    drivers[k][draw] += p[row];
                }
            }
        }
        return FirstOrderIndices.of(drivers.length, k -> drivers[k], outcome, 19, settings.seed());
    }
}
