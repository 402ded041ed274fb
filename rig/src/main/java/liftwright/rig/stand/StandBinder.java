package liftwright.rig.stand;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import liftwright.quantity.Quantity;
import liftwright.quantity.Tolerance;
import liftwright.rig.DefaultUsed;
import liftwright.rig.Problem.Code;
import liftwright.rig.shape.kind.Fields;
import liftwright.rig.shape.kind.Key;
import liftwright.rig.shape.kind.Need;
import liftwright.rig.shape.kind.Problems;
import liftwright.rig.shape.kind.Spot;
import liftwright.rig.text.Node;

/** Makes a stand of what its file states; what is missing or wrong has been told by then. */
final class StandBinder {

    private final Problems problems;
    private final List<DefaultUsed> defaults = new ArrayList<>();

    StandBinder(Problems problems) {
        this.problems = problems;
    }

    /** Empty where something that is needed could not be read. */
    Optional<Stand> read(Node root) {
        return StandKeys.SECTION.read(root, Spot.top(root.span()), problems).flatMap(this::stand);
    }

    private Optional<Stand> stand(Fields fields) {
        // Each part is looked at before any is missed, so that all problems come at once.
        Optional<Double> thrust = plain(fields, StandKeys.THRUST);
        Optional<Double> wanted = wanted(fields);
        Optional<Stand.Cell> cell = fields.get(StandKeys.CELL).flatMap(this::cell);
        Optional<Stand.Lever> lever = fields.get(StandKeys.LEVER).flatMap(this::lever);
        Optional<Stand.Doubted> alignment = doubted(fields, StandKeys.ALIGNMENT);
        Optional<Stand.Jet> jet = fields.get(StandKeys.JET).flatMap(this::jet);
        Optional<Stand.Clearance> clearance =
                fields.get(StandKeys.CLEARANCE).flatMap(this::clearance);
        Optional<Stand.Air> air = fields.get(StandKeys.AIR).flatMap(this::air);
        Optional<Stand.Repeats> repeats = fields.get(StandKeys.REPEATS).flatMap(this::repeats);
        for (Key<?> key : List.of(StandKeys.LEVER, StandKeys.ALIGNMENT, StandKeys.JET)) {
            noteOpen(fields, key);
        }
        noteOpen(fields, StandKeys.AIR);
        if (problems.hasErrors()
                || thrust.isEmpty()
                || wanted.isEmpty()
                || cell.isEmpty()
                || clearance.isEmpty()
                || repeats.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(
                new Stand(
                        fields.get(StandKeys.NAME).orElse(""),
                        thrust.get(),
                        wanted.get(),
                        cell.get(),
                        lever,
                        alignment,
                        jet,
                        clearance.get(),
                        air,
                        repeats.get(),
                        defaults));
    }

    private Optional<Double> wanted(Fields fields) {
        if (fields.has(StandKeys.WANTED)) {
            return plain(fields, StandKeys.WANTED);
        }
        if (StandKeys.WANTED.need() instanceof Need.Default(var text, var origin)) {
            defaults.add(new DefaultUsed(fields.spotOf(StandKeys.WANTED).path(), text, origin));
            return StandKeys.WANTED
                    .kind()
                    .read(new Node.Scalar(text, false, Spot.NOWHERE), fields.spot(), problems)
                    .map(Quantity::si);
        }
        throw new IllegalStateException("the key has a default");
    }

    private Optional<Stand.Cell> cell(Fields fields) {
        Optional<Double> rating = plain(fields, StandKeys.RATING);
        Optional<Double> share = plain(fields, StandKeys.CLASS);
        Optional<Double> creep = plain(fields, StandKeys.CREEP);
        Optional<Double> perKelvin = plain(fields, StandKeys.TEMPERATURE);
        Optional<Double> warming = plain(fields, StandKeys.WARMING);
        Optional<Double> drift = plain(fields, StandKeys.ZERO_DRIFT);
        Optional<Double> step = plain(fields, StandKeys.STEP);
        Optional<Stand.Doubt> calibration =
                doubted(fields, StandKeys.CALIBRATION).map(Stand.Doubted::doubt);
        for (Key<?> key :
                List.of(
                        StandKeys.CREEP,
                        StandKeys.TEMPERATURE,
                        StandKeys.ZERO_DRIFT,
                        StandKeys.STEP,
                        StandKeys.CALIBRATION)) {
            noteOpen(fields, key);
        }
        return rating.isEmpty() || share.isEmpty()
                ? Optional.empty()
                : Optional.of(
                        new Stand.Cell(
                                rating.get(),
                                share.get(),
                                creep,
                                perKelvin,
                                warming,
                                drift,
                                step,
                                calibration));
    }

    private Optional<Stand.Lever> lever(Fields fields) {
        Optional<Stand.Doubted> fan = doubted(fields, StandKeys.FAN_ARM);
        Optional<Stand.Doubted> cell = doubted(fields, StandKeys.CELL_ARM);
        return fan.flatMap(one -> cell.map(other -> new Stand.Lever(one, other)));
    }

    private Optional<Stand.Jet> jet(Fields fields) {
        if (fields.has(StandKeys.LOSS)) {
            return doubted(fields, StandKeys.LOSS).map(Stand.Jet.Measured::new);
        }
        Optional<Double> area = plain(fields, StandKeys.AREA);
        Optional<Double> distance = plain(fields, StandKeys.DISTANCE);
        Optional<Double> exit = plain(fields, StandKeys.EXIT_AREA);
        return area.isEmpty() || distance.isEmpty() || exit.isEmpty()
                ? Optional.empty()
                : Optional.of(new Stand.Jet.Placed(area.get(), distance.get(), exit.get()));
    }

    private Optional<Stand.Clearance> clearance(Fields fields) {
        if (fields.has(StandKeys.MEASURED)) {
            return doubted(fields, StandKeys.MEASURED)
                    .map(doubt -> new Stand.Clearance.Measured(doubt.doubt()));
        }
        Optional<Double> behind = plain(fields, StandKeys.BEHIND);
        Optional<Double> front = plain(fields, StandKeys.IN_FRONT);
        return behind.flatMap(back -> front.map(face -> new Stand.Clearance.Placed(back, face)));
    }

    private Optional<Stand.Air> air(Fields fields) {
        Optional<Stand.Doubted> kelvin = doubted(fields, StandKeys.AIR_TEMPERATURE);
        Optional<Stand.Doubted> pascal = doubted(fields, StandKeys.AIR_PRESSURE);
        return kelvin.flatMap(k -> pascal.map(p -> new Stand.Air(k.doubt(), p.doubt())));
    }

    private Optional<Stand.Repeats> repeats(Fields fields) {
        Optional<Double> scatter = plain(fields, StandKeys.SCATTER);
        return fields.get(StandKeys.RUNS)
                .flatMap(runs -> scatter.map(share -> new Stand.Repeats(runs, share)));
    }

    /** What is left out of the budget, and that nothing stands in for it. */
    private void noteOpen(Fields fields, Key<?> key) {
        if (!fields.has(key) && key.need() instanceof Need.Open(var means)) {
            defaults.add(new DefaultUsed(fields.spotOf(key).path(), "not declared", means));
        }
    }

    /** A value that is a bound, or known well enough: a ± behind it would be passed over. */
    private Optional<Double> plain(Fields fields, Key<Quantity> key) {
        Optional<Quantity> value = fields.get(key);
        if (value.isPresent() && !value.get().tolerance().isNone()) {
            problems.add(
                    Code.CONTRADICTION,
                    fields.spotOf(key),
                    "a ± behind “" + key.name() + "”",
                    "the value alone",
                    "No doubt of this value enters the budget.");
        }
        return value.map(Quantity::si);
    }

    /** A value whose ± is an item of the budget, so that it must have one. */
    private Optional<Stand.Doubted> doubted(Fields fields, Key<Quantity> key) {
        Optional<Quantity> value = fields.get(key);
        if (value.isEmpty()) {
            return Optional.empty();
        }
        Tolerance tolerance = value.get().tolerance();
        if (tolerance.isNone()) {
            problems.add(
                    Code.MISSING_KEY,
                    fields.spotOf(key),
                    "“" + key.name() + "” without its ±",
                    "a value with its doubt, such as " + key.example(),
                    "How far off it may be is what the budget asks.");
            return Optional.empty();
        }
        if (Math.abs(tolerance.plus() - tolerance.minus())
                > 1e-9 * (tolerance.plus() + tolerance.minus())) {
            problems.add(
                    Code.NOT_A_QUANTITY,
                    fields.spotOf(key),
                    "a doubt with unequal sides",
                    "the same doubt up and down, such as " + key.example(),
                    "Correct the value to the middle first.");
            return Optional.empty();
        }
        double half = (tolerance.plus() + tolerance.minus()) / 2;
        return Optional.of(
                new Stand.Doubted(value.get().si(), new Stand.Doubt(half, tolerance.form())));
    }
}
